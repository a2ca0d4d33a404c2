/// \file require.hpp
/// Preconditions in one form: *name (value) must be ...*, refused as outside the method's domain.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "units/quantity.hpp"
#include "units/refused.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Rows of a table; one tuple a row.
template <class... Columns>
using Table = std::vector<std::tuple<Columns...>>;

template <class Q>
[[nodiscard]] std::string shown(std::string_view name, const Q& value) {
    return std::string(name) + " (" + text_of(as_quantity(value)) + ")";
}

template <class Q>
void require_positive(std::string_view name, const Q& value) {
    if (!(value > Q::from_value(0)) || !std::isfinite(value.value()))
        refuse_domain(shown(name, value) + " must be above 0");
}

template <class Q>
void require_not_negative(std::string_view name, const Q& value) {
    if (!(value >= Q::from_value(0)) || !std::isfinite(value.value()))
        refuse_domain(shown(name, value) + " must be 0 or more");
}

/// A share of a whole: 0 to 1.
inline void require_share(std::string_view name, Share value) {
    if (!(value >= share(0) && value <= share(1)))
        refuse_domain(shown(name, value) + " must be from 0 to 1 (0 % to 100 %)");
}

/// A share that is neither nothing nor all, such as a porosity.
inline void require_porosity(std::string_view name, Share value) {
    if (!(value > share(0) && value < share(1)))
        refuse_domain(shown(name, value) + " must be between 0 and 1 (0 % and 100 %)");
}

inline void require(bool holds, const std::string& sentence) {
    if (!holds) refuse_domain(sentence);
}

/// The quantity in that dimension. \throws Refused(value) that names the argument.
[[nodiscard]] inline Quantity in_dimension_of(std::string_view name, const Quantity& quantity,
                                              const Dimension& wanted) {
    try {
        return in_dimension(quantity, wanted);
    } catch (const Refused& refused) {
        throw Refused(refused.cause(),
                      std::string(name) + ": " + text_of(quantity) + " " + std::string(refused.what()));
    }
}

// --- whole numbers --------------------------------------------------------------------------------

/// How far a ratio may be from a whole number and still be that number: 8.10 / 4.05 is 2, not 3.
inline constexpr double whole_tolerance = 1e-9;

[[nodiscard]] inline double whole_up(double ratio) {
    return std::ceil(ratio - whole_tolerance * std::max(1.0, std::abs(ratio)));
}
[[nodiscard]] inline double whole_down(double ratio) {
    return std::floor(ratio + whole_tolerance * std::max(1.0, std::abs(ratio)));
}
[[nodiscard]] inline bool is_whole(double value) {
    return std::isfinite(value) &&
           std::abs(value - std::round(value)) <= whole_tolerance * std::max(1.0, std::abs(value));
}

/// A count of things that must be whole and at least `least`.
inline double require_whole(std::string_view name, Count value, double least = 0) {
    if (!is_whole(number(value)) || number(value) < least || number(value) > 1e9)
        refuse_domain(shown(name, value) + " must be a whole number, at least " +
                      text_of(as_quantity(share(least))));
    return std::round(number(value));
}

// --- limits ---------------------------------------------------------------------------------------

/// Relative tolerance when a value is compared with a limit, so that 305 mm passes a limit of 1.000656 ft.
inline constexpr double limit_tolerance = 1e-9;

[[nodiscard]] inline double slack(double a, double b) {
    return limit_tolerance * std::max(std::abs(a), std::abs(b));
}

/// Above by more than a conversion between units can make: 1 h is not above 60 min.
[[nodiscard]] inline bool is_above(double a, double b) {
    constexpr double conversion = 1e-14;  // some last digits of a double
    return a - b > conversion * std::max(std::abs(a), std::abs(b));
}

}  // namespace undercroft::calc
