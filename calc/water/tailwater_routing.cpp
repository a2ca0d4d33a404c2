#include "calc/water/tailwater_routing.hpp"

#include <algorithm>

#include "calc/interpolate.hpp"
#include "calc/water/inflow.hpp"
#include "calc/water/run_end.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

const Count rating_steps = count(20);
const Share rating_tolerance = share(0.002);

Curve<Time, Length> checked_tailwater(const TailwaterTable& tailwater) {
    require(!tailwater.empty(), "the tailwater needs at least one row of time and level");
    Curve<Time, Length> levels;
    for (const auto& [time, level] : tailwater) {
        require(is_finite(level), "a level of the tailwater is no number");
        require(is_finite(time) && (levels.x.empty() || is_above(time, levels.x.back())), shown("time", time),
                " of the tailwater must be later than that of the row before");
        levels.add(time, level);
    }
    return levels;
}

Length level_at(const Curve<Time, Length>& levels, Time time) {
    if (levels.x.size() == 1) return levels.y.front();
    return linear(levels, std::clamp(time, levels.x.front(), levels.x.back()));
}

Flow inflow_at(const Hydrograph& inflow, Time time) {
    if (time > std::get<0>(inflow.back())) return zero;
    const auto next =
        std::lower_bound(inflow.begin() + 1, inflow.end() - 1, time,
                         [](const auto& row, Time wanted) { return std::get<0>(row) < wanted; });
    const auto& [t1, q1] = *(next - 1);
    const auto& [t2, q2] = *next;
    return between(q1, q2, share_of_way(t1, t2, time));
}

/// A bed between two rows of the table, under one tailwater.
class Bed {
public:
    Bed(const StorageTable& storage, const OutletTable& outlets) : storage_(storage), outlets_(outlets) {
        require(!storage.rows.empty(), "the storage table needs at least two rows");
    }

    [[nodiscard]] const Basin& under(Length tailwater) {
        // Below the base it is no tailwater at all; above the top it lets nothing out.
        const Length top = std::max<Length>(std::get<0>(storage_.rows.back()), zero);
        const Length level = std::clamp<Length>(tailwater, zero, top);
        if (!basin_ || level != level_) {
            const RatingTable rating =
                outlet_rating(outlets_, top, rating_steps, rating_tolerance, {level, {}});
            basin_.emplace(storage_, rating, std::nullopt);
            level_ = level;
        }
        return *basin_;
    }

private:
    const StorageTable& storage_;
    const OutletTable& outlets_;
    std::optional<Basin> basin_;
    Length level_ = zero;
};

}  // namespace

SpillTable route_tailwater(const Hydrograph& inflow, const StorageTable& storage, const OutletTable& outlets,
                           const TailwaterTable& tailwater, std::optional<Time> step, Length initial_depth) {
    require_inflow(inflow);
    const Curve<Time, Length> levels = checked_tailwater(tailwater);
    if (step) require_positive("step", *step);
    const Time start = std::get<0>(inflow.front());
    const Time all = std::get<0>(inflow.back()) - start;
    const Time dt = step.value_or(all / steps_of_inflow);
    std::vector<Time> times = multiples(dt, Time(longest_run * all));
    for (Time& time : times) time += start;
    std::vector<Time> corners = levels.x;
    for (const auto& [time, flow] : inflow) corners.push_back(time);
    add_kinks(times, corners);

    Bed bed(storage, outlets);
    const Basin& first = bed.under(level_at(levels, start));
    const Volume dead = Basin(storage, outlet_rating(outlets, first.top(), rating_steps), {}).dead_storage();
    BasinState now =
        BasinRun(first, start, std::get<1>(inflow.front()), depth_inside(first, initial_depth)).now();
    Volume greatest = now.stored;
    SpillTable rows = {{now.time, now.inflow, now.depth, now.stored, now.outflow, now.spilled}};
    for (std::size_t i = 1; i < times.size(); ++i) {
        const bool rain_is_over = times[i - 1] >= std::get<0>(inflow.back());
        if (rain_is_over && now.stored - dead <= emptied * std::max<Volume>(greatest - dead, zero)) break;
        const Basin& basin = bed.under(level_at(levels, (times[i - 1] + times[i]) / 2.0));
        BasinRun run(basin, times[i - 1], now.inflow, now.depth);
        run.advance(times[i], inflow_at(inflow, times[i]));
        const Volume spilled = now.spilled + run.now().spilled;
        greatest = std::max(greatest, run.deepest().stored);
        now = run.now();
        now.spilled = spilled;
        rows.emplace_back(now.time, now.inflow, now.depth, now.stored, now.outflow, now.spilled);
    }
    return rows;
}

}  // namespace undercroft::calc
