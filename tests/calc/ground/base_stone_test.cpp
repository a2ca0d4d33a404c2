// The base stone under rows of chambers: how thick, and how wide the strip that bears.
#include "calc/ground/base_stone.hpp"

#include "calc/ground/bearing.hpp"
#include "calc/ground/foot_pressure.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A car park: 20.596 kPa of fill and a truck wheel on the crown, stone of 1610 kg/m3.
FeetOnStone car_park_feet() {
    return {kpa(53.331215691815046),
            m(1.31),
            m(0.15),
            m(0.15),
            m(0.75),
            Density::from_value(1610) * standard_gravity};
}

FeetOnStone random_feet(Random& random) {
    const Length span = m(random.between(0.4, 2.5));
    return {kpa(random.between(10, 150)), span,
            m(random.between(0, 1.5)),    span * random.between(0.03, 0.5),
            m(random.between(0, 1.5)),    kn_per_m3(random.between(14, 22))};
}

/// The least thickness by steps and halving, from foot_pressure alone: no closed form.
double thickness_by_steps(const FeetOnStone& f, Pressure allowable) {
    const auto passes = [&](double t) {
        const Pressure feet = foot_pressure(f.crown_pressure, f.span, f.row_gap, f.foot_width, m(t));
        return feet + f.unit_weight * (f.stone_height + m(t)) <= allowable;
    };
    if (passes(0)) return 0;
    for (double t = 0.001; t < 4; t += 0.001) {
        if (!passes(t)) continue;
        double fails = t - 0.001;
        for (int i = 0; i < 60; ++i) (passes((fails + t) / 2) ? t : fails) = (fails + t) / 2;
        return t;
    }
    return -1;
}

}  // namespace

TEST_CASE("the base stone that one foot alone asks for is too thin for the whole strip") {
    // By hand for a car park: 152 mm for the code's 143.6 kPa, 429 mm for the investigation's 107.2 kPa; for
    // half of the code's none, since the pressure has its floor of 81.1 kPa where all is level, at t = S - 2
    // b.
    const FeetOnStone feet = car_park_feet();
    CHECK_THAT(base_stone_needed(feet, kpa(143.64)), is_within(mm(151.71), mm(0.02)));
    CHECK_THAT(base_stone_needed(feet, kpa(107.2)), is_within(mm(428.96), mm(0.02)));
    CHECK_THROWS_MATCHES(
        base_stone_needed(feet, kpa(71.8)), Refused,
        has_no_answer("no thickness of base stone does: the pressure never falls below 81.119"));
    CHECK_THROWS_MATCHES(base_stone_needed(feet, kpa(71.8)), Refused,
                         has_no_answer("(at 1.01 m of stone), above the allowable 71.8 kPa; replace"));
    CHECK_THAT(subgrade_pressure(feet, m(1.01)), is_within(kpa(81.1193391), kpa(1e-6)));
    CHECK_THAT(subgrade_pressure(feet, m(0.23)), is_within(kpa(129.97819), kpa(1e-5)));
}

TEST_CASE("spreads that have met: the closed form, by hand") {
    // math: q 75 kPa, S 1.30, G 0.20, b 0.08 m, g 20 kN/m3, no stone beside; 112.5/(0.36 + t) + 20 t = 150 at
    // 0.436328032 m, where the strip still presses more than the mean, q.
    const FeetOnStone feet{kpa(75), m(1.30), m(0.20), m(0.08), m(0), kn_per_m3(20)};
    CHECK_THAT(base_stone_needed(feet, kpa(150)), is_within(m(0.436328032), m(1e-9)));
    // From t = 1.14 m on all is level, q = 75 kPa: the floor is 75 + 20 x 1.14, and 90 kPa is below it. (A
    // strip that went on spreading by itself would press less than the mean of all, which no strip beside
    // others does.)
    CHECK_THAT(subgrade_pressure(feet, m(1.14)), is_near(kpa(97.8)));
    CHECK_THROWS_MATCHES(base_stone_needed(feet, kpa(90)), Refused,
                         has_no_answer("never falls below 97.8 kPa"));
}

TEST_CASE("the thickness is that of steps and halving over the pressure under the feet") {
    Random random;
    int none = 0;
    int some = 0;
    for (int i = 0; i < 300; ++i) {
        const FeetOnStone feet = random_feet(random);
        const Pressure allowable =
            subgrade_pressure(feet, m(random.between(0, 1))) * random.between(0.8, 1.1);
        const double expected = thickness_by_steps(feet, allowable);
        CAPTURE(i, expected, feet.span.value(), feet.row_gap.value(), feet.foot_width.value());
        if (expected < 0) {
            ++none;
            REQUIRE_THROWS_AS(base_stone_needed(feet, allowable), Refused);
            continue;
        }
        const Length needed = base_stone_needed(feet, allowable);
        REQUIRE_THAT(needed, is_within(m(expected), m(1e-9)));
        if (expected == 0) continue;
        ++some;
        REQUIRE_THAT(subgrade_pressure(feet, needed), is_near(allowable, 1e-9));
        REQUIRE(subgrade_pressure(feet, needed * 0.999) > allowable);
    }
    CHECK(none > 60);
    CHECK(some > 60);
}

TEST_CASE("the floor is the least pressure, and just enough for it is an answer") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const FeetOnStone feet = random_feet(random);
        Pressure least = subgrade_pressure(feet, m(0));
        for (double t = 0; t < 4; t += 0.002) least = std::min(least, subgrade_pressure(feet, m(t)));
        CAPTURE(i);
        REQUIRE_NOTHROW(base_stone_needed(feet, least));
        REQUIRE_THROWS_AS(base_stone_needed(feet, least * 0.999), Refused);
    }
}

TEST_CASE("the strip that bears is one foot until the spreads meet, then two and the gap") {
    CHECK_THAT(bearing_strip(m(0.15), m(0.10), m(0.15)), is_near(m(0.25)));
    CHECK_THAT(bearing_strip(m(0.15), m(0.15), m(0.15)), is_near(m(0.60)));
    CHECK_THAT(bearing_strip(m(0.15), m(0.23), m(0.15)), is_near(m(0.68)));
    // The load on the strip is that of foot_pressure: p times its width is the load of its part of a pitch.
    Random random;
    for (int i = 0; i < 300; ++i) {
        const FeetOnStone f = random_feet(random);
        const Length t = m(random.between(0, 1));
        const Pressure p = foot_pressure(f.crown_pressure, f.span, f.row_gap, f.foot_width, t);
        if (p <= f.crown_pressure) continue;  // level
        const LineLoad on_strip =
            t < f.row_gap ? f.crown_pressure * (f.span + t) / 2.0 : f.crown_pressure * (f.span + f.row_gap);
        REQUIRE_THAT(p * bearing_strip(f.foot_width, t, f.row_gap), is_near(on_strip, 1e-12));
    }
    CHECK_THROWS_MATCHES(bearing_strip(m(0), m(0.1), m(0.1)), Refused, refuses_domain("foot width (0 m)"));
    CHECK_THROWS_MATCHES(bearing_strip(m(0.1), m(-0.1), m(0.1)), Refused, refuses_domain("base stone"));
    CHECK_THROWS_MATCHES(bearing_strip(m(0.1), m(0.1), m(-0.1)), Refused, refuses_domain("row gap"));
}

TEST_CASE("feet that are none are refused by the base stone") {
    const auto with = [](auto change) {
        FeetOnStone feet = car_park_feet();
        change(feet);
        return base_stone_needed(feet, kpa(100));
    };
    CHECK_NOTHROW(with([](FeetOnStone&) {}));
    CHECK_THROWS_MATCHES(with([](FeetOnStone& f) { f.crown_pressure = kpa(0); }), Refused,
                         refuses_domain("crown pressure"));
    CHECK_THROWS_MATCHES(with([](FeetOnStone& f) { f.foot_width = m(0.7); }), Refused,
                         refuses_domain("at most half of the span"));
    CHECK_THROWS_MATCHES(with([](FeetOnStone& f) { f.stone_height = m(-1); }), Refused,
                         refuses_domain("stone height"));
    CHECK_THROWS_MATCHES(with([](FeetOnStone& f) { f.unit_weight = kn_per_m3(0); }), Refused,
                         refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(base_stone_needed(car_park_feet(), kpa(0)), Refused,
                         refuses_domain("allowable (0 kPa)"));
    CHECK_THROWS_MATCHES(subgrade_pressure(car_park_feet(), m(-1)), Refused, refuses_domain("base stone"));
    CHECK(base_stone_needed(car_park_feet(), kpa(1000)) == m(0));
}

}  // namespace undercroft::tests
