/// \file excavation.hpp
/// The pit: volume, areas, spot-level grids, cross-sections, and the batter that a soil allows.
#pragma once

#include <string>

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Volume of a pit with a rectangular base and one batter z on all four sides; exact.
///
/// V = L W d + (L + W) z d^2 + 4/3 z^2 d^3, the prismoidal formula in closed form.
/// \throws Refused(domain) for a length not above 0, a depth or batter below 0.
[[nodiscard]] Volume pit_volume(Length base_length, Length base_width, Length depth, Batter batter);

/// Plan area of that pit at a height above its base: (L + 2 z h)(W + 2 z h). \throws Refused(domain) as
/// pit_volume.
[[nodiscard]] Area pit_area(Length base_length, Length base_width, Length height, Batter batter);

/// Area of the four sloping faces: s (2 L + 2 W + 4 z d) with slant height s = d sqrt(1 + z^2).
/// \throws Refused(domain) as pit_volume.
[[nodiscard]] Area pit_walls(Length base_length, Length base_width, Length depth, Batter batter);

/// Plan side of that pit at a height above its base: B + 2 z h. \throws Refused(domain) as pit_volume.
[[nodiscard]] Length pit_side(Length base_side, Length height, Batter batter);

/// Length of a wall along its slope: d sqrt(1 + z^2). \throws Refused(domain) for a depth or batter below 0.
[[nodiscard]] Length pit_slant(Length depth, Batter batter);

/// Cut above a formation level from a rectangular grid of spot levels.
///
/// Each cell of the grid is four plane triangles that meet at the mean of its corners, and the part of
/// each triangle above the formation is cut exactly; fill is not counted. Where a whole cell is in
/// cut this is the usual mean of the four corner depths times the cell's area.
/// \param levels rows along y, columns along x; at least 2 x 2, all rows equally long.
/// \throws Refused(domain) for a spacing not above 0; Refused(value) for a grid that is no rectangle.
[[nodiscard]] Volume pit_grid(const std::vector<std::vector<Length>>& levels, Length spacing_x,
                              Length spacing_y, Length formation_level);

enum class SectionMethod {
    end_area,    ///< V = sum of d (A1 + A2) / 2
    prismoidal,  ///< V = sum of d (A1 + 4 Am + A2) / 6, every second section being mid-way
};

/// Volume from cross-sections at chainages.
///
/// Prismoidal: sections are taken in threes, the middle one half-way between its neighbours, so their
/// number is odd.
/// \throws Refused(domain) for chainages that do not rise, an area below 0, fewer than two sections, or
/// (prismoidal) a middle section that is not half-way.
[[nodiscard]] Volume pit_sections(const Table<Length, Area>& sections, SectionMethod method);

/// Soil types of the excavation standard; short term is open 24 h or less.
enum class TrenchSoil { stable_rock, type_a, type_a_short_term, type_b, type_c };

/// Steepest batter allowed for simple slopes, as run per rise.
///
/// US 29 CFR 1926 Subpart P, Appendix B, Table B-1: stable rock vertical, A 3/4:1, B 1:1, C 1 1/2:1, to
/// 20 ft, printed as 6.1 m; type A short term 1/2:1, to 12 ft, printed as 3.67 m. Local codes and a licensed
/// engineer govern. \throws Refused(domain) for a depth not above 0; Refused(no_answer) beyond the table's
/// depth.
[[nodiscard]] Batter pit_batter(TrenchSoil soil, Length depth);

}  // namespace undercroft::calc
