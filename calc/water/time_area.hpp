/// \file time_area.hpp
/// Runoff of a storm of any shape by the time-area method.
#pragma once

#include "calc/water/hydrograph.hpp"
#include "calc/water/hyetograph.hpp"

namespace undercroft::calc {

/// What the ground keeps of the rain before any runs off, and after.
struct RainLosses {
    Length initial = zero;
    Speed continuing = zero;  ///< of the rain that falls once the initial loss is made up
};

/// Flow from a storm on a catchment of which ever more contributes, evenly over the time of concentration.
///
/// Q(t) = C A (E(t) - E(t - tc))/tc, E the rain since the start less its losses: the linear time-area
/// diagram, of which the trapezoid of the modified rational method is the case of steady rain. E is straight
/// between the storm's rows, so Q is straight between the rows of this table: at the times of the storm and
/// tc later. Its volume is C A E exactly. Chow, Maidment and Mays, Applied Hydrology (1988), sec. 7.5 and
/// 15.1; losses common practice.
/// \throws Refused(domain) for a coefficient not above 0 or over 1, an area or time of concentration not
/// above 0, a loss below 0, a storm of fewer than two rows, that does not begin with rain 0, whose time does
/// not rise or whose rain falls.
[[nodiscard]] Hydrograph time_area_hydrograph(Share coefficient, Area area, const Hyetograph& storm,
                                              Time time_of_concentration, const RainLosses& losses = {});

}  // namespace undercroft::calc
