/// \file tailwater_routing.hpp
/// Routing against water that rises and falls outside: a river, a sewer, a tide.
#pragma once

#include "calc/water/rating.hpp"
#include "calc/water/spill_routing.hpp"

namespace undercroft::calc {

/// Rows of time and level above the base of the bed, straight between them; before the first and after the
/// last as there.
using TailwaterTable = Table<Time, Length>;

/// Level-pool routing of a hydrograph through a bed whose outlets stand against a changing tailwater.
///
/// From row to row, at most `step` apart, the outlets have the rating of the tailwater in the middle of that
/// time (outlet_rating within 0.2 %); between them exact, as BasinRun. Nothing flows back into the bed: a
/// flap is taken to keep it out. Rows, end and spill as route_spill, without a surface.
/// \param step left out, a hundredth of the time of inflow.
/// \throws Refused as route_spill and outlet_rating; Refused(domain) for a tailwater of no row, times that do
/// not rise, a level that is no number.
[[nodiscard]] SpillTable route_tailwater(const Hydrograph& inflow, const StorageTable& storage,
                                         const OutletTable& outlets, const TailwaterTable& tailwater,
                                         std::optional<Time> step, Length initial_depth);

}  // namespace undercroft::calc
