#include "calc/water/circular_section.hpp"

#include <algorithm>
#include <cmath>

#include "calc/solve.hpp"

namespace undercroft::calc {

namespace {

/// The angle under which the surface is seen from the centre, 2 pi when full.
double seen_angle(const CircularSection& pipe, Length depth) {
    const double filled = std::clamp<double>(depth / pipe.diameter, 0.0, 1.0);
    return 4 * std::asin(std::sqrt(filled));
}

}  // namespace

Area CircularSection::area(Length depth) const {
    const double theta = seen_angle(*this, depth);
    return diameter * diameter / 8.0 * (theta - std::sin(theta));
}

Length CircularSection::wetted_perimeter(Length depth) const {
    return diameter / 2.0 * seen_angle(*this, depth);
}

Length CircularSection::surface_width(Length depth) const {
    const double filled = std::clamp<double>(depth / diameter, 0.0, 1.0);
    return 2.0 * diameter * std::sqrt(filled * (1 - filled));
}

Length critical_depth(const CircularSection& pipe, Flow flow) {
    if (flow <= zero) return zero;
    // In logarithms, as the sides differ by powers of ten near the invert and the crown.
    const auto excess = [&](Length depth) {
        const Area area = pipe.area(depth);
        const double froude_squared =
            flow * flow * pipe.surface_width(depth) / (standard_gravity * area * area * area);
        return -std::log(froude_squared);
    };
    const Length low = 1e-9 * pipe.diameter;
    const Length high = (1 - 1e-12) * pipe.diameter;
    if (excess(low) >= 0) return low;
    if (excess(high) <= 0) return high;
    return root_between(excess, low, high);
}

}  // namespace undercroft::calc
