#include "calc/ground/uplift.hpp"

namespace undercroft::calc {

namespace {

Force resisting(const Weights& weights) {
    Force total = zero;
    for (const auto& [area, thickness, unit_weight] : weights) {
        require_positive("plan area", area);
        require_not_negative("thickness", thickness);
        require_positive("unit weight", unit_weight);
        total += area * thickness * unit_weight;
    }
    return total;
}

Force uplift(Volume submerged_volume, UnitWeight water_unit_weight) {
    require_positive("submerged volume", submerged_volume);
    require_positive("water unit weight", water_unit_weight);
    return water_unit_weight * submerged_volume;
}

}  // namespace

Share uplift_factor(const Weights& weights, Volume submerged_volume, UnitWeight water_unit_weight) {
    return resisting(weights) / uplift(submerged_volume, water_unit_weight);
}

Length uplift_fill(Share required, const Weights& weights, Volume submerged_volume, Area plan_area,
                   UnitWeight unit_weight, UnitWeight water_unit_weight) {
    require(required >= share(1), shown("required factor", required),
            " must be at least 1: below it the bed floats");
    require(is_finite(required), "required factor must be finite");
    require_positive("plan area", plan_area);
    require_positive("unit weight", unit_weight);
    const Force missing = required * uplift(submerged_volume, water_unit_weight) - resisting(weights);
    return std::max<Force>(missing, zero) / (plan_area * unit_weight);
}

}  // namespace undercroft::calc
