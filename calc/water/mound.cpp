#include "calc/water/mound.hpp"

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

#include "calc/require.hpp"
#include "calc/solve.hpp"

namespace undercroft::calc {

double hantush_integral(double p, double q) {
    // With u = v^2 the ends are smooth.
    const auto strip = [p, q](double v) { return v == 0 ? 0 : 2 * v * std::erf(p / v) * std::erf(q / v); };
    constexpr unsigned halvings = 12;
    return boost::math::quadrature::gauss_kronrod<double, 21>::integrate(strip, 0.0, 1.0, halvings, 1e-12);
}

Area mound_growth(Length x, Length y, const RechargeArea& area, const Aquifer& aquifer, Time time,
                  Length mean_depth) {
    if (time <= zero) return zero;
    const auto diffusivity = aquifer.permeability * mean_depth / number(aquifer.specific_yield);
    const Length reach = sqrt(4.0 * diffusivity * time);
    const auto corner = [&](const Length& along, const Length& across) {
        return hantush_integral(along / reach, across / reach);
    };
    const Length l = area.length / 2.0;
    const Length a = area.width / 2.0;
    const double sum =
        corner(l + x, a + y) + corner(l + x, a - y) + corner(l - x, a + y) + corner(l - x, a - y);
    return area.recharge * mean_depth * time / (2.0 * number(aquifer.specific_yield)) * sum;
}

Length mound_rise(Length x, Length y, const RechargeArea& area, const Aquifer& aquifer, Time time,
                  std::optional<Time> recharge_time) {
    require(is_finite(x), shown("x", x), " must be a number");
    require(is_finite(y), shown("y", y), " must be a number");
    require_positive("length", area.length);
    require_positive("width", area.width);
    require_positive("recharge", area.recharge);
    require_positive("permeability", aquifer.permeability);
    require_porosity("specific yield", aquifer.specific_yield);
    require_positive("saturated depth", aquifer.saturated_depth);
    require_positive("time", time);
    if (recharge_time) require_positive("recharge time", *recharge_time);
    const Length before = aquifer.saturated_depth;
    const auto missing = [&](Length rise) -> Area {
        const Length mean = before + rise / 2.0;
        Area growth = mound_growth(x, y, area, aquifer, time, mean);
        if (recharge_time) growth -= mound_growth(x, y, area, aquifer, time - *recharge_time, mean);
        return growth - rise * (2.0 * before + rise);
    };
    if (missing(zero) <= zero) return zero;  // so far away that nothing of it is felt
    // No more water can stand than has soaked in.
    const Length most = area.recharge * time / number(aquifer.specific_yield);
    return missing(most) >= zero ? most : root_between(missing, Length(zero), most);
}

}  // namespace undercroft::calc
