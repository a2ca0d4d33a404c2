#include "calc/water/routing.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "calc/water/inflow.hpp"

namespace undercroft::calc {

namespace {

constexpr double settled = 1e-3;              // a halved step changes the peak by less than this share
constexpr double most_steps_of_inflow = 1e3;  // in the first step tried

/// The pool with an outflow that starts from nothing at its bottom.
Pool starting_dry(Pool pool) {
    if (pool.outflow.front() == zero) return pool;
    pool.insert(pool.bottom() + switching_rise);
    pool.outflow.front() = zero;
    return pool;
}

Time shortest_spacing(const Hydrograph& inflow) {
    const Time all = std::get<0>(inflow.back()) - std::get<0>(inflow.front());
    Time shortest = all;
    for (std::size_t i = 1; i < inflow.size(); ++i)
        shortest = std::min(shortest, std::get<0>(inflow[i]) - std::get<0>(inflow[i - 1]));
    return std::max(shortest, all / most_steps_of_inflow);
}

template <class Q>
bool settles(Q coarse, Q fine) {
    return abs(coarse - fine) <= settled * abs(coarse);
}

PoolRun run_with_own_step(const Hydrograph& inflow, const Pool& pool, Length initial_depth) {
    Time step = shortest_spacing(inflow);
    PoolRun run = run_pool(inflow, pool, step, initial_depth);
    while (true) {
        step /= 2.0;
        PoolRun finer = run_pool(inflow, pool, step, initial_depth);
        if (settles(run.greatest_outflow, finer.greatest_outflow) &&
            settles(run.greatest_stored, finer.greatest_stored))
            return run;
        run = std::move(finer);
    }
}

}  // namespace

RoutedTable route_pool(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                       std::optional<Time> step, Length initial_depth) {
    require_inflow(inflow);
    const Pool pool = starting_dry(Pool(storage, rating));
    const Length from = pool.inside("initial depth", initial_depth);
    if (step) require_positive("step", *step);
    PoolRun run = step ? run_pool(inflow, pool, *step, from) : run_with_own_step(inflow, pool, from);
    if (run.spilled > zero)
        refuse_domain("the bed overflows at time " + in_words(run.spills_from) + " by " +
                      in_words(run.spilled));
    return std::move(run.rows);
}

Length greatest_routed_depth(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                             std::optional<Time> step, Length initial_depth) {
    Length greatest = initial_depth;
    for (const auto& [time, in, depth, stored, out] :
         route_pool(inflow, storage, rating, step, initial_depth))
        greatest = std::max(greatest, depth);
    return greatest;
}

}  // namespace undercroft::calc
