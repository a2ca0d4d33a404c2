#include "sheets/builder/pages.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace undercroft::sheets {

namespace {

/// A row with which a page may begin.
struct Opening {
    int row = 0;
    int parts = 0;  ///< how much is parted there: 0 between sections, 1 within one, 2 within a list
};

constexpr int heads_of_a_list = 4;
constexpr int whole_list = 14;  ///< rows of a list that is not parted
constexpr int pasted_list =
    200;  ///< of one that Calc parts by itself: more is pasted into it than is printed

/// The rows that come with a row before them: what a section or its remark is about stands below it.
bool keeps_next(const Row& row) {
    return row.is<rows::Section>() || row.is<rows::Remark>();
}

bool is_long(const Row& row) {
    return row.is<rows::List>() || row.is<rows::Grid>() || row.is<rows::Table>() || row.is<rows::Summary>() ||
           row.is<rows::Dashboard>();
}

std::vector<Opening> openings_of(const SheetGrid& grid, const Sheet& sheet, const Layout& layout, int end) {
    std::vector<Opening> found;
    const Row* before = nullptr;
    for (auto row = sheet.rows.begin(); row != sheet.rows.end(); ++row) {
        const int from = layout.start_of(sheet, *row);
        const int to = row + 1 == sheet.rows.end() ? end : layout.start_of(sheet, row[1]);
        if (row->is<rows::Section>())
            found.push_back({from + 1, 0});  // the blank row above it ends the page before
        else if (before != nullptr && !keeps_next(*before) && !row->is<rows::Picture>())
            found.push_back({from, 1});
        if (is_long(*row) && to - from > whole_list && to - from < pasted_list)
            for (int inside = from + heads_of_a_list; inside + 2 < to; ++inside) found.push_back({inside, 2});
        before = &*row;
    }
    std::erase_if(found, [&](const Opening& opening) {
        return opening.row <= first_row || opening.row >= end ||
               std::any_of(grid.charts.begin(), grid.charts.end(), [&](const Chart& chart) {
                   return chart.row < opening.row && opening.row <= chart.end_row;
               });
    });
    return found;
}

/// What a choice of pages costs, the worst first: pages, thin ones, what is parted, what is empty,
/// most of the first page.
using Cost = std::tuple<int, int, int, double>;

Cost operator+(const Cost& one, const Cost& other) {
    return {std::get<0>(one) + std::get<0>(other), std::get<1>(one) + std::get<1>(other),
            std::get<2>(one) + std::get<2>(other), std::get<3>(one) + std::get<3>(other)};
}

/// The height of cells that a page holds below the head that each page repeats, at the scale at which the
/// columns fit its width; Calc takes whole percent.
double room_on_page(const SheetGrid& grid, const Printable& page) {
    constexpr double rounding = 0.995;  // Calc's of rows to its pixels
    const double width = std::accumulate(grid.column_widths_cm.begin(),
                                         grid.column_widths_cm.begin() + grid.print_columns, 0.0);
    const double scale = std::min(1.0, std::floor(100 * page.width_cm / width) / 100);
    double head = 0;
    for (int row = 0; row < grid.head_rows; ++row) head += row_height_cm(grid, row);
    return page.height_cm / scale * rounding - head;
}

}  // namespace

Printable printable(bool letter, bool wide) {
    constexpr double margins_beside = 1.5 + 0.8;
    constexpr double margins_and_bands = 2 * (1 + 0.6 + 0.2);
    const double shorter = letter ? 21.59 : 21;
    const double longer = letter ? 27.94 : 29.7;
    return {(wide ? longer : shorter) - margins_beside, (wide ? shorter : longer) - margins_and_bands};
}

void begin_pages(SheetGrid& grid, const Sheet& sheet, const Layout& layout, bool letter) {
    if (!grid.printed) return;
    const int end = grid.printed_rows > 0 ? grid.printed_rows : grid.rows;
    std::vector<Opening> openings = openings_of(grid, sheet, layout, end);
    openings.insert(openings.begin(), {first_row, 0});
    const double room = room_on_page(grid, printable(letter, grid.wide));
    std::vector<double> down(static_cast<std::size_t>(end) + 1);
    for (int row = first_row; row < end; ++row)
        down[static_cast<std::size_t>(row) + 1] =
            down[static_cast<std::size_t>(row)] + row_height_cm(grid, row);

    struct Best {
        Cost cost;
        std::size_t next = 0;
    };
    // Of the rest of the sheet from each opening, from the last to the first.
    std::vector<Best> best(openings.size() + 1);
    const auto top = [&](std::size_t at) {
        return down[static_cast<std::size_t>(at < openings.size() ? openings[at].row : end)];
    };
    for (std::size_t from = openings.size(); from-- > 0;) {
        for (std::size_t to = from + 1; to <= openings.size(); ++to) {
            const double filled = (top(to) - top(from)) / room;
            if (filled > 1 && to > from + 1) break;  // what is higher than a page stands alone
            const bool is_thin = 3 * filled < 1;
            const int pages_after = std::get<0>(best[to].cost);
            const Cost cost =
                Cost{static_cast<int>(std::ceil(filled)), is_thin,
                     to < openings.size() ? openings[to].parts : 0, (1 - filled) * pages_after} +
                best[to].cost;
            if (to == from + 1 || cost < best[from].cost) best[from] = {cost, to};
        }
    }
    for (std::size_t at = best.front().next; at < openings.size(); at = best[at].next)
        grid.page_breaks.push_back(openings[at].row);
}

}  // namespace undercroft::sheets
