/// \file elastic_stress.hpp
/// Vertical stress in an elastic half-space under loads on its surface.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Stress under a point load: s = 3 Q/(2 pi z^2) (1 + (r/z)^2)^-2.5. Boussinesq (1885).
/// \throws Refused(domain) for a load or depth not above 0, or an offset below 0.
[[nodiscard]] Pressure stress_under_point(Force load, Length depth, Length offset);

/// Stress under the centre of a uniformly loaded circle: s = q (1 - (1 + (R/z)^2)^-1.5); q at depth 0.
/// Boussinesq's solution integrated over the circle.
/// \throws Refused(domain) for a pressure or radius not above 0, or a depth below 0.
[[nodiscard]] Pressure stress_under_circle(Pressure pressure, Length radius, Length depth);

/// Where under a loaded rectangle.
enum class RectanglePoint { corner, centre };

/// Stress under a uniformly loaded rectangle L x W.
///
/// Corner: s = q/(2 pi) (atan(L W/(z R)) + L W z/R (1/(L^2 + z^2) + 1/(W^2 + z^2))), R^2 = L^2 + W^2 + z^2:
/// Newmark (1935) in the form of Holl (1940), whose arctangent has one branch only. The centre is the
/// corner of four quarters. Corner q/4, centre q at depth 0.
/// \throws Refused(domain) for a pressure, length or width not above 0, or a depth below 0.
[[nodiscard]] Pressure stress_under_rectangle(Pressure pressure, Length length, Length width, Length depth,
                                              RectanglePoint at);

/// Share of the pressure of a rectangle x by y that reaches the depth under its corner at the origin. It is
/// odd in x and in y, so that rectangles beside the origin are sums of signed ones. Checks nothing: the depth
/// is above 0, or it is 0 and neither x nor y is.
[[nodiscard]] Share corner_influence(Length x, Length y, Length depth);

}  // namespace undercroft::calc
