/// \file frequency_factor.hpp
/// More runs off a soaked catchment: the rational method's factor for rare storms.
#pragma once

#include "calc/water/frequency.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Frequency factor Cf on the runoff coefficient: 1.00 below 25 years, 1.10, 1.20, 1.25 at 25, 50, 100 years,
/// straight between these, and 1.25 beyond.
///
/// FHWA HEC-22, 3rd ed. (2009), sec. 3.2.2, whose page adds that FHWA does not endorse it: the local
/// authority says.
/// \throws Refused(domain) for no frequency.
[[nodiscard]] Share frequency_factor(const Frequency& frequency);

/// The coefficient with that factor, at most 1. \throws Refused(domain) as runoff_peak and frequency_factor.
[[nodiscard]] Share frequency_coefficient(Share coefficient, const Frequency& frequency);

}  // namespace undercroft::calc
