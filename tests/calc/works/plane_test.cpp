// Planes through corner levels.
#include "calc/works/plane.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// Levels at the corners (0, 0), (40, 0), (40, 12), (0, 12).
CornerLevels rectangle(double a, double b, double c, double d) {
    return {{m(0), m(0), m(a)}, {m(40), m(0), m(b)}, {m(40), m(12), m(c)}, {m(0), m(12), m(d)}};
}

}  // namespace

TEST_CASE("three corners lie on their plane, and equal ones are level to the last digit") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const double a = random.between(90, 110);
        const double sx = random.between(-0.05, 0.05);
        const double sy = random.between(-0.05, 0.05);
        CornerLevels corners;
        for (int n = random.whole(3, 8); n > 0; --n) {
            const double x = random.between(-50, 50);
            const double y = random.between(-50, 50);
            corners.emplace_back(m(x), m(y), m(a + sx * x + sy * y));
        }
        const double x = random.between(-50, 50);
        const double y = random.between(-50, 50);
        REQUIRE_THAT(plane_level(corners, m(x), m(y), m(0)), is_within(m(a + sx * x + sy * y), m(1e-8)));
        REQUIRE_THAT(plane_fall(corners, m(0)), is_within(gradient(std::hypot(sx, sy)), gradient(1e-8)));
    }
    const FittedPlane level = plane_through(rectangle(101.35, 101.35, 101.35, 101.35), m(0));
    CHECK(level.plane.is_level());
    CHECK(level.plane.level(m(17.3), m(5.9)) == m(101.35));
    CHECK(level.departure == m(0));
}

TEST_CASE("a twisted rectangle departs from its plane by a quarter of its twist") {
    // math: least squares through 0, 0, 0.2, 0: each corner is off by 0.05, the plane passes 0.05 over the
    // middle.
    const CornerLevels twisted = rectangle(100, 100, 100.2, 100);
    CHECK_THAT(plane_through(twisted, m(0.05)).departure, is_within(m(0.05), m(1e-12)));
    CHECK_THAT(plane_level(twisted, m(20), m(6), m(0.06)), is_near(m(100.05), 1e-12));
    CHECK_THROWS_MATCHES(plane_level(twisted, m(20), m(6), m(0.04)), Refused,
                         refuses_domain("depart from a plane by 0.05 m, more than the tolerance (0.04 m)"));
    Random random;
    for (int i = 0; i < 300; ++i) {
        const double z[] = {random.between(0, 2), random.between(0, 2), random.between(0, 2),
                            random.between(0, 2)};
        const CornerLevels corners = rectangle(z[0], z[1], z[2], z[3]);
        const double twist = std::abs(z[0] - z[1] + z[2] - z[3]) / 4;
        REQUIRE_THAT(plane_through(corners, m(2)).departure, is_within(m(twist), m(1e-9)));
        REQUIRE_THAT(plane_level(corners, m(20), m(6), m(2)),
                     is_within(m((z[0] + z[1] + z[2] + z[3]) / 4), m(1e-9)));
    }
}

TEST_CASE("cover between planes is least and greatest at the corners") {
    // By hand: a car park that falls 1 % along 40 m over a level bed, crown 1.0 m over the formation.
    const CornerLevels surface = rectangle(102, 101.6, 101.6, 102);
    const CornerLevels formation = rectangle(99.6, 99.6, 99.6, 99.6);
    const Gap cover = plane_gap(surface, formation, m(40), m(12), m(1), m(0));
    CHECK_THAT(cover.least, is_within(m(1.0), m(1e-9)));
    CHECK_THAT(cover.greatest, is_within(m(1.4), m(1e-9)));
    // What the levels depart from a plane is taken off the least and put on the greatest.
    const Gap careful = plane_gap(rectangle(102, 101.6, 101.68, 102), formation, m(40), m(12), m(1), m(0.02));
    CHECK(careful.least < m(1.0 + 1e-9));
    CHECK(careful.greatest > m(1.4));
    CHECK_THROWS_MATCHES(plane_gap(surface, formation, m(40), m(12), m(2.1), m(0)), Refused,
                         refuses_domain("at x 40 m, y 0 m it lies 0.1 m below it"));
    Random random;
    for (int i = 0; i < 200; ++i) {
        const CornerLevels top = {{m(0), m(0), m(random.between(5, 6))},
                                  {m(30), m(0), m(random.between(5, 6))},
                                  {m(0), m(10), m(random.between(5, 6))}};
        const CornerLevels bottom = {{m(0), m(0), m(random.between(0, 1))},
                                     {m(30), m(0), m(random.between(0, 1))},
                                     {m(0), m(10), m(random.between(0, 1))}};
        const Gap gap = plane_gap(top, bottom, m(30), m(10), m(0.5), m(0));
        for (int j = 0; j < 20; ++j) {
            const Length x = m(random.between(0, 30));
            const Length y = m(random.between(0, 10));
            const Length depth = plane_level(top, x, y, m(0)) - plane_level(bottom, x, y, m(0)) - m(0.5);
            REQUIRE(depth >= gap.least - m(1e-9));
            REQUIRE(depth <= gap.greatest + m(1e-9));
        }
    }
}

TEST_CASE("corners that make no plane are refused") {
    CHECK_THROWS_MATCHES(plane_level({{m(0), m(0), m(1)}, {m(1), m(0), m(1)}}, m(0), m(0), m(0)), Refused,
                         refuses_domain("at least three corners"));
    CHECK_THROWS_MATCHES(
        plane_level({{m(0), m(0), m(1)}, {m(1), m(1), m(1)}, {m(3), m(3), m(2)}}, m(0), m(0), m(1)), Refused,
        refuses_domain("must not lie in one line"));
    CHECK_THROWS_MATCHES(
        plane_level({{m(2), m(2), m(1)}, {m(2), m(2), m(1)}, {m(2), m(2), m(2)}}, m(0), m(0), m(1)), Refused,
        refuses_domain("must not lie in one line"));
    CHECK_THROWS_MATCHES(plane_level(rectangle(1, 1, 1, 1), m(0), m(0), m(-1)), Refused,
                         refuses_domain("tolerance"));
    const CornerLevels level = rectangle(1, 1, 1, 1);
    const CornerLevels deep = rectangle(0, 0, 0, 0);
    CHECK_THROWS_MATCHES(plane_gap(level, deep, m(0), m(1), m(0), m(0)), Refused, refuses_domain("length"));
    CHECK_THROWS_MATCHES(plane_gap(level, deep, m(1), m(0), m(0), m(0)), Refused, refuses_domain("width"));
    CHECK_THROWS_MATCHES(plane_gap(level, deep, m(1), m(1), m(-1), m(0)), Refused, refuses_domain("height"));
    CHECK_NOTHROW(plane_gap(level, deep, m(1), m(1), m(0), m(0)));
}

}  // namespace undercroft::tests
