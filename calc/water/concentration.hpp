/// \file concentration.hpp
/// Time of concentration: how long the farthest water takes to arrive.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Time of concentration of a small catchment: tc = 0.0078 L^0.77 S^-0.385 (min, ft).
///
/// Kirpich, Time of concentration of small agricultural watersheds, Civil Engineering 10 (1940), as in
/// Chow, Maidment and Mays, Applied Hydrology (1988), Table 15.1.2. S is rise per run, not percent.
/// \throws Refused(domain) when length or slope is not above 0.
[[nodiscard]] Time kirpich_time(Length length, Gradient slope);

/// The longest sheet flow for which TR-55 gives its equation: 300 ft.
[[nodiscard]] Length longest_sheet_flow();

/// Travel time of sheet flow: Tt = 0.007 (n L)^0.8 / (P2^0.5 s^0.4) (h, ft, in).
///
/// USDA TR-55 (1986), eq. 3-3. `rain_depth` is the 2-year 24-hour rain, `roughness` Manning's n of the
/// surface (TR-55 Table 3-1).
/// \throws Refused(domain) for a value not above 0, a length over 300 ft, or a rain depth over 5 m.
[[nodiscard]] Time sheet_flow_time(Share roughness, Length length, Length rain_depth, Gradient slope);

}  // namespace undercroft::calc
