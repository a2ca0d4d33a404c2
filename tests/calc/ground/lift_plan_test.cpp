// The fill over the chambers lift by lift, with plant on top of each.
#include "calc/ground/lift_plan.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A roller of two drums, 25 kN on 0.10 m x 1.20 m each, 2 m apart.
Patches roller() {
    return {{kn(25), m(0.10), m(1.20), m(0), m(0)}, {kn(25), m(0.10), m(1.20), m(2), m(0)}};
}

UnitWeight stone() {
    return Density::from_value(1610) * standard_gravity;
}

/// Stone over the crowns, initial and general backfill.
LiftLayers layers_over_crown() {
    return {
        {m(0.16), stone(), m(0.16)}, {m(0.30), kn_per_m3(19), m(0.15)}, {m(0.35), kn_per_m3(19), m(0.15)}};
}

}  // namespace

TEST_CASE("plan of a car park's cover: the roller is too heavy on the first lift") {
    // By hand: vibrating roller, factor 2, and the weight of the fill.
    struct Row {
        double cover, layer, total;
    };
    const Row rows[] = {{0.160, 1, 158}, {0.310, 2, 88}, {0.460, 2, 62},
                        {0.577, 3, 51},  {0.693, 3, 45}, {0.810, 3, 41}};
    const LiftPlan plan = lift_plan(layers_over_crown(), roller(), share(2));
    REQUIRE(plan.size() == std::size(rows));
    for (std::size_t i = 0; i < plan.size(); ++i) {
        const auto& [lift, layer, thickness, cover, fill, stress, total] = plan[i];
        CAPTURE(i);
        CHECK(lift == count(static_cast<double>(i) + 1));
        CHECK(layer == count(rows[i].layer));
        CHECK_THAT(cover, is_within(m(rows[i].cover), mm(0.5)));
        CHECK_THAT(total, is_within(kpa(rows[i].total), kpa(0.5)));
        CHECK_THAT(total, is_near(fill + stress));
        CHECK_THAT(stress, is_near(2.0 * plant_load(roller(), cover)));
    }
    // The weight of fill over two lifts of backfill: 62.1, not 53.9 kPa.
    CHECK_THAT(std::get<5>(plan[2]), is_within(kpa(53.9), kpa(0.1)));
    CHECK_THAT(std::get<6>(plan[2]), is_within(kpa(62.1), kpa(0.1)));
}

TEST_CASE("lifts of a layer are equal, no thicker than the greatest, and fill it") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        LiftLayers random_layers;
        Length total = m(0);
        Pressure weight = kpa(0);
        for (int n = random.whole(1, 4); n > 0; --n) {
            random_layers.emplace_back(m(random.between(0.05, 0.8)), kn_per_m3(random.between(15, 24)),
                                       m(random.between(0.1, 0.3)));
            total += std::get<0>(random_layers.back());
            weight += std::get<0>(random_layers.back()) * std::get<1>(random_layers.back());
        }
        const LiftPlan plan = lift_plan(random_layers, roller(), share(1));
        Length sum = m(0);
        Pressure last = kpa(1e9);
        for (const auto& [lift, layer, thickness, cover, fill, stress, both] : plan) {
            REQUIRE(thickness <=
                    std::get<2>(random_layers[static_cast<std::size_t>(number(layer)) - 1]) * (1 + 1e-9));
            sum += thickness;
            REQUIRE_THAT(cover, is_near(sum, 1e-12));
            REQUIRE(stress < last);
            last = stress;
        }
        REQUIRE_THAT(std::get<3>(plan.back()), is_near(total, 1e-12));
        REQUIRE_THAT(std::get<4>(plan.back()), is_near(weight, 1e-12));
    }
}

TEST_CASE("the least cover for plant is where both together press as much as allowed") {
    const UnitWeight fill = kn_per_m3(19);
    const Length cover = plant_cover(roller(), share(2), fill, kpa(130));
    CHECK_THAT(2.0 * plant_load(roller(), cover) + fill * cover, is_near(kpa(130), 1e-9));
    CHECK(cover > m(0.16));
    CHECK(cover < m(0.31));
    Random random;
    for (int i = 0; i < 30; ++i) {
        const Pressure allowable = kpa(random.between(50, 400));
        const Length least = plant_cover(roller(), share(random.between(1, 2)), fill, allowable);
        REQUIRE(plant_cover(roller(), share(1), fill, allowable * 1.05) <= least);
    }
    CHECK_THROWS_MATCHES(plant_cover(roller(), share(2), fill, kpa(20)), Refused,
                         has_no_answer("no cover does: plant and fill together never press less than"));
    CHECK(plant_cover(roller(), share(1), fill, kpa(1e6)) == m(0.01));
}

TEST_CASE("fill that is none, and vibration that lightens, are refused") {
    CHECK_THROWS_MATCHES(lift_plan({}, roller(), share(2)), Refused, refuses_domain("the fill has no layer"));
    CHECK_THROWS_MATCHES(lift_plan(layers_over_crown(), roller(), share(0.9)), Refused,
                         refuses_domain("vibration (0.9) must be at least 1"));
    CHECK_THROWS_MATCHES(lift_plan({{m(0), stone(), m(0.2)}}, roller(), share(1)), Refused,
                         refuses_domain("thickness (0 m)"));
    CHECK_THROWS_MATCHES(lift_plan({{m(1), kn_per_m3(0), m(0.2)}}, roller(), share(1)), Refused,
                         refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(lift_plan({{m(1), stone(), m(0)}}, roller(), share(1)), Refused,
                         refuses_domain("greatest lift"));
    CHECK_THROWS_MATCHES(lift_plan({{m(1), stone(), m(0.001)}}, roller(), share(1)), Refused,
                         refuses_domain("more than 200 lifts"));
    CHECK_THROWS_MATCHES(plant_cover(roller(), share(1), stone(), kpa(0)), Refused,
                         refuses_domain("allowable"));
    CHECK_THROWS_MATCHES(plant_cover(roller(), share(0), stone(), kpa(50)), Refused,
                         refuses_domain("vibration"));
    CHECK_THROWS_MATCHES(plant_cover(roller(), share(1), kn_per_m3(0), kpa(50)), Refused,
                         refuses_domain("unit weight"));
}

}  // namespace undercroft::tests
