// Water that soaks into the ground.
#include "calc/water/soakage.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// The bed of the check values: 12 m x 5 m, n = 0.4, q = 36 mm/h, rain of one duration on 1000 m2.
Length depth_after(double duration_h, double intensity_mm_h, double rate_mm_h = 36) {
    // One storm: rows so close together that no other duration counts.
    const RainTable storm = {{hours(duration_h), mm_per_h(intensity_mm_h)},
                             {hours(duration_h * (1 + 1e-9)), mm_per_h(intensity_mm_h / 2)}};
    return soakage_depth(storm, m2(1000), m(12), m(5), share(0.4), mm_per_h(rate_mm_h), share(1));
}

RainTable random_soaked_rain(Random& random) {
    RainTable rain;
    double intensity = 150;
    for (double t = 5; t < 3000; t *= random.between(1.3, 3)) {
        rain.emplace_back(minutes(t), mm_per_h(intensity));
        intensity *= random.between(0.4, 0.95);
    }
    return rain;
}

}  // namespace

TEST_CASE("soakage test in a pit", "[published]") {
    // math, with the inputs of an engineer's sheet after BRE Digest 365: f
    // = 4.4642857e-5 m/s; storage O = 0.378 m3 in an hour, half emptied in 12485.71429 s.
    CHECK_THAT(soakage_rate(m3(0.375), m2(2.5), minutes(56)), is_near(m_per_s(4.4642857e-5), 1e-8));
    const Flow sides = soakage_flow(m2(0), m2(5.25), m_per_s(2e-5), share(1));
    CHECK_THAT(Volume(sides * hours(1)), is_near(m3(0.378)));
    const Volume stored = m3(3.0) - sides * hours(1);
    CHECK_THAT(Time(stored * 0.5 / sides), is_near(s(12485.71429), 1e-9));
}

TEST_CASE("a bed with soaking walls", "[published]") {
    // math, form of CIRIA C753 (seen): h = 2.2056023542 m after 2 h, half
    // empty after 6.3804059065 h, empty after 15.8992097162 h.
    CHECK_THAT(depth_after(2, 30), is_near(m(2.2056023542), 1e-8));
    const auto left = [](double fraction, double perimeter = 34) {
        return soakage_time(m(2.2056023542), share(0.4), m2(60), m(perimeter), mm_per_h(36), share(1),
                            share(fraction));
    };
    CHECK_THAT(left(0.5), is_near(hours(6.3804059065), 1e-10));
    CHECK_THAT(left(0), is_near(hours(15.8992097162), 1e-10));
    // Plane system: n h/(2 q).
    CHECK_THAT(left(0.5, 0), is_near(hours(0.4 * 2.2056023542 / (2 * 0.036))));
}

TEST_CASE("filling and emptying follow the differential equation (GSL Runge-Kutta)") {
    Random random;
    for (int i = 0; i < 60; ++i) {
        const double n = random.between(0.3, 0.95);
        const double q = random.between(1, 200) / 3.6e6;
        const double length = random.between(2, 40);
        const double width = random.between(1, 15);
        const double drained = random.between(100, 3000);
        const double intensity = random.between(5, 100) / 3.6e6;
        const double duration = random.between(600, 20000);
        const double base = length * width;
        const double perimeter = 2 * (length + width);
        const double in = intensity * drained;
        const auto rise = [&](double, double h) { return (in - q * (base + perimeter * h)) / (n * base); };
        const double expected = in > q * base ? Ode(rise, 0, 0).at(duration) : 0;
        const RainTable storm = {{s(duration), m_per_s(intensity)},
                                 {s(duration * (1 + 1e-9)), m_per_s(intensity / 2)}};
        CAPTURE(i, expected);
        REQUIRE_THAT(soakage_depth(storm, m2(drained), m(length), m(width), share(n), m_per_s(q), share(1)),
                     is_near(m(expected), 1e-8));

        const double depth = random.between(0.1, 3);
        const double fraction = random.between(0.02, 0.95);
        const Time time =
            soakage_time(m(depth), share(n), m2(base), m(perimeter), m_per_s(q), share(1), share(fraction));
        const auto fall = [&](double, double h) { return -q * (base + perimeter * h) / (n * base); };
        REQUIRE(Ode(fall, depth, 0).at(time.value()) == Approx(fraction * depth).epsilon(1e-9));
    }
}

TEST_CASE("the time to soak away is the integral of what is held over what leaves (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const double n = random.between(0.2, 0.95);
        const double q = random.between(0.5, 300) / 3.6e6;
        const double base = random.between(1, 1000);
        const double perimeter = random.whole(0, 3) * random.between(0, 60);
        const double safety = random.between(1, 5);
        const double depth = random.between(0.05, 4);
        const double fraction = random.whole(0, 1) * random.between(0, 0.99);
        const auto per_depth = [=](double h) { return n * base / (q / safety * (base + perimeter * h)); };
        CAPTURE(i, perimeter, fraction);
        REQUIRE_THAT(soakage_time(m(depth), share(n), m2(base), m(perimeter), m_per_s(q), share(safety),
                                  share(fraction)),
                     is_near(s(integral(per_depth, fraction * depth, depth)), 1e-10));
    }
}

TEST_CASE("soakage in its limits: no soakage, no walls, steady state, and all soaks away") {
    // Nothing soaks: all rain stands in the pores.
    CHECK_THAT(depth_after(2, 30, 0), is_near(m(0.030 * 2 * 1000 / (0.4 * 60)), 1e-8));
    CHECK_THAT(depth_after(2, 30, 1e-9), is_near(depth_after(2, 30, 0), 1e-8));
    // For ever: i Ad = q (A + P h).
    CHECK_THAT(depth_after(1e6, 30), is_near(m((30.0 * 1000 / 36 - 60) / 34), 1e-9));
    // The base takes it all.
    CHECK(depth_after(2, 2) == m(0));
    // Walls that shrink to nothing.
    const auto time = [](double perimeter, double fraction) {
        return soakage_time(m(1), share(0.4), m2(60), m(perimeter), mm_per_h(36), share(2), share(fraction));
    };
    CHECK_THAT(time(1e-9, 0.5), is_near(time(0, 0.5), 1e-9));
    CHECK_THAT(time(0, 0), is_near(hours(0.4 * 1 / 0.018)));
    CHECK(time(1, 0.5) < time(0, 0.5));
    CHECK_THAT(time(34, 1 - 1e-12), is_within(s(0), s(1e-6)));
}

TEST_CASE("the deepest water over all durations, between the rows too") {
    Random random;
    int between_rows = 0;
    for (int i = 0; i < 150; ++i) {
        const RainTable rain = random_soaked_rain(random);
        const double rate = random.between(2, 100);
        const double width = random.between(2, 12);
        const auto deepest = [&](const RainTable& table) {
            return soakage_depth(table, m2(800), m(15), m(width), share(0.4), mm_per_h(rate), share(1.5))
                .value();
        };
        const double found = deepest(rain);
        const auto at = [&](Time t) {
            const Speed intensity = rain_intensity(rain, t);
            return deepest({{t, intensity}, {t * (1 + 1e-12), intensity * 0.5}});
        };
        const double first = std::get<0>(rain.front()).value();
        const double last = std::get<0>(rain.back()).value();
        double best = 0;
        double best_at_rows = 0;
        for (int k = 0; k <= 400; ++k)
            best = std::max(best, at(s(std::min(last, first * std::pow(last / first, k / 400.0)))));
        for (const auto& row : rain) best_at_rows = std::max(best_at_rows, at(std::get<0>(row)));
        best = std::max(best, best_at_rows);
        CAPTURE(i, found, best);
        REQUIRE(found >= best * (1 - 1e-9));
        REQUIRE(found <= best * (1 + 1e-3) + 1e-12);
        if (found > best_at_rows * (1 + 1e-6)) ++between_rows;
    }
    CHECK(between_rows > 20);
}

TEST_CASE("more rain, less soakage or a larger safety factor make it deeper and slower") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const RainTable rain = random_soaked_rain(random);
        const auto depth = [&](double drained, double rate, double safety) {
            return soakage_depth(rain, m2(drained), m(15), m(6), share(0.4), mm_per_h(rate), share(safety));
        };
        const Length base = depth(800, 30, 1.5);
        REQUIRE(depth(900, 30, 1.5) >= base);
        REQUIRE(depth(800, 40, 1.5) <= base);
        REQUIRE(depth(800, 30, 2) >= base);
        REQUIRE_THAT(depth(800, 60, 3), is_near(base, 1e-9));
    }
    CHECK_THAT(soakage_flow(m2(100), m2(20), mm_per_h(36), share(2)), is_near(m3_per_s(6e-4)));
}

TEST_CASE("soakage that none could be is refused") {
    CHECK_THROWS_MATCHES(soakage_rate(m3(0), m2(1), s(1)), Refused, refuses_domain("volume (0 m3)"));
    CHECK_THROWS_MATCHES(soakage_rate(m3(1), m2(0), s(1)), Refused, refuses_domain("area (0 m2)"));
    CHECK_THROWS_MATCHES(soakage_rate(m3(1), m2(1), s(0)), Refused, refuses_domain("time (0 min)"));
    CHECK_THROWS_MATCHES(soakage_flow(m2(0), m2(0), mm_per_h(1), share(1)), Refused,
                         refuses_domain("together"));
    CHECK_THROWS_MATCHES(soakage_flow(m2(1), m2(0), mm_per_h(1), share(0.5)), Refused,
                         refuses_domain("safety factor (0.5) must be 1 or more"));
    const auto time = [](double rate, double fraction) {
        return soakage_time(m(1), share(0.4), m2(60), m(34), mm_per_h(rate), share(1), share(fraction));
    };
    CHECK_THROWS_MATCHES(time(0, 0.5), Refused, refuses_domain("rate (0 mm/h) must be above 0"));
    CHECK_THROWS_MATCHES(time(36, 1), Refused, refuses_domain("fraction (1) must be from 0 to below 1"));
    CHECK_THROWS_MATCHES(depth_after(2, 30, -1), Refused, refuses_domain("rate (-1 mm/h)"));
}

}  // namespace undercroft::tests
