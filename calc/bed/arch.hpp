/// \file arch.hpp
/// The cross-section of a chamber: width, area and length of the arch.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Shape of a chamber's cross-section, inside.
enum class Shape {
    ellipse,    ///< half an ellipse, flat side down: span is the full axis, rise the other half axis
    parabola,   ///< parabola with its crown up
    segment,    ///< segment of a circle from span and rise, also past the half circle
    rectangle,  ///< a crate
    circle,     ///< a pipe: span = rise = inside diameter
};

/// A chamber's cross-section.
struct Arch {
    Shape shape;
    Length span;  ///< inside width at the base
    Length rise;  ///< inside height of the crown above the base
};

/// Checks the section. \throws Refused(domain) when span or rise is not above 0, a segment's rise is below 1
/// % of its span, or a circle is not round.
void require_arch(const Arch& arch);

/// Inside width at a depth above the base.
///
/// Ellipse w = B sqrt(1 - (y/H)^2); parabola w = B sqrt(1 - y/H); segment w = 2 sqrt(R^2 - (y - c)^2) with
/// R = (B^2/4 + H^2)/(2H), c = H - R; circle w = 2 sqrt(y (D - y)). Elementary geometry.
/// \throws Refused(domain) when depth is below 0 or above the rise, and as require_arch.
[[nodiscard]] Length arch_width(const Arch& arch, Length depth);

/// The greatest inside width: the span, or of a segment past the half circle the circle's diameter. Checks
/// nothing.
[[nodiscard]] Length arch_widest(const Arch& arch);

/// Inside area below a depth above the base: the integral of the width, in closed form.
/// \throws Refused(domain) when depth is below 0 or above the rise, and as require_arch.
[[nodiscard]] Area arch_area(const Arch& arch, Length depth);

/// Whole inside area. \throws Refused(domain) as require_arch.
[[nodiscard]] Area arch_area(const Arch& arch);

/// Length along the arch from foot to foot; of a rectangle both walls and the top, of a circle all round.
///
/// Ellipse 2 a E(e) with the complete elliptic integral of the second kind; parabola in closed form.
/// \throws Refused(domain) as require_arch.
[[nodiscard]] Length arch_length(const Arch& arch);

}  // namespace undercroft::calc
