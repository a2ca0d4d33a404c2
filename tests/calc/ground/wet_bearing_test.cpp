// Bearing in groundwater, and with the depth of the base.
#include "calc/ground/wet_bearing.hpp"

#include "calc/ground/bearing.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// FHWA GEC No. 6, App. B, Example 1: friction 35 deg, 19.6 kN/m3, surcharge of 45.1 kPa, square.
DrainedFooting gec_6(double width) {
    return {kpa(0), degrees(35), kn_per_m3(19.6), m(45.1 / 19.6), m(width), m(width), m(9.1)};
}

}  // namespace

TEST_CASE("factors of groundwater are those of the manual's example", "[published]") {
    // FHWA GEC No. 6 (FHWA-SA-02-054), App. B, Example 1: water at 9.1 m, base at 2.3 m, width 6 m: 0.9
    // and 2.48, so 1.
    const WaterFactors water = water_factors(m(9.1), m(2.3), m(6));
    CHECK_THAT(water.weight, is_within(share(0.9), share(0.005)));
    CHECK_THAT(water.weight, is_within(share(0.902655), share(5e-7)));
    CHECK(water.surcharge == share(1));
    // At the ground both are a half, at the base the surcharge is whole.
    CHECK(water_factors(m(0), m(2), m(1)).surcharge == share(0.5));
    CHECK(water_factors(m(0), m(2), m(1)).weight == share(0.5));
    CHECK(water_factors(m(2), m(2), m(1)).surcharge == share(1));
    CHECK(water_factors(m(0), m(0), m(1)).surcharge == share(1));
    CHECK_THROWS_MATCHES(water_factors(m(-1), m(1), m(1)), Refused, refuses_domain("water depth"));
    CHECK_THROWS_MATCHES(water_factors(m(1), m(-1), m(1)), Refused, refuses_domain("depth (-1 m)"));
    CHECK_THROWS_MATCHES(water_factors(m(1), m(1), m(0)), Refused, refuses_domain("width"));
}

TEST_CASE("bearing in groundwater is that of the manual's example", "[published]") {
    // The same example: 2553 kPa from the surcharge, 254 kPa for each metre of width; allowable by a factor
    // of 3, 1369 kPa at 6.1 m.
    CHECK_THAT(wet_bearing_capacity(gec_6(6)), is_within(kpa(2553 + 254 * 6.0), kpa(8)));
    CHECK_THAT(wet_bearing_capacity(gec_6(6.1)) / 3.0, is_within(kpa(1369), kpa(4)));
}

TEST_CASE("without water and depth factor it is the plain capacity, and water takes up to half away") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        DrainedFooting f{kpa(random.between(0, 20)),
                         degrees(random.between(1, 44)),
                         kn_per_m3(random.between(15, 22)),
                         m(random.between(0, 3)),
                         m(random.between(0.3, 6)),
                         {},
                         {}};
        if (random.whole(0, 1) == 1) f.length = f.width * random.between(1, 4);
        const Pressure plain = bearing_capacity(f.cohesion, f.friction_angle, f.unit_weight, f.depth, f.width,
                                                f.length, BearingMethod::vesic);
        REQUIRE_THAT(wet_bearing_capacity(f), is_near(plain, 1e-12));
        DrainedFooting wet = f;
        wet.water_depth = m(random.between(0, 10));
        const Pressure in_water = wet_bearing_capacity(wet);
        REQUIRE(in_water <= plain * (1 + 1e-12));
        REQUIRE(in_water >= plain / 2.0);
        wet.water_depth = *wet.water_depth + m(0.1);
        REQUIRE(wet_bearing_capacity(wet) >= in_water * (1 - 1e-12));
        DrainedFooting deep = f;
        deep.counts_depth = true;
        REQUIRE(wet_bearing_capacity(deep) >= plain * (1 - 1e-12));
    }
    // Hansen's d_q at 30 deg and D = B: 1 + 2 tan 30 (1 - sin 30)^2 pi/4, on the surcharge alone.
    DrainedFooting deep{kpa(0), degrees(30), kn_per_m3(18), m(1), m(1), {}, {}, true};
    const Pressure surcharge = kpa(18 * 18.40112222);
    const double dq = 1 + 2 * std::tan(0.5235987755982988) * 0.25 * 0.7853981633974483;
    DrainedFooting shallow = deep;
    shallow.counts_depth = false;
    CHECK_THAT(wet_bearing_capacity(deep) - wet_bearing_capacity(shallow),
               is_near(surcharge * (dq - 1), 1e-8));
    CHECK_THROWS_MATCHES(wet_bearing_capacity({kpa(0), degrees(0), kn_per_m3(18), m(1), m(1), {}, {}}),
                         Refused, refuses_domain("without strength bears nothing"));
}

}  // namespace undercroft::tests
