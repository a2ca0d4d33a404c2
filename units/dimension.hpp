/// \file dimension.hpp
/// A dimension known only at run time: exponents of the base dimensions, and the currency of money.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "units/types.hpp"

namespace undercroft {

/// The base dimensions, in the order in which a dimension is written.
enum class Base : std::uint8_t { length, mass, time, angle, count, batter, gradient, money };
inline constexpr std::size_t base_count = 8;

/// ISO 4217 code of a currency; empty for anything that is not money.
using Currency = std::array<char, 3>;

class Dimension {
public:
    /// Exponents are kept in sixths, so that halves (weir coefficient) and thirds (Manning) are exact.
    static constexpr int parts = 6;

    constexpr Dimension() = default;

    [[nodiscard]] static constexpr Dimension of(Base base, int numerator = 1, int denominator = 1) {
        Dimension d;
        d.sixths_[static_cast<std::size_t>(base)] = static_cast<std::int8_t>(parts * numerator / denominator);
        return d;
    }
    [[nodiscard]] static Dimension of_currency(Currency code);

    [[nodiscard]] constexpr int sixths(Base base) const { return sixths_[static_cast<std::size_t>(base)]; }
    [[nodiscard]] constexpr bool is_number() const {
        return sixths_ == std::array<std::int8_t, base_count>{};
    }
    [[nodiscard]] constexpr bool is_money() const { return sixths(Base::money) != 0; }
    [[nodiscard]] const Currency& currency() const { return currency_; }

    /// Product and quotient. \throws Refused(value) when two currencies meet, or for a power beyond 20.
    [[nodiscard]] Dimension times(const Dimension& other) const;
    [[nodiscard]] Dimension per(const Dimension& other) const;
    /// Power with exponent numerator/denominator. \throws Refused(value) when the result is no multiple of
    /// 1/6, or beyond 20.
    [[nodiscard]] Dimension to_the(int numerator, int denominator = 1) const;

    /// Without counts and slopes, which are plain numbers to arithmetic: 12 units of 2.5 m are 30 m.
    [[nodiscard]] Dimension without_ratios() const;

    /// The same exponents; money of any currency.
    [[nodiscard]] constexpr bool same_kind(const Dimension& other) const { return sixths_ == other.sixths_; }
    friend constexpr bool operator==(const Dimension&, const Dimension&) = default;

    /// For example `L3 T-1`; a pure number is `1`; money is its code.
    [[nodiscard]] std::string text() const;

private:
    std::array<std::int8_t, base_count> sixths_{};
    Currency currency_{};
};

/// An exponent behind a symbol: nothing for 1, `3`, `-1`, `^(1/2)`.
[[nodiscard]] std::string exponent_text(int sixths);

/// A dimension that the trade has a name for, and the one unit in which its bare numbers are read.
struct NamedDimension {
    Dimension dimension;
    std::string_view name;          ///< "a length"
    std::string_view default_unit;  ///< "m"
    std::string_view si_unit;       ///< the coherent SI unit: "m"
    std::string_view examples;      ///< "305 mm, 12 ft 6 in"
};

/// A batter's default unit has no spelling that parse_unit reads: the number itself is the run per rise.
inline constexpr std::string_view run_per_rise = "run per rise";

/// All dimensions that the trade has a name for.
[[nodiscard]] const std::vector<NamedDimension>& named_dimensions();

/// The trade's name of a dimension, or nullptr.
[[nodiscard]] const NamedDimension* find_named(const Dimension& dimension);

/// "a length", or "a quantity of dimension L5 T-1" where the trade has no name for it.
[[nodiscard]] std::string name_of(const Dimension& dimension);

namespace detail {

template <Base base>
using base_is = std::integral_constant<Base, base>;
template <class Tag>
struct base_of_tag;
template <>
struct base_of_tag<bu::length_base_dimension> : base_is<Base::length> {};
template <>
struct base_of_tag<bu::mass_base_dimension> : base_is<Base::mass> {};
template <>
struct base_of_tag<bu::time_base_dimension> : base_is<Base::time> {};
template <>
struct base_of_tag<bu::plane_angle_base_dimension> : base_is<Base::angle> {};
template <>
struct base_of_tag<count_base_dimension> : base_is<Base::count> {};
template <>
struct base_of_tag<batter_base_dimension> : base_is<Base::batter> {};
template <>
struct base_of_tag<gradient_base_dimension> : base_is<Base::gradient> {};
template <>
struct base_of_tag<money_base_dimension> : base_is<Base::money> {};

template <class List>
struct sixths_of {
    using entry = typename List::item;
    static void into(std::array<int, base_count>& sixths) {
        using exponent = typename entry::value_type;
        sixths[static_cast<std::size_t>(base_of_tag<typename entry::tag_type>::value)] =
            static_cast<int>(Dimension::parts * exponent::Numerator / exponent::Denominator);
        sixths_of<typename List::next>::into(sixths);
    }
};
template <>
struct sixths_of<bu::dimensionless_type> {
    static void into(std::array<int, base_count>&) {}
};

}  // namespace detail

/// The run-time dimension of a Boost.Units quantity type: stated once, in the C++ type.
template <class Q>
[[nodiscard]] Dimension dimension_of() {
    using list = typename bu::get_dimension<typename Q::unit_type>::type;
    std::array<int, base_count> sixths{};
    detail::sixths_of<list>::into(sixths);
    Dimension d;
    for (std::size_t i = 0; i < base_count; ++i)
        d = d.times(Dimension::of(static_cast<Base>(i), sixths[i], Dimension::parts));
    return d;
}

}  // namespace undercroft
