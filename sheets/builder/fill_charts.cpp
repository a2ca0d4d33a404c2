// Charts of a table's columns, and pictures to scale of outlines.
#include <algorithm>

#include "sheets/builder/fill.hpp"

namespace undercroft::sheets {

namespace {

/// The cells below the unit row of one column of a table.
std::string values_of(const Place& table, int column) {
    return table.sheet + "." + cell_text(table.row + 1, column) + ":" + table.sheet + "." +
           cell_text(table.last_row, column);
}

const Place& table_of(const CellWriter& writer, const Row& row, const std::string& key) {
    const Place& table = writer.place_of(row, key);
    if (table.definition == nullptr || table.definition->columns.empty())
        writer.mistake(row, "'" + key + "' is no table");
    return table;
}

int column_of(const CellWriter& writer, const Row& row, const Place& table, const std::string& title) {
    int column = table.column;
    for (const ListColumn& c : table.definition->columns) {
        if (c.title == title) return column;
        column += c.span;
    }
    writer.mistake(row, "the table has no column '" + title + "'");
}

constexpr std::string_view on_right = "right ";
constexpr std::string_view logarithmic = "log ";

/// The column's title, and whether the word stood before it.
std::pair<std::string, bool> without(std::string_view word, const std::string& title) {
    const bool has = title.starts_with(word);
    return {has ? title.substr(word.size()) : title, has};
}

}  // namespace

void fill_chart(CellWriter& writer, const Row& row, int at) {
    const Place& table = table_of(writer, row, row.source_table);
    Chart chart;
    chart.title = row.description;
    chart.x_title = row.x_title.in(writer.system());
    chart.y_title = row.y_title.in(writer.system());
    chart.right_title = row.right_title.in(writer.system());
    chart.row = row.beside ? table.row - 1 : at;
    chart.column = row.beside ? table.last_column + 1 : description_column;
    constexpr int least_rows = 12;
    constexpr int most_rows = 20;
    const int rows = row.beside ? std::clamp(table.last_row - table.row + 2, least_rows, most_rows) : 18;
    chart.end_row = chart.row + rows;
    chart.end_column = last_column(writer.sheet());
    chart.width_cm = column_cm * (chart.end_column - chart.column + 1) - 0.2;
    chart.height_cm = rows * 0.5;
    const auto [x_title, log_x] = without(logarithmic, row.plot[0]);
    chart.log_x = log_x;
    const int x = column_of(writer, row, table, x_title);
    for (std::size_t i = 1; i < row.plot.size(); ++i) {
        const auto [scaled_title, log_y] = without(logarithmic, row.plot[i]);
        chart.log_y = chart.log_y || log_y;
        const auto [y_title, right] = without(on_right, scaled_title);
        const int y = column_of(writer, row, table, y_title);
        chart.series.push_back({values_of(table, x),
                                values_of(table, y),
                                table.sheet + "." + cell_text(table.row - 1, y),
                                {},
                                right});
    }
    writer.grid().charts.push_back(chart);
}

void fill_picture(CellWriter& writer, const Row& row, int at) {
    Chart chart;
    chart.title = row.description;
    chart.picture = PaperAxes{row.paper[0], row.paper[1], row.paper[2], row.paper[3]};
    chart.row = at;
    chart.column = description_column;
    chart.end_row = at + Layout::picture_rows(row) - 1;
    chart.end_column = last_column(writer.sheet());
    chart.width_cm = column_cm * (chart.end_column - chart.column + 1) - 0.2;
    chart.height_cm = (row.paper[3] - row.paper[2]) / 10 + 2.6;
    for (const std::string& item : row.plot) {
        const std::size_t space = item.find(' ');
        if (space == std::string::npos) writer.mistake(row, "wanted: LOOK TABLE, not '" + item + "'");
        const Place& table = table_of(writer, row, item.substr(space + 1));
        chart.series.push_back({values_of(table, table.column), values_of(table, table.column + 1),
                                table.sheet + "." + cell_text(table.row - 2, description_column),
                                item.substr(0, space), false});
    }
    writer.grid().charts.push_back(chart);
}

}  // namespace undercroft::sheets
