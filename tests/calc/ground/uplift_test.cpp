// Flotation of a lined bed in groundwater.
#include "calc/ground/uplift.hpp"

#include "calc/water/water_weight.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Weights random_weights(Random& random) {
    Weights weights;
    const int layers = random.whole(0, 5);
    for (int i = 0; i < layers; ++i)
        weights.emplace_back(m2(random.between(10, 500)), m(random.between(0, 2)),
                             kn_per_m3(random.between(5, 25)));
    return weights;
}

}  // namespace

TEST_CASE("factor against flotation is the published one of its convention", "[published]") {
    // Engineers' forum calculation with all inputs printed: 340 ft3 of concrete, 384 ft3 of soil, 980 ft3
    // displaced; (tank + soil) over all that is displaced is 1.52.
    const Area plan = ft(1) * ft(1);
    const Weights tank = {{plan, ft(340), pcf(150)}, {plan, ft(384), pcf(110)}};
    const Share factor = uplift_factor(tank, ft3(980), pcf(62.4));
    CHECK_THAT(factor, is_within(share(1.52), share(0.005)));
    CHECK_THAT(factor, is_within(share(1.5247), share(5e-5)));
    // The net force of that calculation: 32.088 kip.
    CHECK_THAT((factor - 1.0) * pcf(62.4) * ft3(980), is_near(kips(32.088), 1e-9));
}

TEST_CASE("a bed is held down by all of its layers, by hand") {
    // math: 10 m x 20 m; 0.5 m at 20 kN/m3 and 1 m at 16 kN/m3 are 26 kPa over 200 m2, against 1.3 m of
    // water.
    const Weights weights = {{m2(200), m(0.5), kn_per_m3(20)}, {m2(200), m(1), kn_per_m3(16)}};
    CHECK_THAT(uplift_factor(weights, m3(260), kn_per_m3(10)), is_near(share(2)));
    // At the weight of fresh water, 9.80665 kN/m3.
    CHECK_THAT(uplift_factor(weights, m3(260), water_unit_weight), is_near(share(20 / 9.80665)));
    // 2 x 2600 kN is exactly enough for 2, and 2.5 asks for 1300 kN: 0.5 m at 13 kN/m3 on 200 m2.
    CHECK(uplift_fill(share(2), weights, m3(260), m2(200), kn_per_m3(13), kn_per_m3(10)) == m(0));
    CHECK_THAT(uplift_fill(share(2.5), weights, m3(260), m2(200), kn_per_m3(13), kn_per_m3(10)),
               is_near(m(0.5)));
}

TEST_CASE("more weight or less water never lets a bed float sooner") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        Weights weights = random_weights(random);
        weights.emplace_back(m2(100), m(0.1), kn_per_m3(18));
        const Volume submerged = m3(random.between(1, 500));
        const UnitWeight water = kn_per_m3(random.between(9.8, 10.1));
        const Share factor = uplift_factor(weights, submerged, water);
        REQUIRE(uplift_factor(weights, submerged * 1.01, water) < factor);
        REQUIRE(uplift_factor(weights, submerged, water * 1.01) < factor);
        // The factor goes as 1/V: without groundwater it has no bound.
        REQUIRE_THAT(uplift_factor(weights, submerged * 1e-9, water), is_near(factor * 1e9, 1e-12));
        Weights thicker = weights;
        std::get<1>(thicker.front()) += m(0.1);
        REQUIRE(uplift_factor(thicker, submerged, water) > factor);
        Weights covered = weights;
        covered.emplace_back(m2(50), m(0), kn_per_m3(18));
        REQUIRE(uplift_factor(covered, submerged, water) == factor);
        std::get<1>(covered.back()) = m(0.3);
        REQUIRE(uplift_factor(covered, submerged, water) > factor);
        std::reverse(covered.begin(), covered.end());
        REQUIRE(uplift_factor(covered, submerged, water) > factor);
    }
}

TEST_CASE("fill brings the factor exactly to what is required, and none where it is reached") {
    Random random;
    int filled = 0;
    for (int i = 0; i < 1000; ++i) {
        Weights weights = random_weights(random);
        const Volume submerged = m3(random.between(1, 2000));
        const UnitWeight water = kn_per_m3(random.between(9.8, 10.1));
        const UnitWeight soil = kn_per_m3(random.between(15, 22));
        const Area plan = m2(random.between(10, 500));
        // USACE EM 1110-2-2100 (2005), Table 3-4 (from memory): usual, unusual, extreme.
        const double required[] = {1.3, 1.2, 1.1};
        const Share factor = share(required[i % 3]);
        const Length fill = uplift_fill(factor, weights, submerged, plan, soil, water);
        const bool enough = uplift_factor(weights, submerged, water) >= factor;
        REQUIRE((fill == m(0)) == enough);
        if (enough) continue;
        ++filled;
        REQUIRE(uplift_fill(factor * 1.01, weights, submerged, plan, soil, water) > fill);
        REQUIRE(uplift_fill(factor, weights, submerged, plan * 1.01, soil, water) < fill);
        REQUIRE(uplift_fill(factor, weights, submerged, plan, soil * 1.01, water) < fill);
        weights.emplace_back(plan, fill, soil);
        REQUIRE_THAT(uplift_factor(weights, submerged, water), is_near(factor, 1e-12));
    }
    CHECK(filled > 300);
}

TEST_CASE("a bed that nothing holds down has the factor 0, and fill alone can hold it") {
    CHECK(uplift_factor({}, m3(100), kn_per_m3(10)) == share(0));
    // math: 1000 kN over 50 m2 at 20 kN/m3.
    CHECK_THAT(uplift_fill(share(1), {}, m3(100), m2(50), kn_per_m3(20), kn_per_m3(10)), is_near(m(1)));
}

TEST_CASE("flotation without water, area or weight is refused") {
    const Weights good = {{m2(10), m(1), kn_per_m3(18)}};
    const UnitWeight water = kn_per_m3(9.81);
    const auto factor = [&](const Weights& weights, Volume submerged, UnitWeight water_weight) {
        return uplift_factor(weights, submerged, water_weight);
    };
    CHECK_NOTHROW(factor(good, m3(1), water));
    // Dry ground lifts nothing: there is no factor to give.
    CHECK_THROWS_MATCHES(factor(good, m3(0), water), Refused,
                         refuses_domain("submerged volume (0 m3) must be above 0"));
    CHECK_THROWS_MATCHES(factor(good, m3(1), kn_per_m3(0)), Refused,
                         refuses_domain("water unit weight (0 kN/m3) must be above 0"));
    CHECK_THROWS_MATCHES(factor({{m2(0), m(1), kn_per_m3(18)}}, m3(1), water), Refused,
                         refuses_domain("plan area (0 m2) must be above 0"));
    CHECK_THROWS_MATCHES(factor({{m2(1), m(-1), kn_per_m3(18)}}, m3(1), water), Refused,
                         refuses_domain("thickness (-1 m) must be 0 or more"));
    CHECK_NOTHROW(factor({{m2(1), m(0), kn_per_m3(18)}}, m3(1), water));
    CHECK_THROWS_MATCHES(factor({{m2(1), m(1), kn_per_m3(0)}}, m3(1), water), Refused,
                         refuses_domain("unit weight (0 kN/m3) must be above 0"));

    const auto fill = [&](double required, const Weights& weights, double submerged, double plan,
                          double unit_weight) {
        return uplift_fill(share(required), weights, m3(submerged), m2(plan), kn_per_m3(unit_weight), water);
    };
    CHECK_NOTHROW(fill(1, good, 1, 1, 18));
    CHECK_THROWS_MATCHES(
        fill(0.99, good, 1, 1, 18), Refused,
        refuses_domain("required factor (0.99) must be at least 1: below it the bed floats"));
    CHECK_THROWS_MATCHES(fill(INFINITY, good, 1, 1, 18), Refused,
                         refuses_domain("required factor must be finite"));
    CHECK_THROWS_MATCHES(fill(1.2, good, 1, 0, 18), Refused, refuses_domain("plan area (0 m2)"));
    CHECK_THROWS_MATCHES(fill(1.2, good, 1, 1, 0), Refused, refuses_domain("unit weight (0 kN/m3)"));
    CHECK_THROWS_MATCHES(fill(1.2, good, 0, 1, 18), Refused, refuses_domain("submerged volume"));
    CHECK_THROWS_MATCHES(fill(1.2, {{m2(0), m(1), kn_per_m3(18)}}, 1, 1, 18), Refused,
                         refuses_domain("plan area (0 m2)"));
    CHECK_THROWS_MATCHES(uplift_fill(share(1.2), good, m3(1), m2(1), kn_per_m3(18), kn_per_m3(0)), Refused,
                         refuses_domain("water unit weight"));
}

}  // namespace undercroft::tests
