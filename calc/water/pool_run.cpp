#include "calc/water/pool_run.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "calc/water/run_end.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

constexpr double same_flow = 1e-9;  // of the flows compared
constexpr double rounding = 1e-14;  // of 2 S/dt
constexpr double nothing =
    1e-30;  // of the way between two depths of the pool: what thins out for ever is gone
constexpr int most_halvings = 40;

/// Where outflow falls while the depth rises, 2 S/dt + Q rises only if dt is below 2 dS/|dQ|; half of that
/// keeps it well apart.
Time longest_step(const Pool& pool) {
    Time longest = std::numeric_limits<double>::infinity() * second;
    for (std::size_t i = 0; i + 1 < pool.depth.size(); ++i) {
        const Flow fall = pool.outflow[i] - pool.outflow[i + 1];
        if (fall > zero) longest = std::min(longest, Time((pool.stored[i + 1] - pool.stored[i]) / fall));
    }
    return longest;
}

struct State {
    Time time;
    Flow inflow;
    Length depth;
    Volume stored;
    Flow outflow;
};

class Routing {
public:
    Routing(const Hydrograph& inflow, const Pool& pool, Time step, Length initial_depth)
        : inflow_(inflow),
          pool_(pool),
          step_(step),
          longest_step_(longest_step(pool)),
          dead_storage_(pool.dead_storage()) {
        const auto [i, way] = pool.place_of(initial_depth);
        place_ = i;
        const auto& [time, flow] = inflow.front();
        note(state_in_place(time, flow, way));
    }

    PoolRun run();

private:
    [[nodiscard]] bool is_empty() const;
    void advance(Time time, Flow inflow, int halvings = 0) {
        if (!step_to(time, inflow)) advance_by_halves(time, inflow, halvings);
    }
    void advance_by_halves(Time time, Flow inflow, int halvings);
    [[nodiscard]] bool step_to(Time time, Flow inflow);
    [[nodiscard]] State overflow(Time time, Flow inflow, Volume spill);
    [[nodiscard]] State state_in_place(Time time, Flow inflow, double way) const;
    void note(const State& state);

    const Hydrograph& inflow_;
    const Pool& pool_;
    Time step_;
    Time longest_step_;
    Volume dead_storage_;
    std::size_t place_ = 0;  // index in the pool of the depth below the water
    State now_;
    PoolRun made_;
};

inline State Routing::state_in_place(Time time, Flow inflow, double way) const {
    const std::size_t i = place_;
    return {time, inflow, between(pool_.depth[i], pool_.depth[i + 1], way),
            between(pool_.stored[i], pool_.stored[i + 1], way),
            between(pool_.outflow[i], pool_.outflow[i + 1], way)};
}

inline void Routing::note(const State& state) {
    now_ = state;
    require_rows(static_cast<double>(made_.rows.size() + 1));
    made_.rows.emplace_back(state.time, state.inflow, state.depth, state.stored, state.outflow);
    made_.greatest_stored = std::max(made_.greatest_stored, state.stored);
    made_.greatest_outflow = std::max(made_.greatest_outflow, state.outflow);
}

/// Notes the state at that time; false when the step is too long. Inlined, as this is where the time goes.
inline bool Routing::step_to(Time time, Flow inflow) {
    const Time dt = time - now_.time;
    if (dt > longest_step_) return false;
    const auto per_step = 2.0 / dt;
    const auto indication_at = [&](std::size_t i) { return per_step * pool_.stored[i] + pool_.outflow[i]; };
    const Flow both_inflows = now_.inflow + inflow;
    const Flow indication = both_inflows + (per_step * now_.stored - now_.outflow);
    while (place_ + 2 < pool_.depth.size() && indication > indication_at(place_ + 1)) ++place_;
    while (place_ > 0 && indication < indication_at(place_)) --place_;

    const Flow low = indication_at(place_);
    const Flow high = indication_at(place_ + 1);
    const double way = share_of_way(low, high, indication);
    // More would flow out than is there.
    if (indication < low - rounding * per_step * now_.stored) return false;
    if (indication > high) {
        note(overflow(time, inflow, (indication - high) / per_step));
        return true;
    }
    const State next = state_in_place(time, inflow, way > nothing ? way : 0);
    // A pool that rises lets out no more than flows in, one that falls no less.
    const Flow mean_inflow = both_inflows / 2.0;
    const bool rises = both_inflows > now_.outflow + next.outflow;
    const Flow past = rises ? next.outflow - mean_inflow : mean_inflow - next.outflow;
    if (past > same_flow * (next.outflow + mean_inflow)) return false;
    note(next);
    return true;
}

PoolRun Routing::run() {
    const Time start = now_.time;
    const Time end = start + longest_run * (std::get<0>(inflow_.back()) - start);
    const Time hair = same_time * step_;
    const double most = (end - start) / step_ + static_cast<double>(inflow_.size());
    made_.rows.reserve(static_cast<std::size_t>(std::min(most, static_cast<double>(most_rows))));
    double steps = 1;  // the next row at a step is at start + steps * step
    for (std::size_t i = 1; i < inflow_.size();) {
        const auto& [time, flow] = inflow_[i];
        const Time at_step = start + steps * step_;
        if (at_step <= time + hair) steps += 1;
        if (at_step < time - hair) {
            advance(at_step, between(now_.inflow, flow, share_of_way(now_.time, time, at_step)));
        } else {
            advance(time, flow);
            ++i;
        }
    }
    for (; now_.time < end - hair && !is_empty(); steps += 1) advance(start + steps * step_, zero);
    return std::move(made_);
}

bool Routing::is_empty() const {
    const Volume drained = std::max<Volume>(made_.greatest_stored - dead_storage_, zero);
    return now_.stored - dead_storage_ <= emptied * drained;
}

void Routing::advance_by_halves(Time time, Flow inflow, int halvings) {
    if (halvings == most_halvings)
        throw Refused(Cause::no_convergence,
                      "at " + in_words(now_.time) + " no step is short enough for this rating");
    const Time middle = (now_.time + time) / 2.0;
    const Flow inflow_then = (now_.inflow + inflow) / 2.0;
    advance(middle, inflow_then, halvings + 1);
    advance(time, inflow, halvings + 1);
}

State Routing::overflow(Time time, Flow inflow, Volume spill) {
    if (made_.spilled == zero) {
        const Volume room = pool_.stored.back() - now_.stored;
        made_.spills_from = now_.time + (time - now_.time) * (room / (room + spill));
    }
    made_.spilled += spill;
    return state_in_place(time, inflow, 1);
}

}  // namespace

PoolRun run_pool(const Hydrograph& inflow, const Pool& pool, Time step, Length initial_depth) {
    return Routing(inflow, pool, step, initial_depth).run();
}

}  // namespace undercroft::calc
