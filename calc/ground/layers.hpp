/// \file layers.hpp
/// The layers of a site, from the base of the bed up to the finished surface, in one list.
#pragma once

#include <optional>

#include "calc/ground/lift_plan.hpp"
#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// What a layer is a part of, from the bottom up. The chambers count as a layer as high as they rise, of
/// stone.
enum class LayerPart {
    base_stone,
    chambers,
    cover_stone,
    initial_backfill,
    general_backfill,
    subbase,
    pavement,
};

/// Part, thickness, unit weight, and greatest lift where the layer is laid in lifts; from the bottom up. A
/// part may have several layers, or none.
using SiteLayers = Table<LayerPart, Length, UnitWeight, std::optional<Length>>;

// All of these take the layers of the parts from `lowest` to `highest`; those of no thickness are passed
// over. \throws Refused(domain) for no layer, layers that do not stand from the bottom up, a thickness below
// 0, a unit weight not above 0, a highest part under the lowest.

/// Depth of the layers together, sum t; 0 where there is none.
[[nodiscard]] Length layers_depth(const SiteLayers& layers, LayerPart lowest, LayerPart highest);

/// Thickness and unit weight of each; from the chambers or below on, the layers of the bed are one, of their
/// mean unit weight, as the uplift of a bed wants them. \throws Refused(no_answer) where there is none.
[[nodiscard]] Table<Length, UnitWeight> layer_stack(const SiteLayers& layers, LayerPart lowest,
                                                    LayerPart highest);

/// The same with the greatest lift of each. \throws Refused(domain) too for a layer without one.
[[nodiscard]] LiftLayers laid_layers(const SiteLayers& layers, LayerPart lowest, LayerPart highest);

/// In how many lifts they are laid, each layer for itself; 0 where there is none. \throws Refused as
/// laid_layers.
[[nodiscard]] Count layer_lifts(const SiteLayers& layers, LayerPart lowest, LayerPart highest);

/// Number of the lift, row of its layer in the list, thickness, height of its top over the base of the bed,
/// cover over the crowns at its top, pressure of the fill on the crowns; one row a lift.
using LaidLifts = Table<Count, Count, Length, Length, Length, Pressure>;

/// Every lift from the base of the bed to the finished surface.
///
/// A layer is laid in equal lifts, the fewest of which none is thicker than its greatest; a layer without a
/// greatest lift is one. Cover and fill are 0 up to the crowns. Elementary geometry and statics; equal lifts
/// are common practice. \throws Refused(domain) too for more than 200 lifts; Refused(no_answer) where no
/// layer has a thickness.
[[nodiscard]] LaidLifts laid_lifts(const SiteLayers& layers);

}  // namespace undercroft::calc
