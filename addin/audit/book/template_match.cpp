#include "addin/audit/book/template_match.hpp"

#include <string_view>

#include "addin/audit/book/names.hpp"
#include "addin/properties.hpp"

namespace undercroft::audit {

namespace {

std::string property(const Book& book, std::string_view name) {
    const auto found = book.properties.find(std::string(name));
    return found == book.properties.end() ? std::string() : found->second;
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

TemplateMatch::TemplateMatch(const Book& workbook, const Book& from) : workbook_(workbook), template_(from) {
    for (const BookSheet& sheet : template_.sheets) {
        const std::int32_t place = workbook_.sheet_named(sheet.name);
        sheets_.push_back(place);
        rows_.push_back(place >= 0 ? align_rows(sheet, workbook_.sheets[static_cast<std::size_t>(place)])
                                   : Alignment{});
    }
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
