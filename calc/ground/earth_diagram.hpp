/// \file earth_diagram.hpp
/// Pressure of earth and water on a vertical wall, down its height.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Layers behind a wall from the top down: thickness, unit weight as it stands (saturated below the water),
/// and coefficient of earth pressure.
using WallLayers = Table<Length, UnitWeight, Share>;

/// Depth, pressure of the earth, of the water, of both; two rows where the pressure jumps.
using EarthDiagram = Table<Length, Pressure, Pressure, Pressure>;

/// Pressure at the top and foot of each layer and at the water: earth K (q + sum of t g'), with the effective
/// weight below the water, and water gw h. The coefficient is that of each layer, so the earth's pressure
/// jumps between two. Elementary statics; Caltrans, Trenching and Shoring Manual, Example 7-2. It is what
/// acts behind shoring; a licensed engineer designs the shoring. \throws Refused(domain) for no layer, a
/// thickness, unit weight or coefficient not above 0, a surcharge or water depth below 0, or ground under
/// water that is lighter than water.
[[nodiscard]] EarthDiagram earth_diagram(const WallLayers& layers, Pressure surcharge, Length water_depth,
                                         UnitWeight water_unit_weight);

/// Thrust per length of wall: the area of the diagram. \throws Refused as earth_diagram.
[[nodiscard]] LineLoad diagram_thrust(const EarthDiagram& diagram);

}  // namespace undercroft::calc
