#include "calc/water/basin_run.hpp"

#include <algorithm>
#include <cmath>

#include "calc/interpolate.hpp"
#include "calc/solve.hpp"
#include "calc/water/mean_growth.hpp"

namespace undercroft::calc {

namespace {

constexpr double most_growth = 30;  // e-fold at a time, where the outflow falls while the depth rises
constexpr double balanced = 1e-13;  // of inflow and outflow
constexpr int most_turns = 100000;

/// (e^z - 1)/z and (e^z - 1 - z)/z^2, which are 1 and 1/2 at 0.
struct Growths {
    double first;
    double second;

    explicit Growths(double z) {
        constexpr double near = 1e-2;  // nearer the differences lose digits
        if (std::abs(z) > near) {
            first = std::expm1(z) / z;
            second = (first - 1) / z;
        } else {
            second = 1.0 / 2 + z * (1.0 / 6 + z * (1.0 / 24 + z * (1.0 / 120 + z * (1.0 / 720 + z / 5040))));
            first = 1 + z * second;
        }
    }
};

}  // namespace

BasinRun::BasinRun(const Basin& basin, Time start, Flow inflow, Length initial_depth)
    : basin_(basin), now_{start, inflow, initial_depth, zero, zero, zero} {
    const std::vector<BasinLevel>& levels = basin.levels;
    while (place_ + 2 < levels.size() && initial_depth >= levels[place_ + 1].depth) ++place_;
    const double way = share_of_way(low().depth, high().depth, initial_depth);
    now_.stored = between(low().stored, high().stored, way);
    show_level();
    deepest_ = now_;
    note();
}

void BasinRun::advance(Time until, Flow inflow) {
    Way way{until, until - now_.time, inflow};
    for (int turns = 0; way.left > zero; ++turns) {
        if (turns == most_turns)
            throw Refused(Cause::no_convergence,
                          "at " + in_words(now_.time) + " the water swings between two levels");
        take_turn(way);
    }
    now_.time = until;
    now_.inflow = inflow;
    show_level();
    note();
}

/// Goes to the level above or below where the water is about to pass it; else lets time go by.
void BasinRun::take_turn(Way& way) {
    const auto growth = way.growth(now_.inflow);
    const bool grows = growth > 0.0 * growth;
    const bool shrinks = growth < 0.0 * growth;
    if (in_shaft()) {
        const Flow least = low().outflow;
        const Flow most = std::max(least, high().outflow);
        if (now_.inflow > most || (now_.inflow == most && grows)) {
            if (place_ + 2 < basin_.levels.size())
                ++place_;
            else
                spill(way);
        } else if (now_.inflow < least || (now_.inflow == least && shrinks)) {
            --place_;
        } else {
            wait(way, grows ? most : least);
        }
        return;
    }
    const Flow gain = gain_now();
    const bool rises = gain > zero || (gain == zero && grows);
    const bool falls = gain < zero || (gain == zero && shrinks);
    if (rises && now_.stored >= high().stored) {
        if (place_ + 2 < basin_.levels.size())
            ++place_;
        else
            spill(way);
    } else if (falls && now_.stored <= low().stored) {
        if (place_ > 0)
            --place_;
        else
            wait(way, low().outflow);
    } else {
        pass(way);
    }
}

/// Inflow less outflow between two levels; at a turn it is nothing, whatever its last digits say.
Flow BasinRun::gain_now() const {
    const double way = share_of_way(low().stored, high().stored, now_.stored);
    const Flow outflow = between(low().outflow, high().outflow, way);
    const Flow gain = now_.inflow - outflow;
    return abs(gain) <= balanced * (now_.inflow + outflow) ? Flow(zero) : gain;
}

/// Lets out what flows in until that is so much, where it ever comes to it.
void BasinRun::wait(Way& way, Flow until_inflow) {
    const auto growth = way.growth(now_.inflow);
    const Flow missing = until_inflow - now_.inflow;
    const Time time = missing / growth;  // not above 0, infinite or no number where it never comes to it
    if (time > zero && time < way.left)
        move(way, time, until_inflow);
    else
        move(way, way.left, way.inflow_at_end);
}

void BasinRun::spill(Way& way) {
    const Flow most = high().outflow;
    now_.stored = high().stored;
    if (!spilling_) {
        spilling_ = true;
        if (now_.spilled == zero) spills_from_ = now_.time;
        show_level();
        events_.push_back(now_);
    }
    const Flow excess = now_.inflow - most;
    const bool ends = way.inflow_at_end < most;
    const Time time = ends ? Time(excess / (now_.inflow - way.inflow_at_end) * way.left) : way.left;
    const Flow excess_at_end = ends ? Flow(zero) : way.inflow_at_end - most;
    now_.spilled += (excess + excess_at_end) / 2.0 * time;
    move(way, time, ends ? most : way.inflow_at_end);
    spills_until_ = now_.time;
    if (ends) {
        spilling_ = false;
        events_.push_back(now_);
    }
}

/// Rises or falls between the two levels, to its turn, to one of them, or to the end of the way.
void BasinRun::pass(Way& way) {
    const Volume start = now_.stored;
    const auto rate = (high().outflow - low().outflow) / (high().stored - low().stored);
    const Flow gain = gain_now();
    const auto growth = way.growth(now_.inflow);
    // What is stored after a time, and how fast it then rises.
    const auto after = [&](Time time) -> std::pair<Volume, Flow> {
        const double z = -(rate * time);
        const Growths f(z);
        return {start + gain * time * f.first + growth * time * time * f.second,
                gain * (1 + z * f.first) + growth * time * f.first};
    };
    Time time = way.left;
    if (rate < 0.0 * rate) time = std::min<Time>(time, most_growth / -rate);
    bool turns = false;
    if ((gain > zero && way.inflow_at_end < now_.inflow) ||
        (gain < zero && way.inflow_at_end > now_.inflow)) {
        const double bend = -(gain * rate / growth);
        const Time turn = bend > -1 ? Time(-gain / growth * mean_growth(bend)) : way.left;
        turns = turn < time;
        time = std::min(time, turn);
    }
    const bool rises = gain > zero || (gain == zero && growth > 0.0 * growth);
    const Volume bound = rises ? high().stored : low().stored;
    const Volume reached = after(time).first;
    if (rises ? reached > bound : reached < bound) {
        const auto beyond = [&](Time t) -> std::pair<Volume, Flow> {
            const auto [stored, rise] = after(t);
            return {stored - bound, rise};
        };
        const double guess = share_of_way(start, reached, bound);
        time = root_by_slope(beyond, Time(guess * time), Time(zero), time);
        now_.stored = bound;
        turns = false;
    } else {
        now_.stored = std::clamp(reached, low().stored, high().stored);
    }
    move(way, time, time == way.left ? way.inflow_at_end : Flow(now_.inflow + growth * time));
    if (turns && rises) events_.push_back(now_);
}

void BasinRun::move(Way& way, Time by, Flow inflow) {
    way.left = by >= way.left ? Time(zero) : Time(way.left - by);
    now_.time = way.until - way.left;
    now_.inflow = inflow;
    show_level();
    note();
}

/// Depth and outflow of what is stored.
void BasinRun::show_level() {
    if (in_shaft()) {
        now_.outflow = std::clamp(now_.inflow, low().outflow, std::max(low().outflow, high().outflow));
        const bool rises = high().outflow > low().outflow;
        const double way = rises ? share_of_way(low().outflow, high().outflow, now_.outflow) : 0.0;
        now_.depth = between(low().depth, high().depth, way);
        return;
    }
    const double way = share_of_way(low().stored, high().stored, now_.stored);
    now_.depth = between(low().depth, high().depth, way);
    now_.outflow = between(low().outflow, high().outflow, way);
    const bool empty = place_ == 0 && now_.stored <= low().stored;
    if (empty) now_.outflow = std::min(now_.outflow, now_.inflow);
}

void BasinRun::note() {
    if (now_.depth > deepest_.depth) deepest_ = now_;
    greatest_outflow_ = std::max(greatest_outflow_, now_.outflow);
}

}  // namespace undercroft::calc
