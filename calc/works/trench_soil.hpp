/// \file trench_soil.hpp
/// The soil type that counts for the walls of a pit where there is groundwater.
#pragma once

#include "calc/works/excavation.hpp"

namespace undercroft::calc {

/// How the groundwater is dealt with while the pit is open.
enum class Dewatering { none, confirmed };

/// Soil type that counts for the walls: type C where groundwater stands above the formation, whatever the
/// soil but stable rock; the soil's own type where dewatering below the formation is confirmed. US 29 CFR
/// 1926 Subpart P, Appendix A, (b): type C is "submerged soil or soil from which water is freely seeping" (in
/// reproductions; not one type weaker, as is sometimes done). Water that seeps from above the groundwater is
/// for the competent person on site to see. \param water_above_formation highest groundwater over the
/// formation; 0 where it stands below. \throws Refused(domain) for a water height below 0.
[[nodiscard]] TrenchSoil soil_in_water(TrenchSoil soil, Length water_above_formation, Dewatering dewatering);

/// Steepest batter by pit_batter for the soil type that counts in groundwater.
/// \throws Refused as pit_batter and soil_in_water.
[[nodiscard]] Batter wet_pit_batter(TrenchSoil soil, Length depth, Length water_above_formation,
                                    Dewatering dewatering);

}  // namespace undercroft::calc
