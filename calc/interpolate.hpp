/// \file interpolate.hpp
/// Interpolation between the points of a table, shared by all functions that look something up.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <type_traits>
#include <vector>

namespace undercroft::calc {

/// Points of a curve: x strictly rising. X and Y are quantities, or numbers where a table has none.
template <class X, class Y>
struct Curve {
    std::vector<X> x;
    std::vector<Y> y;

    void add(const X& at, const Y& value) {
        x.push_back(at);
        y.push_back(value);
    }
};

/// Share of the way from `from` to `to` at which `at` stands.
template <class X>
[[nodiscard]] double share_of_way(const X& from, const X& to, const X& at) {
    return (at - from) / (to - from);
}

/// The value so far on the way from `from` to `to`.
template <class Y>
[[nodiscard]] Y between(const Y& from, const Y& to, double way) {
    return from + way * (to - from);
}

/// Index i of the stretch x[i] .. x[i + 1] that holds `at`; the first or last stretch outside the points.
template <class X>
[[nodiscard]] std::size_t stretch_of(const std::vector<X>& x, const X& at) {
    const auto above = std::upper_bound(x.begin() + 1, x.end() - 1, at);
    return static_cast<std::size_t>(above - x.begin()) - 1;
}

/// Linear between points; the end stretches go on outside.
template <class X, class Y>
[[nodiscard]] Y linear(const Curve<X, Y>& curve, const std::type_identity_t<X>& at) {
    const auto& [x, y] = curve;
    const std::size_t i = stretch_of(x, at);
    const double t = share_of_way(x[i], x[i + 1], at);
    return t == 1 ? y[i + 1] : between(y[i], y[i + 1], t);  // exact at both ends
}

/// Linear in log x against log y; the end stretches go on outside. All x, y and `at` are above 0.
template <class X, class Y>
[[nodiscard]] Y log_log(const Curve<X, Y>& curve, const std::type_identity_t<X>& at) {
    const auto& [x, y] = curve;
    const std::size_t i = stretch_of(x, at);
    if (at == x[i]) return y[i];
    if (at == x[i + 1]) return y[i + 1];
    const double t = std::log(at / x[i]) / std::log(x[i + 1] / x[i]);
    const double growth = y[i + 1] / y[i];
    return y[i] * std::pow(growth, t);
}

/// Monotone piecewise cubic (Boost.Math pchip, which takes numbers only), at least four points, `at` inside
/// them.
[[nodiscard]] double monotone(const Curve<double, double>& curve, double at);

}  // namespace undercroft::calc
