#include "addin/audit/book/book.hpp"

#include <algorithm>

#include "addin/formula/formula.hpp"

namespace undercroft::audit {

using addin::cell_letters;
using addin::sheet_prefix;

namespace {
constexpr auto by_place = [](const BookCell& cell, const Spot& spot) {
    return cell.row != spot.row ? cell.row < spot.row : cell.column < spot.column;
};
}  // namespace

bool is_audit_sheet(const BookSheet& sheet) {
    if (sheet.was_audit) return true;
    if (sheet.cells.empty()) return false;
    const BookCell& first = sheet.cells.front();
    const bool has_title = sheet.name == audit_sheet_name && first.row == 0 && first.column == 0 &&
                           first.text() != nullptr && *first.text() == audit_sheet_title;
    if (!sheet.has_audit_mark && !has_title) return false;
    return std::all_of(sheet.cells.begin(), sheet.cells.end(), [](const BookCell& cell) {
        return !cell.is_formula() || cell.formula.starts_with("=HYPERLINK(\"#");
    });
}

void Book::index() {
    columns_.assign(sheets.size(), {});
    sheet_names_.clear();
    for (std::size_t s = 0; s < sheets.size(); ++s) {
        BookSheet& sheet = sheets[s];
        sheet_names_[sheet.name] = static_cast<std::int32_t>(s);
        std::sort(sheet.cells.begin(), sheet.cells.end(), [](const BookCell& a, const BookCell& b) {
            return a.row != b.row ? a.row < b.row : a.column < b.column;
        });
        auto& columns = columns_[s];
        for (std::uint32_t i = 0; i < sheet.cells.size(); ++i) {
            const auto column = static_cast<std::size_t>(sheet.cells[i].column);
            if (column >= columns.size()) columns.resize(column + 1);
            columns[column].push_back(i);
        }
    }
}

const BookCell* Book::find(const Spot& spot) const {
    if (spot.sheet < 0 || static_cast<std::size_t>(spot.sheet) >= sheets.size()) return nullptr;
    const std::vector<BookCell>& cells = sheets[static_cast<std::size_t>(spot.sheet)].cells;
    const auto found = std::lower_bound(cells.begin(), cells.end(), spot, by_place);
    const bool there = found != cells.end() && found->row == spot.row && found->column == spot.column;
    return there ? &*found : nullptr;
}

const CellFormat& Book::format_of(const Spot& spot) const {
    static const CellFormat standard;
    const BookCell* cell = find(spot);
    if (cell == nullptr) return standard;
    return sheets[static_cast<std::size_t>(spot.sheet)].formats[cell->format];
}

std::span<const std::uint32_t> Book::column(std::int32_t sheet, std::int32_t column) const {
    const auto& columns = columns_[static_cast<std::size_t>(sheet)];
    if (column < 0 || static_cast<std::size_t>(column) >= columns.size()) return {};
    return columns[static_cast<std::size_t>(column)];
}

std::span<const std::uint32_t> Book::column(std::int32_t sheet, std::int32_t number, std::int32_t first_row,
                                            std::int32_t last_row) const {
    const std::span<const std::uint32_t> all = column(sheet, number);
    const std::vector<BookCell>& cells = sheets[static_cast<std::size_t>(sheet)].cells;
    const auto first =
        std::lower_bound(all.begin(), all.end(), first_row,
                         [&](std::uint32_t i, std::int32_t row) { return cells[i].row < row; });
    const auto last = std::upper_bound(first, all.end(), last_row,
                                       [&](std::int32_t row, std::uint32_t i) { return row < cells[i].row; });
    return all.subspan(static_cast<std::size_t>(first - all.begin()), static_cast<std::size_t>(last - first));
}

std::int32_t Book::columns(std::int32_t sheet) const {
    return static_cast<std::int32_t>(columns_[static_cast<std::size_t>(sheet)].size());
}

std::int32_t Book::sheet_named(std::string_view name) const {
    const auto found = sheet_names_.find(std::string(name));
    return found == sheet_names_.end() ? -1 : found->second;
}

std::string Book::text_from(std::int32_t sheet, const Spot& spot) const {
    return text_from(sheet, Area::of(spot));
}

std::string Book::text_from(std::int32_t sheet, const Area& area) const {
    std::string text;
    if (area.sheet != sheet) text = sheet_prefix(sheets[static_cast<std::size_t>(area.sheet)].name);
    text += cell_letters(area.first_column, area.first_row);
    if (!area.is_single()) text += ":" + cell_letters(area.last_column, area.last_row);
    return text;
}

std::string Book::text(const Spot& spot) const {
    return text_from(-1, spot);
}

std::string Book::text(const Area& area) const {
    return text_from(-1, area);
}

std::string rows_text(std::int32_t first, std::int32_t last) {
    if (first == last) return "row " + std::to_string(first + 1);
    return "rows " + std::to_string(first + 1) + " to " + std::to_string(last + 1);
}

std::string cells_text(const Book& book, std::vector<Spot> spots, std::size_t most_ranges) {
    std::sort(spots.begin(), spots.end(), [](const Spot& a, const Spot& b) {
        return std::tie(a.sheet, a.column, a.row) < std::tie(b.sheet, b.column, b.row);
    });
    std::string text;
    std::size_t ranges = 0;
    std::size_t shown = 0;
    for (std::size_t i = 0; i < spots.size() && ranges < most_ranges; ++ranges) {
        std::size_t end = i + 1;
        while (end < spots.size() && spots[end].sheet == spots[i].sheet &&
               spots[end].column == spots[i].column && spots[end].row <= spots[end - 1].row + 1)
            ++end;
        const Spot& last = spots[end - 1];
        const bool same_sheet = i > 0 && spots[i - 1].sheet == spots[i].sheet;
        text += (text.empty() ? "" : ", ") +
                book.text_from(same_sheet ? spots[i].sheet : -1,
                               Area{last.sheet, spots[i].row, spots[i].column, last.row, last.column});
        shown = i = end;
    }
    if (shown < spots.size()) text += " and " + std::to_string(spots.size() - shown) + " more";
    return text;
}

}  // namespace undercroft::audit
