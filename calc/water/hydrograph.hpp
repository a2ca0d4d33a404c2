/// \file hydrograph.hpp
/// Flow against time: from the rational method, and from a storm by the unit hydrograph.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Rows of time and flow, the flow straight between them.
using Hydrograph = Table<Time, Flow>;

/// The trapezoid of the modified rational method, every `step` and at its corners.
///
/// The flow rises until the shorter of duration td and time of concentration tc, holds until the longer, and
/// is over at td + tc; its peak is C i A, or C i A td/tc when the storm is shorter than tc. The volume is C i
/// A td in both cases. Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.4.
/// \throws Refused(domain) as runoff_peak; for a duration, time of concentration or step not above 0, or more
/// rows than a sheet has.
[[nodiscard]] Hydrograph rational_hydrograph(Share coefficient, Area area, Speed intensity, Time duration,
                                             Time time_of_concentration, Time step);

/// Flow from a storm, by the NRCS dimensionless unit hydrograph.
///
/// `storm` is time and cumulative rain, straight between its rows. Runoff by the curve number (Ia = 0.2 S) in
/// bursts of at most 0.02 tc, whatever the step; the unit hydrograph is that of runoff in D = 0.05 tc: Tp =
/// D/2 + 0.6 tc, ordinates q/qp of Table 16-1, straight between them. The method's peak falls as D grows (by
/// 8 % at the 0.17 tc that ch. 16 admits); with 0.05 tc it is, on the whole, TR-55's graphical peak, and no
/// step changes it. Rows stand every `step`: the one nearest to the peak holds the peak itself, and all
/// together hold the runoff exactly, for which the others are scaled, by less than 1 %. The peak rate factor
/// is that of the table, 483 and not the rounded 484. USDA NEH Part 630, ch. 16 (2007).
/// \throws Refused(domain) as runoff_depth; when the storm has fewer than two rows, its time does not rise or
/// its rain falls or does not start at 0; for an area or time not above 0; for a step over 0.25 (D/2 + 0.6
/// tc) with D the step (0.17 tc), which ch. 16 sets as the limit, or so short that the table would have more
/// than 20,000 rows.
[[nodiscard]] Hydrograph storm_hydrograph(const Table<Time, Length>& storm, Area area, Share curve_number,
                                          Time time_of_concentration, Time step);

}  // namespace undercroft::calc
