// Infiltration as it is approved, and the mound of groundwater under it.
#include "calc/water/soakaway.hpp"

#include "calc/water/mound.hpp"
#include "calc/water/soakage.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// Depths of rain of a consultant's calculation of 2017, a public planning document.
const RainTable planning_rain = [] {
    RainTable rain;
    for (const auto& [minute, depth] :
         {std::pair{10., 12.69}, {30, 19.84}, {60, 24.80}, {240, 35.38}, {600, 42.96}, {1440, 52.86}})
        rain.emplace_back(minutes(minute), mm(depth) / minutes(minute));
    return rain;
}();

const Speed per_day = ft(1) / hours(24);

}  // namespace

TEST_CASE("safety factors of CIRIA C753, Table 25.2", "[published]") {
    // As quoted in a public low-impact-development guide; the row above 1000 m2 from memory.
    struct Row {
        double area, none, minor, major;
    };
    for (const Row& row : {Row{1, 1.5, 2, 10}, Row{99.9, 1.5, 2, 10}, Row{100, 1.5, 3, 10},
                           Row{1000, 1.5, 3, 10}, Row{1000.1, 1.5, 5, 10}, Row{6550, 1.5, 5, 10}}) {
        CAPTURE(row.area);
        CHECK(soakage_factor(m2(row.area), SoakageFailure::none) == share(row.none));
        CHECK(soakage_factor(m2(row.area), SoakageFailure::minor) == share(row.minor));
        CHECK(soakage_factor(m2(row.area), SoakageFailure::major) == share(row.major));
    }
    CHECK_THROWS_MATCHES(soakage_factor(m2(0), SoakageFailure::none), Refused,
                         refuses_domain("drained area (0 m2)"));
}

TEST_CASE("a trench soakaway by the rule of BRE Digest 365", "[published]") {
    // A consultant's calculation of 2017: 690 m2, f 8.5e-6 m/s, trench 23.00 x 5.00 m, effective depth 0.80
    // m; inflow as printed (8.75, 13.69, 17.11, 24.41, 29.64 m3; the last row, 36.48, is a misprint
    // of 36.47), the rest recomputed.
    const Length perimeter = m(2 * (23 + 5));
    CHECK_THAT(soakaway_walls(perimeter, m(0.8)), is_near(m2(22.4)));
    struct Row {
        double minute, printed, inflow, outflow, stored;
    };
    const Row rows[] = {{10, 8.75, 8.7561, 0.11424, 8.64186},     {30, 13.69, 13.6896, 0.34272, 13.34688},
                        {60, 17.11, 17.1120, 0.68544, 16.42656},  {240, 24.41, 24.4122, 2.74176, 21.67044},
                        {600, 29.64, 29.6424, 6.85440, 22.78800}, {1440, 36.47, 36.4734, 16.45056, 20.02284}};
    const SoakawayDurations table =
        soakaway_durations(planning_rain, m2(690), perimeter, m(0.8), m_per_s(8.5e-6), share(1));
    REQUIRE(table.size() == 7);  // and the one that governs
    for (const Row& row : rows) {
        bool found = false;
        for (const auto& [duration, intensity, inflow, outflow, stored] : table) {
            if (std::abs(duration.value() - 60 * row.minute) > 1e-6) continue;
            found = true;
            CAPTURE(row.minute);
            CHECK_THAT(inflow, is_within(m3(row.printed), m3(0.0065)));
            CHECK_THAT(inflow, is_near(m3(row.inflow), 1e-6));
            CHECK_THAT(outflow, is_near(m3(row.outflow), 1e-9));
            CHECK_THAT(stored, is_near(m3(row.stored), 2e-6));
        }
        CHECK(found);
    }
    const auto storage = [&](double rate, double factor) {
        return soakaway_storage(planning_rain, m2(690), perimeter, m(0.8), m_per_s(rate), share(factor));
    };
    Volume most = m3(0);
    for (const auto& row : table) most = std::max(most, std::get<4>(row));
    CHECK_THAT(storage(8.5e-6, 1), is_near(most, 1e-9));
    CHECK(storage(8.5e-6, 1) > m3(22.788));
    CHECK(storage(8.5e-6, 2) > storage(8.5e-6, 1));
    CHECK_THAT(storage(8.5e-6, 2), is_near(storage(4.25e-6, 1)));
    CHECK_THAT(storage(0, 1), is_near(m3(36.4734), 1e-6));  // all that ever comes
    CHECK(storage(1, 1) == m3(0));
    // Half of it is gone after 0.5 S/(as50 f): 22.788 m3 in 59842 s (math).
    CHECK_THAT(soakaway_half_time(m3(22.788), perimeter, m(0.8), m_per_s(8.5e-6), share(1)),
               is_near(s(0.5 * 22.788 / (22.4 * 8.5e-6))));
    // Pit of 2.0 x 1.5 m, 1.5 m deep, 100 m2, 30 mm in an hour, f 2e-5 m/s: S 2.622 m3, 12485.714 s (math).
    const RainTable hour = {{minutes(60), mm_per_h(30)}, {minutes(61), mm_per_h(29)}};
    CHECK_THAT(std::get<4>(soakaway_durations(hour, m2(100), m(7), m(1.5), m_per_s(2e-5), share(1)).front()),
               is_near(m3(2.622), 1e-9));
    CHECK_THAT(soakaway_half_time(m3(2.622), m(7), m(1.5), m_per_s(2e-5), share(1)),
               is_near(s(12485.71429), 1e-9));
}

TEST_CASE("the rain that gives the greatest depth, and whether the table goes on beyond it") {
    const auto bed = [&](const RainTable& rain, auto function) {
        return function(rain, m2(690), m(23), m(5), share(0.4), m_per_s(8.5e-6), share(5));
    };
    const Time governing = bed(planning_rain, soakage_duration);
    CHECK(governing > minutes(60));
    CHECK(rain_reaches_beyond(planning_rain, governing));
    CHECK_FALSE(rain_reaches_beyond(planning_rain, minutes(1440)));
    CHECK_FALSE(rain_reaches_beyond(planning_rain, hours(24)));
    // A table that ends before it: the depth is less, and the end governs.
    const RainTable cut(planning_rain.begin(), planning_rain.begin() + 3);
    REQUIRE(minutes(60) < governing);
    CHECK_THAT(bed(cut, soakage_duration), is_near(minutes(60)));
    CHECK_FALSE(rain_reaches_beyond(cut, bed(cut, soakage_duration)));
    CHECK(bed(cut, soakage_depth) < bed(planning_rain, soakage_depth));
    // The depth is that of a storm as long.
    const RainTable just = {{0.999 * governing, rain_intensity(planning_rain, governing) * 1.0001},
                            {governing, rain_intensity(planning_rain, governing)}};
    CHECK_THAT(bed(just, soakage_depth), is_near(bed(planning_rain, soakage_depth), 2e-3));
    CHECK_THROWS_MATCHES(rain_reaches_beyond(planning_rain, s(0)), Refused,
                         refuses_domain("duration (0 min)"));
    CHECK_THROWS_MATCHES(
        soakage_duration(planning_rain, m2(0), m(1), m(1), share(0.4), m_per_s(1e-5), share(1)), Refused,
        refuses_domain("drained area"));
}

TEST_CASE("soakaways that cannot be are refused") {
    const auto storage = [](double area, double perimeter, double depth, double rate, double factor) {
        return soakaway_storage(planning_rain, m2(area), m(perimeter), m(depth), m_per_s(rate),
                                share(factor));
    };
    CHECK_THROWS_MATCHES(storage(0, 1, 1, 1, 1), Refused, refuses_domain("drained area (0 m2)"));
    CHECK_THROWS_MATCHES(storage(1, 0, 1, 1, 1), Refused, refuses_domain("perimeter (0 m)"));
    CHECK_THROWS_MATCHES(storage(1, 1, 0, 1, 1), Refused, refuses_domain("effective depth (0 m)"));
    CHECK_THROWS_MATCHES(storage(1, 1, 1, -1, 1), Refused, refuses_domain("rate"));
    CHECK_THROWS_MATCHES(storage(1, 1, 1, 1, 0.9), Refused,
                         refuses_domain("safety factor (0.9) must be 1 or more"));
    CHECK_THROWS_MATCHES(soakaway_half_time(m3(0), m(1), m(1), m_per_s(1), share(1)), Refused,
                         refuses_domain("stored volume (0 m3)"));
    CHECK_THROWS_MATCHES(soakaway_half_time(m3(1), m(1), m(1), m_per_s(0), share(1)), Refused,
                         refuses_domain("rate"));
}

TEST_CASE("Hantush's integral") {
    // Computed apart (math); odd in each argument.
    CHECK(hantush_integral(0.1, 0.1) == Approx(0.0607419572).epsilon(1e-9));
    CHECK(hantush_integral(0.5, 0.5) == Approx(0.5419678784).epsilon(1e-9));
    CHECK(hantush_integral(1, 1) == Approx(0.8923187778).epsilon(1e-9));
    CHECK(hantush_integral(0.2, 0.8) == Approx(0.3471028521).epsilon(1e-9));
    CHECK(hantush_integral(-0.2, 0.5) == Approx(-0.2961980157).epsilon(1e-9));
    CHECK(hantush_integral(10, 10) == Approx(1).epsilon(1e-9));
    CHECK(hantush_integral(0, 3) == 0);
    Random random;
    for (int i = 0; i < 60; ++i) {
        const double p = random.between(0.001, 3);
        const double q = random.between(0.001, 3);
        const double by_gsl = integral(
            [=](double u) { return std::erf(p / std::sqrt(u)) * std::erf(q / std::sqrt(u)); }, 0, 1, 1e-9);
        CAPTURE(p, q);
        REQUIRE(hantush_integral(p, q) == Approx(by_gsl).epsilon(1e-8).margin(1e-12));
    }
}

TEST_CASE("the mound of USGS SIR 2010-5102", "[published]") {
    // P. 23 and table 5: half sides 33.63 ft, 1.333 ft/d, K 4 ft/d, 10 ft, Sy 0.085, 1.5 d; rise in ft by the
    // report's spreadsheet, and recomputed with b iterated.
    const RechargeArea basin = {ft(67.26), ft(67.26), 1.333 * per_day};
    const Aquifer aquifer = {4.0 * per_day, share(0.085), ft(10)};
    struct Row {
        double x, published, recomputed;
    };
    for (const Row& row : {Row{0, 12.63, 12.633084}, Row{6.6, 12.50, 12.495768}, Row{20, 11.31, 11.306244},
                           Row{40, 6.63, 6.621161}, Row{75, 1.07, 1.060259}}) {
        CAPTURE(row.x);
        const Length rise = mound_rise(ft(row.x), ft(0), basin, aquifer, hours(36), {});
        CHECK_THAT(rise, is_within(ft(row.published), ft(0.015)));
        CHECK_THAT(rise, is_near(ft(row.recomputed), 1e-6));
    }
    // 30 x 10 m, 0.1 m/d, K 1 m/d, 4 m, Sy 0.2, 10 d (math).
    const RechargeArea bed = {m(30), m(10), m(0.1) / hours(24)};
    const Aquifer sand = {m(1) / hours(24), share(0.2), m(4)};
    struct Place {
        double x, y, rise;
    };
    for (const Place& place : {Place{0, 0, 1.257009959}, Place{15, 0, 0.788245519}, Place{0, 5, 1.066928344},
                               Place{15, 5, 0.677526689}, Place{30, 0, 0.161912032}}) {
        CAPTURE(place.x, place.y);
        CHECK_THAT(mound_rise(m(place.x), m(place.y), bed, sand, hours(240), {}),
                   is_near(m(place.rise), 1e-8));
        CHECK_THAT(mound_rise(m(-place.x), m(-place.y), bed, sand, hours(240), {}),
                   is_near(m(place.rise), 1e-8));
    }
}

TEST_CASE("after the recharge stops the mound sinks") {
    // Half sides 50 ft, 0.01 ft/d, K 0.1 ft/d, Sy 0.1, 10 ft, 100 d of recharge, b = 10 ft:
    // centre 6.062988984 ft at 100 d, 5.764850800 at 110 d, 3.538610902 at 200 d (math).
    const RechargeArea basin = {ft(100), ft(100), 0.01 * per_day};
    const Aquifer aquifer = {0.1 * per_day, share(0.1), ft(10)};
    const auto growth = [&](double day) {
        return mound_growth(m(0), m(0), basin, aquifer, hours(24 * day), ft(10));
    };
    const auto rise_of = [&](Area more) { return Length(sqrt(ft(10) * ft(10) + more) - ft(10)); };
    CHECK_THAT(rise_of(growth(100)), is_near(ft(6.062988984), 1e-9));
    CHECK_THAT(rise_of(growth(110) - growth(10)), is_near(ft(5.764850800), 1e-9));
    CHECK_THAT(rise_of(growth(200) - growth(100)), is_near(ft(3.538610902), 1e-9));
    const auto rise = [&](double day, std::optional<Time> stop) {
        return mound_rise(m(0), m(0), basin, aquifer, hours(24 * day), stop);
    };
    CHECK(rise(100, hours(2400)) == rise(100, {}));
    CHECK(rise(50, hours(2400)) == rise(50, {}));
    CHECK(rise(110, hours(2400)) < rise(100, {}));
    CHECK(rise(200, hours(2400)) < rise(110, hours(2400)));
    CHECK(rise(1e5, hours(2400)) < ft(0.05));
}

TEST_CASE("the mound is highest in the middle, grows with time and recharge, and holds the water soaked in") {
    const RechargeArea bed = {m(20), m(12), m(0.05) / hours(24)};
    const Aquifer sand = {m(2) / hours(24), share(0.15), m(6)};
    const auto rise = [&](double x, double y, double day) {
        return mound_rise(m(x), m(y), bed, sand, hours(24 * day), {});
    };
    for (double x = 1; x < 60; x += 3) {
        CHECK(rise(x, 0, 10) < rise(x - 1, 0, 10));
        CHECK(rise(0, x, 10) < rise(0, x - 1, 10));
        CHECK(rise(x, 0, 12) > rise(x, 0, 10));
    }
    // Sy times the volume of the mound is what soaked in: (h^2 - hi^2)/(2 b) of the linear equation, over the
    // plane.
    double volume = 0;
    const double grid = 4;
    for (double x = -198; x < 200; x += grid)
        for (double y = -198; y < 200; y += grid)
            volume += mound_growth(m(x), m(y), bed, sand, hours(240), m(6)).value() / (2 * 6) * grid * grid;
    CHECK(0.15 * volume == Approx(20 * 12 * 0.05 * 10).epsilon(2e-3));
    CHECK(rise(5000, 0, 1) == m(0));
    RechargeArea more = bed;
    more.recharge *= 2.0;
    CHECK(mound_rise(m(0), m(0), more, sand, hours(240), {}) > 1.8 * rise(0, 0, 10));
}

TEST_CASE("mounds that cannot be are refused") {
    const RechargeArea bed = {m(20), m(12), m(0.05) / hours(24)};
    const Aquifer sand = {m(2) / hours(24), share(0.15), m(6)};
    const auto rise = [&](const RechargeArea& area, const Aquifer& aquifer, double day,
                          std::optional<Time> stop = {}) {
        return mound_rise(m(0), m(0), area, aquifer, hours(24 * day), stop);
    };
    CHECK_NOTHROW(rise(bed, sand, 1));
    CHECK_THROWS_MATCHES(rise({m(0), m(1), bed.recharge}, sand, 1), Refused, refuses_domain("length (0 m)"));
    CHECK_THROWS_MATCHES(rise({m(1), m(0), bed.recharge}, sand, 1), Refused, refuses_domain("width (0 m)"));
    CHECK_THROWS_MATCHES(rise({m(1), m(1), m_per_s(0)}, sand, 1), Refused, refuses_domain("recharge"));
    CHECK_THROWS_MATCHES(rise(bed, {m_per_s(0), share(0.1), m(1)}, 1), Refused,
                         refuses_domain("permeability"));
    CHECK_THROWS_MATCHES(rise(bed, {m_per_s(1), share(1), m(1)}, 1), Refused,
                         refuses_domain("specific yield (1)"));
    CHECK_THROWS_MATCHES(rise(bed, {m_per_s(1), share(0.1), m(0)}, 1), Refused,
                         refuses_domain("saturated depth (0 m)"));
    CHECK_THROWS_MATCHES(rise(bed, sand, 0), Refused, refuses_domain("time (0 min)"));
    CHECK_THROWS_MATCHES(rise(bed, sand, 1, s(0)), Refused, refuses_domain("recharge time (0 min)"));
}

}  // namespace undercroft::tests
