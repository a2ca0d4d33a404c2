/// \file basin_run.hpp
/// A flood on its way through a basin, exact between the corners of inflow, storage and rating.
#pragma once

#include <vector>

#include "calc/water/basin.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// How a basin stands at a time.
struct BasinState {
    Time time;
    Flow inflow;
    Length depth;
    Volume stored;
    Flow outflow;
    Volume spilled;  ///< so far: what found no room
};

/// Carries a basin from one time to the next under an inflow that is straight between them.
///
/// Between two levels Q is straight in S, so dS/dt = I - Q has a closed form, S = S0 + r t f1(-k t) + b t^2
/// f2(-k t) with r = I0 - Q0, k = dQ/dS, b = dI/dt, f1(z) = (e^z - 1)/z, f2(z) = (e^z - 1 - z)/z^2; where it
/// meets a level is a root by Newton (Boost.Math). There is no step and no error of one. Full, the basin
/// spills what it does not let out; empty, and between two levels that store the same, it lets out what flows
/// in.
class BasinRun {
public:
    /// `initial_depth` lies within the basin.
    BasinRun(const Basin& basin, Time start, Flow inflow, Length initial_depth);

    /// On to a later time at which the inflow has that value.
    void advance(Time until, Flow inflow);

    [[nodiscard]] const BasinState& now() const { return now_; }

    /// The deepest state so far, the earliest of equal ones.
    [[nodiscard]] const BasinState& deepest() const { return deepest_; }
    [[nodiscard]] Flow greatest_outflow() const { return greatest_outflow_; }
    /// Times between which it spilled, first and last; both 0 if it never did.
    [[nodiscard]] Time spills_from() const { return spills_from_; }
    [[nodiscard]] Time spills_until() const { return spills_until_; }
    /// Summits, and where spilling began and ended, in order of time.
    [[nodiscard]] const std::vector<BasinState>& events() const { return events_; }

private:
    /// What is left of the way to the next corner of the inflow.
    struct Way {
        Time until;
        Time left;
        Flow inflow_at_end;

        [[nodiscard]] auto growth(Flow now) const { return (inflow_at_end - now) / left; }
    };

    [[nodiscard]] const BasinLevel& low() const { return basin_.levels[place_]; }
    [[nodiscard]] const BasinLevel& high() const { return basin_.levels[place_ + 1]; }
    [[nodiscard]] bool in_shaft() const { return low().stored == high().stored; }

    [[nodiscard]] Flow gain_now() const;
    void take_turn(Way& way);
    void wait(Way& way, Flow until_inflow);
    void spill(Way& way);
    void pass(Way& way);
    void move(Way& way, Time by, Flow inflow);
    void show_level();
    void note();

    const Basin& basin_;
    std::size_t place_ = 0;  ///< index of the level below the water
    BasinState now_;
    BasinState deepest_;
    Flow greatest_outflow_;
    Time spills_from_;
    Time spills_until_;
    bool spilling_ = false;
    std::vector<BasinState> events_;
};

}  // namespace undercroft::calc
