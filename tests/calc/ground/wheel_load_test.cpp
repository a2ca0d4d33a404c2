// Live load of wheels through fill, and the loads that standards ask for.
#include "calc/ground/wheel_load.hpp"
#include "calc/ground/load_classes.hpp"
#include "calc/ground/load_spread.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/csv.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// AASHTO LRFD 3.6.1.2.5: a tyre of 10 in x 20 in; 3.6.1.2.2 and 3.6.1.2.3: wheels 6 ft apart, tandem axles
/// 4 ft apart.
Wheel truck_wheel() {
    return {kips(16), 10.0 * inch, 20.0 * inch, ft(6), {}};
}
Wheel tandem_wheel() {
    return {kips(12.5), 10.0 * inch, 20.0 * inch, ft(6), ft(4)};
}

Pressure pressure(const Wheel& wheel, double cover_in_feet, double factor = 1.15, bool impact = true) {
    return wheel_load(wheel, ft(cover_in_feet), share(factor), impact);
}

}  // namespace

TEST_CASE("pressure of truck and tandem wheels through fill is the table of the method") {
    // AASHTO LRFD 3.6.1.2.6, recomputed row by row (math): one lane, so 1.2 times, and impact, in the last
    // two columns. The rows of 1 ft are arithmetic only: the standard does not spread wheels through so
    // little.
    int refused = 0;
    for (const CsvRow& row : csv_rows("tests/data/wheel-load.csv", 24)) {
        const bool tandem = row.text("case").starts_with("tandem");
        const Wheel wheel = tandem ? tandem_wheel() : truck_wheel();
        const double cover = row.number("H_ft");
        const double factor = row.text("case").find("1.15") != std::string::npos ? 1.15 : 1.0;
        CAPTURE(row.text("case"), cover);
        CHECK_THAT(dynamic_allowance(ft(cover)),
                   is_within(share(row.number("IM_percent") / 100), share(1e-12)));
        if (cover < 2) {
            ++refused;
            CHECK_THROWS_MATCHES(pressure(wheel, cover, factor), Refused,
                                 refuses_domain("must be at least 2 ft (600 mm)"));
            continue;
        }
        const Pressure still = pressure(wheel, cover, factor, false);
        const Pressure moving = pressure(wheel, cover, factor, true);
        CHECK_THAT(still, is_within(ksf(row.number("P/A_ksf")), ksf(5.1e-6)));
        CHECK_THAT(1.2 * moving, is_within(ksf(row.number("P(1+IM)m/A_ksf")), ksf(5.1e-6)));
        CHECK_THAT(1.2 * moving, is_within(kpa(row.number("same_kPa")), kpa(5.1e-4)));
        // P counts every wheel that acts; the sides have four digits.
        const double area = row.number("w_w_ft") * row.number("l_w_ft");
        CHECK_THAT(still, is_near(ksf(row.number("P_kip") / area), 1e-4));
    }
    CHECK(refused == 3);
    // AASHTO LRFD 3.6.1.2.6, 3.6.2.2 by hand, the areas in feet.
    CHECK_THAT(pressure(truck_wheel(), 2), is_within(ksf(1.605936), ksf(5e-7)));
    CHECK_THAT(pressure(truck_wheel(), 2, 1.0), is_within(ksf(1.921283), ksf(5e-7)));
    CHECK_THAT(pressure(truck_wheel(), 5), is_within(ksf(0.407126), ksf(5e-7)));
}

TEST_CASE("dynamic allowance falls from 33 % at no cover to none at 8 ft", "[published]") {
    // AASHTO LRFD 3.6.2.2 (from memory): 33 (1.0 - 0.125 H) %, at least 0.
    const double rows[][2] = {{0, 33}, {2, 24.75}, {4, 16.5}, {6, 8.25}, {8, 0}, {10, 0}, {100, 0}};
    for (const auto& [cover, percent] : rows) {
        CAPTURE(cover);
        CHECK_THAT(dynamic_allowance(ft(cover)), is_within(share(percent / 100), share(1e-15)));
    }
    for (int i = 0; i < 80; ++i)
        REQUIRE(dynamic_allowance(ft(0.1 * i)) > dynamic_allowance(ft(0.1 * i + 0.1)));
    // 2.4384 m are 8 ft.
    CHECK(dynamic_allowance(2.4384 * metre) < share(1e-15));
    CHECK_THROWS_MATCHES(dynamic_allowance(ft(-1)), Refused, refuses_domain("cover"));
}

TEST_CASE("tyres interact from the published cover on", "[published]") {
    struct Row {
        double factor, spacing, tyre, published, tolerance;
    };
    const Row rows[] = {
        // Trade-association design data on highway live loads on concrete pipe, older LRFD (from memory).
        {1.15, 4, 20, 2.03, 0.005},
        {1.15, 4, 10, 2.76, 0.01},
        {1.0, 4, 20, 2.33, 0.005},
        {1.0, 4, 10, 3.17, 0.005},
        // Two wheels of one axle, by hand: (6 - 20/12)/1.15.
        {1.15, 6, 20, 3.768116, 5e-7},
    };
    for (const Row& row : rows) {
        CAPTURE(row.factor, row.spacing, row.tyre);
        CHECK_THAT(interaction_depth(ft(row.spacing), row.tyre * inch, share(row.factor)),
                   is_within(ft(row.published), ft(row.tolerance)));
    }
}

TEST_CASE("from the interaction depth on two wheels share one patch, and the pressure does not jump there") {
    // There the patches touch: P/(w l) of one is 2P/(2w l) of both. Deeper, both fall slower than one alone.
    Random random;
    for (int i = 0; i < 500; ++i) {
        Wheel wheel = tandem_wheel();
        wheel.load = kips(random.between(2, 20));
        wheel.wheel_spacing = ft(random.between(5, 8));
        wheel.axle_spacing = ft(random.between(4, 6));
        const Share factor = share(random.between(1, 1.75));
        const bool impact = random.whole(0, 1) == 1;
        const Length pairs[][2] = {{*wheel.wheel_spacing, wheel.tyre_width},
                                   {*wheel.axle_spacing, wheel.tyre_length}};
        for (const auto& [spacing, tyre] : pairs) {
            const Length depth = interaction_depth(spacing, tyre, factor);
            if (depth < ft(2.01)) continue;
            const auto at = [&](Length cover) { return wheel_load(wheel, cover, factor, impact).value(); };
            REQUIRE(at(depth - ft(1e-8)) == Approx(at(depth + ft(1e-8))).epsilon(1e-6));
            const double before = at(depth - ft(1e-4)) - at(depth - ft(2e-4));
            const double after = at(depth + ft(2e-4)) - at(depth + ft(1e-4));
            REQUIRE(before < 0);
            REQUIRE(after < 0);
            REQUIRE(after > before);
        }
    }
}

TEST_CASE("pressure of wheels falls with cover at every depth, interaction or not") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        Wheel wheel = random.whole(0, 1) == 1 ? tandem_wheel() : truck_wheel();
        if (random.whole(0, 2) == 0) wheel.wheel_spacing.reset();
        const double factor = random.between(1, 1.75);
        const bool impact = random.whole(0, 1) == 1;
        double cover = 2;
        Pressure before = pressure(wheel, cover, factor, impact);
        while (cover < 20) {
            cover += 0.05;
            const Pressure now = pressure(wheel, cover, factor, impact);
            CAPTURE(cover, factor, impact);
            REQUIRE(now < before);
            before = now;
        }
    }
}

TEST_CASE("one wheel alone spreads like a load on its patch, and a second wheel never relieves") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        Wheel alone = truck_wheel();
        alone.wheel_spacing.reset();
        const double cover = random.between(2, 12);
        const double factor = random.between(1, 1.75);
        // l = lt + f H: half of f to each side.
        REQUIRE(
            pressure(alone, cover, factor, false).value() ==
            Approx(spread_load(alone.load, alone.tyre_length, alone.tyre_width, ft(cover), batter(factor / 2))
                       .value())
                .epsilon(1e-12));
        REQUIRE(pressure(truck_wheel(), cover, factor, false) >= pressure(alone, cover, factor, false));
        Wheel tandem = truck_wheel();
        tandem.axle_spacing = ft(4);
        REQUIRE(pressure(tandem, cover, factor, false) >= pressure(truck_wheel(), cover, factor, false));
        REQUIRE(
            pressure(alone, cover, factor, true).value() ==
            Approx(pressure(alone, cover, factor, false).value() * (1 + dynamic_allowance(ft(cover)).value()))
                .epsilon(1e-12));
        Wheel heavier = alone;
        heavier.load = 2.0 * alone.load;
        REQUIRE(pressure(heavier, cover, factor).value() ==
                Approx(2 * pressure(alone, cover, factor).value()).epsilon(1e-12));
        if (factor < 1.7) REQUIRE(pressure(alone, cover, factor + 0.05) < pressure(alone, cover, factor));
    }
}

TEST_CASE("the bridge code asks at least what the older handbook table for flexible pipe asked") {
    // Handbook of Steel Drainage & Highway Construction Products, highway H-20 with impact (from memory):
    // a check of the order of size; the bridge code gives up to 2.1 times as much.
    const double rows[][2] = {{2, 800}, {3, 600}, {4, 400}, {5, 250}, {6, 200}, {7, 175}, {8, 100}};
    for (const auto& [cover, older] : rows) {
        CAPTURE(cover);
        const Pressure now = pressure(truck_wheel(), cover);
        CHECK(now >= psf(older));
        CHECK(now <= 2.1 * psf(older));
    }
}

TEST_CASE("wheels outside the standard are refused") {
    CHECK_THROWS_MATCHES(pressure(truck_wheel(), 1.96), Refused,
                         refuses_domain("AASHTO LRFD does not spread wheels through the fill"));
    CHECK_THROWS_MATCHES(pressure(truck_wheel(), -3), Refused, refuses_domain("cover"));
    // 2 ft in another unit, to the last digit, is 2 ft; its round metric form is within too, less is not.
    CHECK_NOTHROW(wheel_load(truck_wheel(), 600.0 * (0.001 * metre), share(1.15), true));
    CHECK_THROWS_MATCHES(wheel_load(truck_wheel(), 0.5999 * metre, share(1.15), true), Refused,
                         refuses_domain("cover (0.5999 m)"));
    CHECK_NOTHROW(wheel_load(truck_wheel(), 0.6096 * metre, share(1.15), true));
    CHECK_NOTHROW(wheel_load(truck_wheel(), 24.0 * inch, share(1.15), true));
    CHECK_NOTHROW(pressure(truck_wheel(), 2, 1));
    CHECK_NOTHROW(pressure(truck_wheel(), 2, 1.75));
    CHECK_THROWS_MATCHES(pressure(truck_wheel(), 2, 0.99), Refused, refuses_domain("from 1 to 1.75"));
    CHECK_THROWS_MATCHES(pressure(truck_wheel(), 2, 1.76), Refused, refuses_domain("from 1 to 1.75"));
    const auto with = [](auto change) {
        Wheel wheel = tandem_wheel();
        change(wheel);
        return pressure(wheel, 3);
    };
    CHECK_NOTHROW(with([](Wheel&) {}));
    CHECK_THROWS_MATCHES(with([](Wheel& w) { w.load = kips(0); }), Refused, refuses_domain("wheel load"));
    CHECK_THROWS_MATCHES(with([](Wheel& w) { w.tyre_length = ft(0); }), Refused,
                         refuses_domain("tyre length"));
    CHECK_THROWS_MATCHES(with([](Wheel& w) { w.tyre_width = ft(0); }), Refused, refuses_domain("tyre width"));
    CHECK_THROWS_MATCHES(with([](Wheel& w) { w.wheel_spacing = w.tyre_width; }), Refused,
                         refuses_domain("wheel spacing"));
    CHECK_THROWS_MATCHES(with([](Wheel& w) { w.axle_spacing = ft(0.5); }), Refused,
                         refuses_domain("leave it out where there is no second one"));
}

// Load classes.

TEST_CASE("classes of wheels and covers have the loads of their standards", "[published]") {
    struct Row {
        LoadClass load_class;
        double kilonewtons;
        double serviceability;  // 0: the standard has no such load
    };
    const double kip_in_kn = 4.4482216152605;
    const Row rows[] = {
        // AASHTO LRFD 3.6.1.2.2 and 3.6.1.2.3 (from memory): 16 kip and 12.5 kip.
        {LoadClass::aashto_truck_wheel, 16 * kip_in_kn, 0},
        {LoadClass::aashto_tandem_wheel, 12.5 * kip_in_kn, 0},
        // AS 5100.2 (from memory).
        {LoadClass::as5100_w80, 80, 0},
        // AS 3996:2006, Table 3.1, two independent pages.
        {LoadClass::as3996_a, 10, 6.7},
        {LoadClass::as3996_b, 80, 53},
        {LoadClass::as3996_c, 150, 100},
        {LoadClass::as3996_d, 210, 140},
        {LoadClass::as3996_e, 400, 267},
        {LoadClass::as3996_f, 600, 400},
        {LoadClass::as3996_g, 900, 600},
        // EN 124:2015, test loads, as in reproductions: the number of the class in kN.
        {LoadClass::en124_a15, 15, 0},
        {LoadClass::en124_b125, 125, 0},
        {LoadClass::en124_c250, 250, 0},
        {LoadClass::en124_d400, 400, 0},
        {LoadClass::en124_e600, 600, 0},
        {LoadClass::en124_f900, 900, 0},
    };
    for (const Row& row : rows) {
        CAPTURE(static_cast<int>(row.load_class));
        CHECK_THAT(class_load(row.load_class, {}), is_near(kn(row.kilonewtons)));
        if (row.serviceability > 0) {
            CHECK_THAT(class_load(row.load_class, LoadState::ultimate), is_near(kn(row.kilonewtons)));
            CHECK_THAT(class_load(row.load_class, LoadState::serviceability),
                       is_near(kn(row.serviceability)));
            // The same page: serviceability is two thirds of ultimate, after rounding.
            const double digit = row.serviceability < 10 ? 0.1 : 1;
            CHECK(std::abs(row.serviceability - row.kilonewtons * 2 / 3) < 0.51 * digit);
        } else {
            for (const LoadState state : {LoadState::ultimate, LoadState::serviceability})
                CHECK_THROWS_MATCHES(class_load(row.load_class, state), Refused,
                                     has_no_answer("leave the state out"));
        }
    }
    // The table has every class once, in the order of the enumeration.
    const std::vector<LoadClassRow>& table = load_class_table();
    REQUIRE(table.size() == std::size(rows));
    for (std::size_t i = 0; i < table.size(); ++i) CHECK(table[i].load_class == static_cast<LoadClass>(i));
    CHECK(static_cast<std::size_t>(LoadClass::en124_f900) + 1 == table.size());
    // HL-93 is two vehicles and has no one load.
    CHECK(static_cast<std::size_t>(LoadClass::aashto_hl93) == table.size());
    CHECK_THROWS_MATCHES(class_load(LoadClass::aashto_hl93, {}), Refused, has_no_answer("two vehicles"));
    CHECK_THROWS_MATCHES(class_load(static_cast<LoadClass>(table.size() + 1), {}), Refused,
                         refuses_value("unknown load class"));
}

}  // namespace undercroft::tests
