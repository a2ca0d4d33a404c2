// Rows of one line with a value: headings and paragraphs, what is typed in, what is computed.
#include "sheets/builder/fill.hpp"

namespace undercroft::sheets {

void fill_section(CellWriter& writer, const Row& row, int at) {
    for (int c = 0; c <= last_column(writer.sheet()); ++c) writer.put(at + 1, c, "Section");
    writer.put_text(at + 1, ref_column, "Section", row.description);
}

void fill_paragraph(CellWriter& writer, const Row& row, int at, const std::string& style) {
    const int columns = last_column(writer.sheet());
    writer.put_text(at, description_column, style, row.description).columns = columns;
    if (style == "Caution") writer.put_text(at, ref_column, "CautionMark", "!");
    writer.set_height(at, lines_of_text(row.description, columns));
}

namespace {

constexpr std::size_t longest_help_title = 60;

/// A number typed in. A level is above a datum that may be anywhere; all else is not below its least.
void put_entry(CellWriter& writer, const Row& row, const NumberAndUnit& value, const std::string& least,
               int at) {
    writer.put_common(row, at, false);
    SheetCell& number = writer.put_number(at, value_column, "Entry", value.number);
    writer.put_unit(row.line, at, unit_column, "UnitEntry", value.unit);
    const std::string help = "A number; its unit stands to the right and can be picked from the list." +
                             (row.note.empty() ? "" : " " + row.note + ".");
    const bool is_level = row.key.ends_with("_level");
    using Wants = Validation::Wants;
    number.validation = writer.add_validation({{},
                                               {},
                                               row.description.substr(0, longest_help_title),
                                               help,
                                               is_level ? Wants::anything : Wants::number,
                                               least});
    if (!is_level) writer.require_least(at, least);
}

/// A text typed in or picked; with no options it may be any.
void put_text_entry(CellWriter& writer, const Row& row, const std::string& text,
                    const std::vector<std::string>& options, int columns, int at) {
    writer.put_common(row, at, false);
    SheetCell& cell = writer.put_text(at, value_column, "TextEntry", text);
    cell.columns = columns;
    using Wants = Validation::Wants;
    cell.validation = writer.add_validation({{},
                                             options,
                                             row.description.substr(0, longest_help_title),
                                             row.note,
                                             options.empty() ? Wants::anything : Wants::choice,
                                             "0"});
}

}  // namespace

void fill_input(CellWriter& writer, const Row& row, const rows::Input& input, int at) {
    put_entry(writer, row, input.value.in(writer.system()), input.least.in(writer.system()), at);
}

void fill_given(CellWriter& writer, const Row& row, const rows::Given& given, bool is_link, int at) {
    if (!is_link) return put_entry(writer, row, given.value.in(writer.system()), "0", at);
    writer.put_common(row, at, true);
    const Place& source = writer.place_of(row.line, row.key);
    writer.put_link(source, at, value_column);
    writer.put_note("from the sheet " + source.sheet, at);
}

void fill_text(CellWriter& writer, const Row& row, const rows::Text& text, int at) {
    const bool takes_place_of_note = row.note.empty();
    const int columns = takes_place_of_note ? last_column(writer.sheet()) - value_column + 1 : 2;
    put_text_entry(writer, row, text.value.in(writer.system()), {}, columns, at);
    if (takes_place_of_note) writer.grid().cells.erase({at, note_column});
}

void fill_choice(CellWriter& writer, const Row& row, const rows::Choice& choice, int at) {
    put_text_entry(writer, row, choice.value.in(writer.system()), choice.options, 2, at);
    writer.require_one_of(at, choice.options);
}

void fill_words(CellWriter& writer, const Row& row, const rows::Words& words, int at) {
    writer.put_common(row, at, true);
    writer.put_formula(at, value_column, "Words", writer.stored(row.line, words.formula.in(writer.system())))
        .columns = 2;
}

void fill_result(CellWriter& writer, const Row& row, const rows::Result& result, int at) {
    writer.put_common(row, at, true);
    const std::string& unit = result.unit.in(writer.system());
    const std::string& formula = result.formula.in(writer.system());
    const RowWords of_row = {{"@", "[." + cell_text(at, unit_column) + "]"}};
    writer.put_formula(at, value_column, CellWriter::number_style("Number", unit),
                       writer.stored(row.line, formula, of_row));
    const bool takes_its_unit = formula.find('@') != std::string::npos;
    if (unit.starts_with("="))  // that of another cell
        writer.put_formula(at, unit_column, "UnitLink", writer.stored(row.line, unit.substr(1)));
    else if (takes_its_unit)
        writer.put_unit(row.line, at, unit_column, "UnitResult", unit);
    else
        writer.put_text(at, unit_column, "UnitFixed", unit);
}

}  // namespace undercroft::sheets
