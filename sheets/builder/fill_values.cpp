// Rows of one line with a value: headings and paragraphs, what is typed in, what is computed.
#include "sheets/builder/entries.hpp"
#include "sheets/builder/fill.hpp"
#include "sheets/builder/helper_columns.hpp"

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

/// Where the text does not say what is usual: a level is above a datum that may be anywhere, all else is not
/// below 0.
Usual usual_of(const Row& row, const std::string& least) {
    if (row.usual) return *row.usual;
    Usual usual;
    usual.any = true;
    usual.or_zero = least == "0";
    return usual;
}

/// What may be typed: a number between the ends of what is possible, or not below its least.
Validation validation_of(const CellWriter& writer, const Row& row, const NumberAndUnit& value,
                         const Usual& usual, const std::string& least, int at) {
    Validation wanted;
    wanted.wants = Validation::Wants::number;
    wanted.help_title = row.description.substr(0, longest_help_title);
    wanted.help = "A number; its unit stands to the right and can be picked from the list.";
    if (!usual.any) wanted.help += " Usual: " + range_words(usual.usual, usual, value.unit) + ".";
    if (!row.note.empty()) wanted.help += " " + row.note + ".";
    wanted.least = least;
    if (usual.any) {
        if (row.key.ends_with("_level")) wanted.wants = Validation::Wants::anything;
        return wanted;
    }
    const auto cell = [&](Helper helper) {
        return "[." + cell_text(at, helper_column(writer.sheet(), helper)) + "]";
    };
    wanted.least = usual.or_zero ? "MIN(0;" + cell(Helper::least) + ")" : cell(Helper::least);
    wanted.most = cell(Helper::most);
    wanted.base = writer.sheet().name + "." + cell_text(at, value_column);
    wanted.wanted = range_words(usual.possible, usual, value.unit);
    return wanted;
}

void put_entry(CellWriter& writer, const Row& row, const NumberAndUnit& value, const std::string& least,
               int at) {
    writer.put_common(row, at, false);
    SheetCell& number = writer.put_number(at, value_column, "Entry", value.number);
    writer.put_unit(row.line, at, unit_column, "UnitEntry", value.unit);
    const Usual usual = usual_of(row, least);
    Entry entry;
    entry.column = value_column;
    entry.usual = usual;
    entry.number = value.number;
    entry.unit = value.unit;
    watch_input(writer, row, entry, at);
    number.validation = writer.add_validation(validation_of(writer, row, value, usual, least, at));
}

/// A text typed in or picked; with no options it may be any.
void put_text_entry(CellWriter& writer, const Row& row, const std::string& text,
                    const std::vector<std::string>& options, int columns, int at) {
    writer.put_common(row, at, false);
    SheetCell& cell = writer.put_text(at, value_column, "TextEntry", text);
    cell.columns = columns;
    Validation wanted;
    wanted.choices = options;
    wanted.help_title = row.description.substr(0, longest_help_title);
    wanted.help = row.note;
    wanted.wants = options.empty() ? Validation::Wants::anything : Validation::Wants::choice;
    cell.validation = writer.add_validation(wanted);
    if (!row.optional) watch_text(writer, row, text, options, at);
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
    if (!takes_place_of_note) return;
    writer.grid().cells.erase({at, note_column});
    if (!row.optional) writer.put_reason(at, {}, true);
}

void fill_choice(CellWriter& writer, const Row& row, const rows::Choice& choice, int at) {
    put_text_entry(writer, row, choice.value.in(writer.system()), choice.options, 2, at);
}

void fill_words(CellWriter& writer, const Row& row, const rows::Words& words, int at) {
    writer.put_common(row, at, true);
    SheetCell& cell = writer.put_formula(at, value_column, words.is_day ? "NumberDay" : "Words",
                                         writer.stored(row.line, words.formula.in(writer.system())));
    if (!words.is_day) cell.columns = 2;
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
