#include "calc/ground/wet_bearing.hpp"

#include <cmath>

#include "calc/ground/bearing.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// One term of the bearing equation alone: that of the cohesion, of the surcharge, or of the weight.
Pressure term(const DrainedFooting& f, Pressure cohesion, Length depth, Length width) {
    return bearing_capacity(cohesion, f.friction_angle, f.unit_weight, depth, width, f.length,
                            BearingMethod::vesic);
}

double depth_factor(const DrainedFooting& f) {
    if (!f.counts_depth) return 1;
    const double ratio = std::min(1.0, static_cast<double>(f.depth / f.width));
    return 1 + 2 * tangent(f.friction_angle) * std::pow(1 - sine(f.friction_angle), 2) * std::atan(ratio);
}

}  // namespace

WaterFactors water_factors(Length water_depth, Length depth, Length width) {
    require_not_negative("water depth", water_depth);
    require_not_negative("depth", depth);
    require_positive("width", width);
    const auto factor = [&](Length reach) {
        return share(reach == zero ? 1 : std::min(1.0, 0.5 + 0.5 * static_cast<double>(water_depth / reach)));
    };
    return {factor(depth), factor(depth + 1.5 * width)};
}

Pressure wet_bearing_capacity(const DrainedFooting& f) {
    const Pressure whole = term(f, f.cohesion, f.depth, f.width);  // and all preconditions
    const WaterFactors water =
        f.water_depth ? water_factors(*f.water_depth, f.depth, f.width) : WaterFactors{share(1), share(1)};
    const Pressure at_surface = term(f, f.cohesion, zero, f.width);
    const Pressure surcharge = whole - at_surface;
    const BearingFactors n = bearing_factors(BearingMethod::vesic, f.friction_angle);
    const double k = f.length ? std::min(1.0, static_cast<double>(f.width / *f.length)) : 0;
    const Pressure weight = (1 - 0.4 * k) * n.weight * 0.5 * f.unit_weight * f.width;
    const Pressure of_cohesion = at_surface - weight;
    return of_cohesion + depth_factor(f) * number(water.surcharge) * surcharge +
           number(water.weight) * weight;
}

}  // namespace undercroft::calc
