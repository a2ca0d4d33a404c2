/// \file runoff.hpp
/// How much of the rain runs off: the rational method and the curve number.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Refuses a depth of rain above 5 m, which no storm brings: a slip of units.
void require_storm_depth(const char* name, Length rain);

/// Runoff coefficient of several surfaces together, weighted by area: C = sum(C A) / sum(A).
///
/// Common practice. \throws Refused(domain) for an area below 0, a coefficient not from 0 to 1, or no
/// area at all.
[[nodiscard]] Share runoff_coefficient(const Table<Area, Share>& surfaces);

/// Peak runoff by the rational method: Q = C i A.
///
/// Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.1.
/// \throws Refused(domain) for an intensity or area not above 0, a coefficient not above 0 or over 1.
[[nodiscard]] Flow runoff_peak(Share coefficient, Speed intensity, Area area);

/// Ia/S as the NRCS takes it where nothing else is given. TR-55, eq. 2-2.
inline constexpr double initial_abstraction_ratio = 0.2;

/// Direct runoff by the NRCS curve number.
///
/// S = 1 in (1000/CN - 10); Ia = lambda S; Q = (P - Ia)^2 / (P - Ia + S) above Ia, else 0.
/// USDA TR-55 (1986), eqs. 2-1 to 2-4.
/// \throws Refused(domain) for a curve number not from 1 to 100, a rain depth below 0 or above 5 m,
/// an abstraction ratio not from 0 to 1.
[[nodiscard]] Length runoff_depth(Share curve_number, Length rain_depth, Share abstraction_ratio);

}  // namespace undercroft::calc
