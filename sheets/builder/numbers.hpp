/// \file numbers.hpp
/// Numbers as our text files write them: the point is the decimal sign whatever the locale.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace undercroft::sheets {

/// The number that a text is, and nothing else.
[[nodiscard]] std::optional<double> number_in(std::string_view text);

/// A number and what stands behind it: `305 mm`. The unit may be empty.
struct NumberAndUnit {
    double number = 0;
    std::string unit;
};
/// \return nothing when the text does not begin with a number.
[[nodiscard]] std::optional<NumberAndUnit> leading_number(std::string_view text);

/// \throws std::runtime_error for a text without a number or without a unit.
[[nodiscard]] NumberAndUnit number_and_unit(const std::string& text);

}  // namespace undercroft::sheets
