/// \file sweep.hpp
/// What the sweeps over the catalogue share: good arguments of every function, and what came of a call.
#pragma once

#include <algorithm>
#include <cmath>
#include <ctime>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/evaluate.hpp"
#include "tests/addin/desk.hpp"

namespace undercroft::tests {

/// Arguments that every function accepts: those of its first and of its last worked example.
using Arguments = std::vector<addin::FormulaValue>;
inline const std::map<std::string, std::vector<Arguments>>& good_arguments() {
    static const auto arguments = [] {
        const FormulaDesk desk;
        std::map<std::string, std::vector<Arguments>> made;
        for (const auto& example : worked_examples().rows)
            addin::walk(addin::parse_formula(example.formula), [&](const addin::Node& node) {
                const bool is_call = node.kind == addin::NodeKind::call;
                const addin::Function* function = is_call ? addin::find_function(node.text) : nullptr;
                if (function == nullptr || function->reads_cell()) return;
                auto& sets = made[function->name];
                if (sets.size() == 2) sets.pop_back();
                sets.push_back(desk.arguments(node, *function));
            });
        for (const addin::Function& function : addin::all_functions())
            if (function.parameters.empty()) made[function.name] = {{}};
        return made;
    }();
    return arguments;
}

/// The sanitizers take their time; no limit of time holds under them.
#if defined(__has_feature)
#if __has_feature(address_sanitizer)  // as clang says it
#define UNDERCROFT_IS_SANITIZED
#endif
#elif defined(__SANITIZE_ADDRESS__)  // as GCC says it
#define UNDERCROFT_IS_SANITIZED
#endif
#ifdef UNDERCROFT_IS_SANITIZED
inline constexpr double patience = 1000;
#else
inline constexpr double patience = 1;
#endif

/// What came of a call.
struct Outcome {
    std::optional<addin::Answer> answer;
    std::optional<Refused> refused;
    std::string other;  ///< what an exception says that is no refusal
    double seconds = 0;

    [[nodiscard]] std::string sentence() const { return refused ? refused->what() : std::string(); }
    [[nodiscard]] const double* number() const { return answer ? std::get_if<double>(&*answer) : nullptr; }
};

template <class Call>
Outcome outcome_of(const Call& call) {
    Outcome outcome;
    const std::clock_t start = std::clock();
    try {
        outcome.answer = call();
    } catch (const Refused& refused) {
        outcome.refused = refused;
    } catch (const std::exception& error) {
        outcome.other = error.what();
    }
    outcome.seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    return outcome;
}
inline Outcome outcome_of(const addin::Function& function, const std::vector<addin::Cell>& cells) {
    return outcome_of([&] { return function.call(cells); });
}

inline bool is_sound_number(double number) {
    return std::isfinite(number) && !(number == 0 && std::signbit(number));
}
inline bool is_sound(const addin::Answer& answer) {
    if (const double* number = std::get_if<double>(&answer)) return is_sound_number(*number);
    const auto* rows = std::get_if<addin::ResultRows>(&answer);
    return rows == nullptr || std::all_of(rows->begin(), rows->end(), [](const auto& row) {
               return std::all_of(row.begin(), row.end(), [](const addin::ResultItem& item) {
                   const double* number = std::get_if<double>(&item);
                   return number == nullptr || is_sound_number(*number);
               });
           });
}

/// Whether an argument is a range of several cells.
inline bool takes_range(const addin::Parameter& parameter) {
    const std::vector<addin::ValueType>& otherwise = parameter.type.otherwise;
    return parameter.type.is_range() || (!otherwise.empty() && otherwise.front().is_range());
}

}  // namespace undercroft::tests
