/// \file unit_answer.hpp
/// The answer about the units of one formula - consistent, inconsistent, cannot tell, or no unit given, and
/// never a guess - and the slips that were seen on the way.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/formulas.hpp"

namespace undercroft::audit {

enum class UnitVerdict { consistent, inconsistent, cannot_tell, not_given };

/// `consistent`, `inconsistent`, `cannot tell`, `no unit given`
[[nodiscard]] std::string text_of(UnitVerdict verdict);

struct UnitAnswer {
    UnitVerdict verdict = UnitVerdict::cannot_tell;
    std::string reason;
    std::optional<Spot> cell;
    bool of_size = false;  ///< inconsistent in size only: a factor is missing, or one too many
};

enum class SlipKind {
    clash,        ///< different units are added, compared or handed over
    passed_bare,  ///< a number is handed over without its unit, and is read in another
    left_out,     ///< a unit stands beside a number, but the formula does not look at it
    bare_number,  ///< a literal stands for a quantity
};

/// Something about units that a checker must see.
struct UnitSlip {
    using Kind = SlipKind;
    SlipKind kind = SlipKind::clash;
    std::string says;
    std::optional<Spot> cell;
    bool is_minor = false;  ///< right as it stands, and wrong once a unit is changed
};

struct UnitReading {
    UnitAnswer answer;
    std::vector<UnitSlip> slips;
};

struct UnitSources;

/// How many more formulas that show an error may be computed again for their reason.
struct ErrorsToExplain {
    int left = 500;
};

/// The units of the group's formula in the cell at `at`. A formula of ours that shows an error takes one of
/// `errors`; when none is left, its error is not explained.
[[nodiscard]] UnitReading read_units(const UnitSources& sources, const FormulaGroup& group, const Spot& at,
                                     ErrorsToExplain& errors);

}  // namespace undercroft::audit
