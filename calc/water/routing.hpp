/// \file routing.hpp
/// Level-pool routing of a hydrograph through a bed.
#pragma once

#include <optional>

#include "calc/water/pool_run.hpp"

namespace undercroft::calc {

/// Storage-indication (level-pool, modified Puls) routing.
///
/// (I1 + I2) + (2 S1/dt - Q1) = 2 S2/dt + Q2, with I straight between the rows of inflow, S and Q straight
/// between the depths of storage and rating. Chow, Maidment and Mays, Applied Hydrology (1988), sec. 8.2.
///
/// - Rows stand at every `step` and at every time of inflow. A step in which the outflow would swing past
///   the mean inflow, or more would flow out than is there, is halved until it does not (dt at most
///   2 dS/dQ); its parts are rows too.
/// - Without `step`, the spacing of inflow is halved until one more halving changes the greatest outflow
///   and the greatest volume by less than 0.1 %, and the greatest depth is that of exact routing to 0.2 %.
/// - After its last row inflow falls to 0 by the next step.
/// - A rating that does not start from 0 takes effect over the switching rise, at most a thousandth of the
///   greatest depth: an empty bed lets nothing out.
/// - The rows run on until the bed is empty (0.1 % of the greatest volume above its dead storage is left), or
///   to 10 times the time of inflow.
/// \throws Refused(domain) when inflow has fewer than two rows, times that do not rise or a flow below 0,
/// for a step not above 0, an initial depth outside the storage table, more rows than a sheet has, as Pool;
/// and when the bed overflows: the sentence says when its top is reached and what volume in all finds no
/// room; Refused(no_convergence) where no step is short enough for the rating.
[[nodiscard]] RoutedTable route_pool(const Hydrograph& inflow, const StorageTable& storage,
                                     const RatingTable& rating, std::optional<Time> step,
                                     Length initial_depth);

/// Refuses routed rows whose greatest depth is not that of flood_marks to 0.2 %: their step is too long.
/// \throws Refused(domain) with the error and both depths.
void require_peak_kept(const RoutedTable& rows, const Hydrograph& inflow, const StorageTable& storage,
                       const RatingTable& rating, Length initial_depth);

/// The greatest depth of that routing; where a step leaves it more than 0.2 % off, by a shorter one.
/// \throws Refused as route_pool.
[[nodiscard]] Length greatest_routed_depth(const Hydrograph& inflow, const StorageTable& storage,
                                           const RatingTable& rating, std::optional<Time> step,
                                           Length initial_depth);

}  // namespace undercroft::calc
