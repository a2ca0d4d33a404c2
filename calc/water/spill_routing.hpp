/// \file spill_routing.hpp
/// Routing that goes on when a bed is full: what stands on the surface, what spills, and how far a flood
/// went.
#pragma once

#include <optional>

#include "calc/water/basin_run.hpp"
#include "calc/water/hydrograph.hpp"

namespace undercroft::calc {

/// Time, inflow, depth, volume stored, outflow, volume spilled so far.
using SpillTable = Table<Time, Flow, Length, Volume, Flow, Volume>;

/// Level-pool routing of a hydrograph through a bed and what ponds above it, in which a full one spills.
///
/// dS/dt = I - Q, I straight between the rows of inflow, S and Q straight between the depths of storage,
/// surface and rating: exact, as BasinRun. Rows stand at every `step`, at every time of inflow, at each
/// summit and where spilling begins and ends. Without `step` they stand at a hundredth of the time of inflow.
/// After its last row inflow falls to 0 by the next step; the rows run on until the basin is empty (0.1 % of
/// the greatest volume above its dead storage is left), or to 10 times the time of inflow.
/// \param surface depth above the base of the bed and volume that stands on the surface there, from 0; what
/// is stored between the top of the bed and the surface, in shafts, does not count.
/// \throws Refused(domain) as Basin; for an inflow of fewer than two rows, times that do not rise or a flow
/// below 0, a step not above 0, an initial depth outside the basin, more rows than a sheet has.
[[nodiscard]] SpillTable route_spill(const Hydrograph& inflow, const StorageTable& storage,
                                     const RatingTable& rating, const std::optional<StorageTable>& surface,
                                     std::optional<Time> step, Length initial_depth);

/// How far a flood went: greatest depth and when, greatest volume held, peak inflow and outflow; volume
/// spilled, from when and until when (0 if none).
struct FloodMarks {
    Length depth;
    Time time;
    Volume stored;
    Flow inflow;
    Flow outflow;
    Volume spilled;
    Time spills_from;
    Time spills_until;
};

/// The same routing, in its marks only. \throws Refused as route_spill.
[[nodiscard]] FloodMarks flood_marks(const Hydrograph& inflow, const StorageTable& storage,
                                     const RatingTable& rating, const std::optional<StorageTable>& surface,
                                     Length initial_depth);

/// The depth itself. \throws Refused(domain) when it is not within the basin.
[[nodiscard]] Length depth_inside(const Basin& basin, Length initial_depth);

/// The same through a basin that was checked, until the inflow is over.
[[nodiscard]] FloodMarks flood_marks_in(const Basin& basin, const Hydrograph& inflow, Length initial_depth);

}  // namespace undercroft::calc
