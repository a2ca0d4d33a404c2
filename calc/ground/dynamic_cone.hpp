/// \file dynamic_cone.hpp
/// California bearing ratio from a dynamic cone penetrometer.
#pragma once

#include "calc/percent.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Soil symbols of ASTM D2487: CL, CH, and all others.
enum class ConeSoil { general, cl, ch };

/// CBR from the penetration per blow of the 8-kg hammer, d in mm.
///
/// ASTM D6951 (equations from memory): CBR = 292/d^1.12; CL below CBR 10: 1/(0.017019 d)^2; CH: 1/(0.002871
/// d).
/// \throws Refused(domain) for a penetration not above 0; Refused(no_answer) where the CL equation gives 10
/// or more, or any gives more than 100 or less than 0.5.
[[nodiscard]] Percent cone_cbr(Length penetration_per_blow, ConeSoil soil);

}  // namespace undercroft::calc
