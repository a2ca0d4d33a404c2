#include "sheets/builder/compose.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>

#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/unit_choices.hpp"

namespace undercroft::sheets {

namespace {

// The columns of every sheet.
constexpr int ref_column = 0;
constexpr int description_column = 1;
constexpr int symbol_column = 5;
constexpr int value_column = 6;
constexpr int unit_column = 7;
constexpr int note_column = 8;
constexpr int first_row = 4;  // below the heading that each page repeats

constexpr double column_cm = 1.8;
constexpr double line_cm = 0.44;

int last_column(const Sheet& sheet) {
    return sheet.wide ? 17 : 11;
}
int reason_column(const Sheet& sheet) {
    return last_column(sheet) + 1;
}

/// Where a key's cells are.
struct Place {
    std::string sheet;
    int row = 0;
    int column = 0;
    int last_row = 0;
    int last_column = 0;
    bool is_pair = false;
    std::string symbol;
    const Row* definition = nullptr;
};

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

constexpr double character_cm = 0.162;        // mean width of a character at 9 pt
constexpr double small_character_cm = 0.145;  // at 8 pt

/// Lines that a text takes in a width of that many sheet columns.
int lines_of_text(const std::string& text, int columns, double width_of_character = character_cm) {
    const double characters = (columns * column_cm - 0.2) / width_of_character;
    return std::max(1, static_cast<int>(std::ceil(static_cast<double>(text.size()) / characters)));
}

struct NumberAndUnit {
    double number = 0;
    std::string unit;
};

NumberAndUnit number_and_unit(const std::string& text) {
    NumberAndUnit made;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), made.number);
    if (error != std::errc{}) throw std::runtime_error("'" + text + "' is no number with a unit");
    made.unit = trimmed(std::string_view(end, static_cast<std::size_t>(text.data() + text.size() - end)));
    if (made.unit.empty()) throw std::runtime_error("'" + text + "' has no unit");
    return made;
}

bool defines_always(const Row& row) {
    using Kind = Row::Kind;
    return !row.key.empty() && row.kind != Kind::given && row.kind != Kind::chart;
}

/// The keys that a row's cells are computed from.
std::vector<std::string> keys_used(const Row& row, System system) {
    std::vector<std::string> keys = keys_in(row.formula.in(system));
    if (row.kind == Row::Kind::table)
        for (const std::string& key : keys_in(row.height)) keys.push_back(key);
    for (const ListColumn& column : row.columns)
        for (const std::string& key : keys_in(column.formula)) keys.push_back(key);
    if (row.kind == Row::Kind::list)
        for (const auto& item : row.items)
            for (const ListCell& cell : item)
                if (const std::string& text = cell.text.in(system); text.starts_with("="))
                    for (const std::string& key : keys_in(text)) keys.push_back(key);
    return keys;
}

class Composer {
public:
    Composer(const WorkbookText& text, const std::vector<Sheet>& all, System system) : system_(system) {
        for (const std::string& name : text.sheets) {
            const auto found =
                std::find_if(all.begin(), all.end(), [&](const Sheet& sheet) { return sheet.name == name; });
            if (found == all.end())
                throw std::runtime_error("workbook " + text.name + ": there is no sheet " + name);
            sheets_.push_back(*found);
        }
        workbook_.name = text.name + (system == System::us ? "-us" : "");
        workbook_.title = text.title;
        workbook_.paper = system == System::us ? "letter" : "a4";
    }

    WorkbookGrid compose() {
        find_definitions();
        keep_what_is_used();
        for (const Sheet& sheet : sheets_) lay_out(sheet);
        for (const Sheet& sheet : sheets_) fill(sheet);
        return workbook_;
    }

private:
    [[noreturn]] static void mistake(const Sheet& sheet, int line, const std::string& why) {
        throw std::runtime_error("sheet " + sheet.name + ", line " + std::to_string(line) + ": " + why);
    }

    // --- which rows stand ---------------------------------------------------------------------------

    void find_definitions() {
        for (const Sheet& sheet : sheets_)
            for (const Row& row : sheet.rows)
                if (defines_always(row) && !definitions_.insert(row.key).second)
                    mistake(sheet, row.line, "the key " + row.key + " stands twice");
        for (const Sheet& sheet : sheets_)
            for (const Row& row : sheet.rows)
                if (row.kind == Row::Kind::given && !definitions_.contains(row.key)) {
                    definitions_.insert(row.key);
                    first_given_[row.key] = {sheet.name, row.line};
                }
    }

    /// Of a key that no sheet computes, the first `given` row is its input and the others link to it.
    [[nodiscard]] bool is_link(const Sheet& sheet, const Row& row) const {
        const auto first = first_given_.find(row.key);
        return row.kind == Row::Kind::given &&
               (first == first_given_.end() || first->second != std::pair(sheet.name, row.line));
    }

    void keep_what_is_used() {
        std::set<std::string> used;
        const auto use = [&](const Row& row) {
            for (const std::string& key : keys_used(row, system_)) used.insert(key);
        };
        for (const Sheet& sheet : sheets_) {
            if (sheet.name == "Site") continue;
            for (const Row& row : sheet.rows) {
                use(row);
                if (row.kind == Row::Kind::given) used.insert(row.key);
                if (row.kind == Row::Kind::chart) used.insert(row.source_table);
            }
        }
        for (Sheet& sheet : sheets_) {
            if (sheet.name != "Site") continue;
            // What a row of Site uses is used, too; a check of Site stands where all that it compares stands.
            for (bool grown = true; grown;) {
                grown = false;
                const std::size_t before = used.size();
                for (const Row& row : sheet.rows)
                    if (used.contains(row.key)) use(row);
                grown = used.size() != before;
            }
            const auto needed = [&](const Row& row) {
                if (row.kind == Row::Kind::check) {
                    const auto keys = keys_used(row, system_);
                    return std::all_of(keys.begin(), keys.end(),
                                       [&](const std::string& key) { return used.contains(key); });
                }
                return row.key.empty() || used.contains(row.key);
            };
            std::erase_if(sheet.rows, [&](const Row& row) { return !needed(row); });
            drop_empty_sections(sheet);
        }
    }

    /// A heading with nothing but remarks under it says nothing.
    static void drop_empty_sections(Sheet& sheet) {
        std::vector<Row> kept;
        for (std::size_t i = 0; i < sheet.rows.size();) {
            if (sheet.rows[i].kind != Row::Kind::section) {
                kept.push_back(sheet.rows[i++]);
                continue;
            }
            std::size_t end = i + 1;
            bool says = false;
            for (; end < sheet.rows.size() && sheet.rows[end].kind != Row::Kind::section; ++end)
                says = says || !sheet.rows[end].key.empty();
            if (says)
                kept.insert(kept.end(), sheet.rows.begin() + static_cast<std::ptrdiff_t>(i),
                            sheet.rows.begin() + static_cast<std::ptrdiff_t>(end));
            i = end;
        }
        sheet.rows = std::move(kept);
    }

    // --- where each row stands ------------------------------------------------------------------------

    int table_height(const Sheet& sheet, const Row& row) const {
        int height = 0;
        const auto [end, error] =
            std::from_chars(row.height.data(), row.height.data() + row.height.size(), height);
        if (error != std::errc{} || end != row.height.data() + row.height.size() || height < 1)
            mistake(sheet, row.line, "'" + row.height + "' is no height of a table");
        return height;
    }

    int rows_of(const Sheet& sheet, const Row& row) const {
        switch (row.kind) {
            case Row::Kind::table:
                return 2 + 1 + table_height(sheet, row) + 1;  // title, heads, units, values, space
            case Row::Kind::grid:
                return 2 + 1 + static_cast<int>(row.items.size()) + 1;
            case Row::Kind::list:
                return 2 + static_cast<int>(row.items.size()) + 1;
            case Row::Kind::chart:
                return row.beside ? 0 : 20;
            case Row::Kind::summary:
                return static_cast<int>(sheets_.size()) - 1;
            case Row::Kind::page:
                return 0;
            case Row::Kind::section:
                return 2;  // a line of space before
            default:
                return 1;
        }
    }

    static int width_of(const Row& row) {
        int columns = 0;
        for (const ListColumn& column : row.columns) columns += column.span;
        return columns;
    }

    void lay_out(const Sheet& sheet) {
        int at = first_row;
        for (const Row& row : sheet.rows) {
            starts_[{sheet.name, row.line}] = at;
            const bool defines =
                defines_always(row) || (row.kind == Row::Kind::given && !is_link(sheet, row));
            if (defines) {
                Place place{sheet.name, at, value_column, at, value_column, false, row.symbol, &row};
                using Kind = Row::Kind;
                if (row.kind == Kind::input || row.kind == Kind::result || row.kind == Kind::given) {
                    place.last_column = unit_column;
                    place.is_pair = true;
                }
                if (row.kind == Kind::table || row.kind == Kind::grid) {
                    place.row = at + 2;
                    place.last_row = at + rows_of(sheet, row) - 2;
                    place.column = description_column;
                    place.last_column = description_column + width_of(row) - 1;
                }
                if (row.kind == Kind::list) {
                    place.row = at + 2;
                    place.last_row = at + rows_of(sheet, row) - 2;
                    place.column = description_column;
                    place.last_column = description_column + width_of(row) - 1;
                    add_list_columns(sheet, row, place);
                }
                places_[row.key] = place;
                add_name(row.key, place);
            }
            at += rows_of(sheet, row);
        }
        const std::string open = lower(sheet.name) + "_open";
        places_[open] = {sheet.name, 2, last_column(sheet), 2, last_column(sheet), false, {}, nullptr};
        add_name(open, places_[open]);
        heights_[sheet.name] = at;
    }

    void add_list_columns(const Sheet& sheet, const Row& row, const Place& list) {
        int column = description_column;
        for (const ListColumn& c : row.columns) {
            if (!c.name.empty()) {
                const bool pair = !c.unit.in(system_).empty();
                const Place place{sheet.name, list.row, column, list.last_row, pair ? column + 1 : column,
                                  pair,       {},       &row};
                const std::string key = row.key + "_" + c.name;
                places_[key] = place;
                add_name(key, place);
            }
            column += c.span;
        }
    }

    void add_name(const std::string& key, const Place& place) {
        std::string address = "$" + place.sheet + "." + cell_text(place.row, place.column, true);
        if (place.row != place.last_row || place.column != place.last_column)
            address += ":." + cell_text(place.last_row, place.last_column, true);
        workbook_.names.push_back({key, address});
    }

    // --- what each cell holds ---------------------------------------------------------------------------

    SheetCell& put(int row, int column, const std::string& style) {
        SheetCell& cell = grid_->cells[{row, column}];
        cell.style = style;
        return cell;
    }
    SheetCell& put_text(int row, int column, const std::string& style, const std::string& text) {
        SheetCell& cell = put(row, column, style);
        cell.type = text.empty() ? SheetCell::Type::blank : SheetCell::Type::text;
        cell.text = text;
        return cell;
    }
    SheetCell& put_number(int row, int column, const std::string& style, double number) {
        SheetCell& cell = put(row, column, style);
        cell.type = SheetCell::Type::number;
        cell.number = number;
        return cell;
    }
    SheetCell& put_formula(int row, int column, const std::string& style, const std::string& stored) {
        SheetCell& cell = put(row, column, style);
        cell.type = SheetCell::Type::formula;
        cell.text = "of:=" + stored;
        return cell;
    }

    [[nodiscard]] std::string cell_reference(const std::string& sheet, int row, int column) const {
        if (sheet == grid_->name) return "[." + cell_text(row, column) + "]";
        return "[$" + sheet + "." + cell_text(row, column, true) + "]";
    }

    /// What a word of a formula means on the row that is being filled.
    std::string meaning(const std::string& word, const std::map<std::string, std::string>& of_row) const {
        if (const auto found = of_row.find(word); found != of_row.end()) return found->second;
        const std::size_t dot = word.find('.');
        const auto place = places_.find(word.substr(0, dot));
        if (place == places_.end()) return {};
        if (dot == std::string::npos) return word;
        const std::string part = word.substr(dot + 1);
        if (part == "value")
            return cell_reference(place->second.sheet, place->second.row, place->second.column);
        if (part == "unit" && place->second.is_pair)
            return cell_reference(place->second.sheet, place->second.row, place->second.last_column);
        return {};
    }

    std::string stored(const Sheet& sheet, const Row& row, const std::string& formula,
                       const std::map<std::string, std::string>& of_row = {}) const {
        try {
            return stored_formula(formula, [&](const std::string& word) { return meaning(word, of_row); });
        } catch (const std::runtime_error& error) {
            mistake(sheet, row.line, error.what());
        }
    }

    std::string add_validation(const Validation& wanted) {
        for (const Validation& known : workbook_.validations)
            if (known.choices == wanted.choices && known.help_title == wanted.help_title &&
                known.help == wanted.help)
                return known.name;
        Validation made = wanted;
        made.name = "val" + std::to_string(workbook_.validations.size() + 1);
        workbook_.validations.push_back(made);
        return made.name;
    }

    std::string unit_validation(const Sheet& sheet, const Row& row, const std::string& unit) {
        try {
            return add_validation({{}, unit_choices(unit), {}, {}});
        } catch (const std::runtime_error& error) {
            mistake(sheet, row.line, error.what());
        }
    }

    static std::string number_style(const std::string& base, const std::string& unit) {
        if (unit == "each") return base + "Count";
        return unit == "%" ? base + "Share" : base;
    }

    void fill(const Sheet& sheet) {
        SheetGrid made;
        made.name = sheet.name;
        made.wide = sheet.wide;
        made.print_columns = last_column(sheet) + 1;
        made.head_rows = first_row;
        made.rows = heights_[sheet.name];
        made.column_widths_cm.assign(static_cast<std::size_t>(last_column(sheet) + 1), column_cm);
        made.column_widths_cm[ref_column] = 1.3;
        made.column_widths_cm.push_back(11);  // reasons, beside the printed page
        workbook_.sheets.push_back(std::move(made));
        grid_ = &workbook_.sheets.back();
        number_ = 0;
        for (const Row& row : sheet.rows) fill_row(sheet, row, starts_.at({sheet.name, row.line}));
        fill_head(sheet);
    }

    void fill_head(const Sheet& sheet) {
        const int last = last_column(sheet);
        put_text(0, ref_column, "Title", sheet.title);
        if (places_.contains("job_name")) {
            const auto value = [&](const char* key) { return meaning(std::string(key) + ".value", {}); };
            put_formula(1, ref_column, "JobLine",
                        value("job_name") + "&\"   No. \"&" + value("job_number") + "&\"   revision \"&" +
                            value("job_revision"));
        }
        const std::string values = "[." + cell_text(first_row, description_column) + ":." +
                                   cell_text(std::max(grid_->rows, first_row + 1), last) + "]";
        const std::string errors = "SUMPRODUCT(ISERROR(" + values + ")*1)";
        std::string fails = "0";
        for (const std::string& check : grid_->checks) fails += "+([." + check + "]<>1)";
        const std::string count = std::to_string(grid_->checks.size());
        const std::string all_pass =
            grid_->checks.empty() ? "\"No cell shows an error\"" : "\"All " + count + " checks pass\"";
        put_formula(2, ref_column, "State",
                    "IF(ISERROR(UNDERCROFT.UC.VERSION());\"The Undercroft add-in is not installed here: the "
                    "figures on this sheet are not computed and must not be used\";"
                    "IF([." +
                        cell_text(2, last) + "]=0;" + all_pass + ";IF(" + errors + ">0;" + errors +
                        "&\" cells show an error: the reason stands to the right of the row\";[." +
                        cell_text(2, last) + "]&\" of " + count + " checks fail\")))");
        put_formula(2, last, "OpenCount", "IF(" + errors + ">0;" + errors + ";" + fails + ")");
        put_text(2, last - 1, "OpenLabel", "open");
        const std::pair<int, const char*> heads[] = {
            {ref_column, "Ref"},       {description_column, "Description"},
            {symbol_column, "Symbol"}, {value_column, "Value"},
            {unit_column, "Unit"},     {note_column, "Note or source"}};
        for (int c = 0; c <= last; ++c) put(3, c, "Heading");
        for (const auto& [column, text] : heads) put_text(3, column, "Heading", text);
        grid_->cells[{3, value_column}].style = "HeadingRight";
        put_text(3, reason_column(sheet), "ReasonHead", "Reason, where a cell shows an error");
    }

    std::string next_reference(const Sheet& sheet) {
        return sheet.name.substr(0, 2) + std::to_string(++number_);
    }

    void fill_common(const Sheet& sheet, const Row& row, int at, bool has_reason) {
        put_text(at, ref_column, "Ref", next_reference(sheet));
        put_text(at, description_column, "Description", row.description).columns =
            symbol_column - description_column;
        put_text(at, symbol_column, "Symbol", row.symbol);
        put_note(sheet, row.note, at);
        if (has_reason) put_reason(sheet, at, value_column);
        const int note_columns = last_column(sheet) - note_column + 1;
        set_height(at, std::max(lines_of_text(row.description, symbol_column - description_column),
                                lines_of_text(row.note, note_columns, small_character_cm)));
    }

    void put_note(const Sheet& sheet, const std::string& note, int at) {
        put_text(at, note_column, "Note", note).columns = last_column(sheet) - note_column + 1;
    }

    void put_reason(const Sheet& sheet, int at, int column) {
        const std::string cell = "[." + cell_text(at, column) + "]";
        put_formula(at, reason_column(sheet), "Reason",
                    "IF(ISERROR(" + cell + ");UNDERCROFT.UC.WHY(" + cell + ");\"\")");
    }

    void set_height(int at, int lines) { grid_->row_heights_cm[at] = lines * line_cm + 0.1; }

    void fill_row(const Sheet& sheet, const Row& row, int at) {
        switch (row.kind) {
            case Row::Kind::section:
                put_text(at + 1, ref_column, "Section", row.description);
                for (int c = 1; c <= last_column(sheet); ++c) put(at + 1, c, "Section");
                return;
            case Row::Kind::remark:
                return fill_paragraph(sheet, row, at, "Remark");
            case Row::Kind::caution:
                return fill_paragraph(sheet, row, at, "Caution");
            case Row::Kind::input:
                return fill_input(sheet, row, at);
            case Row::Kind::given:
                return is_link(sheet, row) ? fill_link(sheet, row, at) : fill_input(sheet, row, at);
            case Row::Kind::text:
            case Row::Kind::choice:
                return fill_text(sheet, row, at);
            case Row::Kind::result:
                return fill_result(sheet, row, at);
            case Row::Kind::words:
                fill_common(sheet, row, at, true);
                put_formula(at, value_column, "Words", stored(sheet, row, row.formula.in(system_))).columns =
                    2;
                return;
            case Row::Kind::check:
                return fill_check(sheet, row, at);
            case Row::Kind::table:
                return fill_table(sheet, row, at);
            case Row::Kind::grid:
                return fill_grid(sheet, row, at);
            case Row::Kind::list:
                return fill_list(sheet, row, at);
            case Row::Kind::chart:
                return fill_chart(sheet, row, at);
            case Row::Kind::summary:
                return fill_summary(sheet, at);
            case Row::Kind::page:
                grid_->page_breaks.push_back(at);
                return;
        }
    }

    void fill_paragraph(const Sheet& sheet, const Row& row, int at, const std::string& style) {
        const int columns = last_column(sheet);
        put_text(at, description_column, style, row.description).columns = columns;
        if (style == "Caution") put_text(at, ref_column, "CautionMark", "!");
        set_height(at, lines_of_text(row.description, columns));
    }

    void fill_input(const Sheet& sheet, const Row& row, int at) {
        fill_common(sheet, row, at, false);
        NumberAndUnit value;
        try {
            value = number_and_unit(row.value.in(system_));
        } catch (const std::runtime_error& error) {
            mistake(sheet, row.line, error.what());
        }
        SheetCell& number = put_number(at, value_column, "Entry", value.number);
        SheetCell& unit = put_text(at, unit_column, "UnitEntry", value.unit);
        unit.validation = unit_validation(sheet, row, value.unit);
        std::string kind = unit_kind(value.unit);
        if (kind == "a number or share") kind = "a number";
        const std::string help = "A number; its unit stands to the right and can be picked from the list." +
                                 (row.note.empty() ? "" : " " + row.note + ".");
        number.validation = add_validation({{}, {}, row.description.substr(0, 60), help});
    }

    /// A link looks like its source: what was typed in shows as typed.
    [[nodiscard]] std::string link_style(const Place& source) const {
        const bool computed = source.definition != nullptr && source.definition->kind == Row::Kind::result;
        return computed ? number_style("Link", source.definition->value.in(system_)) : "LinkTyped";
    }

    void fill_link(const Sheet& sheet, const Row& row, int at) {
        fill_common(sheet, row, at, false);
        const Place& source = places_.at(row.key);
        put_formula(at, value_column, link_style(source),
                    cell_reference(source.sheet, source.row, source.column));
        put_formula(at, unit_column, "UnitLink",
                    cell_reference(source.sheet, source.row, source.last_column));
        put_note(sheet, "from the sheet " + source.sheet, at);
    }

    void fill_text(const Sheet& sheet, const Row& row, int at) {
        fill_common(sheet, row, at, false);
        SheetCell& cell = put_text(at, value_column, "TextEntry", row.value.in(system_));
        cell.columns = 2;
        cell.validation = add_validation({{}, row.options, row.description.substr(0, 60), row.note});
    }

    void fill_result(const Sheet& sheet, const Row& row, int at) {
        fill_common(sheet, row, at, true);
        const std::string unit = row.value.in(system_);
        const std::map<std::string, std::string> of_row = {{"@", "[." + cell_text(at, unit_column) + "]"}};
        put_formula(at, value_column, number_style("Number", unit),
                    stored(sheet, row, row.formula.in(system_), of_row));
        SheetCell& unit_cell = put_text(at, unit_column, "UnitResult", unit);
        // A unit that the formula does not take cannot be changed either.
        const bool live = row.formula.in(system_).find('@') != std::string::npos;
        if (live)
            unit_cell.validation = unit_validation(sheet, row, unit);
        else
            unit_cell.style = "UnitFixed";
    }

    /// "value ≥ limit" as a text that follows the cells, for the note of a check.
    std::string compared_text(const std::string& left, const std::string& sign,
                              const std::string& right) const {
        const auto side = [&](const std::string& key) {
            const Place& place = places_.at(key);
            return "TEXT(" + meaning(key + ".value", {}) + ";\"0.###\")" +
                   (place.is_pair ? "&\" \"&" + meaning(key + ".unit", {}) : std::string());
        };
        return side(left) + "&\" " + sign + " \"&" + side(right);
    }

    void fill_check(const Sheet& sheet, const Row& row, int at) {
        fill_common(sheet, row, at, true);
        const std::string text = row.formula.in(system_);
        std::string formula;
        std::string note;
        std::string symbol;
        const auto key_place = [&](const std::string& key) -> const Place& {
            const auto place = places_.find(key);
            if (place == places_.end()) mistake(sheet, row.line, "'" + key + "' is no key of this workbook");
            return place->second;
        };
        const auto compare = [&](const std::string& sign, const std::string& function,
                                 const std::string& shown) {
            const std::size_t middle = text.find(sign);
            const std::string left = trimmed(text.substr(0, middle));
            const std::string right = trimmed(text.substr(middle + sign.size()));
            const std::string left_symbol = key_place(left).symbol;
            const std::string right_symbol = key_place(right).symbol;
            if (!left_symbol.empty() && !right_symbol.empty())
                symbol = left_symbol + " " + shown + " " + right_symbol;
            formula = "UNDERCROFT.UC." + function + "(" + left + ";" + right + ")";
            note = compared_text(left, shown, right);
        };
        if (text.starts_with("=")) {
            formula = stored(sheet, row, text.substr(1));
        } else if (text.find(">=") != std::string::npos) {
            compare(">=", "ATLEAST", "≥");
        } else if (text.find("<=") != std::string::npos) {
            compare("<=", "ATMOST", "≤");
        } else {
            mistake(sheet, row.line, "a check is A >= B, A <= B or = FORMULA");
        }
        put_text(at, symbol_column, "Symbol", symbol);
        put_formula(at, value_column, "Verdict", formula).columns = 2;
        if (!note.empty()) {
            const std::string tail = row.note.empty() ? "" : "&\"; " + row.note + "\"";
            put_formula(at, note_column, "Note", "IFERROR(" + note + tail + ";\"" + row.note + "\")")
                .columns = last_column(sheet) - note_column + 1;
        }
        grid_->checks.push_back(cell_text(at, value_column));
    }

    void fill_table_head(const Sheet& sheet, const Row& row, int at) {
        put_text(at, ref_column, "Ref", next_reference(sheet));
        put_text(at, description_column, "TableTitle", row.description);
        if (!row.note.empty())
            put_text(at, note_column, "Note", row.note).columns = last_column(sheet) - note_column + 1;
        int column = description_column;
        int lines = 1;
        for (const ListColumn& c : row.columns) {
            const bool words = row.kind == Row::Kind::list && c.unit.in(system_).empty() &&
                               c.formula.empty() && c.format != "share";
            put_text(at + 1, column, words ? "TableHeadLeft" : "TableHead", c.title).columns = c.span;
            lines = std::max(lines, lines_of_text(c.title, c.span, small_character_cm));
            column += c.span;
        }
        set_height(at + 1, lines);
    }

    void fill_table(const Sheet& sheet, const Row& row, int at) {
        fill_table_head(sheet, row, at);
        const int height = table_height(sheet, row);
        const int columns = width_of(row);
        SheetCell& first =
            put_formula(at + 2, description_column, "TableUnit",
                        stored(sheet, row, row.formula.in(system_), {{"@", std::to_string(height)}}));
        first.matrix_rows = height + 1;
        first.matrix_columns = columns;
        for (int c = 1; c < columns; ++c) put(at + 2, description_column + c, "TableUnit");
        for (int r = 0; r < height; ++r)
            for (int c = 0; c < columns; ++c) put(at + 3 + r, description_column + c, "TableNumber");
        put_reason(sheet, at + 2, description_column);
    }

    void fill_grid(const Sheet& sheet, const Row& row, int at) {
        fill_table_head(sheet, row, at);
        int column = description_column;
        for (std::size_t i = 0; i < row.columns.size(); ++i) {
            const std::string unit = row.columns[i].unit.in(system_);
            SheetCell& cell = put_text(at + 2, column, "GridUnit", unit);
            if (!unit.empty()) cell.validation = unit_validation(sheet, row, unit);
            for (std::size_t r = 0; r < row.items.size(); ++r) {
                const std::string text = row.items[r][i].text.in(system_);
                const int cell_row = at + 3 + static_cast<int>(r);
                double number = 0;
                const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
                const bool is_number = error == std::errc{} && end == text.data() + text.size();
                if (is_number)
                    put_number(cell_row, column, "GridEntry", number);
                else
                    put_text(cell_row, column, unit.empty() ? "GridText" : "GridEntry", text);
            }
            column += row.columns[i].span;
        }
    }

    void fill_list(const Sheet& sheet, const Row& row, int at) {
        fill_table_head(sheet, row, at);
        for (std::size_t r = 0; r < row.items.size(); ++r)
            fill_item(sheet, row, at + 2 + static_cast<int>(r), row.items[r]);
    }

    void fill_item(const Sheet& sheet, const Row& row, int at, const std::vector<ListCell>& item) {
        std::map<std::string, std::string> of_row;
        int column = description_column;
        for (const ListColumn& c : row.columns) {
            const bool pair = !c.unit.in(system_).empty();
            const std::string first = cell_text(at, column);
            if (!c.name.empty())
                of_row["@" + c.name] =
                    "[." + first + (pair ? ":." + cell_text(at, column + 1) : std::string()) + "]";
            column += c.span;
        }
        column = description_column;
        std::size_t typed = 0;
        put_text(at, ref_column, "Ref", next_reference(sheet));
        int reason_at = -1;
        for (const ListColumn& c : row.columns) {
            const std::string text = c.formula.empty() ? item[typed++].text.in(system_) : "=" + c.formula;
            fill_item_cell(sheet, row, c, at, column, text, of_row);
            if (text.starts_with("=") && reason_at < 0) reason_at = column;
            if (!c.formula.empty()) reason_at = column;
            column += c.span;
        }
        if (reason_at >= 0) put_reason(sheet, at, reason_at);
    }

    void fill_item_cell(const Sheet& sheet, const Row& row, const ListColumn& c, int at, int column,
                        const std::string& text, std::map<std::string, std::string> of_row) {
        const std::string unit = c.unit.in(system_);
        const bool pair = !unit.empty();
        const int unit_at = column + 1;  // beside the number; the unit takes what the column has left
        const int unit_columns = std::max(1, c.span - 1);
        if (pair) of_row["@"] = "[." + cell_text(at, unit_at) + "]";
        if (text.starts_with("=")) {
            const std::string formula = trimmed(std::string_view(text).substr(1));
            const auto linked = places_.find(formula);
            if (pair && linked != places_.end() &&
                linked->second.is_pair) {  // a link to a pair brings its unit along
                const Place& source = linked->second;
                put_formula(at, column, link_style(source),
                            cell_reference(source.sheet, source.row, source.column));
                put_formula(at, unit_at, "UnitLink",
                            cell_reference(source.sheet, source.row, source.last_column))
                    .columns = unit_columns;
                return;
            }
            const std::string style = c.format == "text"      ? "ListWords"
                                      : c.format == "verdict" ? "Verdict"
                                      : c.format == "plain"   ? "NumberPlain"
                                                              : "Number";
            put_formula(at, column, style, stored(sheet, row, formula, of_row)).columns = pair ? 1 : c.span;
            if (c.format == "verdict") grid_->checks.push_back(cell_text(at, column));
            if (!pair) return;
            // The unit of a computed pair goes with the item: `=net.unit` in the column, or the column's own.
            if (unit.starts_with("="))
                put_formula(at, unit_at, "UnitLink", stored(sheet, row, unit.substr(1), unit_parts(of_row)))
                    .columns = unit_columns;
            else
                put_unit(sheet, row, at, unit_at, "UnitResult", unit).columns = unit_columns;
            return;
        }
        if (pair) {
            if (text == "-") {
                put(at, column, "ListBlank");
                put(at, unit_at, "ListBlank").columns = unit_columns;
                return;
            }
            NumberAndUnit value;
            try {
                value = number_and_unit(text);
            } catch (const std::runtime_error& error) {
                mistake(sheet, row.line, error.what());
            }
            put_number(at, column, "Entry", value.number);
            put_unit(sheet, row, at, unit_at, "UnitEntry", value.unit).columns = unit_columns;
            return;
        }
        if (c.format == "share") {
            const NumberAndUnit value = number_and_unit(text);
            put_number(at, column, "ShareEntry", value.number / 100).columns = c.span;
            return;
        }
        const std::string style = c.format == "entry" ? "TextEntry" : "ListText";
        put_text(at, column, style, text == "-" ? "" : text).columns = c.span;
        set_height(at, std::max(1, lines_of_text(text, c.span)));
    }

    SheetCell& put_unit(const Sheet& sheet, const Row& row, int at, int column, const std::string& style,
                        const std::string& unit) {
        SheetCell& cell = put_text(at, column, style, unit);
        cell.validation = unit_validation(sheet, row, unit);
        return cell;
    }

    /// `@net` stands for a pair; `@net.unit` for its unit cell.
    static std::map<std::string, std::string> unit_parts(const std::map<std::string, std::string>& of_row) {
        std::map<std::string, std::string> made = of_row;
        for (const auto& [word, reference] : of_row) {
            const std::size_t colon = reference.find(":.");
            if (colon != std::string::npos) made[word + ".unit"] = "[." + reference.substr(colon + 2);
        }
        return made;
    }

    void fill_chart(const Sheet& sheet, const Row& row, int at) {
        const auto place = places_.find(row.source_table);
        if (place == places_.end())
            mistake(sheet, row.line, "'" + row.source_table + "' is no table of this workbook");
        const Place& table = place->second;
        const auto column_of = [&](const std::string& title) {
            int column = table.column;
            for (const ListColumn& c : table.definition->columns) {
                if (c.title == title) return column;
                column += c.span;
            }
            mistake(sheet, row.line, "the table " + row.source_table + " has no column '" + title + "'");
        };
        const auto range = [&](int column) {
            return table.sheet + "." + cell_text(table.row + 1, column) + ":" + table.sheet + "." +
                   cell_text(table.last_row, column);
        };
        Chart chart;
        chart.title = row.description;
        chart.x_title = row.x_title.in(system_);
        chart.y_title = row.y_title.in(system_);
        chart.row = row.beside ? table.row - 1 : at;
        chart.column = row.beside ? table.last_column + 1 : description_column;
        const int rows = row.beside ? 20 : 18;
        chart.end_row = chart.row + rows;
        chart.end_column = last_column(sheet);
        chart.width_cm = column_cm * (last_column(sheet) - chart.column + 1) - 0.2;
        chart.height_cm = rows * 0.5;
        const int x = column_of(row.plot[0]);
        for (std::size_t i = 1; i < row.plot.size(); ++i) {
            const int y = column_of(row.plot[i]);
            chart.series.push_back({range(x), range(y), table.sheet + "." + cell_text(table.row - 1, y)});
        }
        grid_->charts.push_back(chart);
    }

    void fill_summary(const Sheet& sheet, int at) {
        for (const Sheet& other : sheets_) {
            if (other.name == sheet.name) continue;
            put_text(at, ref_column, "Ref", next_reference(sheet));
            put_text(at, description_column, "Description", other.title).columns =
                symbol_column - description_column;
            const std::string open = lower(other.name) + "_open";
            put_formula(at, value_column, "Open", meaning(open + ".value", {})).columns = 2;
            put_text(at, note_column, "Note",
                     "checks that fail or cells with an error on the sheet " + other.name)
                .columns = last_column(sheet) - note_column + 1;
            set_height(at, lines_of_text(other.title, symbol_column - description_column));
            ++at;
        }
    }

    System system_;
    std::vector<Sheet> sheets_;
    WorkbookGrid workbook_;
    SheetGrid* grid_ = nullptr;
    int number_ = 0;
    std::set<std::string> definitions_;
    std::map<std::string, std::pair<std::string, int>> first_given_;
    std::map<std::string, Place> places_;
    std::map<std::pair<std::string, int>, int> starts_;
    std::map<std::string, int> heights_;
};

}  // namespace

WorkbookGrid compose(const WorkbookText& text, const std::vector<Sheet>& sheets, System system) {
    return Composer(text, sheets, system).compose();
}

}  // namespace undercroft::sheets
