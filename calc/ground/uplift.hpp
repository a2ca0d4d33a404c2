/// \file uplift.hpp
/// Flotation of a lined bed in groundwater.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Plan area, thickness and unit weight of what holds the bed down; one row a layer.
using Weights = Table<Area, Length, UnitWeight>;

/// Factor of safety against flotation: F = sum of A t g/(gw V).
///
/// Convention: all of the weight that resists, as it weighs in air, over the weight of the water that the
/// submerged volume displaces. The same bed gets another factor when submerged weights are set against the
/// empty volume alone. Required values: USACE EM 1110-2-2100 (2005), Table 3-4: 1.3 usual, 1.2 unusual, 1.1
/// extreme (from memory).
/// \throws Refused(domain) for an area or unit weight not above 0, a thickness below 0, or a volume or unit
/// weight of water not above 0.
[[nodiscard]] Share uplift_factor(const Weights& weights, Volume submerged_volume,
                                  UnitWeight water_unit_weight);

/// Thickness of fill over `plan_area` that, added to the weights, brings the factor to `required`:
/// t = (F gw V - sum of A t g)/(A g), 0 where nothing is missing. The fill lies above the groundwater: under
/// it, it would displace water of its own. The inverse of uplift_factor.
/// \throws Refused(domain) as uplift_factor; for a required factor below 1 or not finite, or an area or unit
/// weight of the fill not above 0.
[[nodiscard]] Length uplift_fill(Share required, const Weights& weights, Volume submerged_volume,
                                 Area plan_area, UnitWeight unit_weight, UnitWeight water_unit_weight);

}  // namespace undercroft::calc
