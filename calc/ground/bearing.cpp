#include "calc/ground/bearing.hpp"

#include <cmath>

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// Shape factors; the same fields as the factors that they multiply.
BearingFactors shape_factors(BearingMethod method, const BearingFactors& n, Angle friction_angle, double k) {
    switch (method) {
        case BearingMethod::vesic:
            return {1 + k * n.surcharge / n.cohesion, 1 + k * tangent(friction_angle), 1 - 0.4 * k};
        case BearingMethod::meyerhof: {
            const double kp = std::pow(tangent(degrees(45) + friction_angle / 2.0), 2);
            const bool frictional = is_at_least(friction_angle, degrees(10));
            const double s = frictional ? 1 + 0.1 * k * kp : 1;
            return {1 + 0.2 * k * kp, s, s};
        }
        case BearingMethod::terzaghi:
            return {1 + 0.3 * k, 1, 1 - 0.2 * k};
    }
    refuse_value("unknown method");
}

}  // namespace

Pressure bearing_capacity(Pressure cohesion, Angle friction_angle, UnitWeight unit_weight, Length depth,
                          Length width, std::optional<Length> length, BearingMethod method) {
    require_not_negative("cohesion", cohesion);
    require_positive("unit weight", unit_weight);
    require_not_negative("depth", depth);
    require_positive("width", width);
    if (length)
        require(is_at_least(*length, width), shown("length", *length), " must be at least the ",
                shown("width", width), "; leave it out for a long strip");
    const BearingFactors n = bearing_factors(method, friction_angle);
    require(cohesion > zero || friction_angle > zero,
            "cohesion and friction angle are both 0: ground without strength bears nothing");
    const double k = length ? std::min(1.0, static_cast<double>(width / *length)) : 0;
    const BearingFactors s = shape_factors(method, n, friction_angle, k);
    return s.cohesion * n.cohesion * cohesion + s.surcharge * n.surcharge * unit_weight * depth +
           s.weight * n.weight * 0.5 * unit_weight * width;
}

}  // namespace undercroft::calc
