/// \file spot_grid.hpp
/// What a rectangular grid of spot levels says beside its cut: fill, mean level, highest corner.
#pragma once

#include <array>
#include <vector>

#include "units/types.hpp"

namespace undercroft::calc {

/// Spot levels: rows along y, columns along x.
using SpotLevels = std::vector<std::vector<Length>>;

/// Checks the grid. \throws Refused(value) for fewer than two rows or columns, or rows of different length.
void require_grid(const SpotLevels& levels);

/// Volume of the part of a plane triangle's prism that lies above zero, for the heights at its corners. With
/// one corner h of the other sign the small part is A h^3/(3 (h - h2)(h - h3)), the rest by difference.
[[nodiscard]] Volume cut_of_triangle(Area plan, std::array<Length, 3> heights);

/// Fill up to a formation level, from the same four plane triangles of each cell as pit_grid, whose
/// counterpart it is: cut - fill is the mean depth times the area. \throws Refused(domain) for a spacing not
/// above 0; Refused(value) for a grid that is no rectangle.
[[nodiscard]] Volume pit_grid_fill(const SpotLevels& levels, Length spacing_x, Length spacing_y,
                                   Length formation_level);

/// Mean level of the surface over the grid: each corner weighs as many quarters of a cell as meet in it, so
/// an inner one four times as much as one at a corner of the grid. US Army FM 5-434 (2000), grid method (from
/// memory). \throws Refused(value) for a grid that is no rectangle.
[[nodiscard]] Length grid_mean_level(const SpotLevels& levels);

/// Highest spot level: with the formation it gives the deepest corner, which decides the walls.
/// \throws Refused(value) for a grid that is no rectangle.
[[nodiscard]] Length grid_highest_level(const SpotLevels& levels);

/// Lowest spot level: with the formation it gives the shallowest corner, which decides the cover.
/// \throws Refused(value) for a grid that is no rectangle.
[[nodiscard]] Length grid_lowest_level(const SpotLevels& levels);

}  // namespace undercroft::calc
