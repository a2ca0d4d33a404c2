// Density of compacted fill.
#include "calc/ground/compaction.hpp"

#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Density kg_per_m3(double value) {
    return Density::from_value(value);
}

}  // namespace

TEST_CASE("dry density and relative compaction are the published ones", "[published]") {
    // Das, Principles of Geotechnical Engineering, sand-cone example (from memory): 3.007 kg out of 0.001443
    // m3 at 10.2 %; 18.55 kN/m3 dry are about 97.7 % of 19 kN/m3.
    const Density dry = dry_density(kg_per_m3(2084.32), share(0.102));
    CHECK_THAT(dry * Acceleration::from_value(9.81), is_near(kn_per_m3(18.55), 0.003));
    CHECK_THAT(compaction_degree(dry, kg_per_m3(19000 / 9.81)), is_within(share(0.977), share(0.003)));
    CHECK_THAT(compaction_degree(dry, kg_per_m3(19000 / 9.81)), is_within(share(0.9766), share(5e-5)));
    // Public course page, inputs published and answers recomputed: 124.094 lb/ft3 wet at 11.11 %.
    const Density pound_per_ft3 = kg_per_m3(16.018463373960);
    CHECK_THAT(dry_density(124.094 * pound_per_ft3, share(0.1111)), is_near(111.686 * pound_per_ft3, 5e-6));
    // By hand: 2050/1.12 and 1830.357/1920.
    CHECK_THAT(dry_density(kg_per_m3(2050), share(0.12)), is_within(kg_per_m3(1830.357), kg_per_m3(5e-4)));
    CHECK_THAT(compaction_degree(kg_per_m3(1830.357), kg_per_m3(1920)),
               is_within(share(0.95331), share(5e-6)));
}

TEST_CASE("dry soil and its water weigh together what was wet, and dry soil is as dense as it is") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Density wet = kg_per_m3(random.between(1000, 2600));
        const Share moisture = share(random.between(0.0, 0.99));
        const Density dry = dry_density(wet, moisture);
        REQUIRE_THAT(dry + dry * moisture, is_near(wet));
        REQUIRE(dry <= wet);
        REQUIRE(dry_density(wet, moisture + 0.01) < dry);
        REQUIRE(dry_density(wet * 1.01, moisture) > dry);
        const Density reference = kg_per_m3(random.between(1000, 2600));
        const Share degree = compaction_degree(dry, reference);
        REQUIRE_THAT(degree * reference, is_near(dry));
        REQUIRE(compaction_degree(dry, reference * 1.01) < degree);
        REQUIRE(compaction_degree(dry * 1.01, reference) > degree);
    }
    CHECK(dry_density(kg_per_m3(1700), share(0)) == kg_per_m3(1700));
    CHECK(dry_density(kg_per_m3(1700), share(1)) == kg_per_m3(850));
    CHECK(compaction_degree(kg_per_m3(1700), kg_per_m3(1700)) == share(1));
}

TEST_CASE("soil without mass, or wetter than its own mass, is refused") {
    CHECK_THROWS_MATCHES(dry_density(kg_per_m3(0), share(0.1)), Refused,
                         refuses_domain("wet density (0 kg/m3) must be above 0"));
    CHECK_THROWS_MATCHES(dry_density(kg_per_m3(2000), share(-0.01)), Refused,
                         refuses_domain("moisture (-0.01) must be from 0 to 1 (0 % to 100 %)"));
    CHECK_THROWS_MATCHES(dry_density(kg_per_m3(2000), share(12)), Refused, refuses_domain("moisture (12)"));
    CHECK_THROWS_MATCHES(compaction_degree(kg_per_m3(0), kg_per_m3(1)), Refused,
                         refuses_domain("dry density (0 kg/m3) must be above 0"));
    CHECK_THROWS_MATCHES(compaction_degree(kg_per_m3(1), kg_per_m3(0)), Refused,
                         refuses_domain("reference density (0 kg/m3) must be above 0"));
}

TEST_CASE("no fill is denser than without air") {
    const auto t = [](double value) { return Density::from_value(value); };
    struct Row {
        double gravity, moisture, of_1000, of_998, with_air, saturated;
    };
    // rho_w G/(1 + w G), by hand (math).
    const Row rows[] = {{2.65, 0.10, 2094.862, 2090.672, 1990.119, 0},
                        {2.70, 0.12, 2039.275, 2035.196, 1937.311, 0},
                        {2.65, 0, 2650, 2644.7, 2517.5, 0}};
    for (const Row& row : rows) {
        CAPTURE(row.gravity, row.moisture);
        const auto dry = [&](double air, double water) {
            return zero_air_density(t(row.gravity * water), share(row.moisture), share(air), t(water));
        };
        CHECK_THAT(dry(0, 1000), is_within(t(row.of_1000), t(5e-4)));
        CHECK_THAT(dry(0, 998), is_within(t(row.of_998), t(5e-4)));
        CHECK_THAT(dry(0.05, 1000), is_within(t(row.with_air), t(5e-4)));
    }
    // Phase relations of a public library: w 0.4, G 2.65, water 10 kN/m3: saturated 18.01 kN/m3.
    const Density saturated = zero_air_density(t(2650), share(0.4), share(0), t(1000)) * 1.4;
    CHECK_THAT(saturated * 10.0 / 1000.0, is_within(t(18.01), t(0.005)));
    // One cubic metre of it is grains, water and air, and nothing else.
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Density grains = t(random.between(2400, 3000));
        const double w = random.between(0, 0.5);
        const double air = random.between(0, 0.5);
        const double dry = zero_air_density(grains, share(w), share(air), t(1000)).value();
        REQUIRE(dry / grains.value() + w * dry / 1000 + air == Approx(1).epsilon(1e-12));
    }
    CHECK_THROWS_MATCHES(zero_air_density(t(900), share(0.1), share(0), t(1000)), Refused,
                         refuses_domain("particle density (900 kg/m3) must be above that of water"));
    CHECK_THROWS_MATCHES(zero_air_density(t(2650), share(1.1), share(0), t(1000)), Refused,
                         refuses_domain("moisture"));
    CHECK_THROWS_MATCHES(zero_air_density(t(2650), share(0.1), share(-0.1), t(1000)), Refused,
                         refuses_domain("air"));
    CHECK_THROWS_MATCHES(zero_air_density(t(2650), share(0.1), share(0), t(0)), Refused,
                         refuses_domain("water density"));
}

}  // namespace undercroft::tests
