// Sizes of pipes, and the head that they take.
#include "calc/water/pipe_size.hpp"

#include "calc/water/pipe.hpp"
#include "calc/water/pipe_losses.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("diameter from flow", "[published]") {
    // FHWA HEC-22, 3rd ed. (2009), Example 7-3, pipe 40-41: 0.10 m3/s at 3 %, n 0.013 needs 0.25 m.
    CHECK_THAT(pipe_diameter(m3_per_s(0.10), gradient(0.03), share(0.013)), is_within(m(0.25), m(0.005)));
    // The same and others with the exact constant (math); HEC-22's 0.312 is 0.04 % off, 0.46 in feet 0.3 %.
    CHECK_THAT(pipe_diameter(m3_per_s(0.10), gradient(0.03), share(0.013)), is_near(m(0.247243460), 1e-8));
    CHECK_THAT(pipe_diameter(m3_per_s(0.25), gradient(0.01), share(0.013)), is_near(m(0.428363592), 1e-8));
    CHECK_THAT(pipe_diameter(m3_per_s(0.05), gradient(0.005), share(0.011)), is_near(m(0.250573664), 1e-8));
    CHECK_THAT(pipe_diameter(cfs(8.8), gradient(0.01), share(0.013)), is_near(ft(1.403610320), 1e-4));
    Random random;
    for (int i = 0; i < 200; ++i) {
        const Length d = m(random.between(0.1, 3));
        const Gradient s0 = gradient(random.between(0.0005, 0.1));
        const Share n = share(random.between(0.009, 0.03));
        REQUIRE_THAT(pipe_diameter(pipe_flow(d, s0, n, {}), s0, n), is_near(d, 1e-12));
    }
}

TEST_CASE("the next size of a list, in any order") {
    const std::vector<Length> sizes = {mm(300), mm(150), mm(225), mm(375)};
    CHECK(next_size(mm(151), sizes) == mm(225));
    CHECK(next_size(mm(225), sizes) == mm(225));
    CHECK(next_size(mm(225) * (1 + 1e-12), sizes) == mm(225));  // in another unit
    CHECK(next_size(mm(10), sizes) == mm(150));
    CHECK(next_size(mm(375), sizes) == mm(375));
    CHECK_THROWS_MATCHES(next_size(mm(376), sizes), Refused,
                         has_no_answer("wanted size (0.376 m) is above the largest there is (0.375 m)"));
    CHECK_THROWS_MATCHES(next_size(mm(100), {}), Refused, refuses_domain("the list of sizes is empty"));
    CHECK_THROWS_MATCHES(next_size(mm(100), {mm(150), mm(0)}), Refused, refuses_domain("size (0 m)"));
    CHECK_THROWS_MATCHES(next_size(mm(0), sizes), Refused, refuses_domain("wanted size (0 m)"));
}

TEST_CASE("area and speed in a pipe", "[published]") {
    // Chow, Open-Channel Hydraulics (1959), app. A: A/D^2 = 0.1118, 0.3927, 0.6736, 0.7854 at y/D = 0.2, 0.5,
    // 0.8, 1.
    CHECK_THAT(pipe_area(m(2), m(0.4)), is_within(m2(4 * 0.1118), m2(4 * 5e-5)));
    CHECK_THAT(pipe_area(m(2), m(1.0)), is_within(m2(4 * 0.3927), m2(4 * 5e-5)));
    CHECK_THAT(pipe_area(m(2), m(1.6)), is_within(m2(4 * 0.6736), m2(4 * 5e-5)));
    CHECK_THAT(pipe_area(m(2), {}), is_within(m2(4 * 0.7854), m2(4 * 5e-5)));
    CHECK_THAT(pipe_area(m(1), m(0.3)), is_near(m2(0.198168356), 1e-8));
    // HEC-22, Example 7-3: 0.19 m3/s in 0.61 m: 0.65 m/s.
    CHECK_THAT(pipe_speed(m3_per_s(0.19), m(0.61), {}), is_within(m_per_s(0.65), m_per_s(0.005)));
    CHECK_THAT(pipe_speed(m3_per_s(0.19), m(0.61), {}), is_near(m_per_s(0.650136), 1e-6));
    CHECK_THAT(pipe_speed(m3_per_s(0.1), m(0.61), m(0.305)),
               is_near(Speed(2.0 * pipe_speed(m3_per_s(0.1), m(0.61), {}))));
    CHECK_THROWS_MATCHES(pipe_area(m(0), {}), Refused, refuses_domain("diameter (0 m)"));
    CHECK_THROWS_MATCHES(pipe_area(m(1), m(1.1)), Refused, refuses_domain("depth (1.1 m) must be at most"));
    CHECK_THROWS_MATCHES(pipe_area(m(1), m(-0.1)), Refused, refuses_domain("depth (-0.1 m)"));
    CHECK_THROWS_MATCHES(pipe_speed(m3_per_s(1), m(1), m(0)), Refused,
                         refuses_domain("depth (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(pipe_speed(m3_per_s(-1), m(1), {}), Refused, refuses_domain("flow (-1000 L/s)"));
}

TEST_CASE("losses at a chamber of HEC-22, Example 7-3", "[published]") {
    // Pipe 0.61 m, 0.19 m3/s, 17 m, n 0.013: exit loss 0.022 m, friction 0.015 m.
    CHECK_THAT(minor_loss(share(1), m3_per_s(0.19), m(0.61)), is_within(m(0.022), m(0.0005)));
    CHECK_THAT(minor_loss(share(1), m3_per_s(0.19), m(0.61)), is_near(m(0.021543 * 9.81 / 9.80665), 3e-5));
    CHECK_THAT(pipe_friction(m3_per_s(0.19), m(0.61), m(17), share(0.013)), is_within(m(0.015), m(0.0005)));
    // With 0.312 and D^2.67: 0.014924 m.
    CHECK_THAT(pipe_friction(m3_per_s(0.19), m(0.61), m(17), share(0.013)), is_near(m(0.014924), 6e-3));
    // Chow, Maidment and Mays's Manning, backwards: friction over the length is the slope at which the pipe
    // is full.
    const Flow full = pipe_flow(m(0.4), gradient(0.004), share(0.012), {});
    CHECK_THAT(pipe_friction(full, m(0.4), m(50), share(0.012)), is_near(m(0.2), 1e-12));
}

TEST_CASE("coefficients of bends and chambers", "[published]") {
    // FHWA HEC-22, 3rd ed., ch. 7: 0.0033 a degree; approximate method, angle between the pipes in brackets.
    CHECK_THAT(bend_loss(degrees(45)), is_near(share(0.1485)));
    const auto manhole = [](double turn) { return chamber_loss(ChamberKind::manhole, degrees(turn)); };
    CHECK_THAT(manhole(0), is_near(share(0.15)));
    CHECK_THAT(manhole(22.5), is_near(share(0.45)));  // 157.5
    CHECK_THAT(manhole(45), is_near(share(0.75)));    // 135
    CHECK_THAT(manhole(60), is_near(share(0.85)));    // 120
    CHECK_THAT(manhole(90), is_near(share(1.00)));    // 90
    CHECK_THAT(chamber_loss(ChamberKind::inlet, degrees(0)), is_near(share(0.5)));
    CHECK_THAT(chamber_loss(ChamberKind::inlet, degrees(90)), is_near(share(1.5)));
    CHECK_THROWS_MATCHES(bend_loss(degrees(91)), Refused,
                         refuses_domain("turn (91 deg) must be from 0 deg to 90 deg"));
    CHECK_THROWS_MATCHES(manhole(-1), Refused, refuses_domain("turn (-1 deg)"));
}

TEST_CASE("a header that gives its flow off evenly loses a third (GSL QAGS)") {
    const auto slope_at = [](double x) {  // of 0.1 m3/s over 30 m in a pipe of 0.3 m
        return pipe_friction(m3_per_s(0.1 * (1 - x / 30)), m(0.3), m(1), share(0.013)).value();
    };
    CHECK_THAT(header_friction(m3_per_s(0.1), m(0.3), m(30), share(0.013)),
               is_near(m(integral(slope_at, 0, 30)), 1e-9));
    CHECK(header_friction(m3_per_s(0), m(0.3), m(30), share(0.013)) == m(0));
    CHECK_THROWS_MATCHES(pipe_friction(m3_per_s(-1), m(1), m(1), share(0.013)), Refused,
                         refuses_domain("flow"));
    CHECK_THROWS_MATCHES(pipe_friction(m3_per_s(1), m(0), m(1), share(0.013)), Refused,
                         refuses_domain("diameter"));
    CHECK_THROWS_MATCHES(pipe_friction(m3_per_s(1), m(1), m(0), share(0.013)), Refused,
                         refuses_domain("length"));
    CHECK_THROWS_MATCHES(header_friction(m3_per_s(1), m(1), m(1), share(0)), Refused,
                         refuses_domain("roughness"));
    CHECK_THROWS_MATCHES(minor_loss(share(-1), m3_per_s(1), m(1)), Refused,
                         refuses_domain("coefficient (-1)"));
}

}  // namespace undercroft::tests
