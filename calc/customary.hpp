/// \file customary.hpp
/// The units in which published methods print their constants, as quantities: 0.007 * hour.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

// International yard and pound agreement (1959); NIST SP 811 (2008), appendix B, for the pound-force.
inline const Length foot = 0.3048 * metre;
inline const Length inch = 0.0254 * metre;
inline const Force pound_force = 4.4482216152605 * newton;
inline const Force kip = 4448.2216152605 * newton;

// SI Brochure, 9th ed. (2019).
inline const Length centimetre = 0.01 * metre;
inline const Length millimetre = 0.001 * metre;
inline const Force kilonewton = 1000.0 * newton;
inline const Pressure kilopascal = 1000.0 * pascal;
inline const Time minute = 60.0 * second;
inline const Time hour = 3600.0 * second;

}  // namespace undercroft::calc
