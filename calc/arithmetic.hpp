/// \file arithmetic.hpp
/// Unit-safe arithmetic and comparisons of quantities whose dimension is known only at run time.
///
/// Where quantities must be alike, a number without a unit is refused beside one that has a unit, 0 as any
/// other: nobody can say in which it was meant. Beside a count or a pure number it is one too, and among
/// themselves bare numbers stay bare.
#pragma once

#include <vector>

#include "units/quantity.hpp"

namespace undercroft::calc {

/// Sum of quantities of one dimension, in any units.
/// \throws Refused(value) for two dimensions or two currencies, or a bare number beside a quantity;
/// Refused(domain) for no quantity at all.
[[nodiscard]] Quantity sum(const std::vector<Quantity>& amounts);

/// The largest of quantities of one dimension, in any units.
/// \throws Refused(value) for two dimensions; Refused(domain) for no quantity at all.
[[nodiscard]] Quantity largest(const std::vector<Quantity>& amounts);

/// The smallest of quantities of one dimension, in any units.
/// \throws Refused(value) for two dimensions; Refused(domain) for no quantity at all.
[[nodiscard]] Quantity smallest(const std::vector<Quantity>& amounts);

/// The figure of `other` in the row where `amounts` is largest; the first such row.
/// \throws Refused as largest; Refused(domain) when the two have not the same number of figures.
[[nodiscard]] Quantity at_largest(const std::vector<Quantity>& amounts, const std::vector<Quantity>& other);

/// Total a + b.
/// \throws Refused(value) for two dimensions or two currencies, or a bare number beside a quantity.
[[nodiscard]] Quantity total(const Quantity& a, const Quantity& b);

/// Product; a number without a unit is a pure number here.
/// \throws Refused(value) when two currencies meet, or a power beyond 20 would come out.
[[nodiscard]] Quantity product(const Quantity& a, const Quantity& b);

/// Product of any number of factors, as of two.
/// \throws Refused(domain) for no factor at all; Refused(value) as product of two.
[[nodiscard]] Quantity product(const std::vector<Quantity>& factors);

/// Quotient a / b; a number without a unit is a pure number here.
/// \throws Refused(domain) when b is 0; Refused(value) as product.
[[nodiscard]] Quantity quotient(const Quantity& a, const Quantity& b);

/// Difference a - b.
/// \throws Refused(value) for two dimensions or two currencies, or a bare number beside a quantity.
[[nodiscard]] Quantity difference(const Quantity& a, const Quantity& b);

/// value >= limit, with a relative tolerance of 1e-9 so that the units of the two do not decide.
/// \throws Refused(value) for two dimensions, or a bare number beside a quantity.
[[nodiscard]] bool at_least(const Quantity& value, const Quantity& limit);

/// value <= limit, with the same tolerance. \throws Refused(value) for two dimensions.
[[nodiscard]] bool at_most(const Quantity& value, const Quantity& limit);

/// |value - target| <= tolerance. A tolerance in % is a share of the target, or percentage points where
/// the target itself is a pure number.
/// \throws Refused(value) for two dimensions, or a bare number beside a quantity; Refused(domain) for a
/// tolerance below 0.
[[nodiscard]] bool within(const Quantity& value, const Quantity& target, const Quantity& tolerance);

enum class Interpolation {
    linear,
    logarithmic,  ///< linear in log x against log y
    monotone,     ///< piecewise cubic that adds no wiggles (Fritsch and Carlson 1980)
};

/// A value interpolated in a table of x, y; never extrapolated.
///
/// Boost.Math pchip for `monotone`.
/// \throws Refused(domain) for x that does not rise from row to row, fewer than two rows (four for
/// monotone), or values not above 0 with logarithmic; Refused(value) for two dimensions in a column, or x of
/// another than the first; Refused(no_answer) outside the table.
[[nodiscard]] Quantity lookup(const std::vector<std::tuple<Quantity, Quantity>>& table, const Quantity& x,
                              Interpolation method);

}  // namespace undercroft::calc
