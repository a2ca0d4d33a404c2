/// \file pond.hpp
/// The detention pond of a published routing example.
#pragma once

#include "calc/water/pool.hpp"
#include "tests/support/amounts.hpp"

namespace undercroft::tests {

/// Chow, Maidment and Mays, Applied Hydrology (1988), Examples 8.2.1 and 8.2.2: one acre with vertical walls
/// and a 5-ft pipe outlet (inputs read in a co-author's course slides).
struct Pond {
    calc::StorageTable storage;
    calc::RatingTable rating;
    calc::Table<Time, Flow> inflow;

    Pond() {
        const double outflow[] = {0,   3,   8,   17,  30,  43,  60,  78,  97,  117, 137,
                                  156, 173, 190, 205, 218, 231, 242, 253, 264, 275};
        for (std::size_t i = 0; i < std::size(outflow); ++i) {
            const double stage = 0.5 * static_cast<double>(i);
            storage.rows.emplace_back(ft(stage), ft3(43560 * stage));
            rating.emplace_back(ft(stage), cfs(outflow[i]));
        }
        const double flow[] = {0, 60, 120, 180, 240, 300, 360, 320, 280, 240, 200, 160, 120, 80, 40, 0};
        for (std::size_t i = 0; i < std::size(flow); ++i)
            inflow.emplace_back(minutes(10.0 * static_cast<double>(i)), cfs(flow[i]));
    }
};

}  // namespace undercroft::tests
