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
/// The flow rises until the shorter of duration td and time of concentration tc, holds until the longer,
/// and is over at td + tc; its peak is C i A, or C i A td/tc when the storm is shorter than tc. The
/// volume is C i A td in both cases. Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.4.
/// \throws Refused(domain) as runoff_peak; for a duration, time of concentration or step not above 0, or more
/// rows than a sheet has.
[[nodiscard]] Hydrograph rational_hydrograph(Share coefficient, Area area, Speed intensity, Time duration,
                                             Time time_of_concentration, Time step);

/// Flow from a storm, by the NRCS dimensionless unit hydrograph.
///
/// `storm` is time and cumulative rain, straight between its rows. Runoff of each step by the curve number
/// (Ia = 0.2 S); the unit hydrograph is that of runoff in one step (D = step): Tp = D/2 + 0.6 tc, ordinates
/// q/qp of Table 16-1, straight between them, scaled so that their sum over the steps is one unit of
/// runoff. The volume under the table is therefore the runoff exactly, and the peak rate factor is that of
/// the table itself, 483 and not the rounded 484. USDA NEH Part 630, ch. 16 (2007).
/// \throws Refused(domain) as runoff_depth; when the storm has fewer than two rows, its time does not rise or
/// its rain falls or does not start at 0; for an area or time not above 0; for a step over 0.25 Tp (0.17 tc),
/// which ch. 16 sets as the limit, or so short that the table would have more than 20,000 rows.
[[nodiscard]] Hydrograph storm_hydrograph(const Table<Time, Length>& storm, Area area, Share curve_number,
                                          Time time_of_concentration, Time step);

}  // namespace undercroft::calc
