/// \file drift.hpp
/// What became of a template in a workbook, in numbers.
#pragma once

#include <string>
#include <vector>

#include "addin/audit/book/template_match.hpp"

namespace undercroft::audit {

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

}  // namespace undercroft::audit
