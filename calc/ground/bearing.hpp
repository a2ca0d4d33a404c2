/// \file bearing.hpp
/// What the ground under a shallow foundation can bear.
#pragma once

#include <optional>

#include "calc/ground/bearing_factors.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Ultimate bearing pressure, gross, of a strip or a rectangle B x L under a central vertical load.
///
///     q_u = s_c c N_c + s_q gamma D N_q + s_gamma 0.5 gamma B N_gamma
///
/// Shape factors of the rectangle, k = B/L, 0 for a strip:
/// Vesic (1973): s_c = 1 + k N_q/N_c, s_q = 1 + k tan phi, s_gamma = 1 - 0.4 k.
/// Meyerhof (1963): s_c = 1 + 0.2 k K_p; s_q = s_gamma = 1 + 0.1 k K_p from phi = 10 deg on, 1 below; K_p =
/// tan^2(45 + phi/2). Terzaghi (1943): s_c = 1 + 0.3 k, s_q = 1, s_gamma = 1 - 0.2 k; his strip and his
/// square, straight between them (common practice). Depth factors are taken as 1, on the safe side. General
/// shear; no groundwater within B of the base. \throws Refused(domain) for a cohesion or depth below 0, a
/// unit weight or width not above 0, a length less than the width, a friction angle outside 0 to 45 deg, or
/// ground with neither cohesion nor friction.
[[nodiscard]] Pressure bearing_capacity(Pressure cohesion, Angle friction_angle, UnitWeight unit_weight,
                                        Length depth, Length width, std::optional<Length> length,
                                        BearingMethod method);

}  // namespace undercroft::calc
