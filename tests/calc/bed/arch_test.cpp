// Cross-sections of chambers.
#include "calc/bed/arch.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr Shape every_shape[] = {Shape::ellipse, Shape::parabola, Shape::segment, Shape::rectangle,
                                 Shape::circle};

/// Integral from 0; a root at a crown costs digits.
template <class F>
double integral_from_0(const F& f, double end) {
    return integral(f, 0, end, 1e-9);
}

Arch random_arch(Random& random, Shape shape) {
    const Length span = m(random.between(0.3, 3.0));
    return {shape, span, shape == Shape::circle ? span : m(random.between(0.2, 1.4) * span.value())};
}

}  // namespace

TEST_CASE("circular segment of radius 1", "[published]") {
    // Closed form checked against 30-digit quadrature (math).
    struct Row {
        double y, area, width;
    };
    const Row rows[] = {{0.1, 0.058725906877602, 0.87177978870813},
                        {0.2, 0.16350110879328, 1.2},
                        {0.25, 0.2266558769888, 1.3228756555323},
                        {0.5, 0.61418484930438, 1.7320508075689},
                        {0.75, 1.0760546125149, 1.9364916731037},
                        {1.0, 1.5707963267949, 2.0},
                        {1.25, 2.0655380410749, 1.9364916731037},
                        {1.8, 2.9780915447965, 1.2},
                        {2.0, 3.1415926535898, 0.0}};
    const Arch pipe{Shape::circle, m(2), m(2)};
    for (const Row& row : rows) {
        CAPTURE(row.y);
        CHECK_THAT(arch_area(pipe, m(row.y)), is_within(m2(row.area), m2(1e-12)));
        CHECK_THAT(arch_width(pipe, m(row.y)), is_within(m(row.width), m(1e-12)));
    }
    CHECK_THAT(arch_length(pipe), is_near(m(6.2831853071796), 1e-13));
}

TEST_CASE("half ellipse, span 1.2, rise 0.75", "[published]") {
    // math, computed apart from this code; wall arc by quadrature.
    struct Row {
        double y, area, width;
    };
    const Row rows[] = {{0.075, 0.0898497741925, 1.1939849245279},  {0.25, 0.29434796549166, 1.1313708498985},
                        {0.375, 0.43047516487073, 1.0392304845413}, {0.6, 0.63328284810073, 0.72},
                        {0.7, 0.69239935240644, 0.43081318457076},  {0.75, 0.7068583470577, 0.0}};
    const Arch arch{Shape::ellipse, m(1.2), m(0.75)};
    for (const Row& row : rows) {
        CAPTURE(row.y);
        CHECK_THAT(arch_area(arch, m(row.y)), is_within(m2(row.area), m2(1e-13)));
        CHECK_THAT(arch_width(arch, m(row.y)), is_within(m(row.width), m(1e-13)));
    }
    CHECK_THAT(arch_length(arch), is_near(m(2.1271250916731), 1e-12));
}

TEST_CASE("parabola, span 1.2, rise 0.75, and segment, span 1.2, rise 0.45", "[published]") {
    // math, computed apart from this code.
    const Arch parabola{Shape::parabola, m(1.2), m(0.75)};
    CHECK_THAT(arch_area(parabola, m(0.15)), is_within(m2(0.17067494832004), m2(1e-13)));
    CHECK_THAT(arch_width(parabola, m(0.45)), is_within(m(0.75894663844041), m(1e-13)));
    CHECK_THAT(arch_area(parabola), is_near(m2(0.6)));
    const Arch segment{Shape::segment, m(1.2), m(0.45)};
    CHECK_THAT(arch_area(segment, m(0.05)), is_within(m2(0.059193989598204), m2(1e-13)));
    CHECK_THAT(arch_area(segment, m(0.2)), is_within(m2(0.22301054671287), m2(1e-13)));
    CHECK_THAT(arch_area(segment), is_within(m2(0.39773524124475), m2(1e-13)));
    CHECK_THAT(arch_width(segment, m(0.3)), is_within(m(0.8124038404636), m(1e-13)));
}

TEST_CASE("the area below a depth is the integral of the width (GSL QAGS)") {
    Random random;
    for (const Shape shape : every_shape) {
        for (int i = 0; i < 60; ++i) {
            const Arch arch = random_arch(random, shape);
            const double depth = random.between(0.05, 1.0) * arch.rise.value();
            CAPTURE(static_cast<int>(shape), arch.span.value(), arch.rise.value(), depth);
            const double expected = integral_from_0(
                [&](double y) { return arch_width(arch, m(std::min(y, arch.rise.value()))).value(); }, depth);
            CHECK_THAT(arch_area(arch, m(depth)), is_near(m2(expected), 1e-8));
        }
    }
}

TEST_CASE("the length of an arch is the integral along it (GSL QAGS)") {
    Random random;
    for (const Shape shape : {Shape::ellipse, Shape::parabola, Shape::segment}) {
        for (int i = 0; i < 40; ++i) {
            Arch arch = random_arch(random, shape);
            if (shape == Shape::segment) arch.rise = std::min(arch.rise, 0.45 * arch.span);
            CAPTURE(static_cast<int>(shape), arch.span.value(), arch.rise.value());
            // Along the curve in the parameter t: x = B/2 cos t, and y by the shape's own equation.
            const double half = arch.span.value() / 2;
            const double rise = arch.rise.value();
            double expected = 0;
            if (shape == Shape::ellipse)
                expected =
                    2 * integral_from_0(
                            [&](double t) { return std::hypot(half * std::sin(t), rise * std::cos(t)); },
                            std::acos(0.0));
            if (shape == Shape::parabola)
                expected =
                    2 * integral_from_0(
                            [&](double x) { return std::hypot(1.0, 2 * rise * x / (half * half)); }, half);
            if (shape == Shape::segment) {
                const double radius = (half * half + rise * rise) / (2 * rise);
                expected =
                    2 * integral_from_0([&](double x) { return radius / std::sqrt(radius * radius - x * x); },
                                        half);
            }
            CHECK_THAT(arch_length(arch), is_near(m(expected), 1e-7));
        }
    }
}

TEST_CASE("a shape fills up without a jump, and a half circle is a half circle in two ways") {
    Random random;
    for (const Shape shape : every_shape) {
        const Arch arch = random_arch(random, shape);
        Area before = m2(0);
        for (int i = 0; i <= 1000; ++i) {
            const Area now = arch_area(arch, arch.rise * (i / 1000.0));
            REQUIRE(now >= before);
            REQUIRE((now - before).value() <= 1.5 * arch.span.value() * arch.rise.value() / 1000 * 1.5);
            before = now;
        }
        CHECK(arch_area(arch, m(0)).value() == Approx(0).margin(1e-15));
    }
    const Arch as_segment{Shape::segment, m(1), m(0.5)};
    const Arch as_ellipse{Shape::ellipse, m(1), m(0.5)};
    CHECK_THAT(arch_area(as_segment, m(0.3)), is_near(arch_area(as_ellipse, m(0.3))));
    CHECK_THAT(arch_length(as_segment), is_near(arch_length(as_ellipse)));
    CHECK(arch_width(Arch{Shape::segment, m(1), m(0.8)}, m(0.3)) > m(1));  // past the half circle it bulges
}

TEST_CASE("a section that is none is refused") {
    CHECK_THROWS_MATCHES(arch_width({Shape::ellipse, m(0), m(1)}, m(0)), Refused,
                         refuses_domain("span (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(arch_area({Shape::ellipse, m(1), m(-1)}, m(0)), Refused,
                         refuses_domain("rise (-1 m)"));
    CHECK_THROWS_MATCHES(arch_area({Shape::ellipse, m(1), m(1)}, m(1.01)), Refused,
                         refuses_domain("at most the rise"));
    CHECK_THROWS_MATCHES(arch_area({Shape::ellipse, m(1), m(1)}, m(-0.01)), Refused,
                         refuses_domain("depth (-0.01 m)"));
    CHECK_THROWS_MATCHES(arch_length({Shape::circle, m(1), m(2)}), Refused, refuses_domain("span = rise"));
    CHECK_THROWS_MATCHES(arch_length({Shape::segment, m(1), m(0.0099)}), Refused,
                         refuses_domain("flatter is no arch"));
    CHECK(arch_length({Shape::segment, m(1), m(0.0101)}) > m(1));
    CHECK_THROWS_AS(arch_length({Shape::ellipse, m(std::nan("")), m(1)}), Refused);
}

TEST_CASE("the outline of a box and of a pipe") {
    const auto length = [](double value) { return Length::from_value(value); };
    CHECK(arch_length({Shape::rectangle, length(1), length(0.5)}).value() == Approx(2).epsilon(1e-14));
    CHECK(arch_length({Shape::circle, length(2), length(2)}).value() ==
          Approx(2 * std::numbers::pi).epsilon(1e-14));
}

}  // namespace undercroft::tests
