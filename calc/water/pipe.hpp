/// \file pipe.hpp
/// Uniform flow in a circular pipe, full or part full, by Manning.
#pragma once

#include <optional>

#include "units/types.hpp"

namespace undercroft::calc {

/// Flow at a depth, or of the full pipe: Q = (1/n) A R^(2/3) S^(1/2) (m, s).
///
/// theta = 2 acos(1 - 2 y/D), A = D^2/8 (theta - sin theta), R = A/(theta D/2); n the same at every depth.
/// Chow, Open-Channel Hydraulics (1959), secs. 5-6 and 6-3.
/// \param roughness Manning's n in s/m^(1/3), the number that handbooks print for feet too.
/// \throws Refused(domain) for a diameter, slope or roughness not above 0, a depth below 0 or over the
/// diameter.
[[nodiscard]] Flow pipe_flow(Length diameter, Gradient slope, Share roughness, std::optional<Length> depth);

/// Depth of uniform flow: the lower of the two depths where a nearly full pipe could carry it at both.
///
/// A root of pipe_flow below 0.938 D, where it is greatest (Boost.Math, TOMS 748).
/// \throws Refused(domain) for a diameter, slope or roughness not above 0, a flow below 0 or over the pipe's
/// greatest, which the sentence names, or a pipe whose greatest flow is too large for a number.
[[nodiscard]] Length pipe_depth(Flow flow, Length diameter, Gradient slope, Share roughness);

}  // namespace undercroft::calc
