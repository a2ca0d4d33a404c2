#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"

namespace undercroft::addin {

namespace {

std::string arguments_text(const Function& function) {
    std::string text;
    for (const Parameter& parameter : function.parameters) {
        if (!text.empty()) text += "; ";
        const std::string fallback = parameter.fallback.empty() ? "" : " " + parameter.fallback;
        text += parameter.optional ? "[" + parameter.name + fallback + "]" : parameter.name;
    }
    return text;
}

std::string source_of(std::string name) {
    const Function* function = find_function(name);
    if (function == nullptr)
        no_answer("function name: '" + name.substr(0, 60) + "' is no function of this add-in");
    const std::string caution = function->caution.empty() ? "" : ". " + function->caution;
    return function->source + caution;
}

ResultRows catalogue_table() {
    ResultRows rows = {
        {std::string("function"), std::string("equation"), std::string("source"), std::string("arguments")}};
    for (const Function& function : all_functions())
        rows.push_back({function.name, function.equation, function.source, arguments_text(function)});
    return rows;
}

/// A function that is given the cell itself; the component answers it.
Function cell_reader(const char* name, const char* says, const char* also_called, Outcome outcome) {
    Function made;
    made.name = name;
    made.identifier = identifier_of(name);
    made.says = says;
    made.guidance.also_called = also_called;
    for (const char* other : {"UC.WHY", "UC.STEPS", "UC.WHOLE", "UC.SOURCE"})
        if (made.name != other) made.guidance.related.emplace_back(other);
    made.equation = "-";
    made.source = "the catalogue of functions";
    made.role = Role::explains;
    Parameter cell;
    cell.name = "cell";
    cell.says = "The cell to explain";
    cell.type.shape = Shape::cell;
    made.parameters = {cell};
    made.outcome = std::move(outcome);
    return made;
}

Function whole_entry() {
    Function whole =
        cell_reader("UC.WHOLE",
                    "Whether a range holds all rows of the table that it begins: 1 for TRUE, 0 for "
                    "FALSE; UC.WHY of the cell tells how many rows there are and how many are "
                    "shown. A table that is typed is whole where the row below it is blank",
                    "array cut off, missing rows, range too small, spill range, array formula too short",
                    {{.shape = Shape::verdict}, {}, "1 when it is whole, else 0"});
    whole.source = "common practice";
    whole.parameters.front().name = "table";
    whole.parameters.front().says = "The range of the table, with or without its row of units";
    return whole;
}

}  // namespace

Group checker_functions() {
    Outcome why{{.shape = Shape::text}, {}, "Reason or derivation"};
    Outcome steps{{.shape = Shape::rows}, {}, "Derivation as a table"};
    return {
        "For the checker",
        {
            cell_reader("UC.WHY",
                        "Why a cell shows what it shows: of an error the reason, of a good cell the "
                        "equation, each symbol with its value, the result and the source",
                        "explain a cell, error message, reason of #VALUE!, trace, check a formula", why),
            cell_reader("UC.STEPS",
                        "The derivation of a cell as a table: symbol, argument, as given, in SI, unit, cell; "
                        "then result, equation and source",
                        "calculation steps, working shown, derivation, print the calculation", steps),
            whole_entry(),
            function("UC.SOURCE", &source_of)
                .role(Role::explains)
                .says("Where the equation of a function comes from")
                .related({"UC.WHY", "UC.CATALOGUE", "UC.STEPS"})
                .also_called("reference, citation, standard, where the equation comes from")
                .equation("-")
                .source("the catalogue of functions")
                .takes("function name", "name", "Name of the function, such as UC.PIT.VOLUME")
                .gives("", "Source")
                .example("UC.SOURCE(\"UC.TOTAL\")", "common practice", "exact", Origin::mathematics,
                         "as its entry says"),
            function("UC.CATALOGUE", &catalogue_table)
                .role(Role::tells_version)
                .says("All functions: name, equation, source, arguments")
                .related({"UC.SOURCE", "UC.WHY", "UC.VERSION"})
                .also_called("list of functions, index, overview, help")
                .equation("-")
                .source("the catalogue of functions")
                .gives("", "Table of the functions"),
            function("UC.VERSION", &version)
                .role(Role::tells_version)
                .says("Version of the functions that computed this sheet")
                .related({"UC.CATALOGUE"})
                .also_called("release, which version, add-in version")
                .equation("-")
                .source("the catalogue of functions")
                .gives("", "Version"),
        }};
}

}  // namespace undercroft::addin
