#include "sheets/builder/worked_examples_book.hpp"

#include <cmath>
#include <map>
#include <optional>

#include "sheets/builder/formula_text.hpp"
#include "sheets/builder/numbers.hpp"

namespace undercroft::sheets {

namespace {

enum Column { ref, formula, published, ours, difference, allowed, verdict, tag, source, last = source };
constexpr double example_widths_cm[] = {1.1, 9.4, 2.4, 2.6, 2.2, 2.0, 1.6, 2.4, 8.2};
constexpr int first_row = 4;

class Book {
public:
    explicit Book(const WorkedExamples& examples) {
        place(examples.tables);
        sheet_.name = "Examples";
        sheet_.wide = true;
        sheet_.print_columns = last + 1;
        sheet_.head_rows = first_row;
        sheet_.column_widths_cm.assign(std::begin(example_widths_cm), std::end(example_widths_cm));
        int at = first_row;
        std::string section;
        for (const WorkedExample& example : examples.rows) {
            if (example.section != section) {
                section = example.section;
                ++at;
                for (int c = 0; c <= last; ++c) cell(at, c, "Section");
                text(at++, ref, "Section", section);
            }
            add(example, at++);
        }
        sheet_.rows = at + 1;
        head();
    }

    WorkbookGrid book() {
        WorkbookGrid made;
        made.name = "worked-examples";
        made.title = "Published worked examples through the functions";
        made.paper = "a4";
        made.sheets.push_back(sheet_);
        made.sheets.push_back(tables_);
        return made;
    }

private:
    /// The tables side by side on a sheet of their own; `ranges_` says where.
    void place(const std::vector<ExampleTable>& tables) {
        tables_.name = "Tables";
        tables_.wide = true;
        tables_.head_rows = 1;
        put(tables_, 0, 0, "Title", "Published tables that the examples use by name");
        int column = 0;
        for (const ExampleTable& table : tables) {
            put(tables_, 2, column, "TableTitle", table.name);
            put(tables_, 3, column, "Note", table.title);
            int row = 4;
            for (const std::vector<std::string>& cells : table.rows) {
                for (std::size_t c = 0; c < cells.size(); ++c)
                    put(tables_, row, column + static_cast<int>(c), "TableNumber", cells[c]);
                ++row;
            }
            const int last_column = column + static_cast<int>(table.rows.front().size()) - 1;
            ranges_[table.name] =
                "[$Tables." + cell_text(4, column, true) + ":." + cell_text(row - 1, last_column, true) + "]";
            column = last_column + 2;
            tables_.rows = std::max(tables_.rows, row);
        }
        tables_.print_columns = column;
        tables_.column_widths_cm.assign(static_cast<std::size_t>(column), 2.4);
    }

    static void put(SheetGrid& sheet, int row, int column, const char* style, const std::string& content) {
        SheetCell& made = sheet.cells[{row, column}];
        made.style = style;
        if (const std::optional<double> number = number_in(content)) {
            made.type = SheetCell::Type::number;
            made.number = *number;
        } else {
            made.type = SheetCell::Type::text;
            made.text = content;
        }
    }

    SheetCell& cell(int row, int column, const char* style) {
        SheetCell& made = sheet_.cells[{row, column}];
        made.style = style;
        return made;
    }
    void text(int row, int column, const char* style, const std::string& words) {
        SheetCell& made = cell(row, column, style);
        made.type = words.empty() ? SheetCell::Type::blank : SheetCell::Type::text;
        made.text = words;
    }
    void number(int row, int column, const char* style, double value) {
        SheetCell& made = cell(row, column, style);
        made.type = SheetCell::Type::number;
        made.number = value;
    }
    void computed(int row, int column, const char* style, const std::string& stored) {
        SheetCell& made = cell(row, column, style);
        made.type = SheetCell::Type::formula;
        made.text = "of:=" + stored;
    }

    void head() {
        text(0, ref, "Title", "Published worked examples through the functions");
        text(1, ref, "JobLine",
             "Each row is computed here by the function and held against the figure of its source; `allowed` "
             "is half of its last printed digit, or as its source is read.");
        const std::string range =
            "[.G" + std::to_string(first_row + 1) + ":.G" + std::to_string(sheet_.rows) + "]";
        const std::string passed = "SUM(" + range + ")";
        computed(2, ref, "State",
                 "IF(ISERROR(" + passed + ");\"A row shows an error\";" + passed + "&\" of " +
                     std::to_string(sheet_.checks.size()) + " rows agree\")");
        const char* heads[] = {"Row",     "Function", "Published",      "Ours",  "Difference",
                               "Allowed", "Agrees",   "Kind of source", "Source"};
        for (int c = 0; c <= last; ++c)
            text(3, c, c >= published && c <= allowed ? "HeadingRight" : "Heading", heads[c]);
    }

    void add(const WorkedExample& example, int at) {
        const std::string own = "[." + cell_text(at, ours) + "]";
        const std::string theirs = "[." + cell_text(at, published) + "]";
        number(at, ref, "Ref", ++count_);
        text(at, formula, "Note", example.formula);
        computed(at, ours, "NumberPlain", stored_formula(example.formula, [this](const std::string& word) {
                     const auto range = ranges_.find(word);
                     return range == ranges_.end() ? std::string() : range->second;
                 }));
        if (example.number) {
            number(at, published, "NumberPlain", *example.number);
            computed(at, difference, "NumberPlain", own + "-" + theirs);
            number(at, allowed, "NumberPlain", example.tolerance);
            computed(at, verdict, "Verdict",
                     "IF(ABS([." + cell_text(at, difference) + "])<=[." + cell_text(at, allowed) +
                         "]*(1+1E-9)+1E-14*ABS(" + theirs + ");1;0)");
        } else {
            text(at, published, "NumberPlain", example.text);
            computed(at, verdict, "Verdict", "IF(EXACT(" + own + ";" + theirs + ");1;0)");
        }
        text(at, tag, "Note", example.tag);
        text(at, source, "Note", example.source);
        sheet_.checks.emplace_back(at, verdict);
        const auto lines = [](const std::string& words, double width_cm) {
            return std::ceil(static_cast<double>(words.size()) * 0.136 / (width_cm - 0.3));
        };
        sheet_.row_heights_cm[at] = std::max(lines(example.formula, example_widths_cm[formula]),
                                             lines(example.source, example_widths_cm[source])) *
                                        0.4 +
                                    0.15;
    }

    SheetGrid sheet_;
    SheetGrid tables_;
    std::map<std::string, std::string> ranges_;
    int count_ = 0;
};

}  // namespace

WorkbookGrid worked_examples_book(const WorkedExamples& examples) {
    return Book(examples).book();
}

}  // namespace undercroft::sheets
