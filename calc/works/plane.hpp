/// \file plane.hpp
/// Surface, ground and formation as planes through levels at their corners.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Points x, y in plan and their level; one row a corner.
using CornerLevels = Table<Length, Length, Length>;

/// A plane: its level at the origin of the plan, and how it rises along x and y.
struct Plane {
    Length at_origin;
    Gradient along_x;
    Gradient along_y;

    [[nodiscard]] Length level(Length x, Length y) const {
        return at_origin + vertical_rise(along_x, x) + vertical_rise(along_y, y);
    }
    [[nodiscard]] bool is_level() const { return along_x == zero && along_y == zero; }
};

/// A plane and how far the corners that it was laid through depart from it.
struct FittedPlane {
    Plane plane;
    Length departure;
};

/// The plane through corner levels: exactly through three, by least squares through more. Four levels of a
/// rectangle depart from it by a quarter of their twist, |z1 - z2 + z3 - z4|/4. Equal levels give that level
/// to the last digit. \throws Refused(domain) for fewer than three corners, corners in one line, a tolerance
/// below 0, or corners that depart from the plane by more than the tolerance: ground so twisted is no plane.
[[nodiscard]] FittedPlane plane_through(const CornerLevels& corners, Length tolerance);

/// Level of that plane at x, y. \throws Refused as plane_through.
[[nodiscard]] Length plane_level(const CornerLevels& corners, Length x, Length y, Length tolerance);

/// Fall of that plane, per length, along the direction in which it is steepest: sqrt(sx^2 + sy^2).
/// \throws Refused as plane_through.
[[nodiscard]] Gradient plane_fall(const CornerLevels& corners, Length tolerance);

/// The depth between two surfaces over the rectangle of a bed.
struct Gap {
    Length least;
    Length greatest;
};

/// Least and greatest depth of one surface over another, less a height that stands on the lower one, over the
/// rectangle from (0, 0) to (length, width): at its corners, where planes are closest and farthest. What the
/// levels depart from their planes is taken off the least and added to the greatest, on the safe side. With
/// the finished surface, the formation and the height of the crown it is the cover. \throws Refused as
/// plane_through; Refused(domain) for a length or width not above 0, a height below 0, or a lower surface
/// that comes through the upper one.
[[nodiscard]] Gap plane_gap(const CornerLevels& upper, const CornerLevels& lower, Length length, Length width,
                            Length height, Length tolerance);

}  // namespace undercroft::calc
