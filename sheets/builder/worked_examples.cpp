#include "sheets/builder/worked_examples.hpp"

#include <cmath>

#include "sheets/builder/lines.hpp"
#include "sheets/builder/numbers.hpp"

namespace undercroft::sheets {

namespace {

ExampleTable table_in(const Line& line) {
    const std::vector<std::string> fields = fields_of(line.text.substr(std::string_view("table ").size()));
    if (fields.size() < 3) throw TextMistake(line.number, "a table wants a name, a title and rows");
    ExampleTable table{fields[0], fields[1], {}};
    for (std::size_t i = 2; i < fields.size(); ++i) {
        table.rows.push_back(fields_of(fields[i], ';'));
        if (table.rows.back().size() != table.rows.front().size())
            throw TextMistake(line.number, "row " + std::to_string(i - 1) + " has another number of cells");
    }
    return table;
}

double tolerance_in(const std::string& text, const WorkedExample& example) {
    if (text == "exact") return 0;
    const std::size_t space = text.find(' ');
    const std::optional<double> amount = number_in(text.substr(0, space));
    if (!amount || !example.number || *amount < 0)
        throw TextMistake(example.line, "'" + text + "' is no tolerance");
    const std::string kind = space == std::string::npos ? "" : trimmed(text.substr(space));
    if (kind.empty()) return *amount;
    if (kind == "rel") return *amount * std::abs(*example.number);
    if (kind == "%") return *amount / 100 * std::abs(*example.number);
    throw TextMistake(example.line, "'" + kind + "' is no kind of tolerance");
}

}  // namespace

bool WorkedExample::agrees(double computed) const {
    return number && std::abs(computed - *number) <= tolerance * (1 + 1e-9) + 1e-14 * std::abs(*number);
}

WorkedExamples read_worked_examples(std::string_view text) {
    WorkedExamples examples;
    std::string section;
    for (const Line& line : lines_of(text)) {
        if (line.text.starts_with("##")) {
            section = trimmed(std::string_view(line.text).substr(2));
            continue;
        }
        if (line.text.starts_with("table ")) {
            examples.tables.push_back(table_in(line));
            continue;
        }
        const std::vector<std::string> fields = fields_of(line.text);
        if (fields.size() != 5) throw TextMistake(line.number, "five fields parted by '|' are wanted");
        WorkedExample example;
        example.section = section;
        example.line = line.number;
        example.formula = fields[0];
        example.text = fields[1];
        example.number = number_in(fields[1]);
        example.tolerance = tolerance_in(fields[2], example);
        example.tag = fields[3];
        example.source = fields[4];
        if (example.tag != "published" && example.tag != "from memory" && example.tag != "math" &&
            example.tag != "common practice")
            throw TextMistake(line.number, "'" + example.tag + "' is no tag");
        if (example.source.empty()) throw TextMistake(line.number, "a source is wanted");
        examples.rows.push_back(example);
    }
    return examples;
}

}  // namespace undercroft::sheets
