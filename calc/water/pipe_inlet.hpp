/// \file pipe_inlet.hpp
/// Headwater that a circular pipe's inlet asks for, whatever follows behind it: inlet control.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// How a circular pipe begins.
enum class PipeInlet {
    square_edge,        ///< concrete, square edge in a headwall or chamber wall
    groove_headwall,    ///< concrete, groove end in a headwall
    groove_projecting,  ///< concrete, groove end projecting
    metal_headwall,     ///< corrugated metal in a headwall
    metal_mitred,       ///< corrugated metal mitred to the slope
    metal_projecting,   ///< corrugated metal projecting
    bevel_45,           ///< ring bevelled at 45 degrees
    bevel_34,           ///< ring bevelled at 33.7 degrees
};

/// Share of the velocity head that is lost on entering a full pipe. FHWA HDS-5, Table 12: 0.5 of a square
/// edge, else from memory.
[[nodiscard]] Share entrance_loss_of(PipeInlet inlet);

/// Headwater above the inlet's invert under inlet control.
///
/// With F = Q/(A D^0.5) in ft^0.5/s: HW/D = Hc/D + K F^M + Ks S up to F = 3.5 (Hc the specific head of
/// critical depth), c F^2 + Y + Ks S from F = 4, straight between both values from 3.5 to 4 where the source
/// draws by eye; Ks = -0.5, of a mitred inlet 0.7. FHWA HDS-5, 2nd ed. (2001), app. A, form 1 and Table 9;
/// the mitred slope term as in the third edition.
/// \throws Refused(domain) for a flow or slope below 0, a diameter not above 0.
[[nodiscard]] Length inlet_control_headwater(Flow flow, Length diameter, Gradient slope, PipeInlet inlet);

}  // namespace undercroft::calc
