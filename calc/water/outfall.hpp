/// \file outfall.hpp
/// The pipe that carries the water away: headwater for a flow, flow for a headwater, and its rating.
#pragma once

#include <optional>

#include "calc/water/pipe_inlet.hpp"
#include "calc/water/pipe_profile.hpp"
#include "calc/water/rating.hpp"

namespace undercroft::calc {

/// Head over the invert of the inlet that a flow asks for: under inlet control, under outlet control, and the
/// larger of both, which governs.
struct OutfallHeads {
    Length inlet_control;
    Length outlet_control;
    Length headwater;
};

/// Heads of an outfall pipe for a flow.
///
/// Inlet control as inlet_control_headwater. Outlet control by FHWA HDS-5, 2nd ed. (2001), ch. III: (1 + ke)
/// V^2/2g + (n V)^2 L/R^(4/3) (m, s) + max(TW, (dc + D)/2) - S L of the full pipe, where that is 0.75 D or
/// more, as HDS-5 limits it; and never below the water surface profile from max(TW, dc) at the outlet
/// (state_at_inlet) with the entrance loss, which counts with the speed of the full pipe there too, as K F^M
/// of inlet control does: so both meet where a steep pipe begins at critical depth.
/// \param tailwater above the invert of the outlet; less than 0 counts as 0.
/// \param entrance_loss ke; left out, that of the inlet.
/// \throws Refused(domain) for a flow or slope below 0, a diameter, length or roughness not above 0, an
/// entrance loss not from 0 to 1, and as inlet_control_headwater.
[[nodiscard]] OutfallHeads outfall_heads(Flow flow, Length diameter, Length length, Gradient slope,
                                         Share roughness, PipeInlet inlet, Length tailwater,
                                         std::optional<Share> entrance_loss);

/// Greatest flow that an outfall pipe takes under a headwater above the invert of its inlet: the inverse, by
/// TOMS 748 (Boost.Math). 0 where the tailwater stands as high.
/// \throws Refused(domain) for a headwater below 0 and as outfall_heads.
[[nodiscard]] Flow outfall_flow(Length headwater, Length diameter, Length length, Gradient slope,
                                Share roughness, PipeInlet inlet, Length tailwater,
                                std::optional<Share> entrance_loss);

/// Flow of an outfall pipe at depths of the bed from 0 to `depth` in equal steps, with rows at its invert and
/// crown. `level` of the inlet's invert and `tailwater_level` are above the base of the bed.
/// \throws Refused(domain) for a depth not above 0, steps not a whole number from 1 to 1000, a level below 0,
/// and as outfall_flow.
[[nodiscard]] RatingTable outfall_rating(Length depth, Count steps, Length level, Length diameter,
                                         Length length, Gradient slope, Share roughness, PipeInlet inlet,
                                         std::optional<Length> tailwater_level,
                                         std::optional<Share> entrance_loss);

}  // namespace undercroft::calc
