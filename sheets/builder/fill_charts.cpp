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

const Place& table_of(const CellWriter& writer, int line, const std::string& key) {
    const Place& table = writer.place_of(line, key);
    if (table.definition == nullptr || columns_of(*table.definition) == nullptr)
        writer.mistake(line, "'" + key + "' is no table");
    return table;
}

int column_of(const CellWriter& writer, int line, const Place& table, const std::string& title) {
    int at = table.column;
    for (const Column& column : *columns_of(*table.definition)) {
        if (column.title == title) return at;
        at += column.span;
    }
    writer.mistake(line, "the table has no column '" + title + "'");
}

}  // namespace

void fill_chart(CellWriter& writer, const Row& row, const rows::Chart& wanted, int at) {
    const Place& table = table_of(writer, row.line, wanted.table);
    Chart chart;
    chart.title = row.description;
    chart.x_title = wanted.x_title.in(writer.system());
    chart.y_title = wanted.y_title.in(writer.system());
    chart.right_title = wanted.right_title.in(writer.system());
    chart.row = wanted.beside ? table.row - 1 : at;
    chart.column = wanted.beside ? table.last_column + 1 : description_column;
    constexpr int least_rows = 12;
    constexpr int most_rows = 20;
    const int rows = wanted.beside ? std::clamp(table.last_row - table.row + 2, least_rows, most_rows) : 18;
    chart.end_row = chart.row + rows;
    chart.end_column = last_column(writer.sheet());
    chart.width_cm = column_cm * (chart.end_column - chart.column + 1) - 0.2;
    chart.height_cm = rows * row_cm;
    chart.log_x = wanted.x.logarithmic;
    const int x = column_of(writer, row.line, table, wanted.x.column);
    for (const rows::Curve& curve : wanted.curves) {
        chart.log_y = chart.log_y || curve.logarithmic;
        const int y = column_of(writer, row.line, table, curve.column);
        chart.series.push_back({values_of(table, x),
                                values_of(table, y),
                                table.sheet + "." + cell_text(table.row - 1, y),
                                {},
                                curve.on_right});
    }
    writer.grid().charts.push_back(chart);
}

void fill_picture(CellWriter& writer, const Row& row, const rows::Picture& picture, int at) {
    const Paper& paper = picture.paper;
    Chart chart;
    chart.title = row.description;
    chart.picture = paper;
    chart.row = at;
    chart.column = description_column;
    chart.end_row = at + Layout::picture_rows(paper) - 1;
    chart.end_column = last_column(writer.sheet());
    chart.width_cm = column_cm * (chart.end_column - chart.column + 1) - 0.2;
    chart.height_cm = (paper.y_to - paper.y_from) / 10 + 2.6;
    for (const rows::Outline& outline : picture.outlines) {
        const Place& table = table_of(writer, row.line, outline.table);
        chart.series.push_back({values_of(table, table.column), values_of(table, table.column + 1),
                                table.sheet + "." + cell_text(table.row - 2, description_column),
                                outline.look, false});
    }
    writer.grid().charts.push_back(chart);
}

}  // namespace undercroft::sheets
