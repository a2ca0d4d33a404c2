/// \file flow_time.hpp
/// Travel time of water that has gathered: over the ground, and in channels.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// What shallow concentrated flow runs over.
enum class FlowSurface {
    forest,  ///< heavy ground litter
    fallow,  ///< and minimum tillage, woodland
    short_grass,
    cultivated,  ///< straight rows
    bare,        ///< nearly bare, untilled
    grassed_waterway,
    unpaved,
    paved,
};

/// Speed of shallow concentrated flow: v = k sqrt(S).
///
/// Unpaved 16.1345 ft/s, paved 20.3282 ft/s: USDA TR-55 (1986), app. F. The others 0.76, 1.52, 2.13, 2.74,
/// 3.05 and 4.57 m/s: FHWA HEC-22, 3rd ed. (2009), Table 3-3, which prints k for slopes in percent.
/// \throws Refused(domain) for a slope not above 0.
[[nodiscard]] Speed shallow_flow_speed(FlowSurface surface, Gradient slope);

/// Travel time of shallow concentrated flow: t = L/v.
/// \throws Refused(domain) for a length or slope not above 0.
[[nodiscard]] Time shallow_flow_time(FlowSurface surface, Length length, Gradient slope);

/// Travel time in an open channel: t = L/v, v = R^(2/3) S^(1/2)/n (m, s), R = A/P.
///
/// Manning, as in USDA TR-55 (1986), eq. 3-4, whose 1.49 for 1.486 makes it 0.3 % faster.
/// \throws Refused(domain) for a value not above 0.
[[nodiscard]] Time channel_flow_time(Length length, Area flow_area, Length wetted_perimeter, Gradient slope,
                                     Share roughness);

}  // namespace undercroft::calc
