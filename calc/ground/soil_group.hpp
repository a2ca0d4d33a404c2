/// \file soil_group.hpp
/// The AASHTO group of a soil, and its group index.
#pragma once

#include <string>
#include <variant>

#include "calc/percent.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// What a laboratory reports in place of a plasticity index (and of a liquid limit that cannot be found).
enum class Plasticity { non_plastic };

/// A liquid limit or plasticity index, in percent, or non-plastic.
using Consistency = std::variant<Plasticity, Percent>;

/// What the table decides by; percentages are rounded to whole ones first, halves up.
struct SoilTest {
    Percent passing_2_mm;
    Percent passing_0425_mm;
    Percent passing_0075_mm;
    Consistency liquid_limit;
    Consistency plasticity_index;
};

/// Group by AASHTO M 145, Table 1: the first that fits in the order A-1-a, A-1-b, A-3, A-2-4 ... A-2-7,
/// A-4 ... A-7-6; for example "A-2-4". A non-plastic soil counts as a plasticity index below all limits and a
/// liquid limit of at most 40.
/// \throws Refused(domain) for percentages outside 0 to 100 or that rise towards finer sieves, limits not
/// above 0, a plasticity index that rounds to 0 (the standard reports NP), or one not below the liquid limit;
/// Refused(value) for a non-plastic liquid limit beside a plasticity index.
[[nodiscard]] std::string soil_group(const SoilTest& test);

/// Group index by AASHTO M 145: GI = (F - 35)(0.2 + 0.005 (LL - 40)) + 0.01 (F - 15)(PI - 10), the terms
/// summed with their signs; the second alone for A-2-6 and A-2-7; 0 for, A-2-4, A-2-5, non-plastic
/// soils, and where the sum is negative; rounded to a whole number. F is the percentage passing 0.075 mm.
/// \throws Refused as soil_group.
[[nodiscard]] Share soil_index(Percent passing_0075_mm, const Consistency& liquid_limit,
                               const Consistency& plasticity_index);

}  // namespace undercroft::calc
