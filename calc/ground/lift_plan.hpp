/// \file lift_plan.hpp
/// The fill over the chambers lift by lift, and what the plant that compacts it presses onto them.
#pragma once

#include "calc/ground/plant_load.hpp"
#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Layers over the crown from the bottom up: thickness, unit weight, greatest lift as compacted.
using LiftLayers = Table<Length, UnitWeight, Length>;

/// Number of the lift, row of its layer, thickness, cover over the crown at its top, pressure of the fill, of
/// the plant, of both; one row a lift.
using LiftPlan = Table<Count, Count, Length, Length, Pressure, Pressure, Pressure>;

/// Every lift of the fill over the chambers, with the plant standing on top of it.
///
/// A layer is laid in equal lifts, the fewest of which none is thicker than its greatest. On the top of each
/// the plant presses I s(H) at crown level, s by plant_load and the factor I for vibration, and the fill so
/// far sum of t g. Newmark (1935), superposed; elementary statics. \throws Refused(domain) for no layer, a
/// thickness, unit weight or lift not above 0, a factor below 1, more than 200 lifts, or as plant_load.
[[nodiscard]] LiftPlan lift_plan(const LiftLayers& layers, const Patches& plant, Share vibration);

/// Least cover from which on plant may stand on fill of one unit weight: the pressure of plant and fill is at
/// most `allowable`. Under less the plant presses too hard; under much more the fill alone does. \throws
/// Refused as lift_plan; Refused(domain) for an allowable not above 0; Refused(no_answer) where no cover to
/// 10 m does.
[[nodiscard]] Length plant_cover(const Patches& plant, Share vibration, UnitWeight fill_unit_weight,
                                 Pressure allowable);

}  // namespace undercroft::calc
