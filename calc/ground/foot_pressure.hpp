/// \file foot_pressure.hpp
/// What rows of chambers press onto the ground through their feet and the stone between them.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Greatest pressure under the base stone of rows of chambers, from the pressure at crown level.
///
/// A strip of one pitch, span S + gap G, carries q (S + G). The arch takes the load over its span to its two
/// feet, q S/2 each; the column of stone in the gap carries what stands on it, q G. Under a foot of width b
/// the load spreads through the base stone t at 2V:1H over b + t, and takes in what the column brings there:
///
///     p = q max(1, (S + c)/(2 b + t + c)), c = min(t, G)
///
/// While t < G the feet stand apart, p (b + t) = q (S + t)/2, and the middle of the gap keeps q. From t = G
/// the spreads of neighbouring feet meet: two feet and their column are one strip, p (2 b + G + t) =
/// q (S + G). Once the strips meet under the chamber too, 2 b + t >= S, all is level again: p = q. The sum
/// over a pitch is q (S + G) throughout. Equilibrium; overlapping patches are taken together as in AASHTO
/// LRFD 3.6.1.2.6.
/// \param span over the feet of one chamber.
/// \param row_gap clear, between the feet of neighbouring rows.
/// \throws Refused(domain) for a pressure, span or foot width not above 0, a gap or base stone below 0, or
/// two feet wider than the span.
[[nodiscard]] Pressure foot_pressure(Pressure crown_pressure, Length span, Length row_gap, Length foot_width,
                                     Length base_stone);

}  // namespace undercroft::calc
