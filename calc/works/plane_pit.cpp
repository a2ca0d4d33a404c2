#include "calc/works/plane_pit.hpp"

#include <cmath>

#include "calc/works/excavation.hpp"

namespace undercroft::calc {

namespace {

struct PlanPoint {
    Length x;
    Length y;
};
/// Convex, its corners in turn.
using Polygon = std::vector<PlanPoint>;

Plane difference(const Plane& a, const Plane& b) {
    return {a.at_origin - b.at_origin, a.along_x - b.along_x, a.along_y - b.along_y};
}

/// The part of a polygon over which a plane is not below 0.
Polygon clipped(const Polygon& polygon, const Plane& height) {
    Polygon part;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const PlanPoint& a = polygon[i];
        const PlanPoint& b = polygon[(i + 1) % polygon.size()];
        const Length at_a = height.level(a.x, a.y);
        const Length at_b = height.level(b.x, b.y);
        if (at_a >= zero) part.push_back(a);
        if ((at_a < zero) == (at_b < zero)) continue;
        const double t = at_a / (at_a - at_b);
        part.push_back({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
    }
    return part;
}

Area area_of(const PlanPoint& a, const PlanPoint& b, const PlanPoint& c) {
    return ((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2.0;
}

Area area_of(const Polygon& polygon) {
    Area area = zero;
    for (std::size_t i = 2; i < polygon.size(); ++i) area += area_of(polygon[0], polygon[i - 1], polygon[i]);
    return abs(area);
}

/// Volume under a plane over a polygon.
Volume under(const Plane& height, const Polygon& polygon) {
    Volume volume = zero;
    const auto at = [&](const PlanPoint& p) { return height.level(p.x, p.y); };
    for (std::size_t i = 2; i < polygon.size(); ++i)
        volume += area_of(polygon[0], polygon[i - 1], polygon[i]) *
                  (at(polygon[0]) + at(polygon[i - 1]) + at(polygon[i])) / 3.0;
    return volume;
}

struct Corner {
    Length x;
    Length y;
    double out_x;  ///< sign of the way out of the pit
    double out_y;
};

std::array<Corner, 4> corners_in_plan(const PlanePit& pit) {
    const Length l = pit.base_length;
    const Length w = pit.base_width;
    return {{{zero, zero, -1, -1}, {l, zero, 1, -1}, {l, w, 1, 1}, {zero, w, -1, 1}}};
}

/// Rise of a wall per run.
Gradient steepness_of(Batter batter) {
    return gradient(vertical_rise(batter, metre) / metre);
}

/// How far ground at a gradient rises over the run of a wall, per rise of the wall.
double run_at(Batter batter, Gradient ground) {
    return horizontal_run(batter, vertical_rise(ground, metre)) / metre;
}

bool has_vertical_walls(const PlanePit& pit) {
    return pit.batter == zero;
}

/// Formation first, then the four walls, each rising from its edge of the base; vertical walls are no planes.
std::vector<Plane> floors_of(const PlanePit& pit) {
    const Plane& f = pit.formation;
    std::vector<Plane> floors = {f};
    if (has_vertical_walls(pit)) return floors;
    const Gradient steep = steepness_of(pit.batter);
    const Length l = pit.base_length;
    const Length w = pit.base_width;
    floors.push_back({f.at_origin, f.along_x, -1.0 * steep});                          // y = 0
    floors.push_back({f.level(zero, w) - vertical_rise(steep, w), f.along_x, steep});  // y = W
    floors.push_back({f.at_origin, -1.0 * steep, f.along_y});                          // x = 0
    floors.push_back({f.level(l, zero) - vertical_rise(steep, l), steep, f.along_y});  // x = L
    return floors;
}

Polygon plan_at_ground(const PlanePit& pit) {
    Polygon polygon;
    for (const LevelPoint& corner : top_corners(pit)) polygon.push_back({corner.x, corner.y});
    return polygon;
}

/// The part of the plan where one floor is the highest of all.
Polygon region_of(std::size_t floor, const std::vector<Plane>& floors, Polygon polygon) {
    for (std::size_t other = 0; other < floors.size(); ++other)
        if (other != floor) polygon = clipped(polygon, difference(floors[floor], floors[other]));
    return polygon;
}

/// Where a surface lies over every floor.
Pool pool_under(const Plane& surface, const PlanePit& pit) {
    const std::vector<Plane> floors = floors_of(pit);
    const Polygon plan = plan_at_ground(pit);
    Pool pool{};
    for (std::size_t i = 0; i < floors.size(); ++i) {
        const Plane depth = difference(surface, floors[i]);
        const Polygon region = clipped(region_of(i, floors, plan), depth);
        pool.volume += abs(under(depth, region));
        pool.area += area_of(region);
    }
    return pool;
}

/// Rise of a wall from a base corner to the ground, in the section square to an edge.
Length rise_in_section(const PlanePit& pit, const Corner& corner, Length depth, bool along_x) {
    const Gradient outward = along_x ? corner.out_x * pit.ground.along_x : corner.out_y * pit.ground.along_y;
    return depth / (1 - run_at(pit.batter, outward));
}

}  // namespace

PitCorners base_corners(const PlanePit& pit) {
    require_positive("base length", pit.base_length);
    require_positive("base width", pit.base_width);
    PitCorners corners{};
    const auto plan = corners_in_plan(pit);
    for (std::size_t i = 0; i < 4; ++i)
        corners[i] = {plan[i].x, plan[i].y, pit.formation.level(plan[i].x, plan[i].y)};
    return corners;
}

PitCorners top_corners(const PlanePit& pit) {
    const PitCorners base = base_corners(pit);
    require_not_negative("batter", pit.batter);
    const auto steepness = [](const Plane& plane) { return abs(plane.along_x) + abs(plane.along_y); };
    const Gradient steepest = std::max(steepness(pit.ground), steepness(pit.formation));
    require(run_at(pit.batter, steepest) <= 0.5,
            "ground and formation must be at most half as steep as the walls, but rise ", amount(steepest),
            " per run beside a batter of ", amount(pit.batter), ": walls so flat do not meet them");
    const auto plan = corners_in_plan(pit);
    PitCorners top{};
    for (std::size_t i = 0; i < 4; ++i) {
        const Corner& c = plan[i];
        const Length depth = pit.ground.level(c.x, c.y) - base[i].level;
        require(depth > zero, "the ground must lie above the formation, but at the corner x ", amount(c.x),
                ", y ", amount(c.y), " of the base it is ", amount(Length(-depth)), " below it");
        // Out by dx and dy the ground is as high as both walls:
        // H + gx dx + gy dy = fx dx + dy/z = fy dy + dx/z, all gradients outward.
        const auto outward_x = [&](const Plane& plane) {
            return run_at(pit.batter, c.out_x * plane.along_x);
        };
        const auto outward_y = [&](const Plane& plane) {
            return run_at(pit.batter, c.out_y * plane.along_y);
        };
        const double a = outward_x(pit.formation) - outward_x(pit.ground);
        const double b = 1 - outward_y(pit.ground);
        const double p = 1 - outward_x(pit.ground);
        const double q = outward_y(pit.formation) - outward_y(pit.ground);
        const double determinant = b * p - a * q;
        const Length run = horizontal_run(pit.batter, depth);
        const Length dx = run * ((b - q) / determinant);
        const Length dy = run * ((p - a) / determinant);
        const Length x = c.x + c.out_x * dx;
        const Length y = c.y + c.out_y * dy;
        top[i] = {x, y, pit.ground.level(x, y)};
    }
    return top;
}

Volume plane_pit_volume(const PlanePit& pit) {
    const PitCorners base = base_corners(pit);
    (void)top_corners(pit);
    if (pit.ground.is_level() && pit.formation.is_level())
        return pit_volume(pit.base_length, pit.base_width, pit.ground.at_origin - pit.formation.at_origin,
                          pit.batter);
    if (!has_vertical_walls(pit)) return pool_under(pit.ground, pit).volume;
    Length depths = zero;
    for (const LevelPoint& corner : base) depths += pit.ground.level(corner.x, corner.y) - corner.level;
    return pit.base_length * pit.base_width * depths / 4.0;
}

Volume plane_pit_filled(const PlanePit& pit, const Plane& surface) {
    return pool_under(surface, pit).volume;
}

Area plane_pit_area(const PlanePit& pit) {
    if (pit.ground.is_level() && pit.formation.is_level()) {
        (void)top_corners(pit);
        return pit_area(pit.base_length, pit.base_width, pit.ground.at_origin - pit.formation.at_origin,
                        pit.batter);
    }
    return area_of(plan_at_ground(pit));
}

Area plane_pit_walls(const PlanePit& pit) {
    const PitCorners base = base_corners(pit);
    const PitCorners top = top_corners(pit);
    if (pit.ground.is_level() && pit.formation.is_level())
        return pit_walls(pit.base_length, pit.base_width, pit.ground.at_origin - pit.formation.at_origin,
                         pit.batter);
    // Each wall is a plane quadrilateral: half the length of the cross product of its diagonals.
    Area walls = zero;
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t next = (i + 1) % 4;
        const LevelPoint& a = base[i];
        const LevelPoint& b = base[next];
        const LevelPoint& c = top[next];
        const LevelPoint& d = top[i];
        const auto cross = [](Length u1, Length u2, Length v1, Length v2) { return u1 * v2 - u2 * v1; };
        const Area x = cross(c.y - a.y, c.level - a.level, d.y - b.y, d.level - b.level);
        const Area y = cross(c.level - a.level, c.x - a.x, d.level - b.level, d.x - b.x);
        const Area plan = cross(c.x - a.x, c.y - a.y, d.x - b.x, d.y - b.y);
        walls += sqrt(x * x + y * y + plan * plan) / 2.0;
    }
    return walls;
}

Length deepest_wall(const PlanePit& pit) {
    const PitCorners base = base_corners(pit);
    const PitCorners top = top_corners(pit);
    const auto plan = corners_in_plan(pit);
    Length deepest = zero;
    for (std::size_t i = 0; i < 4; ++i) {
        const Length depth = pit.ground.level(plan[i].x, plan[i].y) - base[i].level;
        deepest = std::max({deepest, rise_in_section(pit, plan[i], depth, true),
                            rise_in_section(pit, plan[i], depth, false), top[i].level - base[i].level});
    }
    return deepest;
}

Pool pool_in_pit(const PlanePit& pit, Length level) {
    return pool_under({level, gradient(0), gradient(0)}, pit);
}

PlanePit falling_pit(Length base_length, Length base_width, Length depth_at_low_end, Batter batter,
                     Gradient fall) {
    require_not_negative("fall", fall);
    // The low end is at x = 0.
    return {base_length,
            base_width,
            batter,
            {zero, fall, gradient(0)},
            {depth_at_low_end, gradient(0), gradient(0)}};
}

}  // namespace undercroft::calc
