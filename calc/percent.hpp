/// \file percent.hpp
/// Figures that a standard reports in percent: sieve passing, liquid and plastic limits, CBR.
#pragma once

#include <compare>
#include <string>
#include <string_view>

#include "calc/require.hpp"
#include "units/text.hpp"

namespace undercroft::calc {

/// A number in percent: 40 means 40 %.
struct Percent {
    double value = 0;
    friend auto operator<=>(const Percent&, const Percent&) = default;
};

[[nodiscard]] inline std::string in_words(Percent value) {
    return rounded_text(value.value) + " %";
}

/// Percentages that differ by less are the same.
inline constexpr double same_percent = 100 * limit_tolerance;

/// A percentage of a whole: 0 to 100.
inline void require_percentage(const char* name, Percent value) {
    require(value.value >= 0 && value.value <= 100 + same_percent, shown(name, value),
            " must be from 0 % to 100 %");
}

}  // namespace undercroft::calc
