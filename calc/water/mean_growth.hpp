/// \file mean_growth.hpp
/// The logarithmic mean of flow in a bed that drains.
#pragma once

#include <cmath>

namespace undercroft::calc {

/// log(1 + x)/x, which is 1 at 0: the mean of 1/(1 + s x) over s from 0 to 1, the time that a drop takes
/// under a flow growing evenly to 1 + x times its least, as a share of its time under the least.
[[nodiscard]] inline double mean_growth(double x) {
    return x == 0 ? 1 : std::log1p(x) / x;
}

}  // namespace undercroft::calc
