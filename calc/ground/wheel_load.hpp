/// \file wheel_load.hpp
/// Live load of wheels through fill, by the bridge code.
#pragma once

#include <optional>

#include "units/types.hpp"

namespace undercroft::calc {

/// A wheel on its tyre's patch, and the wheels beside it that its load meets in the fill.
struct Wheel {
    Force load;
    Length tyre_length;                   ///< along the way of the vehicle
    Length tyre_width;                    ///< across it
    std::optional<Length> wheel_spacing;  ///< between the two wheels of an axle; none: one wheel alone
    std::optional<Length> axle_spacing;   ///< between the two axles of a tandem; none: one axle alone
};

/// Pressure of wheels on the top of a buried structure.
///
/// AASHTO LRFD Bridge Design Specifications, 3.6.1.2.6 and 3.6.2.2: p = n P (1 + IM)/(l w), with l = lt + f H
/// and w = wt + f H. From the interaction depth H = (s - wt)/f on, the two wheels of an axle act as one on
/// w + s; two axles likewise on l + s. IM = 33 % (1 - 0.125 H[ft]), not below 0. The widening by 0.06 times
/// the inside span is left out, on the safe side. Multiple presence, lane load and load factors are not in
/// it.
/// \param cover at least 2 ft, in metric units 600 mm: below that the standard does not spread wheels through
/// fill. \param distribution_factor f: 1.15 in most editions; 1.00 before 2013 for fill that is not select
/// granular; up to 1.75 over large concrete pipe since. \throws Refused(domain) for a load or tyre not above
/// 0, a cover below 600 mm, a factor not from 1 to 1.75, or wheels or axles closer than their tyres are wide
/// or long.
[[nodiscard]] Pressure wheel_load(const Wheel& wheel, Length cover, Share distribution_factor, bool impact);

/// Dynamic load allowance of a buried structure: IM = 33 % (1 - 0.125 H[ft]), not below 0. AASHTO LRFD
/// 3.6.2.2.
/// \throws Refused(domain) for a cover below 0.
[[nodiscard]] Share dynamic_allowance(Length cover);

/// Cover from which the loads of two tyres overlap: H = (s - t)/f. AASHTO LRFD 3.6.1.2.6.
[[nodiscard]] Length interaction_depth(Length spacing, Length tyre, Share distribution_factor);

}  // namespace undercroft::calc
