/// \file bed.hpp
/// Rows of chambers and the bed that holds them: what fits, and how large it becomes.
///
/// A row is made of units joined end to end. The two end units carry the end walls and may be longer or
/// shorter than the middle units; at each joint the units overlap by `joint overlap`.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Units that fit in a row of the available length; 0 when not even the two end units do.
///
/// u = 2 + floor((l_a - 2 E + o) / (M - o)), with available length l_a, end unit E, middle unit M, overlap o.
/// Geometry of the row; common practice.
/// \throws Refused(domain) for a length that is not above 0, or an overlap that is not shorter than a unit.
[[nodiscard]] Count row_units(Length available_length, Length end_unit, Length middle_unit,
                              Length joint_overlap);

/// Installed length of a row: l = 2 E + (u - 2) M - (u - 1) o.
/// \throws Refused(domain) for units that are no whole number of at least 2, and as row_units.
[[nodiscard]] Length row_length(Count units, Length end_unit, Length middle_unit, Length joint_overlap);

/// Rows that fit side by side: r = floor((W_a - 2 m + g) / (B_f + g)), with available width W_a, side margin
/// m, row gap g and the width B_f of a chamber over its feet. \throws Refused(domain) for a width or span not
/// above 0, a gap or margin below 0.
[[nodiscard]] Count bed_rows(Length available_width, Length span, Length row_gap, Length side_margin);

/// Width of the bed: W = r B_f + (r - 1) g + 2 m.
/// \throws Refused(domain) for rows that are no whole number of at least 1, and as bed_rows.
[[nodiscard]] Length bed_width(Count rows, Length span, Length row_gap, Length side_margin);

/// Length of the bed: L = l + 2 e, with row length l and end margin e.
/// \throws Refused(domain) for a row length not above 0, or a margin below 0.
[[nodiscard]] Length bed_length(Length row_length, Length end_margin);

/// Inspection ports: both ends of each row and, with an interval k above 0, in between at most k units
/// apart: p = r (ceil((u - 1) / k) + 1). Common practice.
/// \throws Refused(domain) for rows or units that are no whole number of at least 1, or an interval that is
/// none.
[[nodiscard]] Count bed_ports(Count rows, Count units, Count interval);

}  // namespace undercroft::calc
