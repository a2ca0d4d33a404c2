/// \file groundwater.hpp
/// Water in the ground: infiltration, permeability, seepage into a pit and pumping it dry.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Cumulative infiltration into ponded soil after a time.
///
/// F - N ln(1 + F/N) = K t with N = psi (moisture deficit); N = 0 gives F = K t. Green and Ampt (1911), as in
/// Chow, Maidment and Mays, Applied Hydrology (1988), eq. 4.3.8. Root by TOMS 748 (Boost.Math).
/// \throws Refused(domain) for a conductivity not above 0, a suction or time below 0, a deficit not from 0
/// to 1.
[[nodiscard]] Length green_ampt_infiltration(Speed conductivity, Length suction, Share moisture_deficit,
                                             Time time);

/// Permeability by the falling-head test: k = a L / (A t) ln(h1/h2).
///
/// Das, Principles of Geotechnical Engineering, falling-head test (from memory).
/// \throws Refused(domain) for a value not above 0, or a head that does not fall.
[[nodiscard]] Speed falling_head_permeability(Area tube_area, Length sample_length, Area sample_area,
                                              Time time, Length head_start, Length head_end);

/// Steady seepage into an open pit in an unconfined aquifer: Q = pi k (H^2 - h^2) / ln(R/r).
///
/// Dupuit and Thiem, as in UFC 3-220-05, Dewatering and Groundwater Control, ch. 4. R and r are both measured
/// from the centre of the pit.
/// \throws Refused(domain) for a permeability or radius not above 0, a depth inside below 0 or above that
/// outside, an influence radius that does not reach beyond the pit.
[[nodiscard]] Flow pit_seepage(Speed permeability, Length water_depth_outside, Length water_depth_inside,
                               Length influence_radius, Length equivalent_radius);

/// Radius of the circle as large as a rectangular pit: r = sqrt(L W/pi). Common practice.
/// \throws Refused(domain) for a length or width not above 0.
[[nodiscard]] Length equivalent_radius(Length length, Length width);

/// How far from the pit's edge groundwater is lowered: R0 = C s sqrt(k), C = 3000 (s/m)^0.5.
///
/// Sichardt, as in Broward County, Florida, Environmental Engineering and Permitting Division, Exhibit III;
/// an empirical rule. The radius from the centre of the pit is R0 + r. \throws Refused(domain) for a
/// permeability not above 0, a drawdown below 0.
[[nodiscard]] Length influence_distance(Speed permeability, Length drawdown);

/// Time to pump standing water out while more flows in: t = V / (Qp - Qi). Common practice.
/// \throws Refused(domain) for a volume or pumping not above 0, an inflow below 0; Refused(no_answer) when
/// pumping does not exceed the inflow.
[[nodiscard]] Time pump_time(Volume volume, Flow pumping, Flow inflow);

}  // namespace undercroft::calc
