// Openings that are rectangular, drowned, or lie flat.
#include "calc/water/opening.hpp"

#include "calc/water/outlet.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const double g = 9.80665;

Flow rectangle(double width, double height, double depth, double tailwater = 0) {
    return rectangular_orifice_flow(m(width), m(height), m(depth), share(0.6), m(tailwater));
}

}  // namespace

TEST_CASE("large and drowned rectangular orifices of a textbook", "[published]") {
    // Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.12 (inputs and formula seen): B 2 m, edges 3.0 and 4.5
    // m deep, Cd 0.62, g = 9.81: 15.92751896 m3/s.
    const double to_standard = std::sqrt(g / 9.81);
    CHECK_THAT(rectangular_orifice_flow(m(2), m(1.5), m(4.5), share(0.62), m(0)),
               is_near(m3_per_s(15.92751896 * to_standard), 1e-9));
    // A drowned one of 1.6 x 1.25 m, levels 2.0 and 0.8 m above its top, Cd 0.6 (inputs seen in a
    // transcription of a textbook; 5.822659186 m3/s recomputed with g = 9.81).
    CHECK_THAT(rectangle(1.6, 1.25, 3.25, 2.05), is_near(m3_per_s(5.822659186 * to_standard), 1e-9));
}

TEST_CASE("a rectangular orifice is the sum of its strips (GSL QAGS), whatever the levels") {
    // Each strip dz under the difference between the water above and the higher of strip and tailwater.
    Random random;
    for (int i = 0; i < 200; ++i) {
        const double height = random.between(0.05, 1);
        const double depth = random.between(0.01, 3);
        const double tailwater = random.between(-0.5, depth);
        const double top = std::min(height, depth);
        const auto strip = [&](double z) { return std::sqrt(2 * g * (depth - std::max(z, tailwater))); };
        const double change = std::clamp(tailwater, 0.0, top);
        const double expected =
            0.6 * 0.8 * (integral(strip, 0, change, 1e-10) + integral(strip, change, top, 1e-10));
        CAPTURE(i, height, depth, tailwater);
        REQUIRE(rectangle(0.8, height, depth, tailwater).value() ==
                Approx(expected).epsilon(1e-7).margin(1e-12));
    }
}

TEST_CASE("openings have no jump where the water or the tailwater passes an edge, and fall as it rises") {
    const auto circle = [](double depth, double tailwater) {
        return drowned_orifice_flow(m(0.3), m(depth), share(0.6), m(tailwater));
    };
    const auto slot = [](double depth, double tailwater) { return rectangle(0.4, 0.3, depth, tailwater); };
    for (const double depth : {0.1, 0.29, 0.31, 0.6, 2.0}) {
        Flow circle_before = circle(depth, -0.01);
        Flow slot_before = slot(depth, -0.01);
        CHECK(circle_before == part_full_orifice_flow(m(0.3), m(depth), share(0.6)));
        const double full_circle = circle_before.value();
        for (double tailwater = 0; tailwater < depth; tailwater += 1e-4) {
            const Flow now = circle(depth, tailwater);
            const Flow slot_now = slot(depth, tailwater);
            REQUIRE(now <= circle_before);
            REQUIRE(slot_now <= slot_before * (1 + 1e-12));
            if (tailwater < 0.9 * depth) REQUIRE((circle_before - now).value() < 0.01 * full_circle);
            circle_before = now;
            slot_before = slot_now;
        }
        CHECK(circle(depth, depth) == m3_per_s(0));
        CHECK(slot(depth, depth).value() == Approx(0).margin(1e-15));
    }
    for (const double tailwater : {0.0, 0.1, 0.2, 0.35}) {
        Flow before = m3_per_s(0);
        for (double depth = tailwater + 1e-3; depth < 2; depth += 1e-3) {
            REQUIRE(circle(depth, tailwater) >= before);
            before = circle(depth, tailwater);
        }
    }
    // Drowned, the head is the difference of levels (FHWA HEC-22, sec. 8.4.4): K D^2 sqrt(h), K = 2.09
    // (published).
    CHECK_THAT(circle(2.0, 1.0), is_near(m3_per_s(2.09 * 0.09 * std::sqrt(1.0)), 2e-3));
    CHECK_THAT(circle(2.0, 1.0), is_near(orifice_flow(m(0.3), m(1.0), share(0.6))));
}

TEST_CASE("a riser is a weir first, an orifice then", "[published]") {
    // FHWA HEC-22, 3rd ed., sec. 8.4.4: the lesser of both; figures recomputed with C 1.84, Cd 0.6, g = 9.81.
    const WeirCoefficient c = WeirCoefficient::from_value(1.84);
    const auto riser = [&](double d, double h, double tailwater = 0) {
        return riser_flow(m(d), m(h), c, share(0.6), m(tailwater));
    };
    const double to_standard = std::sqrt(g / 9.81);
    CHECK_THAT(riser(0.6, 0.10), is_near(m3_per_s(0.109677854), 1e-8));
    CHECK_THAT(riser(0.6, 0.20), is_near(m3_per_s(0.310215819), 1e-8));
    CHECK_THAT(riser(0.6, 0.50), is_near(m3_per_s(0.531346882 * to_standard), 1e-8));
    // They meet at Cd D sqrt(2g)/(4 C): 0.2166577 m and 0.4333155 m.
    for (const double d : {0.6, 1.2}) {
        const double meet = d / 0.6 * 0.216657730 * to_standard;
        CHECK_THAT(riser(d, meet), is_near(Flow(c * M_PI * m(d) * m(meet) * sqrt(m(meet))), 1e-8));
        CHECK(riser(d, 0.99 * meet) < 0.99 * riser(d, meet));
        CHECK_THAT(riser(d, 4 * meet), is_near(Flow(2.0 * riser(d, meet)), 1e-8));
    }
    CHECK(riser(0.6, 0) == m3_per_s(0));
    // Drowned: Villemonte's factor 0.8453860 at half the head (math), the orifice under the difference of
    // levels.
    CHECK_THAT(riser(0.6, 0.1, 0.05), is_near(m3_per_s(0.109677854 * 0.8453860), 1e-6));
    CHECK_THAT(riser(0.6, 0.7, 0.2), is_near(riser(0.6, 0.5)));
    CHECK(riser(0.6, 0.7, 0.7) == m3_per_s(0));
    CHECK_THROWS_MATCHES(riser(0.6, 0.7, 0.8), Refused, refuses_domain("tailwater (0.8 m)"));
}

TEST_CASE("openings that are none are refused") {
    CHECK_THROWS_MATCHES(rectangle(0, 1, 1), Refused, refuses_domain("width (0 m)"));
    CHECK_THROWS_MATCHES(rectangle(1, 0, 1), Refused, refuses_domain("height (0 m)"));
    CHECK_THROWS_MATCHES(rectangle(1, 1, -1), Refused, refuses_domain("depth (-1 m)"));
    CHECK_THROWS_MATCHES(rectangle(1, 1, 1, 1.1), Refused,
                         refuses_domain("tailwater (1.1 m) must be at most the water above (1 m)"));
    CHECK_THROWS_MATCHES(rectangular_orifice_flow(m(1), m(1), m(1), share(1.1), m(0)), Refused,
                         refuses_domain("coefficient (1.1)"));
    CHECK_THROWS_MATCHES(drowned_orifice_flow(m(0.1), m(0.2), share(0.6), m(0.3)), Refused,
                         refuses_domain("tailwater (0.3 m)"));
    CHECK_THROWS_MATCHES(drowned_orifice_flow(m(0), m(0.2), share(0.6), m(0)), Refused,
                         refuses_domain("diameter (0 m)"));
    CHECK_THROWS_MATCHES(riser_flow(m(0), m(1), WeirCoefficient::from_value(1.84), share(0.6), m(0)), Refused,
                         refuses_domain("diameter (0 m)"));
    CHECK_THROWS_MATCHES(riser_flow(m(1), m(-1), WeirCoefficient::from_value(1.84), share(0.6), m(0)),
                         Refused, refuses_domain("head (-1 m)"));
    CHECK_THROWS_MATCHES(riser_flow(m(1), m(1), WeirCoefficient::from_value(0), share(0.6), m(0)), Refused,
                         refuses_domain("weir coefficient"));
    CHECK_THROWS_MATCHES(riser_flow(m(1), m(1), WeirCoefficient::from_value(1.84), share(0), m(0)), Refused,
                         refuses_domain("orifice coefficient (0)"));
}

}  // namespace undercroft::tests
