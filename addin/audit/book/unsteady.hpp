/// \file unsteady.hpp
/// Formulas whose value changes by itself: with the clock, by chance, with the country, with
/// the version of our functions.
#pragma once

#include "addin/formula/formula.hpp"

namespace undercroft::audit {

/// `NOW()=0` does not: it is there to have the formula computed whenever the workbook is opened.
[[nodiscard]] bool changes_by_itself(const addin::Node& tree);

/// A text is read, or written, by the marks of the country: TEXT(1234.5; "0.00") is 1234.50 in one and 12.35
/// in another.
[[nodiscard]] bool changes_with_country(const addin::Node& tree);

/// Whether the part calls a function of ours whose result changes with the version of the functions.
[[nodiscard]] bool tells_version(const addin::Node& node);

/// The value may also be another on another machine: it asks for the name of the file or of the system.
[[nodiscard]] bool asks_surroundings(const addin::Node& tree);

}  // namespace undercroft::audit
