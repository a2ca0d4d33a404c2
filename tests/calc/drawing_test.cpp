// Outlines: what is drawn has the measures of what is computed.
#include "calc/drawing.hpp"
#include "calc/bed.hpp"
#include "calc/excavation.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Length m(double value) {
    return Length::from_value(value);
}

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

}  // namespace undercroft::tests
