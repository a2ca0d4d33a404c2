/// \file pipe_profile.hpp
/// The water surface along a pipe that flows part full, full, or both: from its outlet back to its inlet.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// A straight circular pipe.
struct PipeReach {
    Length diameter;
    Length length;
    Gradient slope;
    Share roughness;  ///< Manning's n
};

/// Where a flow stands at one end of a pipe: depth of the water over the invert, above the crown that of its
/// pressure line, and its mean speed.
struct PipeState {
    Length depth;
    Speed speed;
};

/// Friction slope of a flow in a pipe filled to a depth: (Q n/(A R^(2/3)))^2 (m, s).
[[nodiscard]] Gradient friction_slope(const PipeReach& pipe, Flow flow, Length depth);

/// State at the upstream end by the direct step method, for a depth at the outlet of at least the critical
/// one.
///
/// dE/dx = S0 - Sf in 50 steps, ever shorter in depth, towards normal depth, critical depth (where the pipe
/// is steep) or the crown, from where the pipe is full. Chow, Open-Channel Hydraulics (1959), sec. 10-4.
[[nodiscard]] PipeState state_at_inlet(const PipeReach& pipe, Flow flow, Length depth_at_outlet);

}  // namespace undercroft::calc
