/// \file interpolate.hpp
/// Interpolation between the points of a table, shared by all functions that look something up.
#pragma once

#include <cstddef>
#include <vector>

namespace undercroft::calc {

/// Points of a curve: x strictly rising.
struct Points {
    std::vector<double> x;
    std::vector<double> y;
};

/// Index i of the span x[i] .. x[i + 1] that holds `at`; the first or last span outside the points.
[[nodiscard]] std::size_t span_of(const std::vector<double>& x, double at);

/// Linear between points; the end spans go on outside.
[[nodiscard]] double linear(const Points& points, double at);

/// Linear in log x against log y; the end spans go on outside. All x, y and `at` are above 0.
[[nodiscard]] double log_log(const Points& points, double at);

/// Monotone piecewise cubic (Boost.Math pchip), at least four points, `at` inside them.
[[nodiscard]] double monotone(const Points& points, double at);

}  // namespace undercroft::calc
