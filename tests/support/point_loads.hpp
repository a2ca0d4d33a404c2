/// \file point_loads.hpp
/// A loaded rectangle as the sum of its point loads, by GSL.
#pragma once

#include <cmath>

#include "calc/ground/elastic_stress.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

/// Stress of the pressure 1 on the rectangle, at depth z under the point 0, 0: GSL over point loads.
inline double integrated_point_loads(double x1, double x2, double y1, double y2, double z) {
    const auto strip = [&](double x) {
        return integral(
            [&](double y) {
                return calc::stress_under_point(newton, z * metre, std::hypot(x, y) * metre).value();
            },
            y1, y2, 1e-10);
    };
    return integral(strip, x1, x2, 1e-9);
}

}  // namespace undercroft::tests
