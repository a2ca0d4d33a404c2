/// \file graphical_peak.hpp
/// Peak runoff of a 24-hour storm by TR-55, and the curve number of a mixed catchment.
#pragma once

#include "calc/water/nrcs_storm.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Peak flow of a 24-hour storm, graphical method: qp = qu Am Q Fp, Q the runoff by the curve number (Ia =
/// 0.2 S).
///
/// log10 qu = C0 + C1 log10 tc + C2 (log10 tc)^2 (ft3/s per mi2 and in, tc in h), the coefficients by type of
/// rain and Ia/P, qu straight between their rows, Ia/P from 0.1 to 0.5 and beyond as at these limits. Fp by
/// the share of ponds and swamps spread over the catchment: 1.00, 0.97, 0.87, 0.75, 0.72 at 0, 0.2, 1, 3, 5
/// %, straight between. USDA TR-55 (1986), eq. 4-1, Tables 4-1, 4-2 and F-1.
/// \throws Refused(domain) for an area not above 0, a time of concentration not from 0.1 to 10 h, a share of
/// ponds not from 0 to 5 %, a curve number not from 40 to 100, and as runoff_depth.
[[nodiscard]] Flow graphical_peak(Area area, Length rain_depth, Share curve_number,
                                  Time time_of_concentration, RainType type, Share ponds);

/// Curve number of several surfaces together, weighted by area. USDA TR-55 (1986), ch. 2, which rounds it to
/// a whole number.
/// \throws Refused(domain) for an area below 0, no area at all, a curve number not from 1 to 100.
[[nodiscard]] Share composite_curve_number(const Table<Area, Share>& surfaces);

/// Curve number of an urban area: pervious ground with an impervious share (CN 98), of which a ratio does not
/// drain straight to the drain.
///
/// CNp + Pimp (98 - CNp) (1 - 0.5 R): USDA TR-55 (1986), figs. 2-3 and 2-4, whose unconnected form is for at
/// most 30 % impervious.
/// \throws Refused(domain) for a curve number not from 1 to 98, shares not from 0 to 1, an unconnected ratio
/// above 0 with more than 30 % impervious.
[[nodiscard]] Share urban_curve_number(Share pervious_curve_number, Share impervious, Share unconnected);

}  // namespace undercroft::calc
