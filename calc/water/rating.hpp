/// \file rating.hpp
/// The rating of several outlets together: flow at every depth of the bed.
#pragma once

#include <optional>

#include "calc/require.hpp"
#include "units/quantity.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

enum class OutletKind {
    orifice,     ///< circular, level of its lowest point; part full it is a weir of its own lower edge
    weir,        ///< sharp crest, with or without end contractions
    notch,       ///< V-notch weir, level of its lowest point
    pump,        ///< a steady flow above its switch-on level
    soakage,     ///< into the ground through a base at this level and through walls above it
    rectangle,   ///< rectangular opening, level of its lower edge
    contracted,  ///< sharp crest by Kindsvater and Carter, as high above its floor as its level says
    riser,       ///< open end of a vertical pipe, level of its rim: the lesser of weir and orifice
};

/// Rows of outlets: kind, level above the base of the bed, and what the kind needs:
///
/// | kind       | size         | coefficient (default) | sides (default)                |
/// |------------|--------------|-----------------------|--------------------------------|
/// | orifice    | diameter     | C (0.6)               |                                |
/// | weir       | crest length | C (1.84 m^0.5/s)      | number of end contractions (0) |
/// | notch      | angle        | C (1.38 m^0.5/s)      |                                |
/// | pump       | flow         |                       |                                |
/// | soakage    | base area    | soakage rate (needed) | perimeter of the walls (0 m)   |
/// | rectangle  | width        | C (0.6)               | height (needed)                |
/// | contracted | crest length |                       | width of the channel (wide)    |
/// | riser      | diameter     | C of the rim (1.84 m^0.5/s) | C of the opening (0.6)   |
///
/// `count` (column 5, default 1) is the number of equal outlets, `sides` column 6.
using OutletTable = Table<OutletKind, Length, Quantity, std::optional<Quantity>, std::optional<Count>,
                          std::optional<Quantity>>;

/// Rows of depth and flow, the flow straight between them.
using RatingTable = Table<Length, Flow>;

/// A flow that starts at full strength, that of a pump or of soakage through a base, is reached over this
/// rise above its level, so that a table that is straight between its rows can hold it.
inline constexpr Length switching_rise = 0.001 * metre;

/// Where the water of the outlets goes; without either it falls free.
struct Downstream {
    /// Level above the base of the bed at which the water below stands.
    std::optional<Length> tailwater = {};
    /// What the pipe that carries it away takes, by the depth above the base of the bed in the chamber from
    /// which it goes, such as outfall_rating: the chamber rises until both agree.
    std::optional<RatingTable> outfall = {};
};

/// Flow of all outlets together at depths from 0 to `depth` in equal steps.
///
/// Levels at which an outlet starts or changes its law get rows of their own: invert and crown of an orifice,
/// crests, and both ends of a switching rise. With a `tolerance`, more rows stand where the flow bends, until
/// straight lines between them are within that share of it, down to spans of 2 mm. Laws as
/// part_full_orifice_flow, weir_flow, notch_flow, rectangular_orifice_flow, contracted_weir_flow (below its
/// least head as h^1.5) and riser_flow; against a tailwater drowned_orifice_flow and drowned_weir_flow;
/// soakage q (A + P h), common practice. Pumps and soakage do not feel the tailwater.
/// \throws Refused(domain) when depth is not above 0, steps not a whole number from 1 to 10000, a level below
/// 0, a count no whole number, a tolerance not from 0.01 % to 10 %, a tailwater above `depth`, an outfall that does not reach from 0 to
/// `depth` or whose flow falls, more than 10000 rows, and as those; Refused(value) for a size, coefficient or
/// sides that the kind does not take or of another dimension.
[[nodiscard]] RatingTable outlet_rating(const OutletTable& outlets, Length depth, Count steps,
                                        std::optional<Share> tolerance = {},
                                        const Downstream& downstream = {});

/// Two ratings together: flows added at the depths of both, within the depths of the first.
///
/// `level` is where the depths of `other` begin, above the base of the bed; below it `other` lets nothing
/// out. For a flow control by its supplier's own table beside other outlets. Common practice. \throws
/// Refused(domain) for fewer than two rows, depths that do not rise, a flow below 0, or an `other` that ends
/// below the first.
[[nodiscard]] RatingTable rating_sum(const RatingTable& rating, const RatingTable& other, Length level);

}  // namespace undercroft::calc
