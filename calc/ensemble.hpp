/// \file ensemble.hpp
/// Of several runs the one that stands for all.
#pragma once

#include <vector>

#include "units/quantity.hpp"

namespace undercroft::calc {

/// Mean of quantities of one dimension, in any units. \throws Refused as sum.
[[nodiscard]] Quantity mean(const std::vector<Quantity>& amounts);

/// The smallest of the amounts that is at least their mean: of an ensemble of temporal patterns the run that
/// represents it.
///
/// Australian Rainfall and Runoff (2019), Book 2, ch. 5 (from memory).
/// \throws Refused as sum.
[[nodiscard]] Quantity next_above_mean(const std::vector<Quantity>& amounts);

}  // namespace undercroft::calc
