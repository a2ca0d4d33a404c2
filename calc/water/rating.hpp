/// \file rating.hpp
/// The rating of several outlets together: flow at every depth of the bed.
#pragma once

#include <optional>

#include "calc/require.hpp"
#include "units/quantity.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

enum class OutletKind {
    orifice,  ///< circular, level of its lowest point; part full it is a weir of its own lower edge
    weir,     ///< sharp crest, with or without end contractions
    notch,    ///< V-notch weir, level of its lowest point
    pump,     ///< a steady flow above its switch-on level
    soakage,  ///< into the ground through a base at this level and through walls above it
};

/// Rows of outlets: kind, level above the base of the bed, and what the kind needs:
///
/// | kind    | size         | coefficient (default) | sides (default)              |
/// |---------|--------------|-----------------------|------------------------------|
/// | orifice | diameter     | C (0.6)               |                              |
/// | weir    | crest length | C (1.84 m^0.5/s)      | number of end contractions (0) |
/// | notch   | angle        | C (1.38 m^0.5/s)      |                              |
/// | pump    | flow         |                       |                              |
/// | soakage | base area    | soakage rate (needed) | perimeter of the walls (0 m) |
///
/// `count` (column 5, default 1) is the number of equal outlets, `sides` column 6.
using OutletTable = Table<OutletKind, Length, Quantity, std::optional<Quantity>, std::optional<Count>,
                          std::optional<Quantity>>;

/// Rows of depth and flow, the flow straight between them.
using RatingTable = Table<Length, Flow>;

/// A flow that starts at full strength, that of a pump or of soakage through a base, is reached over this
/// rise above its level, so that a table that is straight between its rows can hold it.
inline constexpr Length switching_rise = 0.001 * metre;

/// Flow of all outlets together at depths from 0 to `depth` in equal steps.
///
/// Levels at which an outlet starts or changes its law get rows of their own: invert and crown of an
/// orifice, crests, and both ends of a switching rise. Free outfall. Laws as orifice_flow,
/// part_full_orifice_flow, weir_flow and notch_flow; soakage q (A + P h), common practice.
/// \throws Refused(domain) when depth is not above 0, steps not a whole number from 1 to 10000, a level below
/// 0, a count no whole number, and as those; Refused(value) for a size, coefficient or sides that the kind
/// does not take or of another dimension.
[[nodiscard]] RatingTable outlet_rating(const OutletTable& outlets, Length depth, Count steps);

}  // namespace undercroft::calc
