#include "addin/generate/guide.hpp"

#include <algorithm>
#include <tuple>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"
#include "addin/generate/example_desk.hpp"
#include "addin/generate/pasted_cells.hpp"
#include "addin/generate/signature.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

std::string error_of(Cause cause) {
    switch (cause) {
        case Cause::value:
            return error_text(519);
        case Cause::domain:
            return error_text(503);
        case Cause::no_answer:
            return error_text(32767);
        case Cause::no_convergence:
            break;
    }
    return error_text(523);
}

std::string cause_of(const Refused& refused) {
    switch (refused.refusal()) {
        case Refusal::dimension:
            return "another dimension";
        case Refusal::blank:
            return "left out or blank";
        case Refusal::unusual:
            return "unusual without a unit";
        case Refusal::impossible:
            return "not possible";
        case Refusal::mixed:
            return "without a unit beside others";
        case Refusal::other:
        case Refusal::not_followed:
            break;
    }
    switch (refused.cause()) {
        case Cause::value:
            return "cannot be read";
        case Cause::domain:
            return "outside the method";
        case Cause::no_answer:
            return "no answer";
        case Cause::no_convergence:
            break;
    }
    return "no solution found";
}

struct Refusing : ShownRefusal {
    Refusal kind = Refusal::other;
};

std::optional<Refusing> refusal_of(const std::string& name, const std::string& formula) {
    try {
        (void)ExampleDesk().value_of(parse_formula(formula));
    } catch (const Refused& refused) {
        std::string reason = refused.what();
        const std::string where = "in " + name + ": ";  // what the evaluator puts before
        if (reason.starts_with(where)) reason.erase(0, where.size());
        return Refusing{{cause_of(refused), error_of(refused.cause()), "=" + formula, reason},
                        refused.refusal()};
    }
    return std::nullopt;
}

/// A call of the function whose arguments can be changed one by one.
class Changed {
public:
    explicit Changed(const Function& function) {
        for (const std::string& formula : formulas_to_try(function)) {
            call_ = parse_formula(formula);
            if (call_.kind != NodeKind::call || call_.text != function.name) continue;
            formula_ = formula;
            return;
        }
    }
    [[nodiscard]] bool stands(std::size_t argument) const {
        return !formula_.empty() && argument < call_.children.size() &&
               call_.children[argument].kind != NodeKind::missing;
    }
    [[nodiscard]] bool refuses(std::size_t argument, const std::string& text) const {
        return refusal_of(call_.text, with(argument, text)).has_value();
    }
    [[nodiscard]] bool exists() const { return !formula_.empty(); }
    [[nodiscard]] std::string with(std::size_t argument, const std::string& text) const {
        std::string arguments;
        for (std::size_t i = 0; i < std::max(call_.children.size(), argument + 1); ++i) {
            if (i > 0) arguments += "; ";
            if (i == argument)
                arguments += text;
            else if (i < call_.children.size())
                arguments += text_of_node(formula_, call_.children[i]);
        }
        return call_.text + "(" + arguments + ")";
    }

private:
    std::string formula_;
    Node call_;
};

bool has_dimension(const Parameter& parameter) {
    return parameter.type.shape == Shape::quantity && !parameter.type.is_plain();
}

std::string rounded(double number) {
    std::string text = exact_text(number);
    return text.size() > 8 ? exact_text(std::stod(std::to_string(static_cast<long long>(number)))) : text;
}

/// A quantity beyond what is possible there, as a text of a formula; empty where all are possible.
std::string impossible_text(const Parameter& parameter) {
    const Limits& limits = parameter.limits;
    const Unit unit = default_unit(parameter.type.dimension);
    const auto with_unit = [&](double number) {
        return '"' + rounded_text(number) + " " + parameter.unit() + '"';
    };
    if (limits.most < Limits::infinity && limits.most > 0)
        return with_unit(10 * unit.scale.from_coherent(limits.most));
    return limits.least >= 0 ? with_unit(-1) : std::string();
}

/// What a person does wrong first: another dimension, a unit that there is not, a bare number in the unit
/// that they had in mind, more than can be, a word that is not in the list, nothing at all.
std::vector<std::string> usual_slips(const Function& function, const Changed& changed) {
    std::vector<std::string> formulas;
    bool dimension = false;
    bool unusual = false;
    bool impossible = false;
    bool word = false;
    for (std::size_t i = 0; i < function.parameters.size(); ++i) {
        if (!changed.stands(i)) continue;
        const Parameter& parameter = function.parameters[i];
        const Limits& limits = parameter.limits;
        if (has_dimension(parameter) && !dimension) {
            const bool mass = parameter.type.dimension == Dimension::of(Base::mass);
            formulas.push_back(changed.with(i, mass ? "\"5 m\"" : "\"5 kg\""));
            formulas.push_back(changed.with(i, "\"5 furlong\""));
            dimension = true;
        }
        if (has_dimension(parameter) && !impossible && !impossible_text(parameter).empty()) {
            formulas.push_back(changed.with(i, impossible_text(parameter)));
            impossible = true;
        }
        if (has_dimension(parameter) && !limits.usual.empty() && limits.usual_most > 0 && !unusual) {
            formulas.push_back(changed.with(i, rounded(limits.usual_most * 100)));
            unusual = true;
        }
        if (parameter.type.shape == Shape::choice && parameter.type.otherwise.empty() && !word) {
            formulas.push_back(changed.with(i, "\"any\""));
            word = true;
        }
    }
    for (std::size_t i = 0; i < function.parameters.size(); ++i) {
        if (!changed.stands(i) || function.parameters[i].optional) continue;
        formulas.push_back(changed.with(i, ""));
        break;
    }
    return formulas;
}

std::vector<ShownRefusal> refusals_of(const Function& function, const Changed& changed) {
    std::vector<Refusing> all;
    for (const std::string& formula : function.guidance.refused) {
        const auto refusal = refusal_of(function.name, formula);
        if (!refusal) broken_entry(function.name, "is said to refuse, and does not: " + formula);
        all.push_back(*refusal);
    }
    for (const std::string& formula : usual_slips(function, changed)) {
        const auto refusal = refusal_of(function.name, formula);
        if (!refusal) continue;
        const bool told = std::any_of(all.begin(), all.end(), [&](const Refusing& other) {
            return other.reason == refusal->reason ||
                   (refusal->kind != Refusal::other && other.kind == refusal->kind);
        });
        if (!told) all.push_back(*refusal);
    }
    std::stable_sort(all.begin(), all.end(), [](const Refusing& a, const Refusing& b) {
        return std::tie(b.error, b.cause) < std::tie(a.error, a.cause);
    });
    return {all.begin(), all.end()};
}

std::string left_out(const Parameter& parameter) {
    if (!parameter.optional) return "required";
    return parameter.fallback.empty() ? "may be left out" : "left out: " + parameter.fallback;
}

/// What a blank cell does there: Calc hands a single one over as 0.
std::string blank_text(const Parameter& parameter, std::size_t argument, const Changed& changed) {
    std::string text = left_out(parameter);
    switch (parameter.type.shape) {
        case Shape::table:
        case Shape::grid:
        case Shape::figures:
            return text + "; blank rows at its end are passed over";
        case Shape::quantity:
        case Shape::percentage:
        case Shape::any_quantity:
            break;
        default:
            return text + "; a blank cell is refused";
    }
    const bool refused = !changed.exists() || changed.refuses(argument, "0");
    return text + (refused ? "; a blank cell is refused" : "; a blank cell is 0");
}

/// Column by column where it is a table.
std::string ranges(const Limits& limits, const std::string Limits::*range) {
    if (limits.columns.empty()) return limits.*range;
    std::string text;
    for (const Limits& column : limits.columns)
        text += (text.empty() ? "" : "; ") + ((column.*range).empty() ? std::string("-") : column.*range);
    return text.find_first_not_of("-; ") == std::string::npos ? std::string() : text;
}

ShownArgument argument_of(const Parameter& parameter, std::size_t argument, const Changed& changed) {
    return {label(parameter),
            parameter.symbol,
            parameter.says + (parameter.order_counts ? "; the order of its rows counts" : ""),
            parameter.kind(),
            ranges(parameter.limits, &Limits::usual),
            ranges(parameter.limits, &Limits::possible),
            blank_text(parameter, argument, changed)};
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

Guide guide_of(const Function& function) {
    Guide guide;
    const Changed changed(function);
    for (std::size_t i = 0; i < function.parameters.size(); ++i)
        guide.arguments.push_back(argument_of(function.parameters[i], i, changed));
    if (function.reads_cell()) return guide;
    for (const std::string& formula : formulas_to_try(function)) {
        try {
            guide.results.push_back(shown_result(formula));
        } catch (const Refused& refused) {
            broken_entry(function.name, "its formula to try, " + formula + ", is refused: " + refused.what());
        }
    }
    guide.refusals = refusals_of(function, changed);
    guide.pasted = pasted_cells(function);
    return guide;
}

}  // namespace undercroft::addin
