/// \file ground.hpp
/// The two halves of the group "Ground and loads".
#pragma once

#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

/// Loads on the ground and through it.
[[nodiscard]] std::vector<Function> load_entries();

/// What the ground bears, pushes and floats.
[[nodiscard]] std::vector<Function> bearing_entries();

}  // namespace undercroft::addin
