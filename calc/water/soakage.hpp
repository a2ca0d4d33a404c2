/// \file soakage.hpp
/// Water that leaves through the ground: soakage test, flow, depth of an infiltrating bed, its emptying.
#pragma once

#include "calc/water/rain.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Soakage rate from a test in a pit: f = V / (a t), with V the volume from 75 % to 25 % of the effective
/// depth, a the internal area to 50 % of it (sides and base) and t the time taken.
///
/// BRE Digest 365, Soakaway design.
/// \throws Refused(domain) for a value not above 0.
[[nodiscard]] Speed soakage_rate(Volume volume, Area area, Time time);

/// Flow into the ground: Q = q (Ab + Aw) / F.
///
/// CIRIA C753, The SuDS Manual (2015), ch. 25.
/// \throws Refused(domain) for an area below 0, both areas 0, a rate below 0, a safety factor below 1.
[[nodiscard]] Flow soakage_flow(Area base_area, Area wall_area, Speed rate, Share safety_factor);

/// A bed that soaks away through its base and walls.
struct SoakageBed {
    Area base;
    Length perimeter;
    Share porosity;
    Speed rate;  ///< safety factor taken off
};

/// Deepest water in that bed for rain of every duration in the table on a drained area.
///
/// n A dh/dt = i Ad - q (A + P h) gives h(D) = (i Ad - q A) D / (n A) (1 - exp(-b D)) / (b D) with b = P q /
/// (n A): CIRIA C753, The SuDS Manual (2015), ch. 25, h = a (exp(-b D) - 1), in a form that holds without
/// walls and without soakage too. The governing duration is searched between the rows.
/// \throws Refused(domain) for an area or length not above 0, a porosity not between 0 and 1, a rate below 0,
/// a safety factor below 1, and as RainCurve.
[[nodiscard]] Length soakage_depth(const RainTable& rain, Area drained_area, Length length, Length width,
                                   Share porosity, Speed rate, Share safety_factor);

/// The duration of rain that gives that depth. Where it is the longest of the table, a longer rain may give
/// more: rain_reaches_beyond.
/// \throws Refused as soakage_depth.
[[nodiscard]] Time soakage_duration(const RainTable& rain, Area drained_area, Length length, Length width,
                                    Share porosity, Speed rate, Share safety_factor);

/// Time until a fraction of the depth is left, without inflow.
///
/// t = n A / (q P) ln[(h + A/P) / (f h + A/P)]; without walls n h (1 - f) / q. CIRIA C753 (2015), ch. 25.
/// \throws Refused(domain) for a depth or base area not above 0, a perimeter below 0, a porosity not between
/// 0 and 1, a rate not above 0, a safety factor below 1, a fraction not from 0 to below 1.
[[nodiscard]] Time soakage_time(Length depth, Share porosity, Area base_area, Length perimeter, Speed rate,
                                Share safety_factor, Share fraction);

}  // namespace undercroft::calc
