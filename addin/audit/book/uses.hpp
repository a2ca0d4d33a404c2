/// \file uses.hpp
/// What a formula rests on: each cell or range that it refers to, and what it does with it.
#pragma once

#include <vector>

#include "addin/audit/book/formulas.hpp"
#include "addin/audit/book/names.hpp"
#include "addin/catalogue/function.hpp"

namespace undercroft::audit {

enum class UseRole {
    link,      ///< the formula is only this
    operand,   ///< of an operator that computes or compares
    argument,  ///< of one of our functions
    passed,    ///< to a function of Calc
    compared,  ///< with a text, or asked whether it is blank: a blank cell is expected
    text,      ///< joined to a text
    observed,  ///< only whether it holds an error, or how many cells there are: its value goes nowhere
};

struct Use {
    Area area;
    UseRole role = UseRole::operand;
    const addin::Node* node = nullptr;          ///< the reference or name as it stands in the formula
    const addin::Node* call = nullptr;          ///< the function whose argument it is
    const addin::Function* function = nullptr;  ///< that function, when it is one of ours
    std::size_t place = 0;                      ///< which argument
    bool guarded = false;  ///< taken only where an IF found that the cell holds something
};

/// What the formula of a group rests on, for the member at `at`; references first to last. What lies in
/// another file, or is a name that cannot be followed, is not in it.
[[nodiscard]] std::vector<Use> uses_of(const Book& book, const Names& names, const FormulaGroup& group,
                                       const Spot& at);

/// A function of Calc that looks at cells without taking their values: ISERROR, ROWS, COUNTA.
[[nodiscard]] bool only_observes(const addin::Node& call);

}  // namespace undercroft::audit
