/// \file wrap.hpp
/// The faces of a bed as rectangles to be covered, the laps between them and the seams along their edges.
#pragma once

#include "calc/require.hpp"
#include "calc/works/sheet_goods.hpp"

namespace undercroft::calc {

/// Length along which the strips of sheet run, and width across them; one row a face.
using SheetFaces = Table<Length, Length>;

/// Laps of one face onto the next.
struct WrapLaps {
    Length at_base;  ///< of the walls under or over the base
    Length at_top;   ///< of the walls over the top of the bed
};

/// The faces asked for, as rectangles to cut sheet for: base L x W; two long and two short walls, as long as
/// their upper edge and a lap at the base where they meet, as high as their slant and both laps; top (L + 2 z
/// h)(W + 2 z h). The corners of the walls that slope away are offcuts. Geometry; common practice. \throws
/// Refused(domain) for a length not above 0, a height, batter or lap below 0, or no face at all.
[[nodiscard]] SheetFaces wrap_faces(Length base_length, Length base_width, Length height, Batter batter,
                                    Faces faces, const WrapLaps& laps);

/// Net area with the lap of walls and base: wrap_area and 2 (L + W) times that lap, where the faces have
/// walls. \throws Refused as wrap_area; Refused(domain) for a lap below 0.
[[nodiscard]] Area lapped_wrap_area(Length base_length, Length base_width, Length height, Batter batter,
                                    Faces faces, const WrapLaps& laps);

/// Length of the seams between faces: along the base 2 (L + W) where base and walls meet, up the four corners
/// of the walls 4 h sqrt(1 + 2 z^2), and along the top 2 (L + W + 4 z h) where walls and top meet. Geometry.
/// \throws Refused as wrap_faces.
[[nodiscard]] Length wrap_seams(Length base_length, Length base_width, Length height, Batter batter,
                                Faces faces);

}  // namespace undercroft::calc
