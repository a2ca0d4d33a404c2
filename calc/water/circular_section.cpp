#include "calc/water/circular_section.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

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
    if (flow.value() <= 0) return Length::from_value(0);
    // In logarithms, as the sides differ by powers of ten near the invert and the crown.
    const auto excess = [&](double depth) {
        const Length y = Length::from_value(depth);
        const double width = pipe.surface_width(y).value();
        return 3 * std::log(pipe.area(y).value()) + std::log(standard_gravity.value() / width) -
               2 * std::log(flow.value());
    };
    const double low = 1e-9 * pipe.diameter.value();
    const double high = (1 - 1e-12) * pipe.diameter.value();
    if (excess(low) >= 0) return Length::from_value(low);
    if (excess(high) <= 0) return Length::from_value(high);
    std::uintmax_t iterations = 100;
    const boost::math::tools::eps_tolerance<double> tolerance(48);
    const auto [below, above] = boost::math::tools::toms748_solve(excess, low, high, tolerance, iterations);
    return Length::from_value((below + above) / 2);
}

}  // namespace undercroft::calc
