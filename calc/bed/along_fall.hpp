/// \file along_fall.hpp
/// What units hold that stand along a falling formation: the mean over the depths along the bed.
#pragma once

#include <vector>

#include "calc/solve.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Mean of held(u) for depths u evenly from `depth` at the low end to `depth - drop` at the high end: held is
/// what is held at a depth over its own base, 0 below it. With no drop it is held(depth).
///
/// Gauss-Kronrod quadrature (Boost.Math) between the kinks of held, so that a straight piece is exact.
/// \param kinks depths, rising, at which held bends, its lowest and its highest point among them.
template <class Held, class Kinks>
[[nodiscard]] auto mean_along_fall(const Held& held, const Kinks& kinks, Length depth, Length drop) {
    if (drop == zero) return held(depth);
    std::vector<Length> stops = {depth - drop};
    for (const Length& kink : kinks)
        if (kink > stops.front() && kink < depth) stops.push_back(kink);
    stops.push_back(depth);
    auto sum = integral_between(held, stops[0], stops[1]);
    for (std::size_t i = 2; i < stops.size(); ++i) sum += integral_between(held, stops[i - 1], stops[i]);
    return decltype(held(depth))(sum / drop);
}

}  // namespace undercroft::calc
