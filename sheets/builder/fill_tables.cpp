// Tables that functions return, and grids that are typed in.
#include <algorithm>
#include <optional>

#include "sheets/builder/entries.hpp"
#include "sheets/builder/fill.hpp"

namespace undercroft::sheets {

namespace {

/// Heads stand over what they name: words begin at the left, numbers end at the right, and a number and its
/// unit have theirs in the middle of both.
const char* head_style(const CellWriter& writer, const Row& row, const Column& column) {
    if (row.is<rows::List>() && column.is_pair(writer.system())) return "TableHeadMiddle";
    const bool is_number = row.is<rows::Table>() || column.is_pair(writer.system()) ||
                           column.format == Column::Format::share ||
                           column.format == Column::Format::number ||
                           (!column.is_typed() && column.format != Column::Format::text);
    return is_number ? "TableHead" : "TableHeadLeft";
}

}  // namespace

void fill_table_head(CellWriter& writer, const Row& row, int at) {
    writer.put_reference(at);
    writer.put_text(at, description_column, "TableTitle", row.description);
    if (!row.note.empty()) writer.put_note(row.note, at);
    int column = description_column;
    int lines = 1;
    for (const Column& c : *columns_of(row)) {
        if (c.title.starts_with("=")) {
            const std::string computed =
                writer.stored(row.line, trimmed(std::string_view(c.title).substr(1)));
            writer.put_formula(at + 1, column, "BarsHead", computed).columns = c.span;
            column += c.span;
            continue;
        }
        writer.put_text(at + 1, column, head_style(writer, row, c), c.title).columns = c.span;
        lines = std::max(lines, lines_of_text(c.title, c.span, small_pt));
        column += c.span;
    }
    writer.set_height(at, 1, lines_of_text(row.note, writer.note_columns(), small_pt));
    writer.set_height(at + 1, 1, lines);
}

void fill_table(CellWriter& writer, const Row& row, const rows::Table& table, int at) {
    fill_table_head(writer, row, at);
    const int columns = width_of(table.columns);
    const RowWords of_row = {{"@", std::to_string(table.height)}};
    SheetCell& first = writer.put_formula(at + 2, description_column, "TableUnit",
                                          writer.stored(row.line, table.formula.in(writer.system()), of_row));
    first.matrix_rows = table.height + 1;
    first.matrix_columns = columns;
    for (int c = 1; c < columns; ++c) writer.put(at + 2, description_column + c, "TableUnit");
    std::vector<const char*> styles;
    for (const Column& c : table.columns)
        styles.insert(styles.end(), static_cast<std::size_t>(c.span),
                      c.format == Column::Format::plain ? "TablePlain" : "TableNumber");
    for (int r = 0; r < table.height; ++r)
        for (int c = 0; c < columns; ++c)
            writer.put(at + 3 + r, description_column + c, styles[static_cast<std::size_t>(c)]);
    writer.put_reason(at + 2, {description_column});
}

namespace {

void fill_grid_cell(CellWriter& writer, int at, int column, bool has_unit, const std::string& text) {
    if (const std::optional<double> number = number_in(text))
        writer.put_number(at, column, "GridEntry", *number);
    else
        writer.put_text(at, column, has_unit || text == "-" ? "GridEntry" : "GridText",
                        text == "-" ? "" : text);
}

/// Watches one row of a grid, whose units stand in the row above all of them.
void watch_grid_row(CellWriter& writer, const rows::Grid& grid, int units, int at) {
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < grid.columns.size(); ++i) {
        const Column& column = grid.columns[i];
        if (!column.usual) continue;
        Entry entry;
        entry.column = description_column + static_cast<int>(i);
        entry.title = column.title;
        entry.usual = column.usual;
        entry.unit = column.unit.in(writer.system());
        entry.unit_row = units;
        entry.unit_column = entry.column;
        const SheetCell& cell = writer.grid().cells.at({at, entry.column});
        if (cell.type == SheetCell::Type::number) entry.number = cell.number;
        entries.push_back(std::move(entry));
    }
    if (entries.empty()) return;
    writer.put_reference(at);
    watch_item(writer, entries, at);
    writer.put_reason(at, {}, true);
}

}  // namespace

void fill_grid(CellWriter& writer, const Row& row, const rows::Grid& grid, int at) {
    fill_table_head(writer, row, at);
    for (std::size_t i = 0; i < grid.columns.size(); ++i) {
        const int column = description_column + static_cast<int>(i);
        const std::string& unit = grid.columns[i].unit.in(writer.system());
        if (unit.empty())
            writer.put(at + 2, column, "GridUnit");
        else
            writer.put_unit(row.line, at + 2, column, "GridUnit", unit);
        int cell_row = at + 3;
        for (const rows::Item& item : grid.items)
            fill_grid_cell(writer, cell_row++, column, !unit.empty(), item.cells[i].in(writer.system()));
    }
    for (std::size_t i = 0; i < grid.items.size(); ++i) {
        const int item_at = at + 3 + static_cast<int>(i);
        watch_grid_row(writer, grid, at + 2, item_at);
        writer.put_growth(item_at, grid.most);
    }
}

}  // namespace undercroft::sheets
