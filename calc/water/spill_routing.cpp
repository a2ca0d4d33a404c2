#include "calc/water/spill_routing.hpp"

#include <algorithm>

#include "calc/interpolate.hpp"
#include "calc/water/inflow.hpp"
#include "calc/water/run_end.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// A run that writes its rows down.
class Record {
public:
    Record(const Basin& basin, const Hydrograph& inflow, Length initial_depth)
        : run_(basin, std::get<0>(inflow.front()), std::get<1>(inflow.front()), initial_depth) {
        add(run_.now());
    }

    void advance(Time until, Flow inflow) {
        run_.advance(until, inflow);
        for (; events_ < run_.events().size(); ++events_) {
            const BasinState& event = run_.events()[events_];
            if (is_above(event.time, std::get<0>(rows_.back())) && is_above(until, event.time)) add(event);
        }
        add(run_.now());
    }

    [[nodiscard]] const BasinRun& run() const { return run_; }
    [[nodiscard]] SpillTable& rows() { return rows_; }

private:
    void add(const BasinState& state) {
        require_rows(static_cast<double>(rows_.size() + 1));
        rows_.emplace_back(state.time, state.inflow, state.depth, state.stored, state.outflow, state.spilled);
    }

    BasinRun run_;
    SpillTable rows_;
    std::size_t events_ = 0;
};

}  // namespace

Length depth_inside(const Basin& basin, Length depth) {
    const Length bottom = basin.levels.front().depth;
    const Length hair = slack(bottom, basin.top());
    require(depth >= bottom - hair && depth <= basin.top() + hair, shown("initial depth", depth),
            " must be within the storage (", amount(bottom), " to ", amount(basin.top()), ")");
    return std::clamp(depth, bottom, basin.top());
}

SpillTable route_spill(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                       const std::optional<StorageTable>& surface, std::optional<Time> step,
                       Length initial_depth) {
    require_inflow(inflow);
    const Basin basin(storage, rating, surface);
    const Length from = depth_inside(basin, initial_depth);
    const Time start = std::get<0>(inflow.front());
    const Time all = std::get<0>(inflow.back()) - start;
    if (step) require_positive("step", *step);
    const Time dt = step.value_or(all / steps_of_inflow);
    require_rows(longest_run * all / dt + static_cast<double>(inflow.size()));

    Record record(basin, inflow, from);
    const Time hair = same_time * dt;
    double steps = 1;  // the next row at a step is at start + steps * dt
    for (std::size_t i = 1; i < inflow.size();) {
        const auto& [time, flow] = inflow[i];
        const auto& [before, flow_before] = inflow[i - 1];
        const Time at_step = start + steps * dt;
        if (at_step <= time + hair) steps += 1;
        if (at_step < time - hair) {
            record.advance(at_step, between(flow_before, flow, share_of_way(before, time, at_step)));
        } else {
            record.advance(time, flow);
            ++i;
        }
    }
    const Time end = start + longest_run * all;
    const auto is_empty = [&] {
        const Volume drained = std::max<Volume>(record.run().deepest().stored - basin.dead_storage(), zero);
        return record.run().now().stored - basin.dead_storage() <= emptied * drained;
    };
    for (; record.run().now().time < end - hair && !is_empty(); steps += 1)
        record.advance(start + steps * dt, zero);
    return std::move(record.rows());
}

FloodMarks flood_marks(const Hydrograph& inflow, const StorageTable& storage, const RatingTable& rating,
                       const std::optional<StorageTable>& surface, Length initial_depth) {
    require_inflow(inflow);
    const Basin basin(storage, rating, surface);
    return flood_marks_in(basin, inflow, depth_inside(basin, initial_depth));
}

FloodMarks flood_marks_in(const Basin& basin, const Hydrograph& inflow, Length initial_depth) {
    BasinRun run(basin, std::get<0>(inflow.front()), std::get<1>(inflow.front()), initial_depth);
    Flow peak = std::get<1>(inflow.front());
    for (std::size_t i = 1; i < inflow.size(); ++i) {
        const auto& [time, flow] = inflow[i];
        run.advance(time, flow);
        peak = std::max(peak, flow);
    }
    const BasinState& deepest = run.deepest();
    return {deepest.depth,          deepest.time,      deepest.stored,    peak,
            run.greatest_outflow(), run.now().spilled, run.spills_from(), run.spills_until()};
}

}  // namespace undercroft::calc
