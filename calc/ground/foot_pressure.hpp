/// \file foot_pressure.hpp
/// What rows of chambers press onto the ground through their feet and the stone between them.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Greatest pressure under the base stone of rows of chambers, from the pressure at crown level.
///
/// A strip of one pitch, span B_f + gap g, carries q (B_f + g). The arch takes the load over its span to its
/// two feet, q B_f/2 each; the column of stone in the gap carries what stands on it, q g. Under a foot of
/// width b_f the load spreads through the base stone b at 2V:1H over b_f + b, and takes in what the column
/// brings there:
///
///     p = q max(1, (B_f + w_c)/(2 b_f + b + w_c)), w_c = min(b, g)
///
/// While b < g the feet stand apart, p (b_f + b) = q (B_f + b)/2, and the middle of the gap keeps q. From b =
/// g the spreads of neighbouring feet meet: two feet and their column are one strip, p (2 b_f + g + b) = q
/// (B_f + g). Once the strips meet under the chamber too, 2 b_f + b >= B_f, all is level again: p = q. The
/// sum over a pitch is q (B_f + g) throughout. Equilibrium; overlapping patches are taken together as in
/// AASHTO LRFD 3.6.1.2.6. \param span over the feet of one chamber. \param row_gap clear, between the feet of
/// neighbouring rows. \throws Refused(domain) for a pressure, span or foot width not above 0, a gap or base
/// stone below 0, or two feet wider than the span.
[[nodiscard]] Pressure foot_pressure(Pressure crown_pressure, Length span, Length row_gap, Length foot_width,
                                     Length base_stone);

}  // namespace undercroft::calc
