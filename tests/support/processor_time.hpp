/// \file processor_time.hpp
/// How long something takes, by the clock of the processor: others on the machine do not count.
#pragma once

#include <algorithm>
#include <ctime>
#include <limits>

namespace undercroft::tests {

/// The quickest of several runs, in seconds.
template <class Work>
double processor_seconds(const Work& work, int runs = 1) {
    double best = std::numeric_limits<double>::infinity();
    for (int i = 0; i < runs; ++i) {
        const std::clock_t start = std::clock();
        work();
        best = std::min(best, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    return best;
}

}  // namespace undercroft::tests
