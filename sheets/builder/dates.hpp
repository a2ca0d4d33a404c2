/// \file dates.hpp
/// Days of the calendar as our text files write them, 2026-11-25, and as Calc counts them.
#pragma once

#include <optional>
#include <string_view>

namespace undercroft::sheets {

/// The number that Calc holds for a day: days since 1899-12-30.
/// \return nothing where the text is no day, such as 2026-02-30.
[[nodiscard]] std::optional<double> day_in(std::string_view text);

}  // namespace undercroft::sheets
