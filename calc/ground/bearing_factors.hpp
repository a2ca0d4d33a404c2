/// \file bearing_factors.hpp
/// Bearing capacity factors of shallow strips, by author.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

enum class BearingMethod { vesic, meyerhof, terzaghi };

/// Pure numbers: of the cohesion, of the surcharge beside the foundation, of the ground's own weight.
struct BearingFactors {
    double cohesion;   ///< Nc
    double surcharge;  ///< Nq
    double weight;     ///< N gamma
};

/// Factors for a friction angle from 0 to 45 deg.
///
/// Vesic (1973): N_q = exp(pi tan phi) tan^2(45 + phi/2), N_c = (N_q - 1) cot phi, N_gamma = 2 (N_q + 1) tan
/// phi. Meyerhof (1963): the same N_q and N_c, N_gamma = (N_q - 1) tan(1.4 phi). Terzaghi (1943): N_q =
/// a^2/(2 cos^2(45 + phi/2)), a = exp((3 pi/4 - phi/2) tan phi), N_c = (N_q - 1) cot phi; N_gamma by
/// Kumbhojkar (1993), who computed Terzaghi's mechanism degree by degree, interpolated between (Boost.Math
/// pchip). Terzaghi's own graphical figures differ from these: 9.7 for 8.34 at 25 deg.
/// \throws Refused(domain) for an angle outside 0 to 45 deg, where the published tables end.
[[nodiscard]] BearingFactors bearing_factors(BearingMethod method, Angle friction_angle);

}  // namespace undercroft::calc
