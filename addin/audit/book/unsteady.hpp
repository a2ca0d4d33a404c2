/// \file unsteady.hpp
/// Formulas whose value changes by itself: with the clock, by chance, with the version of our functions.
#pragma once

#include "addin/formula/formula.hpp"

namespace undercroft::audit {

/// `NOW()=0` does not: it is there to have the formula computed whenever the workbook is opened.
[[nodiscard]] bool changes_by_itself(const addin::Node& tree);

/// Whether the part calls a function of ours whose result changes with the version of the functions.
[[nodiscard]] bool tells_version(const addin::Node& node);

/// The value may also be another on another machine: it asks for the name of the file or of the system.
[[nodiscard]] bool asks_surroundings(const addin::Node& tree);

}  // namespace undercroft::audit
