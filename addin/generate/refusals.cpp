#include "addin/generate/refusals.hpp"

#include <algorithm>
#include <optional>
#include <tuple>

#include "addin/formula/cell_error.hpp"
#include "addin/generate/example_desk.hpp"
#include "addin/generate/slips.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* cause_outside_method = "outside the method";

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
            return cause_outside_method;
        case Cause::no_answer:
            return "no answer";
        case Cause::no_convergence:
            break;
    }
    return "no solution found";
}

struct Refusing {
    ShownRefusal shown;
    bool has_kind = false;     ///< one sentence of this cause stands for all
    bool is_declared = false;  ///< the entry shows it
};

std::optional<Refusing> refusal_of(const Function& function, const std::string& formula) {
    try {
        (void)ExampleDesk().value_of(parse_formula(formula));
    } catch (const Refused& refused) {
        if (refused.refusal() == Refusal::not_followed) return std::nullopt;
        std::string reason = refused.what();
        const std::string where = "in " + function.name + ": ";  // what the evaluator puts before
        if (reason.starts_with(where)) reason.erase(0, where.size());
        return Refusing{{cause_of(refused), error_of(refused.cause()), {}, "=" + formula, reason},
                        refused.refusal() != Refusal::other};
    }
    return std::nullopt;
}

/// A sentence without the argument's name and without its numbers: what it says of any.
std::string in_general(const std::string& reason, const Function& function) {
    std::string text = reason;
    for (const Parameter& parameter : function.parameters)
        if (text.starts_with(parameter.name + ": ")) text.erase(0, parameter.name.size() + 2);
    std::erase_if(text, [](char c) { return is_digit(c) || c == '.' || c == '-' || c == '+' || c == 'e'; });
    return text;
}

/// All that is refused, one row for what is said in the same words.
class Collected {
public:
    explicit Collected(const Function& function) : function_(function) {}

    void add(const Refusing& refusal, const std::string& argument) {
        const auto same = std::find_if(rows_.begin(), rows_.end(), [&](const Refusing& row) {
            if (row.shown.cause != refusal.shown.cause) return false;
            return refusal.has_kind ||
                   in_general(row.shown.reason, function_) == in_general(refusal.shown.reason, function_);
        });
        if (same == rows_.end() || refusal.is_declared) {
            const bool is_of_method = refusal.shown.cause == cause_outside_method;
            if (!refusal.is_declared && is_of_method && count(refusal.shown.cause) >= most_sentences) return;
            rows_.push_back(refusal);
            note(rows_.back(), argument);
        } else {
            note(*same, argument);
        }
    }
    [[nodiscard]] std::vector<ShownRefusal> sorted() {
        std::stable_sort(rows_.begin(), rows_.end(), [](const Refusing& a, const Refusing& b) {
            return std::tie(b.shown.error, b.shown.cause) < std::tie(a.shown.error, a.shown.cause);
        });
        std::vector<ShownRefusal> all;
        for (const Refusing& row : rows_) all.push_back(row.shown);
        return all;
    }

private:
    static constexpr std::ptrdiff_t most_sentences = 4;  ///< of a method, beside those of the entry

    static void note(Refusing& row, const std::string& argument) {
        std::vector<std::string>& names = row.shown.arguments;
        if (!argument.empty() && std::find(names.begin(), names.end(), argument) == names.end())
            names.push_back(argument);
    }
    [[nodiscard]] std::ptrdiff_t count(const std::string& cause) const {
        return std::count_if(rows_.begin(), rows_.end(), [&](const Refusing& row) {
            return row.shown.cause == cause && !row.is_declared;
        });
    }

    const Function& function_;
    std::vector<Refusing> rows_;
};

/// The argument that a sentence names first; empty where it names none.
std::string argument_named(const std::string& reason, const Function& function) {
    for (const Parameter& parameter : function.parameters)
        if (reason.starts_with(parameter.name + ": ")) return parameter.name;
    return {};
}

}  // namespace

std::vector<ShownRefusal> refusals_of(const Function& function, const ExampleCall& call) {
    Collected collected(function);
    for (const std::string& formula : function.guidance.refused) {
        auto refusal = refusal_of(function, formula);
        if (!refusal) broken_entry(function.name, "is said to refuse, and does not: " + formula);
        refusal->is_declared = true;
        collected.add(*refusal, argument_named(refusal->shown.reason, function));
    }
    if (!call.exists()) return collected.sorted();
    for (std::size_t i = 0; i < function.parameters.size(); ++i)
        for (const std::string& slip : slips_of(function.parameters[i], call.table(i)))
            if (const auto refusal = refusal_of(function, call.with(i, slip)))
                collected.add(*refusal, function.parameters[i].name);
    const std::string mixed = mixed_call(function, call);
    if (const auto refusal = mixed.empty() ? std::nullopt : refusal_of(function, mixed))
        collected.add(*refusal, argument_named(refusal->shown.reason, function));
    return collected.sorted();
}

}  // namespace undercroft::addin
