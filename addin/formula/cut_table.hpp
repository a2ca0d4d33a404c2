/// \file cut_table.hpp
/// How many rows a table of ours has and how many of them a range shows.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "addin/formula/evaluate.hpp"

namespace undercroft::addin {

/// Rows of values of the table that a formula gives; nothing where it gives none of ours.
/// \throws Refused where it cannot be computed.
[[nodiscard]] std::optional<std::size_t> rows_of_table(const Evaluator& values, const Node& formula);

/// The same of a function that gives a table, and the values of its arguments.
[[nodiscard]] std::size_t rows_given(const Function& function, const std::vector<FormulaValue>& values);

/// "21 rows, 19 shown: ...", with what to do where some are missing.
[[nodiscard]] std::string extent_text(std::size_t rows, std::size_t shown);

}  // namespace undercroft::addin
