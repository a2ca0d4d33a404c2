/// \file comparison.hpp
/// The comparison that decides a check, found in its formula.
#pragma once

#include <optional>

#include "addin/formula/formula.hpp"

namespace undercroft::audit {

struct DecidingComparison {
    const addin::Node* demand = nullptr;  ///< both nothing where there is no one comparison
    const addin::Node* capacity = nullptr;
};

/// The comparison of a formula whose result is a verdict; nothing for one whose result is none.
[[nodiscard]] std::optional<DecidingComparison> comparison_in(const addin::Node& formula);

}  // namespace undercroft::audit
