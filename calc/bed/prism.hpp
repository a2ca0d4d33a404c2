/// \file prism.hpp
/// The stone of a bed as a prism between battered walls, on a level formation or one that falls along the
/// bed.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// A bed's outline: its base in plan, its walls, its stone's height, and the fall of its formation along the
/// length. The layers and the units follow the formation. Depths are measured over the low end of the base.
struct BedPrism {
    Length length;
    Length width;
    Batter batter;
    Length top;     ///< height of the stone over the base
    Gradient fall;  ///< 0: level
};

/// Checks the fall. \throws Refused(domain) for a fall below 0, or one that lifts the high end of the base
/// above the top of the stone at the low end.
void require_fall(const BedPrism& prism);

/// Volume of the prism below a level water surface: on a level formation pit_volume, to the last digit; on
/// one that falls the polyhedron over formation and walls (plane_pit.hpp). With vertical walls and the base
/// wet all over it is less by the wedge L^2 W s/2. \param depth over the low end of the base, from 0 to the
/// top.
[[nodiscard]] Volume prism_volume(const BedPrism& prism, Length depth);

/// Plan area of the water surface in it; on a level formation pit_area.
[[nodiscard]] Area prism_area(const BedPrism& prism, Length depth);

/// How much lower water of a depth stands over the base of the bed at its high end: s L.
[[nodiscard]] inline Length rise_of_base(const BedPrism& prism) {
    return vertical_rise(prism.fall, prism.length);
}

}  // namespace undercroft::calc
