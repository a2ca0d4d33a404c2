#include "calc/ground/bearing_factors.hpp"

#include <cmath>
#include <numbers>

#include "calc/interpolate.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

using std::numbers::pi;

/// (Nq - 1) cot p, or its limit at p = 0.
double cohesion_factor(double surcharge_factor, Angle friction_angle, double without_friction) {
    const double slope = tangent(friction_angle);
    return slope < 1e-7 ? without_friction : (surcharge_factor - 1) / slope;
}

/// Kumbhojkar (1993), N gamma for 0 to 45 deg in whole degrees, as printed in Das, Principles of Foundation
/// Engineering (from memory; tests/data/terzaghi-weight-factor.csv has the table, and the tests compute each
/// row again from Terzaghi's mechanism).
double terzaghi_weight_factor(Angle friction_angle) {
    static const Curve<double, double> table = [] {
        Curve<double, double> curve;
        curve.y = {0.00,  0.01,  0.04,  0.06,  0.10,   0.14,   0.20,   0.27,   0.35,   0.44,  0.56,  0.69,
                   0.85,  1.04,  1.26,  1.52,  1.82,   2.18,   2.59,   3.07,   3.64,   4.31,  5.09,  6.00,
                   7.08,  8.34,  9.84,  11.60, 13.70,  16.18,  19.13,  22.65,  26.87,  31.94, 38.04, 45.41,
                   54.36, 65.27, 78.61, 95.03, 115.31, 140.51, 171.99, 211.56, 261.60, 325.34};
        for (std::size_t degree = 0; degree < curve.y.size(); ++degree)
            curve.x.push_back(static_cast<double>(degree));
        return curve;
    }();
    const double degree = friction_angle / degrees(1);
    return monotone(table, std::clamp(degree, table.x.front(), table.x.back()));
}

}  // namespace

BearingFactors bearing_factors(BearingMethod method, Angle friction_angle) {
    require(friction_angle >= zero && is_at_most(friction_angle, degrees(45)),
            shown("friction angle", friction_angle),
            " must be from 0 deg to 45 deg, where the published factors end");
    const Angle wedge = degrees(45) + friction_angle / 2.0;
    if (method == BearingMethod::terzaghi) {
        const double a = std::exp((0.75 * pi - friction_angle / radian / 2) * tangent(friction_angle));
        const double nq = a * a / (2 * std::pow(cosine(wedge), 2));
        return {cohesion_factor(nq, friction_angle, 1.5 * pi + 1), nq,
                terzaghi_weight_factor(friction_angle)};
    }
    const double nq = std::exp(pi * tangent(friction_angle)) * std::pow(tangent(wedge), 2);
    const double nc = cohesion_factor(nq, friction_angle, pi + 2);
    if (method == BearingMethod::vesic) return {nc, nq, 2 * (nq + 1) * tangent(friction_angle)};
    return {nc, nq, (nq - 1) * tangent(1.4 * friction_angle)};
}

}  // namespace undercroft::calc
