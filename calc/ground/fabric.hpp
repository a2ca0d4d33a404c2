/// \file fabric.hpp
/// Openings of a separation fabric.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Largest opening O95 of a separation fabric beside soil of size d85: O95 = min(B d85, 0.60 mm).
///
/// FHWA NHI-07-092 (2008), filter criterion O95 <= B d85 for steady flow; AASHTO M 288, separation: O95 <=
/// 0.60 mm (both from memory). B by fabric_factor where half or less of the soil passes 0.075 mm; finer soils
/// B = 1 (woven) or 1.8 (non-woven) and O95 <= 0.3 mm. \throws Refused(domain) for a size or factor not above
/// 0, a size above 75 mm, or a factor above 2, the criterion's greatest.
[[nodiscard]] Length fabric_opening(Length d85, Share factor);

/// Factor B of the criterion for soils of which half or less passes 0.075 mm, from their coefficient of
/// uniformity: 1 for Cu <= 2 and Cu >= 8, 0.5 Cu from 2 to 4, 8/Cu from 4 to 8. FHWA NHI-07-092 (from
/// memory). \throws Refused(domain) for a coefficient below 1.
[[nodiscard]] Share fabric_factor(Share uniformity);

}  // namespace undercroft::calc
