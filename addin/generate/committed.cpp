#include "addin/generate/committed.hpp"

#include <sstream>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/sketches.hpp"
#include "addin/generate/writers.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

constexpr std::string_view examples_head =
    "# Worked examples through our functions: what is published beside what we compute. Written from the "
    "entries\n"
    "# of the catalogue; to change one, change its entry.\n"
    "#\n"
    "#   formula | value of the source | tolerance | origin | source\n"
    "#\n"
    "# The tolerance is half of the last printed digit unless the source is read from a chart; `rel` makes "
    "it\n"
    "# relative, `exact` wants the same text or number. Origins: published (a printed figure, read or "
    "reproduced from\n"
    "# the source named), from memory (recalled and recomputed), math (a closed form or identity), common "
    "practice (a\n"
    "# fact of the trade with no published source). A line that starts with spaces goes on with the line "
    "before.\n";

constexpr std::string_view equations_head =
    "# function | symbols of its arguments | equation\n"
    "# Written from the entries of the catalogue; the notes of the sheets take theirs from here.\n";

constexpr std::string_view domains_head =
    "# function | argument | usual for a number without a unit | possible | where that comes from\n"
    "# Written from the entries of the catalogue. A column of a table stands behind the argument, from 1.\n";

std::string table_text(const ExampleTable& table) {
    std::string text = "table " + table.name + " | " + table.title;
    for (const std::vector<std::string>& row : table.rows) {
        text += "\n    | ";
        for (std::size_t i = 0; i < row.size(); ++i) text += (i == 0 ? "" : "; ") + row[i];
    }
    return text + "\n";
}

std::string domain_line(const std::string& what, const Limits& limits) {
    return what + " | " + (limits.usual.empty() ? "every number" : limits.usual) + " | " +
           (limits.possible.empty() ? "every number" : limits.possible) + " | " + limits.why + "\n";
}

}  // namespace

std::string worked_examples() {
    std::string text(examples_head);
    text += '\n';
    for (const ExampleTable& table : example_tables()) text += table_text(table);
    for (const Group& group : catalogue()) {
        std::string rows;
        for (const Function& function : group.functions)
            for (const Example& example : function.examples)
                rows += example.formula + " | " + example.value + " | " + example.tolerance + " | " +
                        std::string(origin_text(example.origin)) + " | " + example.source + "\n";
        if (!rows.empty()) text += "\n## " + group.title + "\n" + rows;
    }
    return text;
}

std::string domains() {
    std::string text(domains_head);
    for (const Function& function : all_functions())
        for (const Parameter& parameter : function.parameters) {
            const std::string what = function.name + " | " + parameter.name;
            if (parameter.limits.is_stated) text += domain_line(what, parameter.limits);
            for (std::size_t c = 0; c < parameter.limits.columns.size(); ++c)
                if (parameter.limits.columns[c].is_stated)
                    text +=
                        domain_line(what + ", column " + std::to_string(c + 1), parameter.limits.columns[c]);
        }
    return text;
}

std::string equations() {
    std::string text(equations_head);
    for (const Function& function : all_functions()) {
        if (function.equation == "-") continue;
        std::vector<std::string> symbols;
        for (const Parameter& parameter : function.parameters) symbols.push_back(parameter.symbol);
        text += function.name + " | " + joined(symbols, "; ") + " | " + function.equation + "\n";
    }
    return text;
}

std::vector<CommittedFile> committed_files() {
    std::vector<CommittedFile> files = {{"addin/FUNCTIONS.md", functions_reference()},
                                        {"addin/names.txt", stored_names()},
                                        {"sheets/equations.txt", equations()},
                                        {"sheets/worked-examples.txt", worked_examples()},
                                        {"tests/data/domains.txt", domains()}};
    for (const Sketch sketch : all_sketches())
        files.push_back({"addin/sketches/" + sketch_name(sketch) + ".svg", sketch_file(sketch)});
    return files;
}

std::vector<std::string> lost_names(std::string_view committed, std::string_view now) {
    std::istringstream lines{std::string(committed)};
    std::vector<std::string> lost;
    for (std::string line; std::getline(lines, line);) {
        const bool stands = now.find(line + "\n") != std::string_view::npos ||
                            now.find(line + "; [") != std::string_view::npos ||
                            (line.ends_with("\t") && now.find(line + "[") != std::string_view::npos);
        if (!stands) lost.push_back(line);
    }
    return lost;
}

}  // namespace undercroft::addin
