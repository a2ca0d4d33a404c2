#include "calc/ground/earth_diagram.hpp"

namespace undercroft::calc {

EarthDiagram earth_diagram(const WallLayers& layers, Pressure surcharge, Length water_depth,
                           UnitWeight water_unit_weight) {
    require(!layers.empty(), "there is no layer behind the wall");
    require_not_negative("surcharge", surcharge);
    require_not_negative("water depth", water_depth);
    require_positive("water unit weight", water_unit_weight);
    EarthDiagram diagram;
    Length depth = zero;
    Pressure effective = surcharge;
    const auto put = [&](Share coefficient) {
        const Pressure earth = coefficient * effective;
        const Pressure water = water_unit_weight * std::max<Length>(depth - water_depth, zero);
        diagram.emplace_back(depth, earth, water, earth + water);
    };
    for (const auto& [thickness, unit_weight, coefficient] : layers) {
        require_positive("thickness", thickness);
        require_positive("unit weight", unit_weight);
        require_positive("coefficient", coefficient);
        const Length foot = depth + thickness;
        require(foot <= water_depth || unit_weight > water_unit_weight, shown("unit weight", unit_weight),
                " must be above that of water where the ground is wet");
        put(coefficient);
        if (depth < water_depth && water_depth < foot) {
            effective += unit_weight * (water_depth - depth);
            depth = water_depth;
            put(coefficient);
        }
        const UnitWeight counted = depth >= water_depth ? unit_weight - water_unit_weight : unit_weight;
        effective += counted * (foot - depth);
        depth = foot;
        put(coefficient);
    }
    return diagram;
}

LineLoad diagram_thrust(const EarthDiagram& diagram) {
    LineLoad thrust = zero;
    for (std::size_t i = 1; i < diagram.size(); ++i) {
        const auto& [depth_1, earth_1, water_1, both_1] = diagram[i - 1];
        const auto& [depth_2, earth_2, water_2, both_2] = diagram[i];
        thrust += (both_1 + both_2) / 2.0 * (depth_2 - depth_1);
    }
    return thrust;
}

}  // namespace undercroft::calc
