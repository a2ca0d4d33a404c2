/// \file inflow.hpp
/// What a hydrograph must be to flow into a bed.
#pragma once

#include "calc/water/hydrograph.hpp"

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

}  // namespace undercroft::calc
