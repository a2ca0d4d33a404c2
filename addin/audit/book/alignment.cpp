#include "addin/audit/book/alignment.hpp"

#include <algorithm>
#include <map>
#include <string>

#include "addin/audit/book/common_subsequence.hpp"

namespace undercroft::audit {

namespace {

std::int32_t rows_of(const BookSheet& sheet) {
    return sheet.cells.empty() ? 0 : sheet.cells.back().row + 1;
}

/// What a person knows a row by: the texts typed into it that are not for filling in.
std::vector<std::string> labels(const BookSheet& sheet) {
    std::vector<std::string> rows(static_cast<std::size_t>(rows_of(sheet)));
    for (const BookCell& cell : sheet.cells) {
        std::string& row = rows[static_cast<std::size_t>(cell.row)];
        const bool label = !cell.is_formula() && cell.text() != nullptr && sheet.formats[cell.format].locked;
        if (label)
            row.append(*cell.text()).append("|");
        else if (row.empty())
            row.assign(1, ' ');  // something, though no label
    }
    return rows;
}

/// What a row is made of: the styles of its cells.
std::vector<std::string> shapes(const BookSheet& sheet) {
    std::vector<std::string> rows(static_cast<std::size_t>(rows_of(sheet)));
    for (const BookCell& cell : sheet.cells)
        rows[static_cast<std::size_t>(cell.row)]
            .append(std::to_string(cell.column))
            .append(sheet.formats[cell.format].style)
            .append("|");
    return rows;
}

/// The only row that is called so among those that are left; -1 for a blank or several.
std::map<std::string, std::int32_t> only_rows(const std::vector<std::string>& labels,
                                              const std::vector<bool>& taken) {
    constexpr std::size_t shortest_label = 4;
    std::map<std::string, std::int32_t> rows;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        if (taken[i] || labels[i].size() < shortest_label) continue;
        const auto [place, is_new] = rows.emplace(labels[i], static_cast<std::int32_t>(i));
        if (!is_new) place->second = -1;
    }
    return rows;
}

std::vector<std::string> part(const std::vector<std::string>& rows, std::size_t first, std::size_t end) {
    return {rows.begin() + static_cast<std::ptrdiff_t>(first),
            rows.begin() + static_cast<std::ptrdiff_t>(end)};
}

}  // namespace

std::int32_t Alignment::row(std::int32_t template_row) const {
    if (template_row < 0) return -1;
    if (static_cast<std::size_t>(template_row) < to_workbook.size())
        return to_workbook[static_cast<std::size_t>(template_row)];
    const std::int32_t beyond = template_row - static_cast<std::int32_t>(to_workbook.size());
    const std::int32_t end = to_workbook.empty() ? 0 : to_workbook.back() + 1;
    return end + beyond;
}

Alignment align_rows(const BookSheet& in_template, const BookSheet& in_workbook) {
    const std::vector<std::string> a = labels(in_template);
    const std::vector<std::string> b = labels(in_workbook);
    const std::vector<std::string> a_shapes = shapes(in_template);
    const std::vector<std::string> b_shapes = shapes(in_workbook);
    Alignment alignment;
    alignment.to_workbook.assign(a.size(), -1);
    std::vector<bool> taken(b.size(), false);
    const auto pair_up = [&](std::size_t i, std::size_t j) {
        alignment.to_workbook[i] = static_cast<std::int32_t>(j);
        taken[j] = true;
    };
    // Between rows that are the same, rows may have been renamed: as many as before, or of the same shape.
    const auto fill_gap = [&](std::size_t a_first, std::size_t a_end, std::size_t b_first,
                              std::size_t b_end) {
        if (a_end - a_first == b_end - b_first) {
            for (std::size_t i = 0; i < a_end - a_first; ++i) pair_up(a_first + i, b_first + i);
            return;
        }
        for (const auto& [i, j] :
             common_subsequence(part(a_shapes, a_first, a_end), part(b_shapes, b_first, b_end)))
            pair_up(a_first + i, b_first + j);
    };
    std::size_t a_next = 0;
    std::size_t b_next = 0;
    for (const auto& [i, j] : common_subsequence(a, b)) {
        fill_gap(a_next, i, b_next, j);
        pair_up(i, j);
        a_next = i + 1;
        b_next = j + 1;
    }
    fill_gap(a_next, a.size(), b_next, b.size());
    std::vector<bool> found(a.size());
    for (std::size_t i = 0; i < a.size(); ++i) found[i] = alignment.to_workbook[i] >= 0;
    const std::map<std::string, std::int32_t> left_in_b = only_rows(b, taken);
    for (const auto& [label, i] : only_rows(a, found)) {
        const auto j = left_in_b.find(label);
        if (i < 0 || j == left_in_b.end() || j->second < 0) continue;
        pair_up(static_cast<std::size_t>(i), static_cast<std::size_t>(j->second));
        alignment.moved.push_back(i);
    }
    std::sort(alignment.moved.begin(), alignment.moved.end());
    for (std::size_t j = 0; j < b.size(); ++j)
        if (!taken[j]) alignment.added.push_back(static_cast<std::int32_t>(j));
    return alignment;
}

}  // namespace undercroft::audit
