/// \file customary.hpp
/// The units in which published methods print their constants, as quantities: 0.007 * hour.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

// International yard and pound agreement (1959); NIST SP 811 (2008), appendix B, for the pound-force.
inline constexpr Length foot = 0.3048 * metre;
inline constexpr Length inch = 0.0254 * metre;
inline constexpr Force pound_force = 4.4482216152605 * newton;
inline constexpr Force kip = 4448.2216152605 * newton;

// SI Brochure, 9th ed. (2019).
inline constexpr Length centimetre = 0.01 * metre;
inline constexpr Length millimetre = 0.001 * metre;
inline constexpr Force kilonewton = 1000.0 * newton;
inline constexpr Pressure kilopascal = 1000.0 * pascal;
inline constexpr Time minute = 60.0 * second;
inline constexpr Time hour = 3600.0 * second;

}  // namespace undercroft::calc
