#include "calc/water/hydrograph.hpp"

#include <algorithm>

#include "calc/interpolate.hpp"
#include "calc/water/runoff.hpp"
#include "calc/water/stops.hpp"
#include "calc/water/unit_hydrograph.hpp"

namespace undercroft::calc {

Hydrograph rational_hydrograph(Share coefficient, Area area, Speed intensity, Time duration,
                               Time time_of_concentration, Time step) {
    const Flow all_contributing = runoff_peak(coefficient, intensity, area);
    require_positive("duration", duration);
    require_positive("time of concentration", time_of_concentration);
    require_positive("step", step);
    const auto [rise, fall] = std::minmax({duration, time_of_concentration});
    const Flow peak = all_contributing * std::min(1.0, static_cast<double>(duration / time_of_concentration));

    std::vector<Time> times = multiples(step, rise + fall);
    add_kinks(times, {rise, fall});
    Hydrograph hydrograph;
    for (const Time& t : times) {
        const double risen = t / rise;
        const double left = (rise + fall - t) / rise;
        hydrograph.emplace_back(t, peak * std::min({risen, 1.0, left}));
    }
    return hydrograph;
}

namespace {

constexpr double initial_abstraction_ratio = 0.2;
constexpr double longest_step_per_peak_time = 0.25;
constexpr double most_steps = 2e4;  // the convolution grows with their square: 0.1 s at most

/// Cumulative rain against time.
Curve<Time, Length> checked_storm(const Table<Time, Length>& storm) {
    require(storm.size() >= 2, "the storm needs at least two rows of time and cumulative rain");
    Curve<Time, Length> curve;
    for (const auto& [time, rain] : storm) {
        if (curve.x.empty()) {
            require(rain == zero, shown("cumulative rain", rain), " must be 0 in the first row");
        } else {
            require(is_above(time, curve.x.back()), shown("time", time),
                    " must be later than that of the row before");
            require(!is_above(curve.y.back(), rain), shown("cumulative rain", rain),
                    " must not be below that of the row before");
        }
        require_storm_depth("cumulative rain of the storm", rain);
        curve.add(time, curve.y.empty() ? Length(zero) : std::max(rain, curve.y.back()));
    }
    return curve;
}

/// Runoff in each step from the start of the storm to its end.
std::vector<Length> runoff_by_step(const Curve<Time, Length>& storm, Share curve_number, Time step,
                                   std::size_t steps) {
    std::vector<Length> runoff;
    Length before = zero;
    for (std::size_t i = 1; i <= steps; ++i) {
        const Time time = storm.x.front() + static_cast<double>(i) * step;
        const Length rain = linear(storm, std::min(time, storm.x.back()));
        const Length now = runoff_depth(curve_number, rain, share(initial_abstraction_ratio));
        runoff.push_back(now - before);
        before = now;
    }
    return runoff;
}

}  // namespace

Hydrograph storm_hydrograph(const Table<Time, Length>& storm, Area area, Share curve_number,
                            Time time_of_concentration, Time step) {
    const Curve<Time, Length> rain = checked_storm(storm);
    require_positive("area", area);
    require_positive("time of concentration", time_of_concentration);
    require_positive("step", step);
    const Time peak_time = unit_hydrograph_peak_time(step, time_of_concentration);
    require(is_at_most(step, longest_step_per_peak_time * peak_time), shown("step", step),
            " must be at most a quarter of the time to peak (",
            amount(longest_step_per_peak_time * peak_time), ")");
    const double storm_steps = whole_up((rain.x.back() - rain.x.front()) / step);
    const double tail_steps = dimensionless_unit_hydrograph().x.back() * peak_time / step;
    require(storm_steps + tail_steps <= most_steps, shown("step", step),
            " is too short: more than 20000 rows");

    const auto steps = static_cast<std::size_t>(storm_steps);
    const std::vector<Length> runoff = runoff_by_step(rain, curve_number, step, steps);
    const std::vector<double> shares = unit_hydrograph_shares(step, time_of_concentration);
    // The runoff of step j begins at j: its share k passes at j + k.
    std::vector<Length> passing(steps + shares.size() - 1);
    for (std::size_t j = 0; j < steps; ++j)
        for (std::size_t k = 0; k < shares.size(); ++k) passing[j + k] += shares[k] * runoff[j];

    Hydrograph hydrograph;
    for (std::size_t i = 0; i < passing.size(); ++i)
        hydrograph.emplace_back(rain.x.front() + static_cast<double>(i) * step, passing[i] * area / step);
    return hydrograph;
}

}  // namespace undercroft::calc
