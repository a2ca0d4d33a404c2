#include <algorithm>

#include "calc/interpolate.hpp"
#include "calc/solve.hpp"
#include "calc/water/hydrograph.hpp"
#include "calc/water/runoff.hpp"
#include "calc/water/stops.hpp"
#include "calc/water/unit_hydrograph.hpp"

namespace undercroft::calc {

namespace {

constexpr double longest_step_per_peak_time = 0.25;
constexpr double duration_per_concentration = 0.05;  // D of the unit hydrograph
constexpr double burst_per_concentration = 0.02;     // in which runoff is taken as steady
constexpr double most_steps = 2e4;                   // 0.2 s
constexpr double near_the_peak = 0.9;                // rows beside which the peak may stand

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

UnitHydrograph unit_hydrograph_of(Time time_of_concentration) {
    const Time duration = duration_per_concentration * time_of_concentration;
    return UnitHydrograph(unit_hydrograph_peak_time(duration, time_of_concentration));
}

/// Runoff in bursts, and its flow at any time.
class Passage {
public:
    Passage(const Curve<Time, Length>& storm, Area area, Share curve_number, Time time_of_concentration)
        : area_(area), unit_(unit_hydrograph_of(time_of_concentration)) {
        const Time longest = burst_per_concentration * time_of_concentration;
        ends_ = {storm.x.front()};
        for (std::size_t i = 1; i < storm.x.size(); ++i) {
            const Time row = storm.x[i] - storm.x[i - 1];
            const double bursts = whole_up(row / longest);
            for (double k = 1; k < bursts; ++k)
                ends_.push_back(between(storm.x[i - 1], storm.x[i], k / bursts));
            ends_.push_back(storm.x[i]);
        }
        Length before = zero;
        for (std::size_t i = 1; i < ends_.size(); ++i) {
            const Length rain = linear(storm, ends_[i]);
            const Length now = runoff_depth(curve_number, rain, share(initial_abstraction_ratio));
            rates_.push_back((now - before) / (ends_[i] - ends_[i - 1]));
            before = now;
        }
        runoff_ = before;
    }

    [[nodiscard]] Volume volume() const { return runoff_ * area_; }

    /// A integral of r(s) u(t - s) ds over the bursts that are passing.
    [[nodiscard]] Flow flow_at(Time time) const {
        const auto over = std::upper_bound(ends_.begin(), ends_.end(), time - unit_.end());
        auto i = static_cast<std::size_t>(over - ends_.begin());
        i = i == 0 ? 0 : i - 1;
        Speed flow = zero;
        for (; i < rates_.size() && ends_[i] < time; ++i)
            flow += rates_[i] * unit_.passing(time - ends_[i + 1], time - ends_[i]);
        return flow * area_;
    }

private:
    Area area_;
    UnitHydrograph unit_;
    std::vector<Time> ends_;  // of the bursts, and the start of the first
    std::vector<Speed> rates_;
    Length runoff_ = zero;
};

/// The greatest flow, between rows `step` apart, and the row nearest to it.
std::pair<Flow, std::size_t> peak_of(const Passage& passage, const Hydrograph& rows, Time step) {
    Flow most = zero;
    for (const auto& [time, flow] : rows) most = std::max(most, flow);
    std::pair<Flow, std::size_t> peak = {zero, 0};
    const auto below = [&](Time time) { return -passage.flow_at(time); };
    for (std::size_t i = 1; i + 1 < rows.size(); ++i) {
        const auto& [time, flow] = rows[i];
        const bool summit = flow >= std::get<1>(rows[i - 1]) && flow >= std::get<1>(rows[i + 1]);
        if (!summit || flow < near_the_peak * most) continue;
        const auto [at, least] = minimum_between(below, Time(time - step), Time(time + step));
        if (-least > peak.first) peak = {-least, i};
        if (flow > peak.first) peak = {flow, i};
    }
    return peak;
}

/// Gives the row of the peak its flow, and the others together what is left of the volume; none passes the
/// peak.
void keep_peak_and_volume(Hydrograph& rows, const std::pair<Flow, std::size_t>& peak, Flow sum) {
    std::vector<bool> given(rows.size(), false);
    const auto give_peak = [&](std::size_t i) {
        std::get<1>(rows[i]) = peak.first;
        given[i] = true;
    };
    give_peak(peak.second);
    for (bool passes = true; passes;) {
        Flow open = zero;
        Flow left = sum;
        for (std::size_t i = 0; i < rows.size(); ++i)
            (given[i] ? left : open) += (given[i] ? -1.0 : 1.0) * std::get<1>(rows[i]);
        if (open <= zero || left <= zero) return;
        const double factor = left / open;
        passes = false;
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (!given[i] && factor * std::get<1>(rows[i]) > peak.first) {
                give_peak(i);
                passes = true;
            }
        if (passes) continue;
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (!given[i]) std::get<1>(rows[i]) *= factor;
    }
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
    const Time start = rain.x.front();
    const Time end = rain.x.back() + unit_hydrograph_of(time_of_concentration).end();
    const double steps = whole_up((end - start) / step);
    require(steps <= most_steps, shown("step", step), " is too short: more than 20000 rows");

    const Passage passage(rain, area, curve_number, time_of_concentration);
    Hydrograph hydrograph;
    for (double i = 0; i < steps; ++i) {
        const Time time = start + i * step;
        hydrograph.emplace_back(time, passage.flow_at(time));
    }
    hydrograph.emplace_back(start + steps * step, zero);
    if (passage.volume() > zero)
        keep_peak_and_volume(hydrograph, peak_of(passage, hydrograph, step), passage.volume() / step);
    return hydrograph;
}

}  // namespace undercroft::calc
