/// \file manning.hpp
/// Manning's formula, and the unit that hides in it.
#pragma once

#include <cmath>

#include "units/types.hpp"

namespace undercroft::calc {

/// v = (1 m^(1/3)/s)/n R^(2/3) S^(1/2). Chow, Open-Channel Hydraulics (1959), sec. 5-6.
inline const auto manning_unit = bu::pow<bu::static_rational<1, 3>>(metre) / second;

/// Mean speed of uniform flow under a hydraulic radius and a slope.
[[nodiscard]] inline Speed manning_speed(Length radius, Gradient slope, Share roughness) {
    return manning_unit / number(roughness) * bu::pow<bu::static_rational<2, 3>>(radius) *
           std::sqrt(slope / gradient(1));
}

/// The slope at which that speed is uniform: the friction that it takes.
[[nodiscard]] inline Gradient manning_slope(Length radius, Speed speed, Share roughness) {
    const double root =
        speed * number(roughness) / (manning_unit * bu::pow<bu::static_rational<2, 3>>(radius));
    return gradient(root * root);
}

}  // namespace undercroft::calc
