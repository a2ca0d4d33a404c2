#include "sheets/builder/fill.hpp"

#include "sheets/builder/lines.hpp"
#include "sheets/builder/unit_choices.hpp"

namespace undercroft::sheets {

namespace {

void fill_paragraph(CellWriter& writer, const Row& row, int at, const std::string& style) {
    const int columns = last_column(writer.sheet());
    writer.put_text(at, description_column, style, row.description).columns = columns;
    if (style == "Caution") writer.put_text(at, ref_column, "CautionMark", "!");
    writer.set_height(at, lines_of_text(row.description, columns));
}

void fill_section(CellWriter& writer, const Row& row, int at) {
    for (int c = 0; c <= last_column(writer.sheet()); ++c) writer.put(at + 1, c, "Section");
    writer.put_text(at + 1, ref_column, "Section", row.description);
}

void fill_input(CellWriter& writer, const Row& row, int at) {
    writer.put_common(row, at, false);
    const NumberAndUnit value = writer.number_and_unit(row, row.value.in(writer.system()));
    SheetCell& number = writer.put_number(at, value_column, "Entry", value.number);
    writer.put_unit(row, at, unit_column, "UnitEntry", value.unit);
    const std::string help = "A number; its unit stands to the right and can be picked from the list." +
                             (row.note.empty() ? "" : " " + row.note + ".");
    const bool is_level = row.key.ends_with("_level");  // above a datum that may be anywhere
    using Wants = Validation::Wants;
    number.validation = writer.add_validation(
        {{}, {}, row.description.substr(0, 60), help, is_level ? Wants::anything : Wants::number, row.least});
    if (!is_level) writer.require_least(at, row.least);
}

void fill_link(CellWriter& writer, const Row& row, int at) {
    writer.put_common(row, at, true);
    const Place& source = writer.place_of(row, row.key);
    writer.put_link(source, at, value_column);
    writer.put_note("from the sheet " + source.sheet, at);
}

void fill_text(CellWriter& writer, const Row& row, int at) {
    writer.put_common(row, at, false);
    SheetCell& cell = writer.put_text(at, value_column, "TextEntry", row.value.in(writer.system()));
    const bool long_text = row.kind == Row::Kind::text && row.note.empty();  // the note's place is free
    cell.columns = long_text ? last_column(writer.sheet()) - value_column + 1 : 2;
    if (long_text) writer.grid().cells.erase({at, note_column});
    const bool picks = !row.options.empty();
    cell.validation = writer.add_validation({{},
                                             row.options,
                                             row.description.substr(0, 60),
                                             row.note,
                                             picks ? Validation::Wants::choice : Validation::Wants::anything,
                                             "0"});
    if (picks) writer.require_one_of(at, row.options);
}

void fill_words(CellWriter& writer, const Row& row, int at) {
    writer.put_common(row, at, true);
    writer.put_formula(at, value_column, "Words", writer.stored(row, row.formula.in(writer.system())))
        .columns = 2;
}

void fill_result(CellWriter& writer, const Row& row, int at) {
    writer.put_common(row, at, true);
    const std::string unit = row.value.in(writer.system());
    const std::string formula = row.formula.in(writer.system());
    const RowWords of_row = {{"@", "[." + cell_text(at, unit_column) + "]"}};
    writer.put_formula(at, value_column, CellWriter::number_style("Number", unit),
                       writer.stored(row, formula, of_row));
    if (unit.starts_with("="))  // the unit of another cell
        writer.put_formula(at, unit_column, "UnitLink", writer.stored(row, unit.substr(1)));
    else if (formula.find('@') ==
             std::string::npos)  // a unit that the formula does not take cannot be changed
        writer.put_text(at, unit_column, "UnitFixed", unit);
    else
        writer.put_unit(row, at, unit_column, "UnitResult", unit);
}

/// "value ≥ limit" as a text that follows the cells, for the note of a check.
std::string compared_text(const CellWriter& writer, const Row& row, const std::string& left,
                          const std::string& sign, const std::string& right) {
    const auto side = [&](const std::string& key) {
        const bool pair = writer.place_of(row, key).is_pair;
        return "TEXT(" + writer.meaning(key + ".value") + ";\"0.###\")" +
               (pair ? "&\" \"&" + writer.meaning(key + ".unit") : std::string());
    };
    return side(left) + "&\" " + sign + " \"&" + side(right);
}

/// Lines that a check needs, with what it compares before its note.
int lines_of_check(const Row& row, int description_columns, int note_columns) {
    const std::string room_for_values(26, '0');  // "1234.567 m3 >= 1234.567 m3"
    return std::max(lines_of_text(row.description, description_columns),
                    lines_of_text(room_for_values + "; " + row.note, note_columns, small_character_cm));
}

struct Comparison {
    const char* sign;
    const char* function;
    const char* shown;
};

void fill_comparison(CellWriter& writer, const Row& row, int at, const Comparison& comparison) {
    const std::string text = row.formula.in(writer.system());
    const std::size_t middle = text.find(comparison.sign);
    const std::string left = trimmed(text.substr(0, middle));
    const std::string right = trimmed(text.substr(middle + 2));
    const std::string& left_symbol = writer.place_of(row, left).symbol;
    const std::string& right_symbol = writer.place_of(row, right).symbol;
    if (!left_symbol.empty() && !right_symbol.empty())
        writer.put_text(at, symbol_column, "Symbol",
                        left_symbol + " " + comparison.shown + " " + right_symbol);
    writer
        .put_formula(at, value_column, "Verdict",
                     std::string("UNDERCROFT.UC.") + comparison.function + "(" + left + ";" + right + ")")
        .columns = 2;
    const std::string tail = row.note.empty() ? "" : "&\"; " + row.note + "\"";
    writer
        .put_formula(at, note_column, "Note",
                     "IFERROR(" + compared_text(writer, row, left, comparison.shown, right) + tail + ";\"" +
                         row.note + "\")")
        .columns = writer.note_columns();
    writer.set_height(at, lines_of_check(row, symbol_column - description_column, writer.note_columns()));
}

void fill_check(CellWriter& writer, const Row& row, int at) {
    writer.put_common(row, at, true);
    const std::string text = row.formula.in(writer.system());
    if (text.starts_with("="))
        writer.put_formula(at, value_column, "Verdict", writer.stored(row, text.substr(1))).columns = 2;
    else if (text.find(">=") != std::string::npos)
        fill_comparison(writer, row, at, {">=", "ATLEAST", "≥"});
    else if (text.find("<=") != std::string::npos)
        fill_comparison(writer, row, at, {"<=", "ATMOST", "≤"});
    else
        writer.mistake(row, "a check is A >= B, A <= B or = FORMULA");
    writer.grid().checks.push_back(cell_text(at, value_column));
    if (may_be_open(text)) writer.grid().waits = true;
}

void fill_summary(CellWriter& writer, const Selection& selection, int at) {
    for (const Sheet& other : selection.sheets()) {
        if (other.name == writer.sheet().name) continue;
        writer.put_reference(at);
        writer.put_text(at, description_column, "Description", other.title).columns =
            symbol_column - description_column;
        writer.put(at, symbol_column, "Symbol");
        writer.put_formula(at, value_column, "Open", writer.meaning(Layout::open_key(other) + ".value"))
            .columns = 2;
        const std::string note =
            "failed and open checks, errors and wrong entries on the sheet " + other.name;
        writer.put_note(note, at);
        writer.set_height(at, std::max(lines_of_text(other.title, symbol_column - description_column),
                                       lines_of_text(note, writer.note_columns(), small_character_cm)));
        ++at;
    }
}

/// Every check of the other sheets: what it is, what it compared, its verdict.
void fill_dashboard(CellWriter& writer, const Selection& selection, int at) {
    for (const Sheet& other : selection.sheets()) {
        for (const Row& row : other.rows) {
            if (row.kind != Row::Kind::check) continue;
            const Place& check = writer.place_of(row, row.key);
            writer.put_reference(at);
            writer.put_text(at, description_column, "Description", row.description).columns =
                symbol_column - description_column;
            writer.put_text(at, symbol_column, "Symbol", other.name);
            writer
                .put_formula(at, value_column, "Verdict",
                             writer.cell_reference(other.name, check.row, value_column))
                .columns = 2;
            writer
                .put_formula(at, note_column, "Note",
                             writer.cell_reference(other.name, check.row, note_column))
                .columns = writer.note_columns();
            writer.put_reason(at, {value_column});
            writer.set_height(at,
                              lines_of_check(row, symbol_column - description_column, writer.note_columns()));
            ++at;
        }
    }
}

}  // namespace

void fill_row(CellWriter& writer, const Selection& selection, const Row& row) {
    const int at = writer.layout().start_of(writer.sheet(), row);
    switch (row.kind) {
        case Row::Kind::section:
            return fill_section(writer, row, at);
        case Row::Kind::remark:
            return fill_paragraph(writer, row, at, "Remark");
        case Row::Kind::caution:
            return fill_paragraph(writer, row, at, "Caution");
        case Row::Kind::input:
            return fill_input(writer, row, at);
        case Row::Kind::given:
            return selection.is_link(writer.sheet(), row) ? fill_link(writer, row, at)
                                                          : fill_input(writer, row, at);
        case Row::Kind::text:
        case Row::Kind::choice:
            return fill_text(writer, row, at);
        case Row::Kind::result:
            return fill_result(writer, row, at);
        case Row::Kind::words:
            return fill_words(writer, row, at);
        case Row::Kind::check:
            return fill_check(writer, row, at);
        case Row::Kind::table:
            return fill_table(writer, row, at);
        case Row::Kind::grid:
            return fill_grid(writer, row, at);
        case Row::Kind::list:
            return fill_list(writer, row, at);
        case Row::Kind::chart:
            return fill_chart(writer, row, at);
        case Row::Kind::picture:
            return fill_picture(writer, row, at);
        case Row::Kind::summary:
            return fill_summary(writer, selection, at);
        case Row::Kind::dashboard:
            return fill_dashboard(writer, selection, at);
        case Row::Kind::page:
            writer.grid().page_breaks.push_back(at);
            return;
    }
}

void fill_head(CellWriter& writer) {
    const SheetGrid& grid = writer.grid();
    const int last = last_column(writer.sheet());
    writer.put_text(0, ref_column, "Title", writer.sheet().title);
    if (writer.layout().find("job_name") != nullptr) {
        const auto value = [&](const char* key) { return writer.meaning(std::string(key) + ".value"); };
        writer.put_formula(1, ref_column, "JobLine",
                           value("job_name") + "&\"   No. \"&" + value("job_number") + "&\"   revision \"&" +
                               value("job_revision"));
    }
    const std::string values = "[." + cell_text(first_row, description_column) + ":." +
                               cell_text(std::max(grid.rows, first_row + 1), last) + "]";
    const std::string errors = "SUMPRODUCT(ISERROR(" + values + ")*1)";
    std::string fails = "(0";
    for (const std::string& check : grid.checks)
        fails += "+IF(ISERROR([." + check + "]);0;([." + check + "]<>1)*([." + check + "]<>\"not counted\"))";
    std::string slips = "(0";
    for (const auto& [cell, slip] : grid.slips) slips += "+(" + slip + ")";
    slips += ")";
    fails += ")";
    const std::string count = std::to_string(grid.checks.size());
    const std::string all_pass =
        grid.checks.empty() ? "\"No cell shows an error\"" : "\"No check of " + count + " fails\"";
    // NOW() makes Calc compute the cell on opening, also where it keeps the other results of the file.
    writer.put_formula(
        2, ref_column, "State",
        "IF(OR(ISERROR(UNDERCROFT.UC.VERSION());NOW()=0);\"The Undercroft add-in is not installed here: the "
        "figures on this sheet are not computed and must not be used\";"
        "IF([." +
            cell_text(2, last) + "]=0;" + all_pass + ";IF(" + slips + ">0;" + slips + "&IF(" + slips +
            "=1;\" entry\";\" entries\")&\" cannot be right, marked in red\";IF(" + errors + ">0;" + errors +
            "&IF(" + errors +
            "=1;\" cell shows\";\" cells show\")&\" an error: the reason stands to the right of the "
            "row\"&IF(" +
            fails + ">0;\"; \"&(" + fails + ")&\" of " + count +
            (grid.waits ? " checks fail or are open" : " checks fail") + "\";\"\");" + fails + "&\" of " +
            count + (grid.waits ? " checks fail or are open" : " checks fail") + "\"))))");
    writer.put_formula(2, last, "OpenCount", errors + "+" + fails + "+" + slips);
    writer.put_text(2, last - 1, "OpenLabel", "open");
    const std::pair<int, const char*> heads[] = {
        {ref_column, "Ref"},       {description_column, "Description"},
        {symbol_column, "Symbol"}, {value_column, "Value"},
        {unit_column, "Unit"},     {note_column, "Note or source"}};
    for (int c = 0; c <= last; ++c) writer.put(3, c, "Heading");
    for (const auto& [column, text] : heads) writer.put_text(3, column, "Heading", text);
    writer.grid().cells[{3, value_column}].style = "HeadingRight";
    writer.put_text(3, reason_column(writer.sheet()), "ReasonHead", "Reason, where a cell shows an error");
}

}  // namespace undercroft::sheets
