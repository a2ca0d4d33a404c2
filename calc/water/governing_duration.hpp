/// \file governing_duration.hpp
/// The duration of rain that governs a design.
#pragma once

#include <boost/math/tools/minima.hpp>
#include <vector>

#include "calc/water/rain.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

/// The duration within the table's range for which `amount(duration, intensity)` is largest.
///
/// Between two rows the intensity is a power of the duration, and what a storm leaves behind has at most
/// one summit there: each interval is searched by itself (Brent's method, Boost.Math) and compared with
/// its ends, so that no local maximum is missed. `kinks` are durations at which the amount changes its law.
template <class Amount>
[[nodiscard]] Time governing_duration(const RainCurve& rain, const std::vector<Time>& kinks,
                                      const Amount& amount) {
    constexpr int half_of_the_digits = 26;  // near a summit no search can tell more of them apart
    std::vector<Time> ends = rain.durations();
    add_kinks(ends, kinks);

    const auto negative = [&](double duration) {
        const Time t = Time::from_value(duration);
        return -amount(t, rain.intensity(t)).value();
    };
    std::pair<double, double> best{ends.front().value(), negative(ends.front().value())};
    const auto compare = [&best](std::pair<double, double> found) {
        if (found.second < best.second) best = found;
    };
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
        const double from = ends[i].value();
        const double to = ends[i + 1].value();
        compare({to, negative(to)});
        compare(boost::math::tools::brent_find_minima(negative, from, to, half_of_the_digits));
    }
    return Time::from_value(best.first);
}

}  // namespace undercroft::calc
