// Storms with a shape.
#include "calc/water/hyetograph.hpp"

#include "calc/water/nrcs_storm.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// NOAA Atlas 14, Fort Myers FL, 100 years, to 2 h (inches).
const RainTable fort_myers = [] {
    const std::pair<double, double> rows[] = {{5, 1.15},  {10, 1.68}, {15, 2.05},
                                              {30, 3.31}, {60, 4.38}, {120, 5.46}};
    RainTable rain;
    for (const auto& [minute, depth] : rows)
        rain.emplace_back(minutes(minute), inches(depth) / minutes(minute));
    return rain;
}();

std::vector<double> increments(const Hyetograph& storm, Length unit) {
    std::vector<double> increments;
    for (std::size_t i = 1; i < storm.size(); ++i)
        increments.push_back((std::get<1>(storm[i]) - std::get<1>(storm[i - 1])) / unit);
    return increments;
}

RainTable random_rain(Random& random) {
    RainTable rain = {{minutes(5), mm_per_h(random.between(50, 200))}};
    while (rain.size() < 8) {
        const auto& [t, i] = rain.back();
        const double longer = random.between(1.3, 3);
        rain.emplace_back(longer * t, i * std::pow(longer, -random.between(0.3, 0.95)));
    }
    return rain;
}

}  // namespace

TEST_CASE("alternating blocks of a public rain table") {
    // NOAA Atlas 14, Fort Myers FL, 100 years, 120 min in 10-min blocks, log-log between rows (math).
    const double placed[] = {0.158540, 0.183159, 0.220036, 0.350846, 0.809007, 1.680000,
                             0.820993, 0.408054, 0.311100, 0.199519, 0.169756, 0.148991};
    const Hyetograph storm = storm_of(fort_myers, minutes(120), minutes(10), StormShape::alternating);
    const std::vector<double> blocks = increments(storm, inches(1));
    REQUIRE(blocks.size() == 12);
    for (std::size_t k = 0; k < 12; ++k) CHECK(blocks[k] == Approx(placed[k]).margin(6e-7));
    CHECK(std::get<1>(storm.back()) == rain_depth(fort_myers, minutes(120)));
}

TEST_CASE("alternating blocks of Chow, Maidment and Mays, Example 14.4.1", "[published]") {
    // i = 96.6/(t^0.97 + 13.90) in/h, Denver, 10 years, 2 h in 10-min blocks (from memory, recomputed).
    RainTable denver;
    for (int t = 10; t <= 120; t += 10)
        denver.emplace_back(minutes(t), 96.6 / (std::pow(t, 0.97) + 13.90) * inches(1) / hours(1));
    const double placed[] = {0.0242, 0.0334, 0.0497, 0.0838, 0.1777, 0.6930,
                             0.3076, 0.1172, 0.0633, 0.0403, 0.0282, 0.0211};
    const std::vector<double> blocks =
        increments(storm_of(denver, minutes(120), minutes(10), StormShape::alternating), inches(1));
    REQUIRE(blocks.size() == 12);
    for (std::size_t k = 0; k < 12; ++k) CHECK(blocks[k] == Approx(placed[k]).margin(6e-5));
}

TEST_CASE("a nested storm holds the rain of every shorter duration, its greatest block in the middle") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        RainTable rain = random_rain(random);
        if (i % 2 == 0) rain.erase(rain.begin() + 1, rain.end() - 1);  // a power law
        const int n = random.whole(1, 40);
        const Time step = minutes(random.between(5, 10));
        if (static_cast<double>(n) * step > std::get<0>(rain.back())) continue;
        const Hyetograph storm = storm_of(rain, static_cast<double>(n) * step, step, StormShape::alternating);
        REQUIRE(storm.size() == static_cast<std::size_t>(n) + 1);
        const auto middle = static_cast<std::size_t>((n - 1) / 2);
        const std::vector<double> blocks = increments(storm, m(1));
        for (const double block : blocks) REQUIRE(block <= blocks[middle] * (1 + 1e-12));
        for (int k = 1; k <= n; ++k) {  // the greatest depth of k steps in a row
            Length most = m(0);
            for (std::size_t from = 0; from + static_cast<std::size_t>(k) < storm.size(); ++from)
                most = std::max(most, Length(std::get<1>(storm[from + static_cast<std::size_t>(k)]) -
                                             std::get<1>(storm[from])));
            CAPTURE(i, n, k);
            // Where the table has corners, blocks sorted by size can hold a little more.
            const Length wanted = rain_depth(rain, static_cast<double>(k) * step);
            REQUIRE(most >= wanted * (1 - 1e-12));
            if (i % 2 == 0) REQUIRE(most <= wanted * (1 + 1e-9));
        }
    }
}

TEST_CASE("every shape keeps the depth of the table to the last digit, and never falls") {
    Random random;
    const StormPattern pattern = {
        {hours(0), share(0)}, {hours(1), share(0.1)}, {hours(2), share(0.7)}, {hours(3), share(1)}};
    for (int i = 0; i < 100; ++i) {
        const RainTable rain = random_rain(random);
        const Time step = minutes(random.between(5, 8));
        const Time duration = static_cast<double>(random.whole(1, 10)) * step;
        for (const StormCourse& course :
             {StormCourse(StormShape::block), StormCourse(StormShape::alternating), StormCourse(pattern)}) {
            const Hyetograph storm = storm_of(rain, duration, step, course);
            REQUIRE(std::get<1>(storm.back()) == rain_depth(rain, duration));
            REQUIRE(std::get<0>(storm.back()) == duration);
            REQUIRE(std::get<0>(storm.front()) == s(0));
            for (const double block : increments(storm, m(1))) REQUIRE(block >= 0);
        }
    }
    // A step that does not divide the duration: a shorter last one.
    CHECK(storm_of(fort_myers, minutes(25), minutes(10), StormShape::block).size() == 4);
    CHECK_THAT(std::get<1>(storm_of(fort_myers, minutes(20), minutes(5), StormShape::block)[1]),
               is_near(Length(rain_depth(fort_myers, minutes(20)) / 4.0)));
}

TEST_CASE("hourly depths of the NRCS's storms, and ratios of NEH 630", "[published]") {
    // 100 mm: hourly depths from the table of ratios (seen in two transcriptions).
    const double type_ii[] = {1.05,  1.15, 1.25, 1.35, 1.50, 1.70, 1.90, 2.10, 2.70, 3.40, 5.40, 42.80,
                              10.90, 4.80, 3.35, 2.65, 2.18, 1.92, 1.67, 1.43, 1.27, 1.23, 1.17, 1.13};
    const double type_i[] = {1.74, 1.76, 1.90, 2.20, 2.40, 2.50, 3.10, 3.80, 6.00, 26.10, 10.80, 6.10,
                             4.80, 3.80, 3.20, 3.00, 2.80, 2.60, 2.40, 2.20, 2.00, 1.80,  1.60,  1.40};
    const auto hourly = [](StormShape shape) {
        return increments(storm_of_depth(mm(100), hours(24), hours(1), shape), mm(1));
    };
    for (std::size_t h = 0; h < 24; ++h) {
        CHECK(hourly(StormShape::type_ii)[h] == Approx(type_ii[h]).margin(1e-9));
        CHECK(hourly(StormShape::type_i)[h] == Approx(type_i[h]).margin(1e-9));
    }
    // Between the rows straight: type II 0.3926 at 11.75 h, type I 0.4891 at 9.95 h (rounded).
    const auto at = [](StormShape shape, double hour) {
        return std::get<1>(storm_of_depth(m(1), hours(24), hours(hour), shape)[1]).value();
    };
    CHECK(at(StormShape::type_ii, 11.75) == Approx(0.3926).margin(6e-5));
    CHECK(at(StormShape::type_i, 9.95) == Approx(0.4891).margin(6e-5));
    // USDA NEH Part 630, ch. 4: greatest shares of type II in 30 min, 1, 2, 3, 6 and 12 h.
    const Table<Time, Share> storm = nrcs_storm(RainType::type_ii);
    const auto greatest = [&](std::size_t rows) {
        double most = 0;
        for (std::size_t i = 0; i + rows < storm.size(); ++i)
            most = std::max(most, (std::get<1>(storm[i + rows]) - std::get<1>(storm[i])).value());
        return most;
    };
    CHECK(greatest(5) == Approx(0.380).margin(6e-4));
    CHECK(greatest(10) == Approx(0.454).margin(6e-4));
    CHECK(greatest(20) == Approx(0.538).margin(6e-4));
    CHECK(greatest(30) == Approx(0.595).margin(6e-4));
    CHECK(greatest(60) == Approx(0.707).margin(6e-4));
    CHECK(greatest(120) == Approx(0.841).margin(6e-4));
    for (const RainType type : {RainType::type_i, RainType::type_ia, RainType::type_ii, RainType::type_iii}) {
        const Table<Time, Share> shares = nrcs_storm(type);
        CHECK(std::get<1>(shares.front()) == share(0));
        CHECK(std::get<1>(shares.back()) == share(1));
        CHECK_THAT(std::get<0>(shares.back()), is_near(hours(24)));
        for (std::size_t i = 1; i < shares.size(); ++i)
            CHECK(std::get<1>(shares[i]) > std::get<1>(shares[i - 1]));
        // Symmetric tables have half at noon; type IA at about 8 h.
    }
    CHECK(std::get<1>(nrcs_storm(RainType::type_iii)[120]) == share(0.5));
    CHECK(std::get<1>(nrcs_storm(RainType::type_ia)[16]) == share(0.425));
    CHECK_THROWS_MATCHES(storm_of_depth(mm(100), hours(12), hours(1), StormShape::type_ii), Refused,
                         refuses_domain("must be 24 h"));
}

TEST_CASE("a pattern of cumulative shares of a textbook", "[published]") {
    // Bedient, Huber and Vieux, Hydrology and Floodplain Analysis, Ex. 6-4 (seen): 7.32 in by an older,
    // hourly type II.
    const double percent[] = {0,    1.0,  2.2,  3.55, 4.91, 6.2,  8.1,  10,   12.1, 14.7, 18.6, 23.5, 66.0,
                              77.4, 82.1, 85.3, 88.1, 90.1, 92.2, 93.5, 94.8, 96.1, 97.4, 98.7, 100};
    const double inches_printed[] = {0,    0.07, 0.16, 0.26, 0.36, 0.45, 0.59, 0.73, 0.89,
                                     1.08, 1.36, 1.72, 4.83, 5.67, 6.01, 6.24, 6.45, 6.60,
                                     6.75, 6.84, 6.94, 7.03, 7.13, 7.22, 7.32};
    StormPattern pattern;
    for (std::size_t h = 0; h < 25; ++h)
        pattern.emplace_back(hours(static_cast<double>(h)), share(percent[h] / 100));
    const Hyetograph storm = storm_of_depth(inches(7.32), hours(24), hours(1), pattern);
    for (std::size_t h = 0; h < 25; ++h)
        CHECK_THAT(std::get<1>(storm[h]), is_within(inches(inches_printed[h]), inches(0.0055)));
    const std::vector<double> blocks = increments(storm, inches(1));
    CHECK(*std::max_element(blocks.begin(), blocks.end()) == Approx(3.11).margin(0.005));
    // Stretched: the same shares of a storm half as long.
    const Hyetograph half = storm_of_depth(inches(7.32), hours(12), minutes(30), pattern);
    for (std::size_t h = 0; h < 25; ++h)
        CHECK_THAT(std::get<1>(half[h]), is_within(std::get<1>(storm[h]), mm(1e-9)));
}

TEST_CASE("rain by a formula", "[published]") {
    // i = 1200/(12 + t)^0.85 mm/h, t in min (math); a power law is straight in logarithms: 42.7413865179 mm/h
    // at 30 min between 100 at 10 and 25 at 60 (math).
    CHECK_THAT(rain_formula(mm_per_h(1200), minutes(12), share(0.85), minutes(30)),
               is_near(mm_per_h(1200 / std::pow(42, 0.85))));
    const double c = std::log(4) / std::log(6);
    CHECK_THAT(rain_formula(mm_per_h(100 * std::pow(10, c)), minutes(0), share(c), minutes(30)),
               is_near(mm_per_h(42.7413865179), 1e-10));
    const RainTable table =
        rain_formula_table(mm_per_h(100 * std::pow(10, c)), minutes(0), share(c), {minutes(10), minutes(60)});
    CHECK_THAT(rain_intensity(table, minutes(30)), is_near(mm_per_h(42.7413865179), 1e-10));
    CHECK_THROWS_MATCHES(rain_formula(mm_per_h(0), minutes(1), share(0.8), minutes(1)), Refused,
                         refuses_domain("a (0 mm/h)"));
    CHECK_THROWS_MATCHES(rain_formula(mm_per_h(9), minutes(-1), share(0.8), minutes(1)), Refused,
                         refuses_domain("b (-1 min)"));
    CHECK_THROWS_MATCHES(rain_formula(mm_per_h(9), minutes(1), share(0), minutes(1)), Refused,
                         refuses_domain("c (0)"));
    CHECK_THROWS_MATCHES(rain_formula(mm_per_h(9), minutes(1), share(2), minutes(1)), Refused,
                         refuses_domain("c (2)"));
    CHECK_THROWS_MATCHES(rain_formula(mm_per_h(9), minutes(1), share(1), minutes(0)), Refused,
                         refuses_domain("duration (0 min)"));
    CHECK_THROWS_MATCHES(rain_formula_table(mm_per_h(9), minutes(1), share(1), {minutes(2), minutes(1)}),
                         Refused, refuses_domain("must be longer"));
}

TEST_CASE("storms that cannot be are refused") {
    const auto storm = [](double duration, double step, const StormCourse& course) {
        return storm_of(fort_myers, minutes(duration), minutes(step), course);
    };
    CHECK_THROWS_MATCHES(storm(0, 5, StormShape::block), Refused, refuses_domain("duration (0 min)"));
    CHECK_THROWS_MATCHES(storm(60, 0, StormShape::block), Refused, refuses_domain("step (0 min)"));
    CHECK_THROWS_MATCHES(storm(60, 61, StormShape::block), Refused,
                         refuses_domain("step (61 min) must be at most the duration (60 min)"));
    CHECK_THROWS_MATCHES(storm(60, 25, StormShape::alternating), Refused,
                         refuses_domain("duration (60 min) must be a whole number of steps (25 min)"));
    CHECK_THROWS_MATCHES(storm(60, 2, StormShape::alternating), Refused,
                         has_no_answer("duration (2 min) is outside the rain table"));
    CHECK_THROWS_MATCHES(storm(180, 10, StormShape::block), Refused, has_no_answer("outside the rain table"));
    CHECK_THROWS_MATCHES(storm_of({{minutes(10), mm_per_h(100)}, {minutes(60), mm_per_h(10)}}, minutes(60),
                                  minutes(10), StormShape::alternating),
                         Refused, refuses_domain("alternating blocks need depths that rise"));
    const auto pattern = [&](StormPattern rows) { return storm(60, 10, rows); };
    using Row = StormPattern::value_type;
    const Row begin = {hours(0), share(0)};
    const Row end = {hours(2), share(1)};
    CHECK_NOTHROW(pattern({begin, end}));
    CHECK_THROWS_MATCHES(pattern({begin}), Refused, refuses_domain("at least two rows"));
    CHECK_THROWS_MATCHES(pattern({begin, {hours(2), share(0.98)}}), Refused,
                         refuses_domain("the pattern must end at 100 %, not at 0.98"));
    CHECK_THROWS_MATCHES(pattern({begin, {hours(1), share(0.6)}, {hours(1.5), share(0.5)}, end}), Refused,
                         refuses_domain("cumulative share (0.5) of the pattern must not be below"));
    CHECK_THROWS_MATCHES(pattern({begin, {hours(1), share(0.6)}, {hours(1), share(0.7)}, end}), Refused,
                         refuses_domain("time (60 min) of the pattern must be later"));
    CHECK_THROWS_MATCHES(pattern({{hours(0), share(0.1)}, end}), Refused,
                         refuses_domain("must begin with time 0 and 0 %"));
    CHECK_THROWS_MATCHES(pattern({{hours(1), share(0)}, end}), Refused,
                         refuses_domain("must begin with time 0 and 0 %"));
    CHECK_THROWS_MATCHES(storm_of_depth(mm(0), hours(1), minutes(5), StormShape::block), Refused,
                         refuses_domain("depth (0 m)"));
    CHECK_THROWS_MATCHES(storm_of_depth(m(6), hours(1), minutes(5), StormShape::block), Refused,
                         refuses_domain("is it in mm?"));
    CHECK_THROWS_MATCHES(storm_of_depth(mm(6), hours(1), minutes(5), StormShape::alternating), Refused,
                         refuses_domain("alternating blocks need a rain table"));
}

}  // namespace undercroft::tests
