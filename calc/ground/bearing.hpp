/// \file bearing.hpp
/// What the ground under a shallow foundation can bear.
#pragma once

#include <optional>

#include "calc/ground/bearing_factors.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Ultimate bearing pressure, gross, of a strip or a rectangle B x L under a central vertical load.
///
///     qu = sc c Nc + sq g D Nq + sg 0.5 g B Ng
///
/// Shape factors of the rectangle, k = B/L, 0 for a strip:
/// Vesic (1973): sc = 1 + k Nq/Nc, sq = 1 + k tan p, sg = 1 - 0.4 k.
/// Meyerhof (1963): sc = 1 + 0.2 k Kp; sq = sg = 1 + 0.1 k Kp from p = 10 deg on, 1 below; Kp = tan^2(45 +
/// p/2). Terzaghi (1943): sc = 1 + 0.3 k, sq = 1, sg = 1 - 0.2 k; his strip and his square, straight between
/// them (common practice). Depth factors are taken as 1, on the safe side. General shear; no groundwater
/// within B of the base. \throws Refused(domain) for a cohesion or depth below 0, a unit weight or width not
/// above 0, a length less than the width, a friction angle outside 0 to 45 deg, or ground with neither
/// cohesion nor friction.
[[nodiscard]] Pressure bearing_capacity(Pressure cohesion, Angle friction_angle, UnitWeight unit_weight,
                                        Length depth, Length width, std::optional<Length> length,
                                        BearingMethod method);

}  // namespace undercroft::calc
