/// \file drawing.hpp
/// Outlines of a bed and its pit as points, for pictures to scale: the cross-section looks along the rows,
/// with x across from the middle and y up from the base of the bed; the plan has its origin in the middle.
///
/// Every length is divided by `scale`, so that a chart with axes in millimetres of paper shows the drawing to
/// scale. A point without coordinates lifts the pen between two pieces.
#pragma once

#include <optional>
#include <tuple>
#include <vector>

#include "calc/bed/arch.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Points x, y; a row without them lifts the pen.
using Outline = std::vector<std::tuple<std::optional<Length>, std::optional<Length>>>;

/// How rows of units stand in the plan; to be drawn they are a whole number from 1 to 1000, their width is
/// above 0 and their gap not below 0, else Refused(domain).
struct RowPlan {
    Count rows;
    Length width;    ///< of a row, over the feet
    Length row_gap;  ///< clear between rows
};

/// The smallest round scale 1:X at which a thing fits on a paper: X = 1, 1.25, 1.5, 2, 2.5, 3, 4, 5 or 7.5
/// times a power of ten. ISO 5455:1979 has 1, 2 and 5; the others are on the scale rules of building (common
/// practice). \throws Refused(domain) for a length not above 0.
[[nodiscard]] Share drawing_scale(Length width, Length height, Length paper_width, Length paper_height);

/// The walls and base of a pit, or of the stone when closed along its top.
/// \throws Refused(domain) for a width or scale not above 0, a depth or batter below 0.
[[nodiscard]] Outline drawn_pit(Length base_width, Length depth, Batter batter, bool closed, Share scale);

/// A level across the pit at a height above its base, longer by an overhang at both ends; below the base it
/// is as long as the base. \throws Refused(domain) for a width or scale not above 0, an overhang or batter
/// below 0.
[[nodiscard]] Outline drawn_level(Length base_width, Batter batter, Length height, Length overhang,
                                  Share scale);

/// The arches of all rows in cross-section, from foot to foot. \throws Refused(domain) for a base height
/// below 0 or a scale not above 0, and as require_arch.
[[nodiscard]] Outline drawn_arches(const RowPlan& plan, const Arch& arch, Length base_height, Share scale);

/// A rectangle around the middle of the plan. \throws Refused(domain) for a length, width or scale not above
/// 0.
[[nodiscard]] Outline drawn_box(Length length, Length width, Share scale);

/// The rows in plan, each a rectangle. \throws Refused(domain) for a length or scale not above 0.
[[nodiscard]] Outline drawn_rows(const RowPlan& plan, Length row_length, Share scale);

/// The joints behind the end units of each row. \throws Refused(domain) as drawn_rows, or for an end unit not
/// above 0 or longer than half of the row.
[[nodiscard]] Outline drawn_ends(const RowPlan& plan, Length row_length, Length end_unit, Share scale);

/// The middles of the units that have an inspection port; which ones is said at bed_ports.
/// \throws Refused(domain) for a scale not above 0, and as row_length and bed_ports.
[[nodiscard]] Outline drawn_ports(const RowPlan& plan, Count units, Count interval, Length end_unit,
                                  Length middle_unit, Length joint_overlap, Share scale);

}  // namespace undercroft::calc
