// Outlines: what is drawn has the measures of what is computed.
#include "calc/bed/drawing.hpp"
#include "calc/bed/bed.hpp"
#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// Area of the closed pieces of an outline, by the shoelace formula.
double area_of(const Outline& outline) {
    double twice = 0;
    for (std::size_t i = 0; i + 1 < outline.size(); ++i) {
        const auto& [x1, y1] = outline[i];
        const auto& [x2, y2] = outline[i + 1];
        if (x1 && x2) twice += x1->value() * y2->value() - x2->value() * y1->value();
    }
    return std::abs(twice) / 2;
}

std::size_t pieces_of(const Outline& outline) {
    std::size_t pieces = outline.empty() ? 0 : 1;
    for (const auto& [x, y] : outline)
        if (!x) ++pieces;
    return pieces;
}

}  // namespace

TEST_CASE("a closed pit encloses its cross-section, a box its plan, rows their feet") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const Length width = m(random.between(2, 30));
        const Length depth = m(random.between(0.5, 5));
        const Batter z = batter(random.between(0, 2));
        const double section = (width + horizontal_run(z, depth)).value() * depth.value();
        CHECK(area_of(drawn_pit(width, depth, z, true, share(1))) == Approx(section).epsilon(1e-12));
        CHECK(area_of(drawn_pit(width, depth, z, true, share(50))) == Approx(section / 2500).epsilon(1e-12));
        CHECK(area_of(drawn_box(width, depth, share(1))) == Approx((width * depth).value()).epsilon(1e-12));
        const RowPlan plan{count(random.whole(1, 12)), m(1.3), m(0.15)};
        const Outline rows = drawn_rows(plan, m(20), share(1));
        CHECK(area_of(rows) == Approx(number(plan.rows) * 1.3 * 20).epsilon(1e-12));
        CHECK(pieces_of(rows) == static_cast<std::size_t>(number(plan.rows)));
    }
}

TEST_CASE("arches stand on their feet, reach their crowns, and enclose nearly their section") {
    for (const Shape shape : {Shape::ellipse, Shape::parabola, Shape::segment}) {
        const Arch arch{shape, m(1.2), m(0.5)};
        const Outline outline = drawn_arches({count(5), m(1.3), m(0.15)}, arch, m(0.2), share(1));
        CHECK(pieces_of(outline) == 5);
        double top = 0;
        for (const auto& [x, y] : outline)
            if (y) top = std::max(top, y->value());
        CHECK(top == Approx(0.7).epsilon(1e-12));
        CHECK(std::get<0>(outline.front())->value() == Approx(-7.1 / 2 + 0.05).epsilon(1e-12));
        CHECK(std::get<1>(outline.front())->value() == Approx(0.2).epsilon(1e-12));
    }
    const Outline one =
        drawn_arches({count(1), m(1.3), m(0)}, {Shape::ellipse, m(1.2), m(0.75)}, m(0), share(1));
    CHECK(area_of(one) == Approx(arch_area({Shape::ellipse, m(1.2), m(0.75)}).value()).epsilon(0.02));
}

TEST_CASE("there are as many ports as are counted, all inside the rows") {
    for (int units = 2; units <= 20; ++units)
        for (int interval = 0; interval <= 9; ++interval) {
            const RowPlan plan{count(3), m(1.3), m(0.15)};
            const Outline ports =
                drawn_ports(plan, count(units), count(interval), m(2.4), m(2.3), m(0.1), share(1));
            CHECK(pieces_of(ports) ==
                  static_cast<std::size_t>(number(bed_ports(plan.rows, count(units), count(interval)))));
            const double half = row_length(count(units), m(2.4), m(2.3), m(0.1)).value() / 2;
            for (const auto& [x, y] : ports)
                if (x) CHECK(std::abs(x->value()) < half);
        }
}

TEST_CASE("the scale is the first usual one that fits", "[published]") {
    // ISO 5455:1979: 1:1, 1:2, 1:5, 1:10 ...; those between are on scale rules (common practice).
    CHECK(number(drawing_scale(m(1), m(1), m(1), m(1))) == 1);
    CHECK(number(drawing_scale(m(10), m(1), m(1), m(1))) == 10);
    CHECK(number(drawing_scale(m(15.01), m(1), m(1), m(1))) == 20);
    CHECK(number(drawing_scale(m(10.01), m(1), m(1), m(1))) == 12.5);
    CHECK(number(drawing_scale(m(1), m(22), m(1), m(1))) == 25);
    CHECK(number(drawing_scale(m(1), m(41), m(1), m(1))) == 50);
    CHECK(number(drawing_scale(m(0.45), m(0.1), m(1), m(1))) == 0.5);
    for (const double step : {1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 7.5, 10.0}) {
        CHECK(number(drawing_scale(m(step), m(0.1), m(1), m(1))) == step);
        CHECK(number(drawing_scale(m(0.99 * step), m(0.1), m(1), m(1))) == step);
    }
    Random random;
    for (int i = 0; i < 500; ++i) {
        const Length width = m(random.between(0.1, 500));
        const double scale = number(drawing_scale(width, m(1), m(0.17), m(0.08)));
        CHECK(width.value() / scale <= 0.17 * (1 + 1e-9));
    }
    CHECK_THROWS_MATCHES(drawing_scale(m(0), m(1), m(1), m(1)), Refused, refuses_domain("width (0 m)"));
    CHECK_THROWS_MATCHES(drawn_box(m(1), m(1), share(0)), Refused, refuses_domain("scale"));
    CHECK_THROWS_MATCHES(drawn_ends({count(1), m(1), m(0)}, m(4), m(3), share(1)), Refused,
                         refuses_domain("half of the row"));
}

TEST_CASE("rows lie beside each other, each as wide as it is, with the gap between") {
    // 2 rows of 1.3 m and a gap of 0.15 m: 2.75 m wide about the middle.
    std::vector<std::pair<double, double>> spans;
    double low = 0;
    double high = 0;
    bool inside = false;
    Outline rows = drawn_rows({count(2), m(1.3), m(0.15)}, m(20), share(1));
    rows.push_back({});
    for (const auto& [x, y] : rows) {
        if (!y) {
            if (inside) spans.emplace_back(low, high);
            inside = false;
            continue;
        }
        low = inside ? std::min(low, y->value()) : y->value();
        high = inside ? std::max(high, y->value()) : y->value();
        inside = true;
    }
    REQUIRE(spans.size() == 2);
    CHECK(spans[0].first == Approx(-1.375));
    CHECK(spans[0].second == Approx(-0.075));
    CHECK(spans[1].first == Approx(0.075));
    CHECK(spans[1].second == Approx(1.375));
}

TEST_CASE("ends of rows, ports and water lines stand where they are measured") {
    const RowPlan plan{count(2), m(1.3), m(0.15)};  // 2.75 m wide: edges at -1.375 m and 0.075 m
    const Outline ends = drawn_ends(plan, m(20), m(2.4), share(1));
    const double expected[][2] = {{-7.6, -1.375}, {-7.6, -0.075}, {7.6, -1.375}, {7.6, -0.075},
                                  {-7.6, 0.075},  {-7.6, 1.375},  {7.6, 0.075},  {7.6, 1.375}};
    std::size_t at = 0;
    for (const auto& [x, y] : ends) {
        if (!x) continue;
        REQUIRE(at < std::size(expected));
        CHECK(x->value() == Approx(expected[at][0]).epsilon(1e-12));
        CHECK(y->value() == Approx(expected[at][1]).epsilon(1e-12));
        ++at;
    }
    CHECK(at == std::size(expected));
    CHECK_NOTHROW(drawn_ends(plan, m(4), m(2), share(1)));  // two ends and nothing between

    // Units of 2.4, 2.3, 2.3 and 2.4 m with laps of 0.1 m: 9.1 m; middles 1.2, 3.45, 5.65 and 7.9 m from one
    // end.
    const Outline ports = drawn_ports(plan, count(4), count(1), m(2.4), m(2.3), m(0.1), share(1));
    std::vector<std::pair<double, double>> points;
    for (const auto& [x, y] : ports)
        if (x) points.emplace_back(x->value(), y->value());
    REQUIRE(points.size() == 8);
    const double middles[] = {-3.35, -1.1, 1.1, 3.35};
    for (std::size_t i = 0; i < 8; ++i) {
        CHECK(points[i].first == Approx(middles[i % 4]).epsilon(1e-12));
        CHECK(points[i].second == Approx(i < 4 ? -0.725 : 0.725).epsilon(1e-12));
    }

    const Outline level = drawn_level(m(12), batter(1), m(2), m(0.5), share(100));
    CHECK(std::get<0>(level.front())->value() == Approx(-0.085).epsilon(1e-12));
    CHECK(std::get<0>(level.back())->value() == Approx(0.085).epsilon(1e-12));
    CHECK(std::get<1>(level.back())->value() == Approx(0.02).epsilon(1e-12));
    // Below the base the pit is no narrower.
    CHECK(std::get<0>(drawn_level(m(12), batter(1), m(-1), m(0), share(1)).back())->value() == Approx(6));
}

TEST_CASE("what cannot be drawn is refused by the name of its argument") {
    const RowPlan flat{count(2), m(0), m(0.15)};
    CHECK_THROWS_MATCHES(drawn_rows(flat, m(20), share(1)), Refused, refuses_domain("width (0 m)"));
    CHECK_THROWS_MATCHES(drawn_rows({count(2), m(1), m(-0.1)}, m(20), share(1)), Refused,
                         refuses_domain("row gap (-0.1 m)"));
    CHECK_THROWS_MATCHES(drawn_rows({count(1001), m(1), m(0)}, m(20), share(1)), Refused,
                         refuses_domain("at most 1000"));
    CHECK_NOTHROW(drawn_rows({count(1000), m(1), m(0)}, m(20), share(1)));
    CHECK_THROWS_MATCHES(drawn_pit(m(0), m(1), batter(1), true, share(1)), Refused,
                         refuses_domain("base width"));
    CHECK_THROWS_MATCHES(drawn_pit(m(1), m(-1), batter(1), true, share(1)), Refused,
                         refuses_domain("depth (-1 m)"));
    CHECK_THROWS_MATCHES(drawn_level(m(0), batter(1), m(1), m(0), share(1)), Refused,
                         refuses_domain("base width"));
    CHECK_THROWS_MATCHES(drawn_level(m(1), batter(1), m(1), m(-1), share(1)), Refused,
                         refuses_domain("overhang"));
    CHECK_THROWS_MATCHES(drawn_arches({count(1), m(1), m(0)}, {Shape::ellipse, m(1), m(1)}, m(-1), share(1)),
                         Refused, refuses_domain("base height"));
    CHECK_THROWS_MATCHES(drawn_box(m(0), m(1), share(1)), Refused, refuses_domain("length (0 m)"));
    CHECK_THROWS_MATCHES(drawn_box(m(1), m(0), share(1)), Refused, refuses_domain("width (0 m)"));
    CHECK_THROWS_MATCHES(drawn_rows({count(1), m(1), m(0)}, m(0), share(1)), Refused,
                         refuses_domain("row length"));
    CHECK_THROWS_MATCHES(drawn_ends({count(1), m(1), m(0)}, m(0), m(1), share(1)), Refused,
                         refuses_domain("row length"));
    CHECK_THROWS_MATCHES(drawn_ends({count(1), m(1), m(0)}, m(4), m(0), share(1)), Refused,
                         refuses_domain("end unit"));
    CHECK_THROWS_MATCHES(drawn_ports({count(1), m(1), m(0)}, count(1), count(1), m(2), m(2), m(0), share(1)),
                         Refused, refuses_domain("units in row (1 each)"));
    for (int side = 0; side < 4; ++side) {
        Length sides[] = {m(1), m(1), m(1), m(1)};
        sides[side] = m(-1);
        const char* names[] = {"width (-1 m)", "height (-1 m)", "paper width (-1 m)", "paper height (-1 m)"};
        CHECK_THROWS_MATCHES(drawing_scale(sides[0], sides[1], sides[2], sides[3]), Refused,
                             refuses_domain(names[side]));
    }
}

}  // namespace undercroft::tests
