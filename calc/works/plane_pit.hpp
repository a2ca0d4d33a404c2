/// \file plane_pit.hpp
/// A battered pit between two planes: its formation and the existing ground.
#pragma once

#include <array>
#include <vector>

#include "calc/works/plane.hpp"

namespace undercroft::calc {

/// A pit over the rectangle from (0, 0) to (base_length, base_width) in plan.
///
/// The batter of a wall is the run in plan, square to the edge of the base below it, per rise; along a
/// falling edge the wall is one plane. Where two walls meet they are cut along their own line of
/// intersection, and where a wall meets the ground the pit ends. So the pit is what lies under the ground and
/// over the highest of formation and four walls.
struct PlanePit {
    Length base_length;
    Length base_width;
    Batter batter;
    Plane formation;
    Plane ground;
};

/// A point in plan with its level.
struct LevelPoint {
    Length x;
    Length y;
    Length level;
};

/// The corners in turn: (0, 0), (L, 0), (L, W), (0, W) of the base.
using PitCorners = std::array<LevelPoint, 4>;

/// The base's corners on the formation. \throws Refused(domain) for a length or width not above 0.
[[nodiscard]] PitCorners base_corners(const PlanePit& pit);

/// The corners at ground level, where two walls and the ground meet.
/// \throws Refused(domain) for a length or width not above 0; a batter below 0; a formation that does not lie
/// below the ground at each of its corners; ground or formation so steep that a wall at the batter does not
/// meet it.
[[nodiscard]] PitCorners top_corners(const PlanePit& pit);

/// Bank volume of the pit. With both planes level it is pit_volume, to the last digit; with vertical walls
/// the mean depth of the corners times the base; else exact, the polyhedron cut by its walls. \throws Refused
/// as top_corners.
[[nodiscard]] Volume plane_pit_volume(const PlanePit& pit);

/// Volume of the pit that is filled up to a surface: between the walls up to the ground, straight up above
/// it. The difference of two is a layer between planes. \throws Refused as top_corners.
[[nodiscard]] Volume plane_pit_filled(const PlanePit& pit, const Plane& surface);

/// Plan area of the pit at ground level. \throws Refused as top_corners.
[[nodiscard]] Area plane_pit_area(const PlanePit& pit);

/// Area of the four walls, sloping or vertical. \throws Refused as top_corners.
[[nodiscard]] Area plane_pit_walls(const PlanePit& pit);

/// Depth of the deepest wall, from its foot to the ground at its top; of ground that rises away from the pit
/// more than at its foot. It decides batter and protection. \throws Refused as top_corners.
[[nodiscard]] Length deepest_wall(const PlanePit& pit);

/// Volume and plan area of a level pool in a pit whose walls stand as high as the ground.
struct Pool {
    Volume volume;
    Area area;
};
/// What lies under a level surface in the pit. \throws Refused as top_corners.
[[nodiscard]] Pool pool_in_pit(const PlanePit& pit, Length level);

/// A pit in level ground whose formation falls along its length; the depth is that at the low end.
/// \throws Refused(domain) for a fall below 0.
[[nodiscard]] PlanePit falling_pit(Length base_length, Length base_width, Length depth_at_low_end,
                                   Batter batter, Gradient fall);

}  // namespace undercroft::calc
