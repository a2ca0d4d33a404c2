// A battered pit between two planes.
#include "calc/works/plane_pit.hpp"

#include "calc/works/excavation.hpp"
#include "calc/works/pit_zones.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Plane level_plane(double level) {
    return {m(level), gradient(0), gradient(0)};
}

PlanePit random_pit(Random& random) {
    return {m(random.between(5, 60)),
            m(random.between(5, 30)),
            batter(random.whole(0, 4) == 0 ? 0 : random.between(0.2, 1.5)),
            {m(random.between(0, 1)), gradient(random.between(-0.01, 0.01)),
             gradient(random.between(-0.01, 0.01))},
            {m(random.between(3, 4)), gradient(random.between(-0.03, 0.03)),
             gradient(random.between(-0.03, 0.03))}};
}

/// Volume of a pit in level ground whose formation falls along it, by slices across its length: each a
/// trapezoid, the ends with their floor on the end wall. A second formulation, without polygons.
double by_slices(double length, double width, double depth, double z, double fall) {
    const auto trapezoid = [z](double bottom, double high) {
        return high <= 0 ? 0 : high * (bottom + z * high);
    };
    double volume = integral([&](double x) { return trapezoid(width, depth - fall * x); }, 0, length);
    if (z == 0) return volume;
    // Beyond an end by d the end wall is the floor, wider on each side by where the side walls meet it: d + z
    // f d, f the fall away from the pit there.
    const auto end = [&](double at_end, double fall_outward) {
        return integral(
            [&](double d) { return trapezoid(width + 2 * (d + z * fall_outward * d), at_end - d / z); }, 0,
            z * at_end);
    };
    volume += end(depth, fall);  // at the low end the formation would fall on, outward
    volume += end(depth - fall * length, -fall);
    return volume;
}

}  // namespace

TEST_CASE("a wedge is dug where the formation falls, in vertical walls, by hand") {
    // math: 40 x 12 m, 2.40 m deep at one end, 0.5 %: 1152 + L^2 W s/2 = 1200 m3, 2.60 m at the other.
    const PlanePit pit = falling_pit(m(40), m(12), m(2.6), batter(0), gradient(0.005));
    CHECK_THAT(plane_pit_volume(pit), is_near(m3(1200), 1e-12));
    CHECK_THAT(deepest_wall(pit), is_near(m(2.6)));
    CHECK_THAT(plane_pit_walls(pit), is_near(m2(12 * (2.4 + 2.6) + 2 * 40 * 2.5), 1e-12));
    CHECK_THAT(plane_pit_area(pit), is_near(m2(480), 1e-12));
}

TEST_CASE("between level planes it is the level pit, to the last digit") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const Length length = m(random.between(5, 60));
        const Length width = m(random.between(5, 60));
        const Length depth = m(random.between(0.5, 5));
        const Batter z = batter(random.whole(0, 3) == 0 ? 0 : random.between(0, 1.5));
        const PlanePit pit = falling_pit(length, width, depth, z, gradient(0));
        REQUIRE(plane_pit_volume(pit) == pit_volume(length, width, depth, z));
        REQUIRE(plane_pit_area(pit) == pit_area(length, width, depth, z));
        REQUIRE(plane_pit_walls(pit) == pit_walls(length, width, depth, z));
        REQUIRE(deepest_wall(pit) == depth);
        // And the polyhedron comes to the same.
        REQUIRE_THAT(plane_pit_filled(pit, pit.ground), is_near(pit_volume(length, width, depth, z), 1e-11));
        const Length half = depth / 2.0;
        REQUIRE_THAT(plane_pit_filled(pit, level_plane(half.value())),
                     is_near(pit_volume(length, width, half, z), 1e-11));
        REQUIRE_THAT(pool_in_pit(pit, half).area, is_near(pit_area(length, width, half, z), 1e-11));
        const Length above = depth * 1.3;
        REQUIRE_THAT(plane_pit_filled(pit, level_plane(above.value())),
                     is_near(pit_zone(length, width, depth, z, m(0), above), 1e-11));
    }
}

TEST_CASE("a falling formation between battered walls is what slices across it add up to (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const double length = random.between(10, 60);
        const double width = random.between(5, 30);
        const double depth = random.between(1.5, 4);
        const double z = random.between(0.1, 1.5);
        const double fall = random.between(0, 0.02);
        CAPTURE(length, width, depth, z, fall);
        const PlanePit pit = falling_pit(m(length), m(width), m(depth), batter(z), gradient(fall));
        REQUIRE_THAT(plane_pit_volume(pit), is_near(m3(by_slices(length, width, depth, z, fall)), 1e-8));
    }
}

TEST_CASE(
    "top corners lie on two walls and on the ground, and the pit between general planes is their "
    "polyhedron") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const PlanePit pit = random_pit(random);
        const double z = pit.batter.value();
        const PitCorners base = base_corners(pit);
        const PitCorners top = top_corners(pit);
        for (std::size_t c = 0; c < 4; ++c) {
            REQUIRE_THAT(top[c].level, is_within(pit.ground.level(top[c].x, top[c].y), m(1e-9)));
            const double out_x = std::abs((top[c].x - base[c].x).value());
            const double out_y = std::abs((top[c].y - base[c].y).value());
            // Run square to each edge, over the rise from that edge produced: the batter.
            const double edge_x = pit.formation.level(top[c].x, base[c].y).value();
            const double edge_y = pit.formation.level(base[c].x, top[c].y).value();
            REQUIRE(out_y == Approx(z * (top[c].level.value() - edge_x)).margin(1e-9));
            REQUIRE(out_x == Approx(z * (top[c].level.value() - edge_y)).margin(1e-9));
        }
        // Volume by 400 x 400 columns over the box around the top.
        const auto [left, right] = std::minmax({top[0].x, top[1].x, top[2].x, top[3].x});
        const auto [near, far] = std::minmax({top[0].y, top[1].y, top[2].y, top[3].y});
        if (i >= 10) continue;
        constexpr int n = 400;
        double sum = 0;
        for (int a = 0; a < n; ++a)
            for (int b = 0; b < n; ++b) {
                const Length x = left + (right - left) * ((a + 0.5) / n);
                const Length y = near + (far - near) * ((b + 0.5) / n);
                Length floor = pit.formation.level(x, y);
                const auto wall = [&](Length beyond, Length foot) {
                    if (z > 0) floor = std::max(floor, foot + beyond / z);
                };
                wall(m(0) - y, pit.formation.level(x, m(0)));
                wall(y - pit.base_width, pit.formation.level(x, pit.base_width));
                wall(m(0) - x, pit.formation.level(m(0), y));
                wall(x - pit.base_length, pit.formation.level(pit.base_length, y));
                sum += std::max(0.0, (pit.ground.level(x, y) - floor).value());
            }
        const double column = ((right - left) * (far - near)).value() / n / n;
        CAPTURE(i);
        REQUIRE_THAT(plane_pit_volume(pit), is_near(m3(sum * column), 2e-4));
    }
}

TEST_CASE("layers between planes add up, and above the ground they do not widen") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const PlanePit pit = random_pit(random);
        Plane surface = pit.ground;
        surface.at_origin += m(0.3);
        const Volume above = plane_pit_filled(pit, surface) - plane_pit_filled(pit, pit.ground);
        REQUIRE_THAT(above, is_near(plane_pit_area(pit) * m(0.3), 1e-9));
        REQUIRE_THAT(plane_pit_filled(pit, pit.ground), is_near(plane_pit_volume(pit), 1e-9));
        Plane bed_top = pit.formation;
        bed_top.at_origin += m(1);
        const Volume bed = plane_pit_filled(pit, bed_top);
        REQUIRE(bed > m3(0));
        REQUIRE(bed < plane_pit_volume(pit));
        // At the formation itself nothing is filled.
        REQUIRE(plane_pit_filled(pit, pit.formation) < m3(1e-6));
    }
}

TEST_CASE("the deepest wall is that of the corner towards which ground rises and formation falls") {
    // By hand: vertical walls, ground 2 m over the base at the origin and up 2 % along 40 m, formation down
    // 0.5 %.
    const PlanePit pit{
        m(40), m(12), batter(0), {m(0), gradient(-0.005), gradient(0)}, {m(2), gradient(0.02), gradient(0)}};
    CHECK_THAT(deepest_wall(pit), is_near(m(3.0), 1e-12));
    // At 1H:1V the ground goes on rising to the top of the wall: 3/(1 - 0.02) in the section along the fall.
    PlanePit battered = pit;
    battered.batter = batter(1);
    CHECK_THAT(deepest_wall(battered), is_within(m(3 / 0.98), m(1e-3)));
    CHECK(deepest_wall(battered) >= m(3 / 0.98 - 1e-9));
}

TEST_CASE("planes that make no pit are refused") {
    const auto with = [](auto change) {
        PlanePit pit = falling_pit(m(40), m(12), m(2), batter(1), gradient(0.005));
        change(pit);
        return plane_pit_volume(pit);
    };
    CHECK_NOTHROW(with([](PlanePit&) {}));
    CHECK_THROWS_MATCHES(with([](PlanePit& p) { p.base_length = m(0); }), Refused,
                         refuses_domain("base length"));
    CHECK_THROWS_MATCHES(with([](PlanePit& p) { p.base_width = m(0); }), Refused,
                         refuses_domain("base width"));
    CHECK_THROWS_MATCHES(with([](PlanePit& p) { p.batter = batter(-1); }), Refused, refuses_domain("batter"));
    CHECK_THROWS_MATCHES(with([](PlanePit& p) { p.ground.at_origin = m(0.1); }), Refused,
                         refuses_domain("at the corner x 40 m, y 0 m of the base it is 0.1 m below it"));
    CHECK_THROWS_MATCHES(with([](PlanePit& p) { p.ground.along_y = gradient(0.6); }), Refused,
                         refuses_domain("walls so flat do not meet them"));
    CHECK_THROWS_MATCHES(falling_pit(m(1), m(1), m(1), batter(0), gradient(-0.01)), Refused,
                         refuses_domain("fall"));
    CHECK_THROWS_MATCHES(deepest_wall(falling_pit(m(400), m(12), m(2), batter(0), gradient(0.005))), Refused,
                         refuses_domain("the ground must lie above the formation"));
}

}  // namespace undercroft::tests
