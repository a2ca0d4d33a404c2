/// \file load_spread.hpp
/// Load that spreads with depth: over a patch, and from a strip to what may bear it.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Mean pressure of a load on a patch L x W after it has spread on all four sides by s per unit of depth:
/// p = P/((L + 2 s z)(W + 2 s z)). 2V:1H is s = 0.5. Common practice ("2:1 method").
/// \throws Refused(domain) for a load, length or width not above 0, a depth below 0, or a spread that is
/// not between vertical and 1V:1H.
[[nodiscard]] Pressure spread_load(Force load, Length length, Length width, Length depth, Batter spread);

/// Thickness of base stone that brings the pressure under a long strip down to what the subgrade may bear:
/// t = w (p/pa - 1)/(2 s), 0 where p is no more than pa. Equilibrium of a strip that spreads to both sides.
/// \throws Refused(domain) for a pressure, width or allowable not above 0, or a spread that is not above
/// vertical and at most 1V:1H.
[[nodiscard]] Length base_thickness(Pressure pressure, Length loaded_width, Pressure allowable,
                                    Batter spread);

/// Width of side fill that brings the lateral pressure of a loaded bed, which acts over a height, down to
/// what the wall of the trench may take: w = h (p/pa - 1)/(2 s), 0 where p is no more than pa. The push
/// spreads upward and downward by s per unit of width. Equilibrium.
/// \throws Refused(domain) as base_thickness.
[[nodiscard]] Length side_fill_width(Pressure lateral_pressure, Length height, Pressure allowable,
                                     Batter spread);

/// Refuses a spread below 0 or wider than 1V:1H: a slip such as 2H:1V for 2V:1H would hide most of the load.
void require_spread(Batter spread);

}  // namespace undercroft::calc
