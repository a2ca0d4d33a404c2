/// \file earth_pressure.hpp
/// Lateral pressure of earth on a wall.
#pragma once

#include <optional>

#include "units/types.hpp"

namespace undercroft::calc {

enum class EarthState { active, passive, rest };

/// The back of a wall and the ground behind it.
struct EarthWall {
    std::optional<Angle> friction;  ///< between wall and ground; none: Rankine's theory
    Angle back;                     ///< of the wall's back from the horizontal: 90 deg is vertical
    Gradient slope;                 ///< of the ground, rising away from the wall
};

/// Coefficient of earth pressure of ground without cohesion.
///
/// Rankine (1857), no wall friction given, vertical back, ground at slope b: K = cos b (cos b -+ r)/(cos b +-
/// r), r = sqrt(cos^2 b - cos^2 p), the upper signs active; the thrust is parallel to the slope. Coulomb
/// (1776), wall friction d given, back at a from the horizontal: Ka = sin^2(a + p)/(sin^2 a sin(a - d) (1 +
/// sqrt(sin(p + d) sin(p - b)/(sin(a - d) sin(a + b))))^2); Kp, vertical back and level ground
/// only: cos^2 p/(cos d (1 - sqrt(sin(p + d) sin p/cos d))^2). At rest, level, normally consolidated: K0 = 1
/// - sin p. Jaky (1944). \throws Refused(domain) outside the theories: a friction angle not from 0 to 50 deg;
/// ground that falls or rises steeper than p; wall friction below 0 or above p; Rankine and rest with a back
/// that is not vertical; rest with wall friction or a slope; Coulomb active with a back flatter than the
/// inner slip plane or flatter than ground that stands by itself; Coulomb passive with wall friction above
/// p/3, on a slope, or where its horizontal part is more than 10 % above passive_coefficient, since its plane
/// slip surface overstates the resistance, or with a back that is not vertical.
[[nodiscard]] Share earth_coefficient(EarthState state, Angle friction_angle, const EarthWall& wall);

/// Coefficient of passive pressure on a vertical wall with friction, level ground: the horizontal part, a
/// lower bound that does not overstate the resistance.
///
///     K_ph = cos d/(1 - sin p) (cos d + sqrt(sin^2 p - sin^2 d)) exp((asin(sin d/sin p) + d) tan p)
///
/// Lancellotta (2002), Geotechnique 52 (from memory); EN 1997-1:2004, Annex C (from memory) gives the same
/// numbers. Without wall friction it is Rankine's. \throws Refused(domain) for a friction angle not above 0
/// or above 50 deg, or wall friction below 0 or above it.
[[nodiscard]] Share passive_coefficient(Angle friction_angle, Angle wall_friction);

/// Thrust per length of wall: P = K (g H^2/2 + q H - gw hw^2/2) + gw hw^2/2, for a surcharge q on the ground
/// and water standing hw above the foot of the wall. Below the water the effective weight counts. Elementary
/// statics.
/// \param unit_weight of the ground as it stands, saturated where it is under water.
/// \throws Refused(domain) for a coefficient, unit weight or height not above 0, a surcharge or water depth
/// below 0, water higher than the ground, or wet ground lighter than water.
[[nodiscard]] LineLoad earth_thrust(Share coefficient, UnitWeight unit_weight, Length height,
                                    Pressure surcharge, Length water_depth);

}  // namespace undercroft::calc
