#include "calc/interpolate.hpp"

#include <algorithm>
#include <boost/math/interpolators/pchip.hpp>
#include <cmath>

namespace undercroft::calc {

std::size_t span_of(const std::vector<double>& x, double at) {
    const auto above = std::upper_bound(x.begin(), x.end(), at);
    const auto i = above - x.begin();
    return static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(i - 1, 0, static_cast<std::ptrdiff_t>(x.size()) - 2));
}

double linear(const Points& points, double at) {
    const std::size_t i = span_of(points.x, at);
    const double t = (at - points.x[i]) / (points.x[i + 1] - points.x[i]);
    // Exact at both ends of the span.
    return t == 1 ? points.y[i + 1] : points.y[i] + t * (points.y[i + 1] - points.y[i]);
}

double log_log(const Points& points, double at) {
    const std::size_t i = span_of(points.x, at);
    if (at == points.x[i]) return points.y[i];
    if (at == points.x[i + 1]) return points.y[i + 1];
    const double t = std::log(at / points.x[i]) / std::log(points.x[i + 1] / points.x[i]);
    return points.y[i] * std::pow(points.y[i + 1] / points.y[i], t);
}

double monotone(const Points& points, double at) {
    auto x = points.x;
    auto y = points.y;
    const boost::math::interpolators::pchip<std::vector<double>> curve(std::move(x), std::move(y));
    return curve(at);
}

}  // namespace undercroft::calc
