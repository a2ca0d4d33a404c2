/// \file large_book.hpp
/// A workbook with many formulas, as a big job has them: tables that run down, sums, links, functions of
/// ours.
#pragma once

#include <string>

#include "addin/audit/book/book.hpp"

namespace undercroft::tests {

/// About `formulas` formula cells on several sheets.
[[nodiscard]] audit::Book large_book(std::int32_t formulas);

}  // namespace undercroft::tests
