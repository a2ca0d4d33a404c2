// A grid of spot levels: fill, mean, highest, lowest.
#include "calc/works/spot_grid.hpp"

#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

SpotLevels random_levels(Random& random) {
    SpotLevels levels(static_cast<std::size_t>(random.whole(2, 6)));
    const int columns = random.whole(2, 6);
    for (auto& row : levels)
        for (int c = 0; c < columns; ++c) row.push_back(m(random.between(8, 12)));
    return levels;
}

}  // namespace

TEST_CASE("fill of one cell is the published one", "[published]") {
    // Engineering examination page: 50 x 50 ft, levels 87.6, 87.6, 87.6 and 88.6 ft, finished at 90: 199 yd3.
    const SpotLevels cell = {{ft(87.6), ft(87.6)}, {ft(87.6), ft(88.6)}};
    const Volume yd3 = ft3(27);
    CHECK_THAT(pit_grid_fill(cell, ft(50), ft(50), ft(90)), is_within(199.0 * yd3, 0.5 * yd3));
    CHECK_THAT(pit_grid_fill(cell, ft(50), ft(50), ft(90)), is_within(199.074074 * yd3, 1e-6 * yd3));
    CHECK(pit_grid(cell, ft(50), ft(50), ft(90)) == m3(0));
}

TEST_CASE("a triangle's cut and fill are exact, by hand") {
    // math: right triangle 12 x 9 m; depths 1.2, 2.1, 3.0 and -1.2, 2.1, 3.0.
    CHECK_THAT(cut_of_triangle(m2(54), {m(1.2), m(2.1), m(3.0)}), is_near(m3(113.4)));
    CHECK_THAT(cut_of_triangle(m2(54), {m(2.1), m(-1.2), m(3.0)}), is_within(m3(72.444156), m3(5e-7)));
    CHECK_THAT(cut_of_triangle(m2(54), {m(1.2), m(-2.1), m(-3.0)}), is_within(m3(2.244156), m3(5e-7)));
    CHECK(cut_of_triangle(m2(54), {m(-1), m(-2), m(0)}) == m3(0));
}

TEST_CASE("a plane that crosses the formation has as much cut as fill about its middle") {
    // math: 10 x 10 m, corners 2, 1, -2, -1 in turn: 38.888889 m3 each by two plane halves; the same by four.
    const SpotLevels plane = {{m(2), m(1)}, {m(-1), m(-2)}};
    CHECK_THAT(pit_grid(plane, m(10), m(10), m(0)), is_within(m3(38.888889), m3(5e-7)));
    CHECK_THAT(pit_grid_fill(plane, m(10), m(10), m(0)), is_within(m3(38.888889), m3(5e-7)));
}

TEST_CASE("cut less fill is the mean depth over the area") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const SpotLevels levels = random_levels(random);
        const Length dx = m(random.between(2, 20));
        const Length dy = m(random.between(2, 20));
        const Length formation = m(random.between(7, 13));
        const auto cells = static_cast<double>((levels.size() - 1) * (levels.front().size() - 1));
        const Volume cut = pit_grid(levels, dx, dy, formation);
        const Volume fill = pit_grid_fill(levels, dx, dy, formation);
        REQUIRE(cut >= m3(0));
        REQUIRE(fill >= m3(0));
        REQUIRE_THAT(cut - fill,
                     is_within(cells * dx * dy * (grid_mean_level(levels) - formation), m3(1e-9)));
        REQUIRE(grid_lowest_level(levels) <= grid_mean_level(levels));
        REQUIRE(grid_highest_level(levels) >= grid_mean_level(levels));
        REQUIRE(pit_grid(levels, dx, dy, grid_highest_level(levels)) == m3(0));
        REQUIRE(pit_grid_fill(levels, dx, dy, grid_lowest_level(levels)) <= m3(1e-9));
    }
    // Level ground has its level, to the last digit.
    CHECK(grid_mean_level({{m(100.1), m(100.1), m(100.1)}, {m(100.1), m(100.1), m(100.1)}}) == m(100.1));
    // math: an inner point counts four times, an edge twice, a corner once.
    CHECK_THAT(grid_mean_level({{m(0), m(0), m(0)}, {m(0), m(1), m(0)}, {m(0), m(0), m(0)}}),
               is_near(m(0.25)));
    CHECK_THAT(grid_mean_level({{m(0), m(1), m(0)}, {m(0), m(0), m(0)}, {m(0), m(0), m(0)}}),
               is_near(m(0.125)));
    CHECK_THAT(grid_mean_level({{m(1), m(0), m(0)}, {m(0), m(0), m(0)}, {m(0), m(0), m(0)}}),
               is_near(m(0.0625)));
}

TEST_CASE("grids that are none are refused") {
    const SpotLevels line = {{m(1), m(2)}};
    const SpotLevels ragged = {{m(1), m(2)}, {m(1)}};
    CHECK_THROWS_MATCHES(grid_mean_level(line), Refused, refuses_value("two rows and two columns"));
    CHECK_THROWS_MATCHES(grid_highest_level(ragged), Refused, refuses_value("all rows equally long"));
    CHECK_THROWS_MATCHES(grid_lowest_level({}), Refused, refuses_value("two rows"));
    CHECK_THROWS_MATCHES(pit_grid_fill(ragged, m(1), m(1), m(0)), Refused, refuses_value("rectangle"));
    CHECK_THROWS_MATCHES(pit_grid_fill({{m(1), m(1)}, {m(1), m(1)}}, m(0), m(1), m(0)), Refused,
                         refuses_domain("spacing x"));
}

}  // namespace undercroft::tests
