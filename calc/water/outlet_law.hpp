/// \file outlet_law.hpp
/// What one row of a list of outlets passes, by the water on both its sides.
#pragma once

#include <functional>
#include <vector>

#include "calc/water/rating.hpp"

namespace undercroft::calc {

/// One row of the table of outlets, ready to be asked.
struct OutletLaw {
    Length level;
    double number;  ///< of equal outlets
    /// Flow for the water and the tailwater above the level; a tailwater of 0 or less is free.
    std::function<Flow(Length, Length)> flow;
    std::vector<Length> kinks;  ///< above the level: where the law changes
    /// Whether its water goes where the tailwater stands; a pump's and the ground's does not.
    bool drowns;

    [[nodiscard]] Flow flow_at(Length depth, Length tailwater_level) const;
};

/// The law of a row. \throws Refused as outlet_rating, up to that depth.
[[nodiscard]] OutletLaw outlet_law(const OutletTable::value_type& row, Length depth);

}  // namespace undercroft::calc
