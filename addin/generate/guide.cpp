#include "addin/generate/guide.hpp"

#include <algorithm>

#include <map>
#include <optional>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/example_call.hpp"
#include "addin/generate/pasted_cells.hpp"
#include "addin/generate/signature.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

std::string left_out(const Parameter& parameter) {
    if (!parameter.optional) return "required";
    return parameter.fallback.empty() ? "may be left out" : "left out: " + parameter.fallback;
}

/// What a formula gives, as a text to compare; nothing where it is refused.
std::optional<std::string> given_by(const std::string& formula) {
    try {
        const ShownResult shown = shown_result(formula);
        std::string text = shown.result;
        for (const auto& row : shown.table) text += joined(row, ";") + "|";
        return text;
    } catch (const Refused&) {
        return std::nullopt;
    }
}

/// How many rows of values the table wants, as the function itself says of one: "two rows or more".
std::string least_rows(std::size_t argument, const ExampleCall& call) {
    WrittenRows rows = call.table(argument);
    if (rows.empty()) return {};
    const bool has_units = has_unit_row(rows);
    rows.resize(std::min<std::size_t>(rows.size(), has_units ? 2 : 1));
    try {
        (void)shown_result(call.with(argument, written_array(rows)));
    } catch (const Refused& refused) {
        const bool wants_two = std::string_view(refused.what()).find("two rows") != std::string_view::npos;
        return wants_two ? "; two rows or more" : "";
    }
    return "; one row or more";
}

/// What a blank cell does there: Calc hands a single one over as 0.
std::string blank_text(const Parameter& parameter, std::size_t argument, const ExampleCall& call) {
    std::string text = left_out(parameter);
    if (parameter.type.is_range())
        return text + least_rows(argument, call) + "; blank rows at its end are passed over";
    const auto blank = call.exists() ? given_by(call.with(argument, "0")) : std::nullopt;
    if (!blank) {
        const bool is_seen = parameter.optional && call.exists() && given_by(call.with(argument, "{\"\"}"));
        return text + "; a blank cell is refused" + (is_seen ? ", a blank pair is as left out" : "");
    }
    const bool is_default =
        parameter.optional && parameter.fallback != "0" && blank == given_by(call.with(argument, ""));
    return text + (is_default ? "; a blank cell is as left out" : "; a blank cell is 0");
}

/// Column by column where it is a table.
std::string ranges(const Limits& limits, const std::string Limits::*range) {
    if (limits.columns.empty()) return limits.*range;
    std::string text;
    for (const Limits& column : limits.columns)
        text += (text.empty() ? "" : "; ") + ((column.*range).empty() ? std::string("-") : column.*range);
    return text.find_first_not_of("-; ") == std::string::npos ? std::string() : text;
}

ShownArgument argument_of(const Parameter& parameter, std::size_t argument, const ExampleCall& call) {
    return {label(parameter),
            parameter.symbol,
            parameter.says + (parameter.order_counts ? "; the order of its rows counts" : ""),
            parameter.kind(),
            ranges(parameter.limits, &Limits::without_unit),
            ranges(parameter.limits, &Limits::possible),
            blank_text(parameter, argument, call)};
}

}  // namespace

std::vector<Example> first_examples(const Function& function, std::size_t most) {
    std::vector<Example> examples = function.examples;
    std::stable_partition(examples.begin(), examples.end(), [](const Example& example) {
        bool by_name = false;
        walk(parse_formula(example.formula),
             [&by_name](const Node& node) { by_name = by_name || node.kind == NodeKind::name; });
        return !by_name;
    });
    examples.resize(std::min(most, examples.size()));
    return examples;
}

std::string outcome_text(const Function& function) {
    const Outcome& outcome = function.outcome;
    const auto bracketed = [](const std::string& unit) {
        return unit.empty() ? std::string() : " [" + (unit == "1" ? "-" : unit) + "]";
    };
    if (outcome.columns.empty() || outcome.columns.front().name.empty())
        return outcome.kind() + bracketed(outcome.unit()) + ": " + outcome.says;
    std::vector<std::string> columns;
    for (const Column& column : outcome.columns) columns.push_back(column.name + bracketed(column.unit()));
    return "a table of columns: " + joined(columns);
}

namespace {

Guide made_guide(const Function& function) {
    Guide guide;
    const ExampleCall call(function);
    for (std::size_t i = 0; i < function.parameters.size(); ++i)
        guide.arguments.push_back(argument_of(function.parameters[i], i, call));
    if (function.reads_cell()) return guide;
    for (const std::string& formula : formulas_to_try(function)) {
        try {
            paste_tables(guide.results.emplace_back(shown_result(formula)));
        } catch (const Refused& refused) {
            broken_entry(function.name, "its formula to try, " + formula + ", is refused: " + refused.what());
        }
    }
    guide.refusals = refusals_of(function, call);
    return guide;
}

}  // namespace

const Guide& guide_of(const Function& function) {
    static std::map<std::string, Guide> made;  // a guide is some hundred calls, and several pages tell of it
    const auto known = made.find(function.name);
    return known != made.end() ? known->second : made.emplace(function.name, made_guide(function)).first->second;
}

}  // namespace undercroft::addin
