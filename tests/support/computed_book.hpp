/// \file computed_book.hpp
/// A made-up workbook computed without an office: what its formulas show, as Calc would, for the functions
/// that small engineers' sheets use.
#pragma once

#include "addin/audit/book/book.hpp"

namespace undercroft::tests {

/// Gives every formula its value or error. A function that is not known here shows #NAME?.
void compute(audit::Book& book);

}  // namespace undercroft::tests
