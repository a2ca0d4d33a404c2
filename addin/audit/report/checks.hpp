/// \file checks.hpp
/// Every check of a workbook on one table: what is demanded, what there is, after whom, and whether it rests
/// on any input at all.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/report/sheet_heads.hpp"

namespace undercroft::audit {

enum class CheckVerdict { fails, error, open, passes, not_counted };
[[nodiscard]] std::string_view text_of(CheckVerdict verdict);

/// What a check rests on.
enum class RestsOn {
    inputs,    ///< what is demanded and what there is both rest on something typed
    one_side,  ///< one of the two is a number in the formula
    nothing,   ///< no typed cell can change it
};
[[nodiscard]] std::string_view text_of(RestsOn rests);

/// A check, or the same check down a column; then the worst of them.
struct CheckLine {
    Spot first;
    std::string target;     ///< `Storage.G18`, the first cell
    std::string cells;      ///< `Storage.G18`, `Flow.F12:F20`
    std::size_t count = 1;  ///< of cells
    std::string reference;  ///< the number of its row: `St12`
    std::string label;
    CheckVerdict verdict = CheckVerdict::passes;
    std::string shown;  ///< as the cell shows it where it is neither 0 nor 1
    std::optional<double> demand;
    std::optional<double> capacity;
    std::string demand_text;  ///< with six digits, or as the day that it is; empty where there is none
    std::string capacity_text;
    bool of_days = false;         ///< one of them is a day of the calendar
    std::string unit;             ///< of both
    std::optional<double> ratio;  ///< demand over capacity; levels and days have none
    std::string source;
    RestsOn rests = RestsOn::inputs;
};

/// Those that fail first, then in the order of the sheets.
[[nodiscard]] std::vector<CheckLine> checks_of(const AuditedBook& audited, const SheetHeads& heads);

}  // namespace undercroft::audit
