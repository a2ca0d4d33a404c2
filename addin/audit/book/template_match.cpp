#include "addin/audit/book/template_match.hpp"

#include <algorithm>
#include <set>
#include <string_view>

#include "addin/audit/book/names.hpp"
#include "addin/properties.hpp"

namespace undercroft::audit {

namespace {

std::string property(const Book& book, std::string_view name) {
    const auto found = book.properties.find(std::string(name));
    return found == book.properties.end() ? std::string() : found->second;
}

std::set<std::string_view> typed_texts(const BookSheet& sheet) {
    std::set<std::string_view> texts;
    for (const BookCell& cell : sheet.cells)
        if (!cell.is_formula() && cell.text() != nullptr) texts.insert(*cell.text());
    return texts;
}

}  // namespace

std::string Identity::text() const {
    if (name.empty()) return "a workbook that does not say its template";
    return name + (system.empty() ? "" : " " + system) + (version.empty() ? "" : " " + version);
}

Identity identity_of(const Book& book) {
    return {property(book, template_property), property(book, system_property),
            property(book, template_version_property)};
}

TemplateMatch::TemplateMatch(const Book& workbook, const Book& from, SheetsBy by)
    : workbook_(workbook), template_(from) {
    for (const BookSheet& sheet : template_.sheets) sheets_.push_back(workbook_.sheet_named(sheet.name));
    if (by == SheetsBy::name_or_rows) match_renamed();
    for (std::size_t s = 0; s < sheets_.size(); ++s)
        rows_.push_back(sheets_[s] < 0 ? Alignment{}
                                       : align_rows(template_.sheets[s],
                                                    workbook_.sheets[static_cast<std::size_t>(sheets_[s])]));
    from_sheet_.assign(workbook_.sheets.size(), -1);
    from_row_.resize(workbook_.sheets.size());
    for (std::size_t s = 0; s < sheets_.size(); ++s) {
        if (sheets_[s] < 0) continue;
        const auto place = static_cast<std::size_t>(sheets_[s]);
        from_sheet_[place] = static_cast<std::int32_t>(s);
        for (std::size_t r = 0; r < rows_[s].to_workbook.size(); ++r) {
            if (rows_[s].to_workbook[r] < 0) continue;
            const auto row = static_cast<std::size_t>(rows_[s].to_workbook[r]);
            if (row >= from_row_[place].size()) from_row_[place].resize(row + 1, -1);
            from_row_[place][row] = static_cast<std::int32_t>(r);
        }
    }
}

/// Of the sheets that nothing else is, those that share most of their texts.
void TemplateMatch::match_renamed() {
    std::set<std::int32_t> free;
    for (std::int32_t place = 0; place < static_cast<std::int32_t>(workbook_.sheets.size()); ++place)
        if (std::find(sheets_.begin(), sheets_.end(), place) == sheets_.end()) free.insert(place);
    for (std::size_t s = 0; s < sheets_.size(); ++s) {
        if (sheets_[s] >= 0) continue;
        const std::set<std::string_view> words = typed_texts(template_.sheets[s]);
        std::size_t most = 0;
        for (const std::int32_t place : free) {
            const std::set<std::string_view> others =
                typed_texts(workbook_.sheets[static_cast<std::size_t>(place)]);
            const auto shared = static_cast<std::size_t>(std::count_if(
                words.begin(), words.end(), [&](std::string_view word) { return others.contains(word); }));
            if (shared <= most || shared * 2 < words.size()) continue;
            most = shared;
            sheets_[s] = place;
        }
        free.erase(sheets_[s]);
    }
}

std::optional<Spot> TemplateMatch::in_template(const Spot& of_workbook) const {
    const auto place = static_cast<std::size_t>(of_workbook.sheet);
    if (from_sheet_[place] < 0 || static_cast<std::size_t>(of_workbook.row) >= from_row_[place].size())
        return std::nullopt;
    const std::int32_t row = from_row_[place][static_cast<std::size_t>(of_workbook.row)];
    if (row < 0) return std::nullopt;
    return Spot{from_sheet_[place], row, of_workbook.column};
}

std::string TemplateMatch::moved(const addin::CellReference& reference, const Spot& base,
                                 const Spot& at) const {
    std::string text;
    for (const Area& area : areas_of(template_, reference, base, at)) {
        const std::int32_t place = sheet(area.sheet);
        if (place < 0) return "?";
        const bool whole = reference.whole_columns;
        const std::int32_t first = whole ? area.first_row : rows(area.sheet).row(area.first_row);
        const std::int32_t last = whole ? area.last_row : rows(area.sheet).row(area.last_row);
        if (first < 0 || last < 0) return "?";
        text += workbook_.text(Area{place, first, area.first_column, last, area.last_column});
    }
    return text.empty() ? "?" + reference.document : text;
}

bool is_inside_array(const BookSheet& sheet, const BookCell& cell) {
    if (cell.array < 0) return false;
    const Area& area = sheet.arrays[static_cast<std::size_t>(cell.array)];
    return area.first_row != cell.row || area.first_column != cell.column;
}

}  // namespace undercroft::audit
