/// \file pool_run.hpp
/// One hydrograph on its way through a pool, with one step.
#pragma once

#include "calc/water/hydrograph.hpp"
#include "calc/water/pool.hpp"

namespace undercroft::calc {

/// Time, inflow, depth, volume stored, outflow.
using RoutedTable = Table<Time, Flow, Length, Volume, Flow>;

struct PoolRun {
    RoutedTable rows;
    Volume greatest_stored;
    Flow greatest_outflow;
    /// What found no room, and since when; the rows are then those of a pool that stays full meanwhile.
    Volume spilled;
    Time spills_from;
};

/// The rows that route_pool describes.
/// \throws Refused(domain) for more rows than a sheet has; Refused(no_convergence) where no step is short
/// enough for the rating.
[[nodiscard]] PoolRun run_pool(const Hydrograph& inflow, const Pool& pool, Time step, Length initial_depth);

}  // namespace undercroft::calc
