#include "addin/audit/book/names.hpp"

#include <algorithm>

#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

Names::Names(const Book& book) {
    for (const DefinedName& name : book.names) {
        NameMeaning meaning{&name, {}, false};
        try {
            meaning.tree = addin::parse_formula(name.content);
            meaning.readable = true;
        } catch (const Refused&) {  // the formula that uses it says that it cannot be followed
        }
        meanings_[{name.sheet, lower_case(name.name)}] = std::move(meaning);
    }
}

const NameMeaning* Names::find(std::string_view name, std::int32_t sheet) const {
    const std::string wanted = lower_case(name);
    for (const std::int32_t scope : {sheet, -1}) {
        const auto found = meanings_.find({scope, wanted});
        if (found != meanings_.end()) return &found->second;
    }
    return nullptr;
}

std::optional<Area> area_of(const Book& book, const addin::CellReference& reference, const Spot& base,
                            const Spot& at) {
    if (!reference.document.empty()) return std::nullopt;
    Area area;
    area.sheet = reference.sheet.empty() ? at.sheet : book.sheet_named(reference.sheet);
    if (area.sheet < 0) return std::nullopt;
    const auto column = [&](const addin::CellAddress& corner) {
        return corner.column + (corner.column_fixed ? 0 : at.column - base.column);
    };
    const auto row = [&](const addin::CellAddress& corner) {
        return corner.row + (corner.row_fixed ? 0 : at.row - base.row);
    };
    const auto columns = std::minmax({column(reference.first), column(reference.last)});
    const auto rows = std::minmax({row(reference.first), row(reference.last)});
    area.first_column = columns.first;
    area.last_column = columns.second;
    area.first_row = rows.first;
    area.last_row = rows.second;
    const bool inside = area.first_column >= 0 && area.first_row >= 0 &&
                        area.last_column < addin::most_columns && area.last_row < addin::most_rows;
    if (!inside) return std::nullopt;
    return area;
}

std::vector<Area> areas_of(const Book& book, const addin::CellReference& reference, const Spot& base,
                           const Spot& at) {
    const std::optional<Area> first = area_of(book, reference, base, at);
    if (!first) return {};
    std::vector<Area> areas = {*first};
    if (reference.last_sheet.empty()) return areas;
    const std::int32_t last = book.sheet_named(reference.last_sheet);
    for (std::int32_t sheet = first->sheet + 1; sheet <= last; ++sheet) {
        areas.push_back(*first);
        areas.back().sheet = sheet;
    }
    return areas;
}

}  // namespace undercroft::audit
