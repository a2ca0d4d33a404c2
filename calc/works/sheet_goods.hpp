/// \file sheet_goods.hpp
/// Fabric and liner: areas to cover, rolls to buy, seams to weld, mass to lift.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// The faces of a bed that a sheet covers.
struct Faces {
    bool base = false;
    bool walls = false;
    bool top = false;
};

/// Net area of fabric or liner around a bed with sloping walls.
///
/// Sum of the faces asked for: base L W, walls as pit_walls, top (L + 2 z h)(W + 2 z h), and along the
/// upper edge a lap of that width: 2 (L + W + 4 z h) times the lap. Geometry; common practice.
/// \throws Refused(domain) for a length not above 0, a height, batter or lap below 0, or no face at all.
[[nodiscard]] Area wrap_area(Length base_length, Length base_width, Length height, Batter batter, Faces faces,
                             Length lap_at_top);

/// Whole rolls to cover a rectangle with strips side by side, laps at the sides and at the ends.
///
/// Strips n = ceil((W - lap) / (roll width - lap)). Strips are laid one after the other; what is left of a
/// roll goes on in the next strip unless it is no longer than the lap, and each join within a strip costs one
/// more lap. Waste is added to the length used. Common practice.
/// \throws Refused(domain) for a length not above 0, a lap not shorter than a roll is wide and long, a
/// waste below 0, or more than a million rolls.
[[nodiscard]] Count rolls(Length length, Length width, Length roll_length, Length roll_width, Length lap,
                          Share waste);

/// Area bought: rolls times the area of a roll. \throws Refused(domain) as rolls.
[[nodiscard]] Area rolls_area(Length length, Length width, Length roll_length, Length roll_width, Length lap,
                              Share waste);

/// Mass of a sheet: M = A t rho.
/// \throws Refused(domain) for an area below 0, a thickness or density not above 0.
[[nodiscard]] Mass liner_mass(Area area, Length thickness, Density density);

/// Length of seam between panels side by side: (strips - 1) times the length, strips as in rolls.
/// \throws Refused(domain) as rolls.
[[nodiscard]] Length liner_seams(Length length, Length width, Length roll_width, Length lap);

}  // namespace undercroft::calc
