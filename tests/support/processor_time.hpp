/// \file processor_time.hpp
/// How long something takes, by the clock of the processor: others on the machine do not count.
#pragma once

#include <algorithm>
#include <ctime>
#include <limits>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace undercroft::tests {

/// The quickest of several runs, in seconds.
template <class Work>
double processor_seconds(const Work& work, int runs = 1) {
#ifdef __GLIBC__
    // Memory stays with the process from run to run: what the system takes to hand it out anew is not the
    // work's.
    constexpr int all_of_it = 1 << 30;
    mallopt(M_TRIM_THRESHOLD, all_of_it);
    mallopt(M_MMAP_THRESHOLD, all_of_it);
#endif
    double best = std::numeric_limits<double>::infinity();
    for (int i = 0; i < runs; ++i) {
        const std::clock_t start = std::clock();
        work();
        best = std::min(best, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    return best;
}

}  // namespace undercroft::tests
