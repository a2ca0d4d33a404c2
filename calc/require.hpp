/// \file require.hpp
/// Preconditions in one form: *name (value) must be ...*, refused as outside the method's domain.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <vector>

#include "units/quantity.hpp"
#include "units/refused.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Rows of a table; one tuple a row.
template <class... Columns>
using Table = std::vector<std::tuple<Columns...>>;

// Sentences, put into words only when they are needed.

/// A value in words: 0.305 m.
template <class Q>
[[nodiscard]] std::string in_words(const Q& value) {
    return text_of(as_quantity(value));
}

/// A name and its value: depth (0.305 m). Small enough to be handed over in registers.
template <class Q>
struct Shown {
    const char* name;
    Q value;

    operator std::string() const {  // NOLINT(google-explicit-constructor): it stands where its text stands
        return std::string(name) + " (" + in_words(value) + ")";
    }
};
template <class Q>
[[nodiscard]] Shown<Q> shown(const char* name, const Q& value) {
    return {name, value};
}
template <class Q>
[[nodiscard]] std::string operator+(const Shown<Q>& shown, std::string_view text) {
    return std::string(shown).append(text);
}
template <class Q>
[[nodiscard]] std::string operator+(std::string_view text, const Shown<Q>& shown) {
    return std::string(text) + std::string(shown);
}

/// A value alone: 0.305 m.
template <class Q>
struct Amount {
    Q value;

    operator std::string() const {  // NOLINT(google-explicit-constructor): it stands where its text stands
        return in_words(value);
    }
};
template <class Q>
[[nodiscard]] Amount<Q> amount(const Q& value) {
    return {value};
}

/// Refuses with a sentence of parts; apart from the checks, so that a check that holds costs its comparison.
template <class... Parts>
[[noreturn, gnu::cold, gnu::noinline]] void refuse_because(Parts... parts) {
    std::string sentence;
    ((sentence += std::string(parts)), ...);
    refuse_domain(sentence);
}

// Preconditions.

/// Refuses when it does not hold, with a sentence of texts, `shown` and `amount`.
template <class... Parts>
void require(bool holds, const Parts&... parts) {
    if (!holds) refuse_because<std::decay_t<const Parts&>...>(parts...);
}

template <class Q>
void require_positive(const char* name, const Q& value) {
    require(value > zero && is_finite(value), shown(name, value), " must be above 0");
}

template <class Q>
void require_not_negative(const char* name, const Q& value) {
    require(value >= zero && is_finite(value), shown(name, value), " must be 0 or more");
}

/// A share of a whole: 0 to 1.
inline void require_share(const char* name, Share value) {
    require(value >= share(0) && value <= share(1), shown(name, value),
            " must be from 0 to 1 (0 % to 100 %)");
}

/// A share that is neither nothing nor all, such as a porosity.
inline void require_porosity(const char* name, Share value) {
    require(value > share(0) && value < share(1), shown(name, value),
            " must be between 0 and 1 (0 % and 100 %)");
}

/// A coefficient of runoff or of an orifice: above 0, at most 1.
inline void require_coefficient(Share coefficient) {
    require_positive("coefficient", coefficient);
    require_share("coefficient", coefficient);
}

/// The quantity in that dimension. \throws Refused(value) that names the argument.
[[nodiscard]] inline Quantity in_dimension_of(std::string_view name, const Quantity& quantity,
                                              const Dimension& wanted) {
    try {
        return in_dimension(quantity, wanted);
    } catch (const Refused& refused) {
        throw refused.after(std::string(name) + ": " + text_of(quantity) + " ");
    }
}

// Whole numbers.

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
inline double require_whole(const char* name, Count value, double least = 0) {
    require(is_whole(number(value)) && number(value) >= least && number(value) <= 1e9, shown(name, value),
            " must be a whole number, at least ", amount(share(least)));
    return std::round(number(value));
}

// Limits.

/// Relative tolerance when a value is compared with a limit, so that 305 mm passes a limit of 1.000656 ft.
inline constexpr double limit_tolerance = 1e-9;

/// The larger size of two values, whatever their signs.
template <class Q>
[[nodiscard]] Q larger_size(const Q& a, const Q& b) {
    using std::abs;
    return std::max<Q>(abs(a), abs(b));
}

template <class Q>
[[nodiscard]] Q slack(const Q& a, const Q& b) {
    return limit_tolerance * larger_size(a, b);
}

/// At most a limit above 0, or over it by no more than the tolerance; no number is neither.
template <class Q>
[[nodiscard]] bool is_at_most(const Q& value, const Q& limit) {
    return value <= limit * (1 + limit_tolerance);
}
template <class Q>
[[nodiscard]] bool is_at_least(const Q& value, const Q& limit) {
    return value >= limit * (1 - limit_tolerance);
}

/// Above by more than a conversion between units can make: 1 h is not above 60 min.
template <class Q>
[[nodiscard]] bool is_above(const Q& a, const Q& b) {
    constexpr double conversion = 1e-14;  // some last digits of a double
    return a - b > conversion * larger_size(a, b);
}

}  // namespace undercroft::calc
