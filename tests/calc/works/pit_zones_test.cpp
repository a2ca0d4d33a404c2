// Layers that fill a pit, below the ground and above it; pits behind shoring.
#include "calc/works/pit_zones.hpp"

#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("layers below the ground are what is dug, and above it as wide as the pit's top (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const Length length = m(random.between(5, 60));
        const Length width = m(random.between(5, 30));
        const Length depth = m(random.between(0.5, 4));
        const Batter z = batter(random.between(0, 1.5));
        const double from = random.between(0, 4);
        const double to = random.between(from, 5);
        const auto area = [&](double h) {
            const double up = std::min(h, depth.value()) * z.value();
            return (length.value() + 2 * up) * (width.value() + 2 * up);
        };
        const Volume zone = pit_zone(length, width, depth, z, m(from), m(to));
        const double ground = std::clamp(depth.value(), from, to);
        REQUIRE_THAT(zone, is_near(m3(integral(area, from, ground) + integral(area, ground, to)), 1e-9));
        // The zones up to the ground add up to the pit.
        const Length half = depth / 2.0;
        REQUIRE_THAT(
            pit_zone(length, width, depth, z, m(0), half) + pit_zone(length, width, depth, z, half, depth),
            is_near(pit_volume(length, width, depth, z), 1e-12));
    }
    // A finished surface 0.05 m above ground, 43.5 x 14.8 m at the top: 32.19 m3 lie above it, and no batter.
    CHECK_THAT(pit_zone(m(39.5), m(10.8), m(2), batter(1), m(2), m(2.05)),
               is_near(m3(43.5 * 14.8 * 0.05), 1e-10));
}

TEST_CASE("a pit behind shoring is a box with its working space") {
    CHECK_THAT(shored_pit_volume(m(40), m(12), m(2.4), m(0)), is_near(m3(1152)));
    CHECK_THAT(shored_pit_volume(m(40), m(12), m(2.4), m(0.6)), is_near(m3(41.2 * 13.2 * 2.4)));
    CHECK_THROWS_MATCHES(shored_pit_volume(m(0), m(12), m(2), m(0.6)), Refused,
                         refuses_domain("base length"));
    CHECK_THROWS_MATCHES(shored_pit_volume(m(1), m(0), m(2), m(0.6)), Refused, refuses_domain("base width"));
    CHECK_THROWS_MATCHES(shored_pit_volume(m(1), m(1), m(-2), m(0.6)), Refused, refuses_domain("depth"));
    CHECK_THROWS_MATCHES(shored_pit_volume(m(1), m(1), m(2), m(-0.6)), Refused,
                         refuses_domain("working space"));
}

TEST_CASE("zones that are none are refused") {
    CHECK_THROWS_MATCHES(pit_zone(m(1), m(1), m(1), batter(0), m(0.5), m(0.4)), Refused,
                         refuses_domain("to height (0.4 m) must be at least the from height (0.5 m)"));
    CHECK_THROWS_MATCHES(pit_zone(m(1), m(1), m(1), batter(0), m(-0.5), m(0.4)), Refused,
                         refuses_domain("from height"));
    CHECK_THROWS_MATCHES(pit_zone(m(0), m(1), m(1), batter(0), m(0), m(1)), Refused,
                         refuses_domain("base length"));
    CHECK_THROWS_MATCHES(pit_zone(m(1), m(1), m(-1), batter(0), m(0), m(1)), Refused,
                         refuses_domain("depth (-1 m)"));
}

}  // namespace undercroft::tests
