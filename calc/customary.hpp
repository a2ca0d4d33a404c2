/// \file customary.hpp
/// The units in which published formulas print their constants, as quantities: 0.007 * hour.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

inline const Length foot = 0.3048 * metre;
inline const Length inch = 0.0254 * metre;
inline const Length millimetre = 0.001 * metre;
inline const Time minute = 60.0 * second;
inline const Time hour = 3600.0 * second;

}  // namespace undercroft::calc
