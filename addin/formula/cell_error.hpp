/// \file cell_error.hpp
/// Calc's error codes as a person reads them.
#pragma once

#include <string>

namespace undercroft::addin {

/// `#NUM!`, `Err:504`: how Calc shows an error code.
[[nodiscard]] std::string error_text(int code);

/// What the error means and what to look for, as the end of a sentence: "it divides by zero or by a blank
/// cell".
[[nodiscard]] std::string error_meaning(int code);

/// Of a formula that goes round in a circle.
inline constexpr int circular_error = 522;

}  // namespace undercroft::addin
