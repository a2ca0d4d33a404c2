/// \file circular_section.hpp
/// The wetted part of a circular pipe, and the depth of critical flow in it.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// A circular pipe filled to a depth from 0 to its diameter. Chow, Open-Channel Hydraulics (1959), sec. 2-2.
struct CircularSection {
    Length diameter;

    [[nodiscard]] Area area(Length depth) const;
    [[nodiscard]] Length wetted_perimeter(Length depth) const;
    [[nodiscard]] Length surface_width(Length depth) const;
};

/// Depth at which a flow has its least specific energy: Q^2 b/(g A^3) = 1, b the width of the surface.
///
/// Chow (1959), sec. 4-1; root by TOMS 748 (Boost.Math). 0 for no flow; below the crown for every flow.
[[nodiscard]] Length critical_depth(const CircularSection& pipe, Flow flow);

}  // namespace undercroft::calc
