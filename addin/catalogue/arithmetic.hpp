/// \file arithmetic.hpp
/// Entries of the functions of units and checks that stand in files of their own.
#pragma once

#include "addin/catalogue/entry.hpp"

namespace undercroft::addin {

inline constexpr Range any_dimension =
    any_number("of whatever dimension; beside a quantity with a unit a bare number is refused");
inline constexpr const char* yard = "International yard and pound agreement (1959): 1 in = 25.4 mm";

// Figures of a range.
[[nodiscard]] Function sum_entry();
[[nodiscard]] Function largest_entry();
[[nodiscard]] Function smallest_entry();
[[nodiscard]] Function at_largest_entry();
[[nodiscard]] Function product_of_many_entry();
[[nodiscard]] Function lookup_entry();

// Verdicts.
[[nodiscard]] Function at_least_entry();
[[nodiscard]] Function at_most_entry();
[[nodiscard]] Function within_entry();

}  // namespace undercroft::addin
