/// \file along_fall.hpp
/// What units hold that stand along a falling formation: the mean over the depths along the bed.
#pragma once

#include <algorithm>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <vector>

#include "units/types.hpp"

namespace undercroft::calc {

/// Mean of held(u) for depths u evenly from `depth` at the low end to `depth - drop` at the high end: held is
/// what is held at a depth over its own base, 0 below it. With no drop it is held(depth).
///
/// Gauss-Kronrod quadrature (Boost.Math) between the kinks of held, so that a straight piece is exact.
/// \param kinks depths, rising, at which held bends, its lowest and its highest point among them.
template <class Held, class Kinks>
[[nodiscard]] auto mean_along_fall(const Held& held, const Kinks& kinks, Length depth, Length drop) {
    using Amount = decltype(held(depth));
    if (drop.value() == 0) return held(depth);
    std::vector<Length> stops = {depth - drop};
    for (const Length& kink : kinks)
        if (kink > stops.front() && kink < depth) stops.push_back(kink);
    stops.push_back(depth);
    double sum = 0;
    for (std::size_t i = 1; i < stops.size(); ++i)
        sum += boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
            [&](double u) { return held(Length::from_value(u)).value(); }, stops[i - 1].value(),
            stops[i].value(), 10, 1e-12);
    return Amount::from_value(sum / drop.value());
}

}  // namespace undercroft::calc
