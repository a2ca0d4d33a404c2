// Flotation of a whole bed: the same soil as weight and as water.
#include "calc/ground/bed_uplift.hpp"

#include "calc/ground/uplift.hpp"
#include "calc/water/water_weight.hpp"
#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// 30 x 12 x 1.2 m at 8 kN/m3 under 0.9 m at 19 kN/m3, water at the ground.
BuriedBed plain() {
    return {m(30), m(12),  batter(0.5),    {{m(1.2), kn_per_m3(8)}, {m(0.9), kn_per_m3(19)}},
            m3(0), m(2.1), kn_per_m3(9.81)};
}

BuriedBed random_lined_bed(Random& random) {
    BuriedBed bed{
        m(random.between(5, 60)), m(random.between(5, 30)), batter(random.between(0, 1.5)), {}, m3(0), m(0),
        kn_per_m3(9.81)};
    Length top = m(0);
    for (int n = random.whole(1, 5); n > 0; --n) {
        bed.layers.emplace_back(m(random.between(0.1, 1.5)), kn_per_m3(random.between(12, 23)));
        top += std::get<0>(bed.layers.back());
    }
    const Volume first = bed.base_length * bed.base_width * std::get<0>(bed.layers.front());
    bed.chambers = first * random.between(0, 0.7);
    bed.water_height = top * random.between(0.05, 1);
    return bed;
}

}  // namespace

TEST_CASE("the prism alone, by hand") {
    // math: (1.2 x 8 + 0.9 x 19)/(2.1 x 9.81) = 1.296054.
    CHECK_THAT(bed_uplift_factor(plain(), HeldSoil::prism), is_within(share(1.296054), share(5e-7)));
    // The net force is 2195.64 kN in any convention.
    CHECK_THAT(bed_weight(plain(), HeldSoil::prism) - bed_uplift(plain(), HeldSoil::prism),
               is_within(kn(2195.64), kn(0.005)));
}

TEST_CASE("weight and water are integrals over the same soil (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const BuriedBed bed = random_lined_bed(random);
        for (const HeldSoil soil : {HeldSoil::prism, HeldSoil::wedges}) {
            const double z = soil == HeldSoil::wedges ? bed.batter.value() : 0;
            const auto area = [&](double h) {
                return (bed.base_length.value() + 2 * z * h) * (bed.base_width.value() + 2 * z * h);
            };
            double weight = -bed.chambers.value() * std::get<1>(bed.layers.front()).value();
            double bottom = 0;
            for (const auto& [thickness, unit_weight] : bed.layers) {
                weight += unit_weight.value() * integral(area, bottom, bottom + thickness.value());
                bottom += thickness.value();
            }
            REQUIRE_THAT(bed_weight(bed, soil), is_near(Force::from_value(weight), 1e-9));
            const double water = 9810 * integral(area, 0, bed.water_height.value());
            REQUIRE_THAT(bed_uplift(bed, soil), is_near(Force::from_value(water), 1e-9));
            REQUIRE_THAT(bed_uplift_factor(bed, soil), is_near(share(weight / water), 1e-9));
        }
    }
}

TEST_CASE("wedges help only as far as they are heavier than their water, and never are half counted") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const BuriedBed bed = random_lined_bed(random);
        const Force prism = bed_weight(bed, HeldSoil::prism) - bed_uplift(bed, HeldSoil::prism);
        const Force both = bed_weight(bed, HeldSoil::wedges) - bed_uplift(bed, HeldSoil::wedges);
        // All layers are denser than water, so the wedges hold down more than they float.
        REQUIRE(both >= prism - kn(1e-6));
        // The fault: the wedges' water but not their weight.
        const Share fault = bed_weight(bed, HeldSoil::prism) / bed_uplift(bed, HeldSoil::wedges);
        REQUIRE(fault <= bed_uplift_factor(bed, HeldSoil::prism) * (1 + 1e-12));
        REQUIRE(fault <= bed_uplift_factor(bed, HeldSoil::wedges) * (1 + 1e-12));
    }
}

TEST_CASE("a bed by its layers is the bed of the older function, in a pit with vertical walls") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        BuriedBed bed = random_lined_bed(random);
        bed.batter = batter(0);
        bed.chambers = m3(0);
        Weights weights;
        for (const auto& [thickness, unit_weight] : bed.layers)
            weights.emplace_back(bed.base_length * bed.base_width, thickness, unit_weight);
        const Volume wet = pit_volume(bed.base_length, bed.base_width, bed.water_height, batter(0));
        const Share older = uplift_factor(weights, wet, bed.water_unit_weight);
        REQUIRE_THAT(bed_uplift_factor(bed, HeldSoil::prism), is_near(older, 1e-12));
        REQUIRE_THAT(bed_uplift_factor(bed, HeldSoil::wedges), is_near(older, 1e-12));
    }
}

TEST_CASE("partial factors are those of a published tank", "[published]") {
    // Public worked example, a tank of 3.7 x 2.7 m with walls and base of 350 mm at 25 kN/m3, water on 3.35
    // m: weight 486.41 kN, uplift 334.665 kN; factored 437.769 and, by the annex's 1.1, 368.131 kN.
    const Force weight = kn(486.4125);
    const Force uplift = kn_per_m3(10) * (m(3.7) * m(2.7) * m(3.35));
    CHECK_THAT(uplift, is_near(kn(334.665)));
    CHECK_THAT(uplift_ratio(weight, uplift, share(0.9), share(1.1)),
               is_within(share(368.131 / 437.769), share(5e-6)));
    CHECK_THAT(uplift_ratio(weight, uplift, share(0.9), share(1.1)), is_within(share(0.840922), share(1e-6)));
    CHECK_THAT(uplift_ratio(weight, uplift, share(0.9), share(1.0)), is_within(share(0.764475), share(1e-6)));
    CHECK_THAT(uplift_ratio(weight, uplift, share(1), share(1)), is_near(uplift / weight));
}

TEST_CASE("beds that are none, and water that is not there, are refused") {
    const auto with = [](auto change) {
        BuriedBed bed = plain();
        change(bed);
        return bed_uplift_factor(bed, HeldSoil::wedges);
    };
    CHECK_NOTHROW(with([](BuriedBed&) {}));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.layers.clear(); }), Refused, refuses_domain("no layer"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.base_length = m(0); }), Refused,
                         refuses_domain("base length"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.batter = batter(-1); }), Refused,
                         refuses_domain("batter"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { std::get<1>(b.layers[0]) = kn_per_m3(0); }), Refused,
                         refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { std::get<0>(b.layers[0]) = m(-1); }), Refused,
                         refuses_domain("thickness"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.chambers = m3(1e6); }), Refused,
                         refuses_domain("must be less than the first layer, the bed"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.water_height = m(0); }), Refused,
                         refuses_domain("water height"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.water_height = m(2.2); }), Refused,
                         refuses_domain("at most the height of the layers (2.1 m)"));
    CHECK_THROWS_MATCHES(with([](BuriedBed& b) { b.water_unit_weight = kn_per_m3(0); }), Refused,
                         refuses_domain("water unit weight"));
    CHECK_THROWS_MATCHES(uplift_ratio(kn(0), kn(1), share(1), share(1)), Refused, refuses_domain("weight"));
    CHECK_THROWS_MATCHES(uplift_ratio(kn(1), kn(0), share(1), share(1)), Refused, refuses_domain("uplift"));
    CHECK_THROWS_MATCHES(uplift_ratio(kn(1), kn(1), share(1.1), share(1)), Refused,
                         refuses_domain("at most 1"));
    CHECK_THROWS_MATCHES(uplift_ratio(kn(1), kn(1), share(0.9), share(0.9)), Refused,
                         refuses_domain("at least 1"));
}

}  // namespace undercroft::tests
