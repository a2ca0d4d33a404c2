/// \file comparison.hpp
/// A workbook held against the template it was made from, cell by cell.
#pragma once

#include <string>
#include <vector>

#include "addin/audit/findings/finding.hpp"
#include "addin/audit/findings/workings.hpp"

namespace undercroft::audit {

/// What a workbook or template says it is.
struct Identity {
    std::string name;     ///< `storage`; empty where it says nothing
    std::string system;   ///< `SI`
    std::string version;  ///< `0.1.0`
    [[nodiscard]] std::string text() const;
};
[[nodiscard]] Identity identity_of(const Book& book);

/// What became of the template.
struct Drift {
    Identity made_from;  ///< as the workbook says
    Identity compared;   ///< the template that it was held against
    std::size_t formulas_same = 0;
    std::size_t formulas_changed = 0;
    std::size_t inputs_same = 0;
    std::size_t inputs_filled = 0;  ///< typed values that differ from the template's
    std::size_t rows_added = 0;
    std::size_t rows_missing = 0;
    struct UnitChange {
        Spot cell;
        std::string says;
    };
    std::vector<UnitChange> units_changed;  ///< to another unit of the same kind, as one may
};

/// Tells in `findings` what differs and should not.
[[nodiscard]] Drift compare(const Workings& workings, const Book& against, Findings& findings);

}  // namespace undercroft::audit
