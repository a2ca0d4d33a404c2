#include "calc/ground/earth_pressure.hpp"

#include <cmath>

#include "calc/require.hpp"
#include "calc/water/water_weight.hpp"
#include "units/text.hpp"

namespace undercroft::calc {

namespace {

const Angle vertical = degrees(90);
/// Angles that differ by less are the same.
const Angle same_angle = degrees(1e-7);

bool is_vertical(Angle back) {
    return abs(back - vertical) <= same_angle;
}

void require_vertical(std::string_view theory, Angle back) {
    require(is_vertical(back), shown("wall angle", back), " must be 90 deg, a vertical wall, for ", theory);
}

double rankine(EarthState state, Angle p, Angle b) {
    const double c = cosine(b);
    const double r = std::sqrt(std::max(0.0, std::pow(c, 2) - std::pow(cosine(p), 2)));
    return state == EarthState::active ? c * (c - r) / (c + r) : c * (c + r) / (c - r);
}

/// Angle from the horizontal of the slip plane that rises towards the wall (Rankine). On a flatter back the
/// ground slides on itself, not along the wall.
Angle inner_slip_plane(Angle p, Angle b) {
    const double ratio = p > zero ? std::min(1.0, sine(b) / sine(p)) : 0;
    return degrees(45) + p / 2.0 - b / 2.0 + arc_sine(ratio) / 2.0;
}

double coulomb_active(Angle p, Angle d, Angle a, Angle b) {
    const Angle flattest = inner_slip_plane(p, b);
    require(a >= flattest - same_angle, shown("wall angle", a), " must be at least ", amount(flattest),
            ": on a flatter back the ground slides along a plane of its own");
    require(a < degrees(180) - p, shown("wall angle", a), " must be less than ", amount(degrees(180) - p),
            ": ground so flat stands by itself");
    const double root = std::sqrt(std::max(0.0, sine(p + d) * sine(p - b) / (sine(a - d) * sine(a + b))));
    return std::pow(sine(a + p), 2) / (std::pow(sine(a), 2) * sine(a - d) * std::pow(1 + root, 2));
}

/// Horizontal part. At d = p the square root is 0; the arcsine of a quotient that rounds above 1 is a right
/// angle.
double lancellotta(Angle p, Angle d) {
    if (p == zero) return 1;
    const double ratio = std::min(1.0, sine(d) / sine(p));
    const double root = std::sqrt(std::max(0.0, std::pow(sine(p), 2) - std::pow(sine(d), 2)));
    return cosine(d) / (1 - sine(p)) * (cosine(d) + root) *
           std::exp((arc_sine(ratio) + d) / radian * tangent(p));
}

double coulomb_passive(Angle p, Angle d, Angle a, Angle b) {
    require_vertical("Coulomb's passive pressure", a);
    require(
        b <= same_angle, "slope (", amount(b),
        ") must be 0 for Coulomb's passive pressure: on rising ground its plane slip surface overstates the "
        "resistance, many times over; Rankine's, without a wall friction, does not");
    require(d <= p / 3.0 + same_angle, shown("wall friction", d),
            " must be at most a third of the friction angle (", amount(p / 3.0),
            ") for passive pressure: beyond it Coulomb's plane slip surface overstates the resistance");
    const double root = std::sqrt(sine(p + d) * sine(p) / cosine(d));
    const double coefficient = std::pow(cosine(p), 2) / (cosine(d) * std::pow(1 - root, 2));
    const double over = coefficient * cosine(d) / lancellotta(p, d);
    require(over <= 1.1 + limit_tolerance, shown("wall friction", d), " with a friction angle of ", amount(p),
            ": Coulomb's plane slip surface overstates the passive resistance by ",
            rounded_text(std::round(100 * (over - 1))), " %; take the lower bound for it (Lancellotta)");
    return coefficient;
}

}  // namespace

Share earth_coefficient(EarthState state, Angle friction_angle, const EarthWall& wall) {
    const Angle p = friction_angle;
    require(p >= zero && p <= degrees(50) + same_angle, shown("friction angle", p),
            " must be from 0 deg to 50 deg");
    require_not_negative("slope", wall.slope);
    const Angle b = inclination(wall.slope);
    require(b <= p + same_angle, "slope (", amount(b), ") must be at most the friction angle (", amount(p),
            "): steeper ground slides");
    if (wall.friction) {
        require_not_negative("wall friction", *wall.friction);
        require(*wall.friction <= p + same_angle, shown("wall friction", *wall.friction),
                " must be at most the friction angle (", amount(p), ")");
    }
    if (state == EarthState::rest) {
        require_vertical("pressure at rest", wall.back);
        require(b <= same_angle, "slope (", amount(b), ") must be 0 for pressure at rest");
        require(!wall.friction || *wall.friction <= same_angle,
                "wall friction has no part in pressure at rest: leave it out");
        return share(1 - sine(p));
    }
    if (!wall.friction) {
        require_vertical("Rankine's theory; give a wall friction for Coulomb's", wall.back);
        return share(rankine(state, p, b));
    }
    return share(state == EarthState::active ? coulomb_active(p, *wall.friction, wall.back, b)
                                             : coulomb_passive(p, *wall.friction, wall.back, b));
}

Share passive_coefficient(Angle friction_angle, Angle wall_friction) {
    require(friction_angle > zero && friction_angle <= degrees(50) + same_angle,
            shown("friction angle", friction_angle), " must be above 0 deg, at most 50 deg");
    require_not_negative("wall friction", wall_friction);
    require(wall_friction <= friction_angle + same_angle, shown("wall friction", wall_friction),
            " must be at most the friction angle (", amount(friction_angle), ")");
    return share(lancellotta(friction_angle, std::min(wall_friction, friction_angle)));
}

LineLoad earth_thrust(Share coefficient, UnitWeight unit_weight, Length height, Pressure surcharge,
                      Length water_depth) {
    require_positive("coefficient", coefficient);
    require_positive("unit weight", unit_weight);
    require_positive("height", height);
    require_not_negative("surcharge", surcharge);
    require_not_negative("water depth", water_depth);
    require(is_at_most(water_depth, height), shown("water depth", water_depth), " must be at most the ",
            shown("height", height));
    require(water_depth == zero || unit_weight > water_unit_weight, shown("unit weight", unit_weight),
            " must be above that of water where the ground is wet");
    const LineLoad water = 0.5 * water_unit_weight * water_depth * water_depth;
    return coefficient * (0.5 * unit_weight * height * height + surcharge * height - water) + water;
}

}  // namespace undercroft::calc
