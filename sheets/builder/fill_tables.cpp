// Tables that functions return, grids that are typed in, lists of items.
#include <algorithm>
#include <charconv>

#include "sheets/builder/fill.hpp"
#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

namespace {

void fill_table_head(CellWriter& writer, const Row& row, int at) {
    writer.put_reference(at);
    writer.put_text(at, description_column, "TableTitle", row.description);
    if (!row.note.empty()) writer.put_note(row.note, at);
    int column = description_column;
    int lines = 1;
    for (const ListColumn& c : row.columns) {
        const bool words = c.unit.in(writer.system()).empty() && c.formula.empty() && c.format != "share" &&
                           row.kind != Row::Kind::table;
        writer.put_text(at + 1, column, words ? "TableHeadLeft" : "TableHead", c.title).columns = c.span;
        lines = std::max(lines, lines_of_text(c.title, c.span, small_character_cm));
        column += c.span;
    }
    writer.set_height(at, lines_of_text(row.note, writer.note_columns(), small_character_cm));
    writer.set_height(at + 1, lines);
}

}  // namespace

void fill_table(CellWriter& writer, const Row& row, int at) {
    fill_table_head(writer, row, at);
    const int height = Layout::table_height(writer.sheet(), row);
    const int columns = Layout::width_of(row);
    const RowWords of_row = {{"@", std::to_string(height)}};
    SheetCell& first = writer.put_formula(at + 2, description_column, "TableUnit",
                                          writer.stored(row, row.formula.in(writer.system()), of_row));
    first.matrix_rows = height + 1;
    first.matrix_columns = columns;
    for (int c = 1; c < columns; ++c) writer.put(at + 2, description_column + c, "TableUnit");
    for (int r = 0; r < height; ++r)
        for (int c = 0; c < columns; ++c) writer.put(at + 3 + r, description_column + c, "TableNumber");
    writer.put_reason(at + 2, {description_column});
}

void fill_grid(CellWriter& writer, const Row& row, int at) {
    fill_table_head(writer, row, at);
    int column = description_column;
    for (std::size_t i = 0; i < row.columns.size(); ++i) {
        const std::string unit = row.columns[i].unit.in(writer.system());
        if (unit.empty())
            writer.put(at + 2, column, "GridUnit");
        else
            writer.put_unit(row, at + 2, column, "GridUnit", unit);
        for (std::size_t r = 0; r < row.items.size(); ++r) {
            const std::string text = row.items[r][i].text.in(writer.system());
            const int cell_row = at + 3 + static_cast<int>(r);
            double number = 0;
            const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
            if (error == std::errc{} && end == text.data() + text.size())
                writer.put_number(cell_row, column, "GridEntry", number);
            else
                writer.put_text(cell_row, column, unit.empty() ? "GridText" : "GridEntry",
                                text == "-" ? "" : text);
        }
        column += row.columns[i].span;
    }
}

// --- lists ----------------------------------------------------------------------------------------------

namespace {

/// One cell of a list, or the two of a number and its unit.
struct ListSpot {
    const ListColumn& column;
    int at;     ///< row of the sheet
    int first;  ///< column of the sheet
    std::string unit;

    [[nodiscard]] bool is_pair() const { return !unit.empty(); }
    [[nodiscard]] int unit_at() const { return first + 1; }
    [[nodiscard]] int unit_columns() const { return std::max(1, column.span - 1); }
};

/// What `@net` and `@net.unit` stand for in the formulas of one item.
RowWords words_of_item(const CellWriter& writer, const Row& row, int at) {
    RowWords words;
    int column = description_column;
    for (const ListColumn& c : row.columns) {
        const bool pair = !c.unit.in(writer.system()).empty();
        const std::string first = "[." + cell_text(at, column);
        const std::string beside = cell_text(at, column + 1);
        if (!c.name.empty()) {
            words["@" + c.name] = first + (pair ? ":." + beside : std::string()) + "]";
            words["@" + c.name + ".value"] = first + "]";
            if (pair) words["@" + c.name + ".unit"] = "[." + beside + "]";
        }
        column += c.span;
    }
    return words;
}

void fill_computed(CellWriter& writer, const Row& row, const ListSpot& spot, const std::string& formula,
                   RowWords words) {
    if (spot.is_pair()) words["@"] = "[." + cell_text(spot.at, spot.unit_at()) + "]";
    const Place* linked = writer.layout().find(formula);
    if (spot.is_pair() && linked != nullptr && linked->is_pair) {  // a link to a pair brings its unit along
        writer.put_link(*linked, spot.at, spot.first).columns = spot.unit_columns();
        return;
    }
    const std::string& format = spot.column.format;
    const char* style = format == "text"                           ? "ListWords"
                        : format == "verdict" || format == "shown" ? "Verdict"
                        : format == "plain"                        ? "NumberPlain"
                                                                   : "Number";
    writer.put_formula(spot.at, spot.first, style, writer.stored(row, formula, words)).columns =
        spot.is_pair() ? 1 : spot.column.span;
    if (format == "verdict") {
        writer.grid().checks.push_back(cell_text(spot.at, spot.first));
        if (may_be_open(formula)) writer.grid().waits = true;
    }
    if (!spot.is_pair()) return;
    // The unit of a computed pair goes with the item, `=@net.unit`, or is the column's own.
    if (spot.unit.starts_with("="))
        writer
            .put_formula(spot.at, spot.unit_at(), "UnitLink", writer.stored(row, spot.unit.substr(1), words))
            .columns = spot.unit_columns();
    else
        writer.put_unit(row, spot.at, spot.unit_at(), "UnitResult", spot.unit).columns = spot.unit_columns();
}

void fill_typed(CellWriter& writer, const Row& row, const ListSpot& spot, const std::string& text) {
    const std::string& format = spot.column.format;
    if (spot.is_pair() && text.starts_with("-") && (text == "-" || text[1] == ' ')) {  // to be filled in
        const std::string unit = text == "-" ? spot.unit : trimmed(text.substr(1));
        writer.put(spot.at, spot.first, "Entry");
        writer.put_unit(row, spot.at, spot.unit_at(), "UnitEntry", unit).columns = spot.unit_columns();
    } else if (spot.is_pair()) {
        const NumberAndUnit value = writer.number_and_unit(row, text);
        writer.put_number(spot.at, spot.first, "Entry", value.number);
        writer.put_unit(row, spot.at, spot.unit_at(), "UnitEntry", value.unit).columns = spot.unit_columns();
    } else if (format == "share") {
        const NumberAndUnit value = writer.number_and_unit(row, text);
        writer.put_number(spot.at, spot.first, "ShareEntry", value.number / 100).columns = spot.column.span;
    } else if (format == "number") {
        if (text == "-")
            writer.put(spot.at, spot.first, "Entry").columns = spot.column.span;
        else
            writer.put_number(spot.at, spot.first, "Entry", writer.number_and_unit(row, text + " 1").number)
                .columns = spot.column.span;
    } else {
        const bool entry = format == "entry" || !spot.column.options.empty();
        SheetCell& cell =
            writer.put_text(spot.at, spot.first, entry ? "TextEntry" : "ListText", text == "-" ? "" : text);
        cell.columns = spot.column.span;
        if (!spot.column.options.empty())
            cell.validation = writer.add_validation(
                {{}, spot.column.options, spot.column.title, {}, Validation::Wants::choice});
    }
}

void fill_item(CellWriter& writer, const Row& row, int at, const std::vector<ListCell>& item) {
    const RowWords words = words_of_item(writer, row, at);
    writer.put_reference(at);
    std::size_t typed = 0;
    int column = description_column;
    std::vector<int> computed;
    int lines = 1;
    for (const ListColumn& c : row.columns) {
        const std::string text = c.formula.empty() ? item[typed++].text.in(writer.system()) : "=" + c.formula;
        const ListSpot spot{c, at, column, c.unit.in(writer.system())};
        if (text.starts_with("=")) {
            fill_computed(writer, row, spot, trimmed(std::string_view(text).substr(1)), words);
            computed.push_back(column);
        } else {
            fill_typed(writer, row, spot, text);
            lines = std::max(lines, lines_of_text(text, c.span));
        }
        column += c.span;
    }
    writer.set_height(at, lines);
    if (!computed.empty()) writer.put_reason(at, computed);
}

}  // namespace

void fill_list(CellWriter& writer, const Row& row, int at) {
    fill_table_head(writer, row, at);
    for (std::size_t r = 0; r < row.items.size(); ++r)
        fill_item(writer, row, at + 2 + static_cast<int>(r), row.items[r]);
}

}  // namespace undercroft::sheets
