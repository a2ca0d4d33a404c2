// The storm that fills a bed most, of all durations.
#include "calc/water/governing_storm.hpp"

#include "calc/water/required_storage.hpp"
#include "calc/water/routing.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// i = 1200/(12 + D)^0.85 mm/h at close durations, so that the lines between them do not matter.
RainTable formula_rain() {
    std::vector<Time> durations;
    for (double t = 5; t < 700; t *= 1.02) durations.push_back(minutes(t));
    return rain_formula_table(mm_per_h(1200), minutes(12), share(0.85), durations);
}

const RainTable ten_rows = [] {
    RainTable rain;
    for (const auto& [t, i] : {std::pair{5., 138.},
                               {10, 108},
                               {15, 91},
                               {30, 63},
                               {60, 41},
                               {120, 25.5},
                               {180, 19.1},
                               {360, 11.6},
                               {720, 6.9},
                               {1440, 4.1}})
        rain.emplace_back(minutes(t), mm_per_h(i));
    return rain;
}();

StorageTable prism(double depth, double volume) {
    return {{{m(0), m3(0)}, {m(depth), m3(volume)}}};
}

const RatingTable orifice =
    outlet_rating({{OutletKind::orifice, m(0), as_quantity(mm(112)), {}, {}, {}}}, m(1.5), count(30));
const Catchment site = {share(0.8), m2(8850), minutes(8)};

GoverningStorm governing(const RainTable& rain, const StormCourse& course,
                         const StorageTable& bed = prism(1.5, 470), std::optional<Time> step = {}) {
    return governing_storm(rain, site, bed, orifice, course, m(0), {}, step);
}

/// What one storm leaves, by the functions that a sheet would call.
FloodMarks one(const RainTable& rain, Time duration, const StormCourse& course, Time step,
               const StorageTable& bed = prism(1.5, 470)) {
    const Hydrograph inflow = time_area_hydrograph(
        site.coefficient, site.area, storm_of(rain, duration, step, course), site.time_of_concentration);
    return flood_marks(inflow, bed, orifice, {}, m(0));
}

}  // namespace

TEST_CASE("the governing duration with a steady outflow") {
    // C 0.8, A 2 ha, tc 10 min, Qo 0.05 m3/s: trapezoid inflow; stored 287.157, 307.149, 232.970 m3 at 30,
    // 60, 120 min, greatest 308.824819 m3 at 52.2 min (math).
    const RatingTable steady = {{m(0), m3_per_s(0.05)}, {m(1), m3_per_s(0.05)}};
    const RainTable rain = formula_rain();
    const Catchment catchment = {share(0.8), m2(2e4), minutes(10)};
    const GoverningStorm storm =
        governing_storm(rain, catchment, prism(1, 1000), steady, StormShape::block, m(0), {}, {});
    CHECK_THAT(storm.marks.stored, is_near(m3(308.824819), 2e-5));
    CHECK_THAT(storm.duration, is_within(minutes(52.2), minutes(0.15)));
    for (const auto& [minute, stored] : {std::pair{30., 287.157}, {60, 307.149}, {120, 232.970}}) {
        const Hydrograph inflow = storm_runoff(rain, catchment, minutes(minute), StormShape::block, {});
        CHECK_THAT(flood_marks(inflow, prism(1, 1000), steady, {}, m(0)).stored, is_near(m3(stored), 5e-5));
    }
    // And of the peak, 0.155094 m3/s at 52.2 min.
    CHECK_THAT(storm.marks.inflow, is_near(m3_per_s(0.155094), 2e-3));
}

TEST_CASE("the governing duration of a linear store") {
    // The same rain and catchment, no time of concentration to speak of, K 90 min: q (1 - exp(-D/K)) is
    // greatest, 0.068459975 m3/s, at 59.23 min (math).
    const Catchment catchment = {share(0.8), m2(2e4), s(1e-3)};
    const RatingTable linear = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.1)}};
    const GoverningStorm storm =
        governing_storm(formula_rain(), catchment, prism(1, 540), linear, StormShape::block, m(0), {}, {});
    CHECK_THAT(storm.marks.outflow, is_near(m3_per_s(0.068459975), 2e-5));
    CHECK_THAT(storm.duration, is_within(minutes(59.23), minutes(0.3)));
}

TEST_CASE("no duration fills the bed more than the governing one") {
    StormPattern pattern;
    for (const double part : {0., 0.05, 0.12, 0.3, 0.7, 0.85, 0.93, 1.})
        pattern.emplace_back(minutes(10.0 * static_cast<double>(pattern.size())), share(part));
    const GoverningStorm by_block = governing(ten_rows, StormShape::block);
    const GoverningStorm by_pattern = governing(ten_rows, pattern);
    for (double t = 5; t <= 1440; t *= 1.01) {
        const Hydrograph block = storm_runoff(ten_rows, site, minutes(t), StormShape::block, {});
        const Hydrograph shaped = storm_runoff(ten_rows, site, minutes(t), pattern, {});
        REQUIRE(flood_marks(block, prism(1.5, 470), orifice, {}, m(0)).depth <=
                by_block.marks.depth * (1 + 1e-9));
        REQUIRE(flood_marks(shaped, prism(1.5, 470), orifice, {}, m(0)).depth <=
                by_pattern.marks.depth * (1 + 1e-9));
    }
    CHECK_THAT(by_block.marks.depth,
               is_near(one(ten_rows, by_block.duration, StormShape::block, by_block.duration).depth));
    // A peaked storm fills it more than a steady one of the same depths.
    CHECK(by_pattern.marks.depth > by_block.marks.depth);
    // A list of tried storms can miss it: 10, 20, 240, 480, 1440 min give 6 % less.
    Length tried = m(0);
    for (const double t : {10., 20., 240., 480., 1440.})
        tried = std::max(tried, one(ten_rows, minutes(t), StormShape::block, minutes(t)).depth);
    CHECK(tried < 0.97 * by_block.marks.depth);
}

TEST_CASE("a nested storm of whole steps governs over every other number of them") {
    for (const double step : {5., 10., 30.}) {
        const GoverningStorm nested =
            governing(ten_rows, StormShape::alternating, prism(1.5, 470), minutes(step));
        Length deepest = m(0);
        for (double t = step; t <= 1440; t += step)
            deepest =
                std::max(deepest, one(ten_rows, minutes(t), StormShape::alternating, minutes(step)).depth);
        CAPTURE(step);
        CHECK_THAT(nested.marks.depth, is_near(deepest, 1e-9));
        CHECK(is_whole(nested.duration / minutes(step)));
        CHECK(nested.marks.depth > governing(ten_rows, StormShape::block).marks.depth);
    }
    // Left out, the step is the table's shortest duration.
    CHECK(governing(ten_rows, StormShape::alternating).marks.depth ==
          governing(ten_rows, StormShape::alternating, prism(1.5, 470), minutes(5)).marks.depth);
}

TEST_CASE("an NRCS storm lasts a day") {
    const GoverningStorm storm = governing(ten_rows, StormShape::type_ii);
    CHECK_THAT(storm.duration, is_near(hours(24)));
    CHECK_THAT(storm.marks.depth, is_near(one(ten_rows, hours(24), StormShape::type_ii, hours(0.1)).depth));
    const RainTable short_rain(ten_rows.begin(), ten_rows.end() - 1);
    CHECK_THROWS_MATCHES(governing(short_rain, StormShape::type_ii), Refused,
                         has_no_answer("outside the rain table"));
}

TEST_CASE("when the bed is too small the storm that spills most governs") {
    const GoverningStorm storm = governing(ten_rows, StormShape::block, prism(1.5, 120));
    CHECK(storm.marks.depth == m(1.5));
    CHECK(storm.marks.spilled > m3(50));
    for (double t = 5; t <= 1440; t *= 1.05) {
        const Hydrograph block = storm_runoff(ten_rows, site, minutes(t), StormShape::block, {});
        REQUIRE(flood_marks(block, prism(1.5, 120), orifice, {}, m(0)).spilled <=
                storm.marks.spilled * (1 + 1e-9));
    }
    // A surface above takes some of it.
    const StorageTable hollow = {{{m(1.5), m3(0)}, {m(1.6), m3(30)}}};
    const RatingTable higher =
        outlet_rating({{OutletKind::orifice, m(0), as_quantity(mm(112)), {}, {}, {}}}, m(1.6), count(32));
    const GoverningStorm ponded =
        governing_storm(ten_rows, site, prism(1.5, 120), higher, StormShape::block, m(0), hollow, {});
    CHECK(ponded.marks.spilled < storm.marks.spilled - m3(29));
}

TEST_CASE(
    "it is what the storage required comes to when the release is steady and the catchment answers at once") {
    const RatingTable steady = {{m(0), m3_per_s(0.02)}, {m(1), m3_per_s(0.02)}};
    const Catchment catchment = {share(0.8), m2(8850), s(1e-3)};
    const GoverningStorm storm =
        governing_storm(ten_rows, catchment, prism(1, 1000), steady, StormShape::block, m(0), {}, {});
    CHECK_THAT(storm.marks.stored,
               is_near(storage_required(ten_rows, share(0.8), m2(8850), m3_per_s(0.02), {}), 1e-6));
}

TEST_CASE("a search that cannot be is refused") {
    const auto search = [&](const Catchment& catchment, double from, std::optional<Time> step,
                            const StormCourse& course = StormShape::alternating) {
        return governing_storm(ten_rows, catchment, prism(1.5, 470), orifice, course, m(from), {}, step);
    };
    CHECK_THROWS_MATCHES(search({share(0), m2(1), s(60)}, 0, {}), Refused, refuses_domain("coefficient (0)"));
    CHECK_THROWS_MATCHES(search({share(1), m2(0), s(60)}, 0, {}), Refused, refuses_domain("area (0 m2)"));
    CHECK_THROWS_MATCHES(search({share(1), m2(1), s(0)}, 0, {}), Refused,
                         refuses_domain("time of concentration (0 min)"));
    CHECK_THROWS_MATCHES(search(site, 2, {}), Refused, refuses_domain("initial depth (2 m)"));
    CHECK_THROWS_MATCHES(search(site, 0, s(0)), Refused, refuses_domain("step (0 min)"));
    CHECK_THROWS_MATCHES(search(site, 0, hours(30)), Refused,
                         refuses_domain("step (1800 min) must fit into the durations"));
    CHECK_THROWS_MATCHES(search(site, 0, minutes(2)), Refused, has_no_answer("outside the rain table"));
    CHECK_THROWS_MATCHES(search(site, 0, {}, StormPattern{{s(0), share(0)}, {s(60), share(0.9)}}), Refused,
                         refuses_domain("must end at 100 %"));
    CHECK_THROWS_MATCHES(storm_runoff(ten_rows, site, s(0), StormShape::block, {}), Refused,
                         refuses_domain("duration (0 min)"));
}

}  // namespace undercroft::tests
