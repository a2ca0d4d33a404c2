/// \file opening.hpp
/// Openings that are part full, drowned, or not round: from a free overfall to the difference of levels.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Flow of a vertical rectangular opening, part full, full, and with its tailwater at any level.
///
/// Above the tailwater strips under their own heads, (2/3) C B sqrt(2g) (hb^1.5 - ht^1.5) with hb and ht down
/// to the lower and upper end of that part; below it C B D sqrt(2 g (h1 - h2)). Textbook hydraulics, such as
/// Choudhary and Om Prakash, Fluid Mechanics, ch. 6 (large and partly drowned orifices).
/// \param depth of the water above the lower edge.
/// \param tailwater above the lower edge; 0 or less is free.
/// \throws Refused(domain) for a width or height not above 0, a depth below 0, a coefficient not above 0 or
/// over 1, a tailwater above the depth.
[[nodiscard]] Flow rectangular_orifice_flow(Length width, Length height, Length depth, Share coefficient,
                                            Length tailwater);

/// Flow of a circular opening, part full, full, and with its tailwater at any level.
///
/// The lesser of part_full_orifice_flow, as if it were free, and C A sqrt(2 g (h1 - h2)) through the part
/// below the water, the head of a drowned opening being the difference of levels: FHWA HEC-22, 3rd ed.
/// (2009), sec. 8.4.4. From half of the diameter up the tailwater counts.
/// \param depth of the water above the lowest point.
/// \param tailwater above the lowest point; 0 or less is free.
/// \throws Refused(domain) as part_full_orifice_flow, and for a tailwater above the depth.
[[nodiscard]] Flow drowned_orifice_flow(Length diameter, Length depth, Share coefficient, Length tailwater);

/// Flow into a vertical open pipe or a round grating, by the head above its rim: the lesser of the weir flow
/// Cw pi D h^1.5 over the rim and the orifice flow Co pi/4 D^2 sqrt(2 g h) through the opening.
///
/// FHWA HEC-22, 3rd ed. (2009), sec. 8.4.4; both meet at h = Co D sqrt(2g)/(4 Cw). The pipe below must carry
/// it: where it backs up above the rim, the weir is drowned by Villemonte and the orifice's head is the
/// difference of levels.
/// \param tailwater above the rim; 0 or less is free.
/// \throws Refused(domain) for a diameter or weir coefficient not above 0, a head below 0, an orifice
/// coefficient not above 0 or over 1, a tailwater above the head.
[[nodiscard]] Flow riser_flow(Length diameter, Length head, WeirCoefficient weir_coefficient,
                              Share orifice_coefficient, Length tailwater);

}  // namespace undercroft::calc
