/// \file water_weight.hpp
/// The weight of groundwater.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Fresh water: 1000 kg/m3 (common practice) times standard gravity.
inline constexpr UnitWeight water_unit_weight = 1000.0 * kilogram / cubic_metre * standard_gravity;

}  // namespace undercroft::calc
