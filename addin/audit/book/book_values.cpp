#include "addin/audit/book/book_values.hpp"

#include "addin/formula/cell_error.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::FormulaValue;
using addin::Node;
using addin::NodeKind;
using addin::OwnedGrid;

namespace {

constexpr std::int64_t most_cells = 200000;

OwnedGrid::Item item_of(const BookCell* cell) {
    if (cell == nullptr) return {};
    if (const double* number = cell->number()) return *number;
    if (const std::string* text = cell->text(); text != nullptr && !text->empty()) return to_utf16(*text);
    return {};
}

}  // namespace

FormulaValue BookValues::value_of_area(const Area& area, bool is_range) const {
    const std::int64_t rows = area.last_row - area.first_row + 1;
    const std::int64_t columns = area.last_column - area.first_column + 1;
    if (rows * columns > most_cells)
        refuse_value("the range " + book_.text_from(at_.sheet, area) + " is too large to be computed again");
    std::vector<std::vector<OwnedGrid::Item>> cells;
    for (Spot spot = area.first(); spot.row <= area.last_row; ++spot.row) {
        auto& row = cells.emplace_back();
        for (spot.column = area.first_column; spot.column <= area.last_column; ++spot.column) {
            const BookCell* cell = book_.find(spot);
            if (cell != nullptr && cell->error != 0)
                refuse_value(book_.text_from(at_.sheet, spot) + " holds " + addin::error_text(cell->error));
            row.push_back(item_of(cell));
        }
    }
    if (is_range) return FormulaValue(std::move(cells));
    const OwnedGrid::Item& item = cells.front().front();
    if (const double* number = std::get_if<double>(&item)) return FormulaValue(*number);
    if (const std::u16string* text = std::get_if<std::u16string>(&item)) return FormulaValue(*text);
    const bool blank = book_.find(area.first()) == nullptr;
    return blank ? FormulaValue::blank_cell() : FormulaValue(std::u16string());  // as Calc hands them over
}

FormulaValue BookValues::value_of_reference(const Node& node) const {
    const std::optional<Area> area = area_of(book_, node.reference, base_, at_);
    if (!area) refuse_value("the cells " + node.text + " are not in this workbook");
    return value_of_area(*area, node.reference.is_range);
}

FormulaValue BookValues::value_of_name(const Node& node) const {
    const NameMeaning* meaning = names_.find(node.text, at_.sheet);
    if (meaning == nullptr || !meaning->readable)
        refuse_value("the name '" + node.text + "' is not defined in this workbook");
    if (meaning->tree.kind == NodeKind::reference)
        return BookValues(book_, names_, meaning->defined->base, at_).value_of_reference(meaning->tree);
    throw Refused(Cause::value, "the name '" + node.text + "' is an expression", Refusal::not_followed);
}

std::optional<addin::CellReference> BookValues::cells_of_name(const Node& node) const {
    const NameMeaning* meaning = names_.find(node.text, at_.sheet);
    if (meaning == nullptr || !meaning->readable || meaning->tree.kind != NodeKind::reference)
        return std::nullopt;
    const std::optional<Area> area = area_of(book_, meaning->tree.reference, meaning->defined->base, at_);
    if (!area) return std::nullopt;
    addin::CellReference cells;
    cells.sheet = book_.sheets[static_cast<std::size_t>(area->sheet)].name;
    cells.first = {area->first_column, area->first_row, true, true};  // seen from wherever the formula stands
    cells.last = {area->last_column, area->last_row, true, true};
    cells.is_range = meaning->tree.reference.is_range;
    return cells;
}

}  // namespace undercroft::audit
