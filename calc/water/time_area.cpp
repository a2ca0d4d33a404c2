#include "calc/water/time_area.hpp"

#include <algorithm>
#include <cmath>

#include "calc/interpolate.hpp"
#include "calc/water/runoff.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// Rain that runs off since the start, straight between its points.
Curve<Time, Length> excess_rain(const Hyetograph& storm, const RainLosses& losses) {
    Curve<Time, Length> excess = {{std::get<0>(storm.front())}, {zero}};
    const auto add = [&excess](Time time, Length more) { excess.add(time, excess.y.back() + more); };
    Length to_fill = losses.initial;
    for (std::size_t i = 1; i < storm.size(); ++i) {
        const Time start = std::get<0>(storm[i - 1]);
        const Time end = std::get<0>(storm[i]);
        const Length rain = std::get<1>(storm[i]) - std::get<1>(storm[i - 1]);
        const Length kept = std::min(to_fill, rain);
        to_fill -= kept;
        const double wet_share = kept == zero ? 1.0 : 1 - static_cast<double>(kept / rain);
        const Time wet = wet_share * (end - start);
        if (kept > zero && wet > zero && is_above(end, end - wet) && is_above(end - wet, start))
            add(end - wet, zero);
        add(end, std::max<Length>(rain - kept - losses.continuing * wet, zero));
    }
    return excess;
}

void require_storm(const Hyetograph& storm) {
    require(storm.size() >= 2, "the storm needs at least two rows of time and cumulative rain");
    require(std::get<1>(storm.front()) == zero, shown("cumulative rain", std::get<1>(storm.front())),
            " must be 0 in the first row");
    require(is_finite(std::get<0>(storm.front())), "the first time of the storm is not finite");
    for (std::size_t i = 1; i < storm.size(); ++i) {
        const auto& [time, rain] = storm[i];
        require(is_above(time, std::get<0>(storm[i - 1])), shown("time", time),
                " must be later than that of the row before");
        require(rain >= std::get<1>(storm[i - 1]), shown("cumulative rain", rain),
                " must not be below that of the row before");
        require_storm_depth("cumulative rain of the storm", rain);
    }
}

}  // namespace

Hydrograph time_area_hydrograph(Share coefficient, Area area, const Hyetograph& storm,
                                Time time_of_concentration, const RainLosses& losses) {
    require_coefficient(coefficient);
    require_positive("area", area);
    require_positive("time of concentration", time_of_concentration);
    require_not_negative("initial loss", losses.initial);
    require_not_negative("continuing loss", losses.continuing);
    require_storm(storm);
    const Curve<Time, Length> excess = excess_rain(storm, losses);
    const Time first = excess.x.front();
    const Time last = excess.x.back();
    std::vector<Time> later;
    for (const Time& t : excess.x) later.push_back(t + time_of_concentration);
    std::vector<Time> times = excess.x;
    times.push_back(later.back());
    add_kinks(times, later);

    Hydrograph hydrograph;
    for (const Time& t : times) {
        const Length fallen = linear(excess, std::min(t, last)) -
                              linear(excess, std::clamp(Time(t - time_of_concentration), first, last));
        hydrograph.emplace_back(t,
                                coefficient * area * std::max<Length>(fallen, zero) / time_of_concentration);
    }
    std::get<1>(hydrograph.back()) = zero;
    return hydrograph;
}

}  // namespace undercroft::calc
