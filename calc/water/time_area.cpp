#include "calc/water/time_area.hpp"

#include <algorithm>
#include <cmath>

#include "calc/interpolate.hpp"
#include "calc/water/runoff.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// Rain that runs off since the start, straight between its points.
Points excess_rain(const Hyetograph& storm, const RainLosses& losses) {
    Points excess;
    double to_fill = losses.initial.value();
    const auto add = [&excess](double time, double more) {
        excess.y.push_back(excess.y.empty() ? 0 : excess.y.back() + more);
        excess.x.push_back(time);
    };
    add(std::get<0>(storm.front()).value(), 0);
    for (std::size_t i = 1; i < storm.size(); ++i) {
        const double end = std::get<0>(storm[i]).value();
        const double rain = (std::get<1>(storm[i]) - std::get<1>(storm[i - 1])).value();
        const double length = end - excess.x.back();
        const double kept = std::min(to_fill, rain);
        to_fill -= kept;
        double left = length;
        if (kept > 0) {
            left = length * (1 - kept / rain);
            if (left <= 0) {
                add(end, 0);
                continue;
            }
            add(end - left, 0);
        }
        add(end, std::max(rain - kept - losses.continuing.value() * left, 0.0));
    }
    return excess;
}

void require_storm(const Hyetograph& storm) {
    require(storm.size() >= 2, "the storm needs at least two rows of time and cumulative rain");
    require(std::get<1>(storm.front()).value() == 0, shown("cumulative rain", std::get<1>(storm.front())),
            " must be 0 in the first row");
    require(std::isfinite(std::get<0>(storm.front()).value()), "the first time of the storm is not finite");
    for (std::size_t i = 1; i < storm.size(); ++i) {
        const auto& [time, rain] = storm[i];
        require(is_above(time.value(), std::get<0>(storm[i - 1]).value()), shown("time", time),
                " must be later than that of the row before");
        require(rain >= std::get<1>(storm[i - 1]), shown("cumulative rain", rain),
                " must not be below that of the row before");
        require_storm_depth("cumulative rain of the storm", rain);
    }
}

}  // namespace

Hydrograph time_area_hydrograph(Share coefficient, Area area, const Hyetograph& storm,
                                Time time_of_concentration, const RainLosses& losses) {
    require_runoff_coefficient(coefficient);
    require_positive("area", area);
    require_positive("time of concentration", time_of_concentration);
    require_not_negative("initial loss", losses.initial);
    require_not_negative("continuing loss", losses.continuing);
    require_storm(storm);
    const Points excess = excess_rain(storm, losses);
    const double lag = time_of_concentration.value();
    const double first = excess.x.front();
    const double last = excess.x.back();
    std::vector<Time> times;
    std::vector<Time> later;
    for (const double t : excess.x) {
        times.push_back(Time::from_value(t));
        later.push_back(Time::from_value(t + lag));
    }
    times.push_back(later.back());
    add_kinks(times, later);

    Hydrograph hydrograph;
    for (const Time& time : times) {
        const double t = time.value();
        const double fallen =
            linear(excess, std::min(t, last)) - linear(excess, std::clamp(t - lag, first, last));
        hydrograph.emplace_back(
            time, coefficient * area * Length::from_value(std::max(fallen, 0.0)) / time_of_concentration);
    }
    std::get<1>(hydrograph.back()) = Flow::from_value(0);
    return hydrograph;
}

}  // namespace undercroft::calc
