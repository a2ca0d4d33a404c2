/// \file governing_duration.hpp
/// The duration of rain that governs a design.
#pragma once

#include <utility>
#include <vector>

#include "calc/solve.hpp"
#include "calc/water/rain.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

/// The duration within the table's range for which `outcome(duration, intensity)` is largest.
///
/// Between two rows the intensity is a power of the duration, and what a storm leaves behind has at most
/// one summit there: each stretch is searched by itself (Brent's method, Boost.Math) and compared with
/// its ends, so that no local maximum is missed. `kinks` are durations at which the outcome changes its law.
template <class Outcome>
[[nodiscard]] Time governing_duration(const RainCurve& rain, const std::vector<Time>& kinks,
                                      const Outcome& outcome) {
    std::vector<Time> ends = rain.durations();
    add_kinks(ends, kinks);

    const auto negative = [&](Time duration) { return -outcome(duration, rain.intensity(duration)); };
    std::pair best{ends.front(), negative(ends.front())};
    const auto compare = [&best](const decltype(best)& found) {
        if (found.second < best.second) best = found;
    };
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
        compare({ends[i + 1], negative(ends[i + 1])});
        compare(minimum_between(negative, ends[i], ends[i + 1]));
    }
    return best.first;
}

}  // namespace undercroft::calc
