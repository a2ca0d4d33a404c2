#include "sheets/builder/examples_book.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <stdexcept>

#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/numbers.hpp"
#include "units/text.hpp"

namespace undercroft::sheets {

namespace {

constexpr int label_column = 0;
constexpr int last_cell_column = 5;
constexpr int formula_column = 6;
constexpr double widths_cm[] = {5.6, 2.4, 2.4, 2.4, 2.4, 2.4, 8.2};
constexpr int head_rows = 4;

/// Where a reference to a cell ends that starts here, or `from` where none does.
std::size_t end_of_cell(std::string_view text, std::size_t from) {
    std::size_t at = from;
    if (at < text.size() && text[at] == '$') ++at;
    const std::size_t letters = at;
    while (at < text.size() && text[at] >= 'A' && text[at] <= 'Z') ++at;
    if (at == letters || at > letters + 2) return from;
    if (at < text.size() && text[at] == '$') ++at;
    const std::size_t digits = at;
    while (at < text.size() && is_digit(text[at])) ++at;
    const bool goes_on = at < text.size() && (is_letter(text[at]) || text[at] == '(' || text[at] == '.');
    return at == digits || goes_on ? from : at;
}

}  // namespace

std::string stored_typed_formula(std::string_view formula) {
    const std::string named = stored_formula(formula, [](const std::string& word) { return word; });
    std::string stored;
    for (std::size_t i = 0; i < named.size();) {
        if (named[i] == '"') {
            const std::size_t end = named.find('"', i + 1) + 1;
            stored += named.substr(i, end - i);
            i = end;
            continue;
        }
        const bool inside_word =
            i > 0 && (is_letter(named[i - 1]) || is_digit(named[i - 1]) || named[i - 1] == '.');
        const std::size_t end = inside_word ? i : end_of_cell(named, i);
        if (end == i) {
            stored += named[i++];
            continue;
        }
        stored += "[." + named.substr(i, end - i);
        if (end < named.size() && named[end] == ':') {
            const std::size_t last = end_of_cell(named, end + 1);
            stored += ":." + named.substr(end + 1, last - end - 1);
            i = last;
        } else {
            i = end;
        }
        stored += "]";
    }
    return stored;
}

namespace {

using Kind = ExampleLine::Kind;

/// `verdict=UC.ATMOST(...)`: how a computed cell looks, and its formula.
struct Computed {
    std::string style = "Number";
    std::string formula;
};

Computed computed(const std::string& text) {
    const std::size_t equals = text.find('=');
    const std::string look = text.substr(0, equals);
    static const std::pair<const char*, const char*> looks[] = {
        {"", "Number"},     {"verdict", "Verdict"},   {"story", "Words"},
        {"words", "Words"}, {"count", "NumberCount"}, {"unit", "UnitLink"}};
    for (const auto& [word, style] : looks)
        if (look == word) return {style, text.substr(equals + 1)};
    throw std::runtime_error("'" + look + "' is no look of a formula");
}

bool is_formula(const std::string& text) {
    const std::size_t equals = text.find('=');
    return equals != std::string::npos && text.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == equals;
}

/// The formula without the rows of its cells: alike in rows that are filled down.
std::string pattern(const std::string& formula) {
    std::string made;
    for (const char c : formula) {
        const bool of_cell =
            !made.empty() && ((made.back() >= 'A' && made.back() <= 'Z') || made.back() == '$');
        if (!is_digit(c) || !of_cell) made += c;
    }
    return made;
}

class ExampleGrid {
public:
    ExampleGrid(const ExampleSheet& example, System system) : system_(system) {
        sheet_.name = example.name;
        sheet_.wide = true;
        sheet_.protect = false;
        sheet_.print_columns = formula_column + 1;
        sheet_.head_rows = head_rows;
        sheet_.column_widths_cm.assign(std::begin(widths_cm), std::end(widths_cm));
        text(0, label_column, "Title", example.title);
        text(1, label_column, "JobLine", example.says);
        SheetCell& state = cell(2, label_column, "State");
        state.type = SheetCell::Type::formula;
        state.text =
            "of:=IF(ISERROR(UNDERCROFT.UC.VERSION());\"The functions are not installed here: these are the "
            "last values\";\"Copy cells, or the whole sheet, into a workbook of your own\")";
        for (int c = 0; c <= formula_column; ++c)
            text(3, c, c == label_column || c == formula_column ? "Heading" : "HeadingRight",
                 c == formula_column ? "Formula" : "");
        at_ = head_rows;
        bool headed = false;
        for (const ExampleLine& line : example.lines) {
            try {
                if (!headed && line.kind == Kind::head)
                    first_head(line);
                else
                    add(line);
                headed = true;
            } catch (const std::runtime_error& error) {
                throw std::runtime_error("example " + example.name + ", line " + std::to_string(line.line) +
                                         ": " + error.what());
            }
        }
        sheet_.rows = std::max(at_, chart_end_) + 1;
    }

    [[nodiscard]] SheetGrid grid() && { return std::move(sheet_); }

private:
    SheetCell& cell(int row, int column, const std::string& style) {
        SheetCell& made = sheet_.cells[{row, column}];
        made.style = style;
        return made;
    }
    SheetCell& text(int row, int column, const std::string& style, const std::string& words) {
        SheetCell& made = cell(row, column, style);
        made.type = words.empty() ? SheetCell::Type::blank : SheetCell::Type::text;
        made.text = words;
        return made;
    }

    void first_head(const ExampleLine& line) {
        for (std::size_t c = 0; c < line.cells.size(); ++c)
            text(3, static_cast<int>(c), c == 0 ? "Heading" : "HeadingRight", line.cells[c].in(system_));
    }

    void add(const ExampleLine& line) {
        switch (line.kind) {
            case Kind::blank:
                ++at_;
                explained_.clear();
                return;
            case Kind::note: {
                constexpr double letter_cm = 0.15;
                const std::string& words = line.cells.front().in(system_);
                text(at_, label_column, "Description", words).columns = last_cell_column + 1;
                const double lines = std::ceil(static_cast<double>(words.size()) * letter_cm / 17);
                sheet_.row_heights_cm[at_++] = 0.42 * lines + 0.1;
                return;
            }
            case Kind::fill:
                for (int r = 0; r < line.rows; ++r, ++at_)
                    for (int c = 0; c < filled_columns_; ++c) cell(at_, filled_from_ + c, "TableNumber");
                explained_.clear();
                return;
            case Kind::chart:
                return chart(line);
            case Kind::head:
            case Kind::units:
            case Kind::row:
                break;
        }
        for (std::size_t c = 0; c < line.cells.size(); ++c) {
            const std::string& content = line.cells[c].in(system_);
            const int column = static_cast<int>(c);
            if (column > last_cell_column) throw std::runtime_error("more cells than columns");
            if (content.empty()) continue;
            if (line.kind == Kind::head)
                text(at_, column, column == label_column ? "TableHeadLeft" : "TableHead", content);
            else if (line.kind == Kind::units && !is_formula(content))
                text(at_, column, "GridUnit", content);
            else
                put(column, content);
        }
        ++at_;
    }

    /// A cell as it is typed.
    void put(int column, const std::string& content) {
        if (content.starts_with("{=")) return put_table(column, content);
        if (is_formula(content)) {
            const Computed made = computed(content);
            SheetCell& formula = cell(at_, column, made.style);
            formula.type = SheetCell::Type::formula;
            formula.text = "of:=" + stored_typed_formula(made.formula);
            if (made.style == "Verdict") sheet_.checks.emplace_back(at_, column);
            if (made.style != "UnitLink") explain(made.formula);
            if (made.style == "Words") {  // sentences, over the columns that there are
                formula.columns = last_cell_column - column + 1;
                constexpr double two_lines_cm = 0.95;
                constexpr double story_cm = 3.4;
                sheet_.row_heights_cm[at_] = content.starts_with("story") ? story_cm : two_lines_cm;
            }
            return;
        }
        if (const auto number = number_in(content)) return put_number(column, "Entry", *number);
        if (content.ends_with("%") && !content.ends_with(" %"))
            if (const auto share = number_in(content.substr(0, content.size() - 1)))
                return put_number(column, "ShareEntry", *share / 100);
        text(at_, column, style_of_text(column), content);
    }

    void put_number(int column, const char* style, double number) {
        SheetCell& made = cell(at_, column, style);
        made.type = SheetCell::Type::number;
        made.number = number;
    }

    /// A label on the left; behind a number its unit; else a text that is typed in.
    [[nodiscard]] std::string style_of_text(int column) const {
        if (column == label_column) return "Description";
        const auto left = sheet_.cells.find({at_, column - 1});
        if (left == sheet_.cells.end()) return "TextEntry";
        if (left->second.type == SheetCell::Type::number) return "UnitEntry";
        return left->second.type == SheetCell::Type::formula ? "UnitResult" : "TextEntry";
    }

    /// `{=FORMULA} ROWSxCOLUMNS`: a table that a function returns, its unit row first.
    void put_table(int column, const std::string& content) {
        const std::size_t brace = content.rfind('}');
        const std::string size = trimmed(content.substr(brace + 1));
        const std::size_t cross = size.find('x');
        const auto rows = number_in(size.substr(0, cross));
        const auto columns = cross == std::string::npos ? std::nullopt : number_in(size.substr(cross + 1));
        if (!rows || !columns) throw std::runtime_error("wanted: {=FORMULA} ROWSxCOLUMNS");
        const std::string formula = content.substr(2, brace - 2);
        SheetCell& first = cell(at_, column, "TableUnit");
        first.type = SheetCell::Type::formula;
        first.text = "of:=" + stored_typed_formula(formula);
        first.matrix_rows = static_cast<int>(*rows);
        first.matrix_columns = static_cast<int>(*columns);
        filled_from_ = column;
        filled_columns_ = first.matrix_columns;
        for (int c = 1; c < filled_columns_; ++c) cell(at_, column + c, "TableUnit");
        explain("{=" + formula + "}  in one cell, with Ctrl+Shift+Enter", false);
    }

    /// The text of the formula to the right; once for rows that are filled down.
    void explain(const std::string& formula, bool with_sign = true) {
        const std::string own = pattern(formula);
        if (!explained_.insert(own).second) return;
        SheetCell& told = sheet_.cells[{at_, formula_column}];
        const bool more = !told.text.empty();
        told.style = "FormulaText";
        told.type = SheetCell::Type::text;
        told.text += (more ? "\n" : "") + (with_sign ? "=" + formula : formula);
        constexpr double letter_cm = 0.15;
        double lines = 0;
        for (const std::string& part : fields_of(told.text, '\n'))
            lines += std::ceil(static_cast<double>(part.size()) * letter_cm / widths_cm[formula_column]);
        sheet_.row_heights_cm[at_] = std::max(0.5, 0.36 * lines + 0.12);
    }

    void chart(const ExampleLine& line) {
        const auto part = [&](std::size_t i) { return line.cells[i].in(system_); };
        const auto range = [&](std::size_t i) {
            const std::vector<std::string> ends = fields_of(part(i), ':');
            if (ends.size() != 2) throw std::runtime_error("wanted: a range of cells");
            return sheet_.name + "." + ends[0] + ":" + sheet_.name + "." + ends[1];
        };
        constexpr int chart_rows = 16;
        Chart made;
        made.title = part(0);
        made.x_title = part(3);
        made.y_title = part(4);
        made.row = at_;
        sheet_.page_breaks.push_back(at_);
        made.column = label_column;
        made.end_row = at_ + chart_rows;
        made.end_column = last_cell_column;
        made.width_cm = 17;
        made.height_cm = chart_rows * 0.5;
        made.series.push_back({range(1), range(2), {}, {}, false});
        sheet_.charts.push_back(made);
        at_ += chart_rows + 1;
        chart_end_ = at_;
    }

    System system_;
    SheetGrid sheet_;
    int at_ = 0;
    int chart_end_ = 0;
    int filled_from_ = 0;
    int filled_columns_ = 0;
    std::set<std::string> explained_;  ///< since the last blank row
};

/// The list of the examples, each with a way to it.
SheetGrid contents(const std::vector<ExampleSheet>& examples) {
    SheetGrid sheet;
    sheet.name = "Contents";
    sheet.wide = true;
    sheet.protect = false;
    sheet.print_columns = 2;
    sheet.head_rows = head_rows;
    sheet.column_widths_cm = {3.5, 22};
    const auto put = [&sheet](int row, int column, const char* style,
                              const std::string& words) -> SheetCell& {
        SheetCell& cell = sheet.cells[{row, column}];
        cell.style = style;
        cell.type = words.empty() ? SheetCell::Type::blank : SheetCell::Type::text;
        cell.text = words;
        return cell;
    };
    put(0, 0, "Title", "Small examples to copy from");
    put(1, 0, "JobLine",
        "Typed values are on sand; a unit stands beside its number; change either, and the results follow. "
        "Nothing is protected.");
    put(3, 0, "Heading", "Sheet");
    put(3, 1, "Heading", "What it shows");
    int at = head_rows;
    for (const ExampleSheet& example : examples) {
        SheetCell& link = put(at, 0, "Words", {});
        link.type = SheetCell::Type::formula;
        link.text = "of:=HYPERLINK(\"#" + example.name + "\";\"" + example.name + "\")";
        constexpr std::size_t letters_a_line = 145;
        const std::string words = example.title + ". " + example.says;
        put(at, 1, "Description", words);
        if (words.size() > letters_a_line) sheet.row_heights_cm[at] = 0.9;
        ++at;
    }
    sheet.rows = at + 1;
    return sheet;
}

}  // namespace

WorkbookGrid examples_book(const std::vector<ExampleSheet>& examples, System system) {
    WorkbookGrid book;
    book.name = system == System::us ? "examples-us" : "examples";
    book.title =
        system == System::us ? "Examples to copy from (US customary units)" : "Examples to copy from";
    book.paper = system == System::us ? "letter" : "a4";
    book.sheets.push_back(contents(examples));
    for (const ExampleSheet& example : examples) book.sheets.push_back(ExampleGrid(example, system).grid());
    return book;
}

}  // namespace undercroft::sheets
