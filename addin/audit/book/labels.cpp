#include "addin/audit/book/labels.hpp"

#include <algorithm>

namespace undercroft::audit {

namespace {

constexpr std::size_t longest_unit_in_label = 12;

bool is_typed_text(const BookCell& cell) {
    return !cell.is_formula() && cell.text() != nullptr && !cell.text()->empty();
}

/// Whether the row computes another number to the left.
bool computes_several(const std::vector<BookCell>& cells, std::size_t at) {
    for (std::size_t i = at; i-- > 0 && cells[i].row == cells[at].row;)
        if (cells[i].is_formula() && cells[i].number() != nullptr) return true;
    return false;
}

std::size_t place_of(const std::vector<BookCell>& cells, const Spot& spot) {
    const auto found =
        std::lower_bound(cells.begin(), cells.end(), spot, [](const BookCell& cell, const Spot& s) {
            return cell.row != s.row ? cell.row < s.row : cell.column < s.column;
        });
    return static_cast<std::size_t>(found - cells.begin());
}

}  // namespace

Labels::Labels(const Book& book, UnitTexts& texts) : book_(book), texts_(texts), heads_(book.sheets.size()) {
    for (std::size_t s = 0; s < book.sheets.size(); ++s) {
        const std::vector<BookCell>& cells = book.sheets[s].cells;
        heads_[s].resize(static_cast<std::size_t>(book.columns(static_cast<std::int32_t>(s))));
        const auto is_entry = [&](const BookCell& cell) {
            return book.sheets[s].is_protected && !book.sheets[s].formats[cell.format].locked;
        };
        for (std::uint32_t i = 0; i < cells.size(); ++i)
            if (is_typed_text(cells[i]) && !is_entry(cells[i]))
                heads_[s][static_cast<std::size_t>(cells[i].column)].push_back(i);
    }
}

bool Labels::is_unit(const std::string& text) const {
    return text.size() <= longest_unit_in_label && texts_.read(text).unit.has_value();
}

std::string Labels::of_row(const Spot& spot) const {
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(spot.sheet)].cells;
    const std::string* longest = nullptr;
    for (std::size_t i = place_of(cells, spot); i-- > 0 && cells[i].row == spot.row;)
        if (is_typed_text(cells[i]) && (longest == nullptr || cells[i].text()->size() > longest->size()))
            longest = cells[i].text();
    return longest != nullptr && longest->size() > 1 && !is_unit(*longest) ? *longest : std::string();
}

std::string Labels::of_column(const Spot& spot) const {
    const auto& by_column = heads_[static_cast<std::size_t>(spot.sheet)];
    if (static_cast<std::size_t>(spot.column) >= by_column.size()) return {};
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(spot.sheet)].cells;
    const std::vector<std::uint32_t>& heads = by_column[static_cast<std::size_t>(spot.column)];
    auto head = std::lower_bound(heads.begin(), heads.end(), spot.row,
                                 [&](std::uint32_t i, std::int32_t row) { return cells[i].row < row; });
    while (head != heads.begin()) {
        const std::string& text = *cells[*--head].text();
        if (!is_unit(text)) return text;
    }
    return {};
}

std::string Labels::of(const Spot& spot) const {
    const std::string row = of_row(spot);
    if (row.empty()) return of_column(spot);
    const std::vector<BookCell>& cells = book_.sheets[static_cast<std::size_t>(spot.sheet)].cells;
    const std::size_t at = place_of(cells, spot);
    if (at >= cells.size() || !computes_several(cells, at)) return row;
    const std::string head = of_column(spot);
    return head.empty() ? row : row + ": " + head;
}

}  // namespace undercroft::audit
