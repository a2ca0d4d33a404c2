#include "calc/interpolate.hpp"

#include <boost/math/interpolators/pchip.hpp>
#include <utility>

namespace undercroft::calc {

double monotone(const Curve<double, double>& curve, double at) {
    auto [x, y] = curve;
    const boost::math::interpolators::pchip<std::vector<double>> interpolated(std::move(x), std::move(y));
    return interpolated(at);
}

}  // namespace undercroft::calc
