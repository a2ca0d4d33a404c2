/// \file inflow.hpp
/// What a hydrograph must be to flow into a bed.
#pragma once

#include <cmath>

#include "calc/water/hydrograph.hpp"
#include "units/text.hpp"

namespace undercroft::calc {

/// Refuses fewer than two rows, a flow below 0, or times that do not rise.
inline void require_inflow(const Hydrograph& inflow) {
    require(inflow.size() >= 2, "the inflow needs at least two rows of time and flow");
    for (std::size_t i = 0; i < inflow.size(); ++i) {
        const auto& [time, flow] = inflow[i];
        require_not_negative("inflow", flow);
        require(is_finite(time) && (i == 0 || is_above(time, std::get<0>(inflow[i - 1]))),
                shown("time", time), " of inflow must be later than that of the row before");
    }
}

/// Refuses a hydrograph that is plainly cut off: what still flows at its end would go on filling the bed.
inline void require_whole_inflow(const Hydrograph& inflow) {
    require_inflow(inflow);
    Flow peak{};
    for (const auto& [time, flow] : inflow) peak = is_above(flow, peak) ? flow : peak;
    const Flow last = std::get<1>(inflow.back());
    constexpr double near_nothing = 0.05;
    require(!is_above(last, near_nothing * peak), shown("inflow", last), " in its last row is ",
            rounded_text(std::round(100 * (last / peak))),
            " % of its peak: the table is cut off before the storm is over (UC.WHOLE tells); give all its "
            "rows, or "
            "end it with 0");
}

}  // namespace undercroft::calc
