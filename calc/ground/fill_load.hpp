/// \file fill_load.hpp
/// The weight of layers of fill.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Pressure under layers of thickness and unit weight: p = sum of t gamma. Elementary statics.
/// \throws Refused(domain) for a thickness below 0 or a unit weight not above 0.
[[nodiscard]] Pressure fill_load(const Table<Length, UnitWeight>& layers);

}  // namespace undercroft::calc
