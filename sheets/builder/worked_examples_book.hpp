/// \file worked_examples_book.hpp
/// The worked examples as a workbook: published value, ours, difference, verdict, source, one row each.
#pragma once

#include <vector>

#include "sheets/builder/grid.hpp"
#include "sheets/builder/worked_examples.hpp"

namespace undercroft::sheets {

[[nodiscard]] WorkbookGrid worked_examples_book(const WorkedExamples& examples);

}  // namespace undercroft::sheets
