/// \file pit_zones.hpp
/// The volumes of the layers that fill a pit, below the ground between its walls and above it straight up.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Volume of the layer between two heights above the base of a pit.
///
/// Up to the existing ground, at the depth D of the pit, the layer reaches from wall to wall: a difference of
/// two pit_volume. Above the ground there are no walls, and it is as wide as the pit is at its top: A(D)
/// times its thickness there. A layer may lie on both sides of the ground. Geometry. \throws Refused as
/// pit_volume; Refused(domain) for heights that do not rise.
[[nodiscard]] Volume pit_zone(Length base_length, Length base_width, Length depth, Batter batter,
                              Length from_height, Length to_height);

/// Volume of a pit with vertical walls behind shoring, and a working space on all four sides of the bed:
/// (L + 2 w)(W + 2 w) D. Geometry. The shoring itself is designed by a licensed engineer.
/// \throws Refused(domain) for a length or width not above 0, or a depth or working space below 0.
[[nodiscard]] Volume shored_pit_volume(Length base_length, Length base_width, Length depth,
                                       Length working_space);

}  // namespace undercroft::calc
