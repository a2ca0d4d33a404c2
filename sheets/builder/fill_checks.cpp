// Checks, and the rows that gather the checks of other sheets.
#include <algorithm>

#include "sheets/builder/fill.hpp"
#include "sheets/builder/formula_text.hpp"

namespace undercroft::sheets {

namespace {

/// Whether a check's formula may answer "open": something that has not been done yet.
bool may_be_open(const std::string& formula) {
    return formula.find("\"open\"") != std::string::npos;
}

}  // namespace

SheetCell& put_verdict(CellWriter& writer, int at, int column, const std::string& stored) {
    writer.grid().checks.emplace_back(at, column);
    if (may_be_open(stored)) writer.grid().waits = true;
    return writer.put_formula(at, column, "Verdict", stored);
}

namespace {

constexpr int description_columns = symbol_column - description_column;

/// "value ≥ limit" as a text that follows the cells, for the note of a check.
std::string compared_text(const CellWriter& writer, int line, const std::string& left,
                          const std::string& sign, const std::string& right) {
    const auto side = [&](const std::string& key) {
        const bool pair = writer.place_of(line, key).is_pair;
        return "TEXT(" + writer.meaning(key + ".value") + ";\"0.###\")" +
               (pair ? "&\" \"&" + writer.meaning(key + ".unit") : std::string());
    };
    return side(left) + "&\" " + sign + " \"&" + side(right);
}

/// Lines that a check needs, with what it compares before its note.
int lines_of_check(const CellWriter& writer, const Row& row) {
    const std::string room_for_values(26, '0');  // "1234.567 m3 >= 1234.567 m3"
    return std::max(
        lines_of_text(row.description, description_columns),
        lines_of_text(room_for_values + "; " + row.note, writer.note_columns(), small_character_cm));
}

void fill_comparison(CellWriter& writer, const Row& row, const rows::Comparison& comparison, int at) {
    const bool at_least = comparison.sense == rows::Comparison::Sense::at_least;
    const std::string sign = at_least ? "≥" : "≤";
    const std::string& left_symbol = writer.place_of(row.line, comparison.left).symbol;
    const std::string& right_symbol = writer.place_of(row.line, comparison.right).symbol;
    if (!left_symbol.empty() && !right_symbol.empty())
        writer.put_text(at, symbol_column, "Symbol", left_symbol + " " + sign + " " + right_symbol);
    put_verdict(writer, at, value_column,
                std::string("UNDERCROFT.UC.") + (at_least ? "ATLEAST" : "ATMOST") + "(" + comparison.left +
                    ";" + comparison.right + ")")
        .columns = 2;
    const std::string compared = compared_text(writer, row.line, comparison.left, sign, comparison.right) +
                                 (row.note.empty() ? "" : "&" + quoted("; " + row.note));
    writer.put_formula(at, note_column, "Note", "IFERROR(" + compared + ";" + quoted(row.note) + ")")
        .columns = writer.note_columns();
    writer.set_height(at, lines_of_check(writer, row));
}

}  // namespace

void fill_check(CellWriter& writer, const Row& row, const rows::Check& check, int at) {
    writer.put_common(row, at, true);
    std::visit(
        Overloaded{[&](const rows::Comparison& comparison) { fill_comparison(writer, row, comparison, at); },
                   [&](const std::string& formula) {
                       put_verdict(writer, at, value_column, writer.stored(row.line, formula)).columns = 2;
                   }},
        check.demand.in(writer.system()));
}

void fill_summary(CellWriter& writer, const Selection& selection, int at) {
    for (const Sheet& other : selection.sheets()) {
        if (other.name == writer.sheet().name) continue;
        writer.put_reference(at);
        writer.put_text(at, description_column, "Description", other.title).columns = description_columns;
        writer.put(at, symbol_column, "Symbol");
        writer.put_formula(at, value_column, "Open", writer.meaning(Layout::open_key(other) + ".value"))
            .columns = 2;
        const std::string note =
            "failed and open checks, errors and wrong entries on the sheet " + other.name;
        writer.put_note(note, at);
        writer.set_height(at, std::max(lines_of_text(other.title, description_columns),
                                       lines_of_text(note, writer.note_columns(), small_character_cm)));
        ++at;
    }
}

/// Every check: what it is, what it compared, its verdict.
void fill_dashboard(CellWriter& writer, const Selection& selection, int at) {
    for (const Sheet& other : selection.sheets()) {
        for (const Row& row : other.rows) {
            if (!row.is<rows::Check>()) continue;
            const Place& check = writer.place_of(row.line, row.key);
            writer.put_reference(at);
            writer.put_text(at, description_column, "Description", row.description).columns =
                description_columns;
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
            writer.set_height(at, lines_of_check(writer, row));
            ++at;
        }
    }
}

}  // namespace undercroft::sheets
