/// \file percent.hpp
/// Figures that a standard reports in percent: sieve passing, liquid and plastic limits, CBR.
#pragma once

#include <compare>

namespace undercroft::calc {

/// A number in percent: 40 means 40 %.
struct Percent {
    double value = 0;
    friend auto operator<=>(const Percent&, const Percent&) = default;
};

}  // namespace undercroft::calc
