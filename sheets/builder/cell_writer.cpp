#include "sheets/builder/cell_writer.hpp"

#include <cmath>
#include <stdexcept>

#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/helper_columns.hpp"
#include "sheets/builder/unit_choices.hpp"

namespace undercroft::sheets {

namespace {
constexpr double line_cm = 0.37;
constexpr double small_line_cm = 0.33;

/// Widths of the letters from space to ~ in thousandths of their size: Adobe's font metrics of Helvetica, to
/// which the letters of Arial and of Liberation Sans are cut.
constexpr int letter_widths[] = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333,  278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,  611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278,  556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500,  500, 334, 260, 334, 584};
constexpr double width_of_others = 556;  // such as Greek letters

double width_of_letters(std::string_view text) {
    double width = 0;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= ' ' && byte <= '~')
            width += letter_widths[byte - ' '];
        else if ((byte & 0xC0U) != 0x80U)  // the first byte of a letter
            width += width_of_others;
    }
    return width;
}
}  // namespace

int lines_of_text(const std::string& text, int columns, double size_pt) {
    constexpr double cm_of_point = 2.54 / 72;
    constexpr double looser = 1.03;  // a screen sets its letters on whole dots
    const double letter_cm = size_pt * cm_of_point * looser / 1000;
    const double width = columns * column_cm - 0.2;
    int lines = 1;
    double used = 0;
    const auto place = [&](double wide) {
        if (used > 0 && used + wide > width) {
            ++lines;
            used = 0;
        }
        used += wide;
    };
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        const double word = letter_cm * width_of_letters(rest.substr(0, end));
        if (word <= width)
            place(word);
        else
            for (const char c : rest.substr(0, end)) place(letter_cm * width_of_letters({&c, 1}));
        used += letter_cm * width_of_letters(" ");
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return lines;
}

CellWriter::CellWriter(WorkbookGrid& workbook, SheetGrid& grid, const Layout& layout, const Sheet& sheet,
                       System system)
    : workbook_(workbook), grid_(grid), layout_(layout), sheet_(sheet), system_(system) {}

SheetCell& CellWriter::put(int row, int column, const std::string& style) {
    SheetCell& cell = grid_.cells[{row, column}];
    cell.style = style;
    return cell;
}

SheetCell& CellWriter::put_text(int row, int column, const std::string& style, const std::string& text) {
    SheetCell& cell = put(row, column, style);
    cell.type = text.empty() ? SheetCell::Type::blank : SheetCell::Type::text;
    cell.text = text;
    return cell;
}

SheetCell& CellWriter::put_number(int row, int column, const std::string& style, double number) {
    SheetCell& cell = put(row, column, style);
    cell.type = SheetCell::Type::number;
    cell.number = number;
    return cell;
}

SheetCell& CellWriter::put_formula(int row, int column, const std::string& style, const std::string& stored) {
    SheetCell& cell = put(row, column, style);
    cell.type = SheetCell::Type::formula;
    cell.text = "of:=" + stored;
    return cell;
}

SheetCell& CellWriter::put_unit(int line, int at, int column, const std::string& style,
                                const std::string& unit) {
    SheetCell& cell = put_text(at, column, style, unit);
    try {
        cell.validation = add_validation({{}, unit_choices(unit), {}, {}, Validation::Wants::unit});
    } catch (const std::runtime_error& error) {
        mistake(line, error.what());
    }
    return cell;
}

void CellWriter::put_reference(int at) {
    put_text(at, ref_column, "Ref", sheet_.name.substr(0, 2) + std::to_string(++number_));
}

void CellWriter::put_common(const Row& row, int at, bool has_reason) {
    put_reference(at);
    put_text(at, description_column, "Description", row.description).columns =
        symbol_column - description_column;
    put_text(at, symbol_column, "Symbol", row.symbol);
    put_note(row.note, at);
    if (has_reason) put_reason(at, {value_column});
    const bool is_entry = row.is<rows::Input>() || row.is<rows::Text>() || row.is<rows::Choice>();
    set_height(at, lines_of_text(row.description, symbol_column - description_column),
               lines_of_text((is_entry ? "assumed; " : "") + row.note, note_columns(), small_pt));
}

void CellWriter::put_note(const std::string& note, int at) {
    put_text(at, note_column, "Note", note).columns = note_columns();
}

void CellWriter::put_reason(int at, const std::vector<int>& columns, bool with_state) {
    std::string formula = "\"\"";
    for (auto column = columns.rbegin(); column != columns.rend(); ++column) {
        const std::string cell = "[." + cell_text(at, *column) + "]";
        formula = "IF(ISERROR(" + cell + ");UNDERCROFT.UC.WHY(" + cell + ");" + formula + ")";
    }
    if (with_state) {
        const std::string state = "[." + cell_text(at, helper_column(sheet_, Helper::state)) + "]";
        formula = "IF(OR(" + state + "=\"\";" + state + "=\"assumed\");" + formula + ";" + state + ")";
    }
    put_formula(at, reason_column(sheet_), "Reason", formula);
}

void CellWriter::put_growth(int at, int most) {
    if (most > 0)
        put_text(at, helper_column(sheet_, Helper::kept_note), "Kept", "grows to " + std::to_string(most));
}

void CellWriter::set_height(int at, int lines, int small_lines) {
    const double edges_cm = grid_.row_cm - line_cm;
    grid_.row_heights_cm[at] = std::max(lines * line_cm, small_lines * small_line_cm) + edges_cm;
}

std::string CellWriter::cell_reference(const std::string& sheet_name, int row, int column) const {
    if (sheet_name == sheet_.name) return "[." + cell_text(row, column) + "]";
    return "[$" + sheet_name + "." + cell_text(row, column, true) + "]";
}

std::string CellWriter::meaning(const std::string& word, const RowWords& of_row, Copied copied) const {
    if (const auto found = of_row.find(word); found != of_row.end()) return found->second;
    const std::size_t dot = word.find('.');
    const Place* place = layout_.find(word.substr(0, dot));
    if (place == nullptr) return {};
    if (dot == std::string::npos) return word;
    const std::string part = word.substr(dot + 1);
    const auto cell = [&](int column) {
        return copied == Copied::down && place->sheet == sheet_.name
                   ? "[." + cell_text(place->row, column, true) + "]"
                   : cell_reference(place->sheet, place->row, column);
    };
    if (part == "value" && !place->unit_above) return cell(place->column);
    if (part == "unit" && place->is_pair) return cell(place->last_column);
    if (part == "unit" && place->unit_above) return cell(place->column);
    return {};
}

std::string CellWriter::stored(int line, const std::string& formula, const RowWords& of_row,
                               Copied copied) const {
    try {
        return stored_formula(formula,
                              [&](const std::string& word) { return meaning(word, of_row, copied); });
    } catch (const std::runtime_error& error) {
        mistake(line, error.what());
    }
}

std::string CellWriter::add_validation(const Validation& wanted) {
    for (const Validation& known : workbook_.validations) {
        Validation same = wanted;
        same.name = known.name;
        if (known == same) return known.name;
    }
    Validation made = wanted;
    made.name = "val" + std::to_string(workbook_.validations.size() + 1);
    workbook_.validations.push_back(made);
    return made.name;
}

std::string CellWriter::number_style(const std::string& base, const std::string& unit) {
    if (unit == "each") return base + "Count";
    return unit == "%" ? base + "Share" : base;
}

/// A link looks like its source: what was typed in shows as typed.
std::string CellWriter::link_style(const Place& source) const {
    const auto* result = source.definition == nullptr ? nullptr : source.definition->as<rows::Result>();
    return result == nullptr ? "LinkTyped" : number_style("Link", result->unit.in(system_));
}

SheetCell& CellWriter::put_link(const Place& source, int at, int column) {
    put_formula(at, column, link_style(source), cell_reference(source.sheet, source.row, source.column));
    return put_formula(at, column + 1, "UnitLink",
                       cell_reference(source.sheet, source.row, source.last_column));
}

SheetCell& CellWriter::put_link_computed_with(const Place& source, const std::string& key, int at,
                                              int column) {
    SheetCell& unit = put_link(source, at, column);
    if (!source.is_typed()) return unit;
    const std::string number = cell_reference(source.sheet, source.row, source.column);
    const std::string checked = "UNDERCROFT.UC.CONVERT(" + key + ";[." + cell_text(at, column + 1) + "])";
    put_formula(at, column, "LinkTyped",
                source.takes_zero() ? checked : "IF(" + number + "=0;NA();" + checked + ")");
    return unit;
}

const Place& CellWriter::place_of(int line, const std::string& key) const {
    const Place* place = layout_.find(key);
    if (place == nullptr) mistake(line, "'" + key + "' is no key of this workbook");
    return *place;
}

}  // namespace undercroft::sheets
