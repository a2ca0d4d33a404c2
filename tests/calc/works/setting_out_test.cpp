// Points to set a bed out by.
#include "calc/works/setting_out.hpp"

#include "calc/bed/bed.hpp"
#include "calc/bed/drawing.hpp"
#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Table<Length, Length> corners_named(const std::vector<SetPoint>& points, const std::string& name) {
    Table<Length, Length> corners;
    for (const SetPoint& point : points)
        if (point.name.starts_with(name)) corners.emplace_back(point.east, point.north);
    return corners;
}

const SetPoint& named(const std::vector<SetPoint>& points, std::string_view name) {
    for (const SetPoint& point : points)
        if (point.name == name) return point;
    FAIL("no point " << name);
    return points.front();
}

Plane level_formation() {
    return {m(99.35), gradient(0), gradient(0)};
}

BedRows eight_rows() {
    return {count(8), m(1.31), m(0.15), m(0.32), m(0.32), m(39.35)};
}

}  // namespace

TEST_CASE("points from an origin and a bearing, by hand") {
    // math: forward computation, E + x sin B + y cos B, N + x cos B - y sin B.
    const SetPoint at_30 = set_point({m(1000), m(2000), degrees(30)}, "p", m(40), m(12), m(7));
    CHECK_THAT(at_30.east, is_within(m(1030.392305), m(5e-7)));
    CHECK_THAT(at_30.north, is_within(m(2028.641016), m(5e-7)));
    CHECK(at_30.level == m(7));
    const Angle bearing = Angle::from_value(std::atan(0.75));
    CHECK_THAT(set_point({m(500), m(800), bearing}, "p", m(50), m(0), m(0)).east, is_near(m(530)));
    CHECK_THAT(set_point({m(500), m(800), bearing}, "p", m(50), m(0), m(0)).north, is_near(m(840)));
    CHECK_THAT(set_point({m(500), m(800), bearing}, "p", m(50), m(25), m(0)).east, is_near(m(550)));
    CHECK_THAT(set_point({m(500), m(800), bearing}, "p", m(50), m(25), m(0)).north, is_near(m(825)));
    CHECK_THROWS_MATCHES(set_point({m(0), m(0), degrees(-1)}, "p", m(0), m(0), m(0)), Refused,
                         refuses_domain("bearing"));
    CHECK_THROWS_MATCHES(set_point({m(0), m(0), degrees(361)}, "p", m(0), m(0), m(0)), Refused,
                         refuses_domain("clockwise from grid north"));
}

TEST_CASE("areas of polygons by hand, and on large grid coordinates too") {
    CHECK_THAT(polygon_area({{m(0), m(0)}, {m(40), m(10)}, {m(55), m(45)}, {m(20), m(60)}, {m(-5), m(30)}}),
               is_near(m2(2275)));
    // 36 x 14 m on a national grid, where the plain shoelace loses the fourth digit behind the point.
    const double e = 350000.123;
    const double n = 6200000.456;
    CHECK_THAT(polygon_area({{m(e), m(n)}, {m(e + 36), m(n)}, {m(e + 36), m(n + 14)}, {m(e), m(n + 14)}}),
               is_within(m2(504), m2(1e-6)));
    // Turned either way.
    CHECK_THAT(polygon_area({{m(0), m(0)}, {m(0), m(3)}, {m(4), m(0)}}), is_near(m2(6)));
    CHECK_THROWS_MATCHES(polygon_area({{m(0), m(0)}, {m(1), m(1)}}), Refused,
                         refuses_domain("three corners"));
}

TEST_CASE("the pit set out has its area, square corners and equal diagonals") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const Length length = m(random.between(5, 60));
        const Length width = m(random.between(5, 30));
        const Length depth = m(random.between(0.5, 4));
        const Batter z = batter(random.between(0, 1.5));
        const SiteGrid grid{m(random.between(0, 1e6)), m(random.between(0, 7e6)),
                            degrees(random.between(0, 360))};
        const std::vector<SetPoint> points =
            set_out_pit(grid, falling_pit(length, width, depth, z, gradient(0)));
        REQUIRE(points.size() == 8);
        for (const auto& [name, height] : {std::pair<std::string, Length>{"base", m(0)}, {"top", depth}}) {
            const Table<Length, Length> corners = corners_named(points, name);
            REQUIRE(corners.size() == 4);
            REQUIRE_THAT(polygon_area(corners), is_within(pit_area(length, width, height, z), m2(1e-5)));
            const auto across = [&](std::size_t a, std::size_t b) {
                return grid_distance(std::get<0>(corners[a]), std::get<1>(corners[a]),
                                     std::get<0>(corners[b]), std::get<1>(corners[b]));
            };
            REQUIRE_THAT(across(0, 2), is_within(across(1, 3), m(1e-6)));
            REQUIRE_THAT(across(0, 1), is_within(pit_side(length, height, z), m(1e-6)));
            REQUIRE_THAT(across(1, 2), is_within(pit_side(width, height, z), m(1e-6)));
        }
        // From the first corner to the second the bearing is the plan's own.
        const Angle there = grid_bearing(points[0].east, points[0].north, points[1].east, points[1].north);
        REQUIRE_THAT(there, is_within(grid.bearing, degrees(1e-5)));
    }
    // Diagonals of 40 x 12 m, by hand.
    const std::vector<SetPoint> points =
        set_out_pit({m(0), m(0), degrees(0)}, falling_pit(m(40), m(12), m(2), batter(0), gradient(0)));
    CHECK_THAT(grid_distance(points[0].east, points[0].north, points[2].east, points[2].north),
               is_within(m(41.761226), m(5e-7)));
    CHECK(named(points, "top 3").level == m(2));
}

TEST_CASE("bearings go all the way round") {
    CHECK_THAT(grid_bearing(m(0), m(0), m(1), m(0)), is_near(degrees(90)));
    CHECK_THAT(grid_bearing(m(0), m(0), m(-1), m(0)), is_near(degrees(270)));
    CHECK(grid_bearing(m(0), m(0), m(0), m(1)) == degrees(0));
    CHECK_THAT(grid_bearing(m(0), m(0), m(0), m(-1)), is_near(degrees(180)));
    CHECK_THAT(grid_bearing(m(5), m(5), m(4), m(6)), is_near(degrees(315)));
    CHECK_THROWS_MATCHES(grid_bearing(m(1), m(2), m(1), m(2)), Refused,
                         refuses_domain("there is no bearing"));
}

TEST_CASE("rows start and end where the bed's margins say, on the falling formation too") {
    // By hand: row 8 of 8 lies at W - 0.975 m, W = 12.17 m.
    const SiteGrid plan{m(0), m(0), degrees(90)};  // x to the east, y to the south
    const std::vector<SetPoint> rows = set_out_rows(plan, level_formation(), eight_rows(), m(0.23));
    REQUIRE(rows.size() == 16);
    CHECK_THAT(named(rows, "row 1 start").east, is_near(m(0.32)));
    CHECK_THAT(named(rows, "row 1 start").north, is_near(m(-0.975)));
    CHECK_THAT(named(rows, "row 8 start").north, is_near(m(-(12.17 - 0.975)), 1e-12));
    CHECK_THAT(named(rows, "row 8 end").east, is_near(m(0.32 + 39.35)));
    CHECK_THAT(named(rows, "row 5 end").level, is_near(m(99.58)));
    const Plane falling{m(99.35), gradient(0.005), gradient(0)};
    const std::vector<SetPoint> tilted = set_out_rows(plan, falling, eight_rows(), m(0.23));
    CHECK_THAT(named(tilted, "row 3 end").level - named(tilted, "row 3 start").level,
               is_within(m(0.005 * 39.35), m(1e-9)));
    // Rows are parallel and a pitch apart.
    for (int row = 1; row < 8; ++row) {
        const SetPoint& a = named(rows, "row " + std::to_string(row) + " start");
        const SetPoint& b = named(rows, "row " + std::to_string(row + 1) + " start");
        CHECK_THAT(grid_distance(a.east, a.north, b.east, b.north), is_near(m(1.46), 1e-9));
    }
}

TEST_CASE("ports stand in the middles of their units, where the drawing has them") {
    const SiteGrid plan{m(0), m(0), degrees(90)};
    const RowUnits units{count(18), count(8), m(2.36), m(2.26), m(0.09)};
    BedRows bed = eight_rows();
    bed.row_length = row_length(units.units, units.end_unit, units.middle_unit, units.joint_overlap);
    const std::vector<SetPoint> ports = set_out_ports(plan, level_formation(), bed, units, m(0.98));
    REQUIRE(static_cast<double>(ports.size()) == number(bed_ports(count(8), units.units, units.interval)));
    const Outline drawn = drawn_ports({bed.rows, bed.span, bed.row_gap}, units.units, units.interval,
                                      units.end_unit, units.middle_unit, units.joint_overlap, share(1));
    // The drawing has its origin in the middle of the plan.
    const Length half_length = bed.row_length / 2.0 + bed.end_margin;
    const Length half_width = bed_width(bed.rows, bed.span, bed.row_gap, bed.side_margin) / 2.0;
    std::size_t found = 0;
    for (const auto& [x, y] : drawn) {
        if (!x) continue;
        for (const SetPoint& port : ports)
            if (abs(port.east - half_length - *x) < m(1e-9) && abs(-port.north - half_width - *y) < m(1e-9))
                ++found;
    }
    CHECK(found == ports.size());
    CHECK_THAT(named(ports, "row 2 port 1").level, is_near(m(100.33)));
    const std::vector<SetPoint> ends =
        set_out_ports(plan, level_formation(), bed, {count(18), count(0), m(2.36), m(2.26), m(0.09)}, m(0));
    CHECK(ends.size() == 16);
}

TEST_CASE("rows that are none are refused") {
    const SiteGrid plan{m(0), m(0), degrees(0)};
    const auto with = [&](auto change) {
        BedRows rows = eight_rows();
        change(rows);
        return set_out_rows(plan, level_formation(), rows, m(0));
    };
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.rows = count(0); }), Refused, refuses_domain("rows"));
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.rows = count(1001); }), Refused,
                         refuses_domain("at most 1000"));
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.span = m(0); }), Refused, refuses_domain("span"));
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.row_gap = m(-1); }), Refused, refuses_domain("row gap"));
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.side_margin = m(-1); }), Refused,
                         refuses_domain("side margin"));
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.end_margin = m(-1); }), Refused,
                         refuses_domain("end margin"));
    CHECK_THROWS_MATCHES(with([](BedRows& r) { r.row_length = m(0); }), Refused,
                         refuses_domain("row length"));
    CHECK_THROWS_MATCHES(set_out_rows(plan, level_formation(), eight_rows(), m(-1)), Refused,
                         refuses_domain("height"));
    CHECK_THROWS_MATCHES(
        set_out_ports(plan, level_formation(), eight_rows(), {count(1), count(0), m(2), m(2), m(0)}, m(0)),
        Refused, refuses_domain("units"));
}

}  // namespace undercroft::tests
