/// \file guide.hpp
/// What the reference shows of one function beyond its arguments, computed: formulas with what they give,
/// what is refused and why, a table to paste. Written as Markdown and as a page from this.
#pragma once

#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "addin/generate/refusals.hpp"

namespace undercroft::addin {

using TextRows = std::vector<std::vector<std::string>>;

/// A formula and what it gives. Its tables are cells to paste at A1: how a table is written within a formula
/// depends on the language of the office.
struct ShownResult {
    TextRows cells;
    std::string formula;  ///< with its `=`
    std::string result;   ///< `p = 69.97 kPa`; of a table, what it is
    TextRows table;       ///< its first rows
    std::size_t rows = 0;
};

/// One argument of the table of arguments.
struct ShownArgument {
    std::string label;
    std::string symbol;
    std::string says;
    std::string kind;
    std::string usual;     ///< of a number without a unit
    std::string possible;  ///< of a quantity with its unit
    std::string blank;     ///< what a left out one and a blank cell mean
};

struct Guide {
    std::vector<ShownArgument> arguments;
    std::vector<ShownResult> results;
    std::vector<ShownRefusal> refusals;
};

/// \throws std::logic_error for a formula to try that is refused, and for a refused one that is not.
[[nodiscard]] const Guide& guide_of(const Function& function);

/// Its first worked examples; those that need a published table by its name come last.
[[nodiscard]] std::vector<Example> first_examples(const Function& function, std::size_t most);

/// What it gives, in words.
[[nodiscard]] std::string outcome_text(const Function& function);

/// What a formula gives. \throws Refused
[[nodiscard]] ShownResult shown_result(const std::string& formula);

/// The formulas from which a reader learns: those of the entry to try, else its worked examples.
[[nodiscard]] std::vector<std::string> formulas_to_try(const Function& function);

}  // namespace undercroft::addin
