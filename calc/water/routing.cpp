#include "calc/water/routing.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "calc/water/inflow.hpp"
#include "calc/water/spill_routing.hpp"

namespace undercroft::calc {

namespace {

constexpr double settled = 1e-3;              // a halved step changes the peak by less than this share
constexpr double most_steps_of_inflow = 1e3;  // in the first step tried
constexpr double peak_kept = 2e-3;            // of the greatest depth
constexpr double start_of_depth = 1e-3;       // of it, over which an outflow at the bottom starts

/// The depth to which exact routing comes.
Length exact_depth(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                   Length initial_depth) {
    return flood_marks(inflow, storage, rating, {}, initial_depth).depth;
}

/// The pool with an outflow that starts from nothing at its bottom, over the switching rise or less.
Pool starting_dry(Pool pool, Length greatest_depth) {
    if (pool.outflow.front() == zero) return pool;
    const Length most = start_of_depth * (greatest_depth - pool.bottom());
    pool.insert(pool.bottom() + (most > zero ? std::min(most, Length(switching_rise)) : switching_rise));
    pool.outflow.front() = zero;
    return pool;
}

Length deepest_of(const RoutedTable& rows) {
    Length deepest = std::get<2>(rows.front());
    for (const auto& [time, in, depth, stored, out] : rows) deepest = std::max(deepest, depth);
    return deepest;
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

bool keeps_peak(Length deepest, Length exact, Length bottom) {
    return abs(deepest - exact) <= peak_kept * (exact - bottom) + slack(bottom, exact);
}

PoolRun run_with_own_step(const Hydrograph& inflow, const Pool& pool, Length initial_depth, Length exact) {
    Time step = shortest_spacing(inflow);
    PoolRun run = run_pool(inflow, pool, step, initial_depth);
    while (true) {
        step /= 2.0;
        PoolRun finer = run_pool(inflow, pool, step, initial_depth);
        if (settles(run.greatest_outflow, finer.greatest_outflow) &&
            settles(run.greatest_stored, finer.greatest_stored) &&
            (run.spilled > zero || keeps_peak(deepest_of(run.rows), exact, pool.bottom())))
            return run;
        run = std::move(finer);
    }
}

}  // namespace

RoutedTable route_pool(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                       std::optional<Time> step, Length initial_depth) {
    require_inflow(inflow);
    Pool checked(storage, rating);
    const Length from = checked.inside("initial depth", initial_depth);
    if (step) require_positive("step", *step);
    const Length exact = exact_depth(inflow, storage, rating, from);
    const Pool pool = starting_dry(std::move(checked), exact);
    PoolRun run = step ? run_pool(inflow, pool, *step, from) : run_with_own_step(inflow, pool, from, exact);
    if (run.spilled > zero)
        refuse_domain("the bed overflows at time " + in_words(run.spills_from) + " by " +
                      in_words(run.spilled));
    return std::move(run.rows);
}

Length greatest_routed_depth(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                             std::optional<Time> step, Length initial_depth) {
    Length deepest = deepest_of(route_pool(inflow, storage, rating, step, initial_depth));
    const Length bottom = std::get<0>(storage.rows.front());
    if (step && !keeps_peak(deepest, exact_depth(inflow, storage, rating, initial_depth), bottom))
        deepest = deepest_of(route_pool(inflow, storage, rating, std::nullopt, initial_depth));
    return std::max(initial_depth, deepest);
}

void require_peak_kept(const RoutedTable& rows, const Hydrograph& inflow, const StorageTable& storage,
                       const RatingTable& rating, Length initial_depth) {
    const Length bottom = std::get<0>(storage.rows.front());
    const Length exact = exact_depth(inflow, storage, rating, initial_depth);
    const Length deepest = deepest_of(rows);
    require(keeps_peak(deepest, exact, bottom), "the step is too long: the greatest depth would be ",
            amount(deepest), ", and is ", amount(exact), ", ",
            rounded_text(std::round(1000 * abs(deepest / exact - 1.0)) / 10),
            " % away; a shorter one, or none, keeps it to 0.2 %");
}

}  // namespace undercroft::calc
