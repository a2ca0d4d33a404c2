/// \file formula_line.hpp
/// One formula as the map of the workbook shows it: where, what it is called, as typed, what it gives, where
/// its equation comes from, and what it rests on.
#pragma once

#include <string>

#include "addin/audit/findings/audited_book.hpp"

namespace undercroft::audit {

struct FormulaLine {
    std::string label;
    std::string formula;
    std::string unit;
    std::string equation;  ///< of our functions in it; empty where Calc computes alone
    std::string source;
    std::string inputs;  ///< `bed_length = 39.99 m (Takeoff.G5:H5); ...`
};

[[nodiscard]] FormulaLine line_of(const AuditedBook& audited, const FormulaCell& formula);

/// What a cell of that sheet shows: a day as one, other numbers with six digits.
[[nodiscard]] std::string shown_value(const Book& book, std::int32_t sheet, const BookCell& cell);

}  // namespace undercroft::audit
