/// \file pipe_size.hpp
/// Choosing a pipe: its diameter for a flow, the next size there is, its area and speed.
#pragma once

#include <optional>
#include <vector>

#include "units/types.hpp"

namespace undercroft::calc {

/// Inside diameter of the pipe that carries a flow when just full: D = (Q n/(K sqrt S))^(3/8) with K = pi/4
/// (1/4)^(2/3) m^(1/3)/s = 0.3117 (m, s).
///
/// FHWA HEC-22, 3rd ed. (2009), ch. 7, which rounds K to 0.312 (0.46 in feet).
/// \throws Refused(domain) for a value not above 0.
[[nodiscard]] Length pipe_diameter(Flow flow, Gradient slope, Share roughness);

/// The smallest of the sizes that there are that is at least the one wanted.
/// \throws Refused(domain) for a size not above 0 or none at all; Refused(no_answer) when all are smaller.
[[nodiscard]] Length next_size(Length wanted, const std::vector<Length>& sizes);

/// Wetted area of a pipe, full or at a depth.
/// \throws Refused(domain) for a diameter not above 0, a depth below 0 or over the diameter.
[[nodiscard]] Area pipe_area(Length diameter, std::optional<Length> depth);

/// Mean speed of a flow in a pipe, full or at a depth: v = Q/A.
/// \throws Refused(domain) for a flow below 0, a depth of 0, and as pipe_area.
[[nodiscard]] Speed pipe_speed(Flow flow, Length diameter, std::optional<Length> depth);

}  // namespace undercroft::calc
