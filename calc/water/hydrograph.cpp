#include "calc/water/hydrograph.hpp"

#include <algorithm>

#include "calc/water/runoff.hpp"
#include "calc/water/stops.hpp"

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

}  // namespace undercroft::calc
