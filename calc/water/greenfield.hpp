/// \file greenfield.hpp
/// What the site let go before it was built on, as the release that is permitted.
#pragma once

#include "calc/water/graphical_peak.hpp"
#include "calc/water/rain.hpp"

namespace undercroft::calc {

/// Release by the rational method: s C i(tc) A, i the intensity of the rain table for the time of
/// concentration of the site as it was.
///
/// Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.1.
/// \param permitted_share s, of that flow what the authority permits.
/// \throws Refused(domain) for a coefficient, area or permitted share not above 0, a coefficient or share
/// over 1; and as rain_intensity.
[[nodiscard]] Flow greenfield_rational(const RainTable& rain, Share coefficient, Area area,
                                       Time time_of_concentration, Share permitted_share);

/// Release by TR-55's graphical method: s times graphical_peak of the site as it was.
/// \throws Refused as graphical_peak; Refused(domain) for a permitted share not above 0 or over 1.
[[nodiscard]] Flow greenfield_nrcs(Area area, Length rain_depth, Share curve_number,
                                   Time time_of_concentration, RainType type, Share ponds,
                                   Share permitted_share);

}  // namespace undercroft::calc
