// Gradings of soil and stone, and the published sizes of coarse aggregate.
#include "calc/ground/grading.hpp"

#include "calc/customary.hpp"
#include "calc/ground/stone_sizes.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/straight_line.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A grading in millimetres and percent.
Grading graded(std::initializer_list<std::pair<double, double>> rows) {
    Grading grading;
    for (const auto& [sieve, passing] : rows) grading.emplace_back(mm(sieve), Percent{passing});
    return grading;
}

/// Sieves from 0.075 mm on, each up to 1.6 times the last, from 0 % to 100 %, no stretch level.
Grading random_grading(Random& random) {
    Grading grading;
    double sieve = 0.075;
    double passing = 0;
    while (passing < 100) {
        grading.emplace_back(mm(sieve), Percent{passing});
        passing += random.between(1, 30);
        sieve *= random.between(1.1, 1.6);
    }
    grading.emplace_back(mm(sieve), Percent{100});
    return grading;
}

/// The grading through the middle of an envelope.
Grading middle_of(const Envelope& envelope) {
    Grading grading;
    for (const auto& [sieve, least, most] : envelope)
        grading.emplace_back(sieve, Percent{(least.value + most.value) / 2});
    return grading;
}

constexpr StoneSize sizes[] = {StoneSize::no_3, StoneSize::no_357, StoneSize::no_4,  StoneSize::no_467,
                               StoneSize::no_5, StoneSize::no_56,  StoneSize::no_57, StoneSize::no_67};

}  // namespace

// Grading curve.

TEST_CASE("uniformity and curvature are the published ones", "[published]") {
    // Das and Sobhan, Principles of Geotechnical Engineering, 9th ed., problems 2.1 and 2.2; the curvature of
    // the second recomputed.
    const Grading first = graded({{0.11, 10}, {0.25, 30}, {0.48, 60}});
    CHECK_THAT(grading_uniformity(first), is_within(share(4.36), share(0.005)));
    CHECK_THAT(grading_curvature(first), is_within(share(1.18), share(0.005)));
    const Grading second = graded({{0.3, 10}, {0.41, 30}, {0.77, 60}});
    CHECK_THAT(grading_uniformity(second), is_within(share(2.57), share(0.005)));
    CHECK_THAT(grading_curvature(second), is_within(share(0.7277), share(5e-5)));
}

TEST_CASE("sizes lie on the straight line of percentage over the logarithm of the sieve (GSL)") {
    Random random;
    for (int i = 0; i < 60; ++i) {
        Grading grading = random_grading(random);
        std::vector<double> passing;
        std::vector<double> logarithm;
        for (const auto& [sieve, percent] : grading) {
            passing.push_back(percent.value);
            logarithm.push_back(std::log10(sieve.value()));
        }
        const StraightLine line(passing, logarithm);
        std::shuffle(grading.begin(), grading.end(), std::mt19937(static_cast<unsigned>(i)));
        const auto size = [&](double percent) { return grading_size(grading, {percent}); };
        for (int halves = 0; halves <= 200; ++halves) {
            const double percent = 0.5 * halves;
            CAPTURE(i, percent);
            REQUIRE_THAT(size(percent), is_near(m(std::pow(10, line(percent))), 1e-9));
            if (percent > 0) REQUIRE(size(percent) > size(percent - 0.5));
        }
        REQUIRE_THAT(grading_uniformity(grading), is_near(share(size(60) / size(10))));
        REQUIRE_THAT(grading_curvature(grading), is_near(share(size(30) / size(10) * (size(30) / size(60)))));
    }
}

TEST_CASE("half-way in percent is the mean proportional of two sieves") {
    // math: sqrt(1 x 4) = 2 mm; a quarter of the way from 1 mm to 16 mm, again 2 mm.
    const Grading grading = graded({{1, 20}, {4, 40}, {16, 40}, {32, 90}});
    CHECK_THAT(grading_size(grading, {30}), is_near(mm(2)));
    CHECK_THAT(grading_size(graded({{1, 0}, {16, 100}}), {25}), is_near(mm(2)));
    // The ends, and the finer end of a level stretch.
    CHECK(grading_size(grading, {20}) == mm(1));
    CHECK(grading_size(grading, {40}) == mm(4));
    CHECK(grading_size(grading, {90}) == mm(32));
    CHECK(grading_size(grading, {40.0001}) > mm(16));
    // A percentage that is one of the table's but for the last digit.
    CHECK(grading_size(grading, {20 - 1e-9}) == mm(1));
    CHECK(grading_size(grading, {90 + 1e-9}) == mm(32));
}

TEST_CASE("a grading scales with its sieves and does not depend on their unit or order") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const Grading grading = random_grading(random);
        Grading doubled;
        for (const auto& [sieve, passing] : grading) doubled.emplace(doubled.begin(), sieve * 2.0, passing);
        const Percent percent{random.between(1, 99)};
        REQUIRE_THAT(grading_size(doubled, percent), is_near(grading_size(grading, percent) * 2.0, 1e-12));
        REQUIRE_THAT(grading_uniformity(doubled), is_near(grading_uniformity(grading), 1e-11));
        REQUIRE_THAT(grading_curvature(doubled), is_near(grading_curvature(grading), 1e-11));
        REQUIRE(grading_uniformity(grading) >= share(1));
        REQUIRE(from_finest(doubled).front() == doubled.back());
    }
    CHECK_THAT(grading_size({{1.0 * inch, {100}}, {0.25 * inch, {0}}}, {50}), is_near(0.5 * inch));
}

TEST_CASE("tables that are no grading are refused") {
    CHECK_THROWS_MATCHES(from_finest({}), Refused, refuses_domain("the grading has no rows"));
    CHECK_THROWS_MATCHES(grading_size({}, {50}), Refused, refuses_domain("the grading has no rows"));
    CHECK_THROWS_MATCHES(from_finest(graded({{0, 10}, {1, 20}})), Refused,
                         refuses_domain("sieve (0 m) must be above 0"));
    CHECK_NOTHROW(from_finest(graded({{1000, 100}})));
    CHECK_THROWS_MATCHES(from_finest(graded({{1001, 100}})), Refused,
                         refuses_domain("sieve (1.001 m) must be at most 1 m: is it in mm?"));
    CHECK_THROWS_MATCHES(from_finest(graded({{1, -1}})), Refused,
                         refuses_domain("passing (-1 %) must be from 0 % to 100 %"));
    CHECK_THROWS_MATCHES(from_finest(graded({{1, 100.1}})), Refused, refuses_domain("passing (100.1 %)"));
    CHECK_NOTHROW(from_finest(graded({{1, 100 * (1 + 1e-12)}})));
    CHECK_THROWS_MATCHES(from_finest(graded({{2, 50}, {1, 20}, {2, 60}})), Refused,
                         refuses_domain("is in the table twice"));
    CHECK_THROWS_MATCHES(from_finest(graded({{2, 20}, {1, 30}})), Refused,
                         refuses_domain("passes less (20 %) than the finer"));
    CHECK_NOTHROW(from_finest(graded({{2, 30}, {1, 30}})));
    CHECK_NOTHROW(from_finest(graded({{2, 30 - 1e-10}, {1, 30}})));

    const Grading grading = graded({{1, 20}, {4, 90}});
    CHECK_THROWS_MATCHES(grading_size(grading, {-1}), Refused,
                         refuses_domain("percent (-1 %) must be from 0 % to 100 %"));
    CHECK_THROWS_MATCHES(grading_size(grading, {101}), Refused, refuses_domain("percent (101 %)"));
    CHECK_NOTHROW(grading_size(graded({{1, 20}, {4, 100}}), {100 * (1 + 1e-12)}));
    for (const double percent : {0.0, 19.9, 90.1, 100.0}) {
        CAPTURE(percent);
        CHECK_THROWS_MATCHES(grading_size(grading, {percent}), Refused,
                             has_no_answer("the grading runs from 20 % to 90 % passing and does not reach"));
    }
    CHECK_THROWS_MATCHES(grading_uniformity(grading), Refused, has_no_answer("does not reach 10 %"));
    CHECK_THROWS_MATCHES(grading_curvature(graded({{1, 30}, {2, 60}})), Refused,
                         has_no_answer("does not reach 10 %"));
}

// Published sizes.

TEST_CASE("size numbers have the sieves and limits of the standard", "[published]") {
    // AASHTO M 43 / ASTM D448, Table 1. 57 and 67 as in Iowa DOT IM 209, Appendix D; the others from memory.
    // A row a size, as printed: 63, 50, 37.5, 25, 19, 12.5, 9.5, 4.75 and 2.36 mm; "-" where none is given.
    const double columns[] = {63, 50, 37.5, 25, 19, 12.5, 9.5, 4.75, 2.36};
    const char* rows[][9] = {{"100", "90-100", "35-70", "0-15", "-", "0-5", "-", "-", "-"},
                             {"100", "95-100", "-", "35-70", "-", "10-30", "-", "0-5", "-"},
                             {"-", "100", "90-100", "20-55", "0-15", "-", "0-5", "-", "-"},
                             {"-", "100", "95-100", "-", "35-70", "-", "10-30", "0-5", "-"},
                             {"-", "-", "100", "90-100", "20-55", "0-10", "0-5", "-", "-"},
                             {"-", "-", "100", "90-100", "40-85", "10-40", "0-15", "0-5", "-"},
                             {"-", "-", "100", "95-100", "-", "25-60", "-", "0-10", "0-5"},
                             {"-", "-", "-", "100", "90-100", "-", "20-55", "0-10", "0-5"}};
    for (std::size_t i = 0; i < std::size(sizes); ++i) {
        CAPTURE(i);
        std::vector<std::pair<double, std::string>> printed;
        for (std::size_t column = 0; column < std::size(columns); ++column)
            if (rows[i][column] != std::string("-")) printed.emplace_back(columns[column], rows[i][column]);
        const Envelope& envelope = stone_size_envelope(sizes[i]);
        REQUIRE(envelope.size() == printed.size());
        for (std::size_t row = 0; row < printed.size(); ++row) {
            const auto& [sieve, least, most] = envelope[row];
            CHECK_THAT(sieve, is_near(mm(printed[row].first), 1e-14));
            const std::string from = std::to_string(static_cast<int>(least.value));
            const std::string to = std::to_string(static_cast<int>(most.value));
            CHECK(printed[row].second == (from == to ? to : from + '-' + to));
        }
        CHECK(static_cast<std::size_t>(sizes[i]) == i);
    }
}

TEST_CASE("a grading fits within its envelope up to the limits, and no farther") {
    for (const StoneSize size : sizes) {
        const Envelope& envelope = stone_size_envelope(size);
        CAPTURE(static_cast<int>(size));
        CHECK(grading_fits(middle_of(envelope), size));
        CHECK(grading_fits(middle_of(envelope), envelope));
        for (std::size_t i = 0; i < envelope.size(); ++i) {
            const auto& [sieve, least, most] = envelope[i];
            CAPTURE(sieve.value());
            const auto fits = [&](double passing) {
                Grading grading = middle_of(envelope);
                for (std::size_t other = 0; other < grading.size(); ++other) {
                    double& here = std::get<1>(grading[other]).value;
                    // The coarser pass no less, the finer no more.
                    here = other == i  ? passing
                           : other < i ? std::max(here, passing)
                                       : std::min(here, passing);
                }
                return grading_fits(grading, size);
            };
            CHECK(fits(least.value));
            CHECK(fits(most.value));
            if (least.value > 0) {
                CHECK(fits(least.value - 1e-8));
                CHECK_FALSE(fits(least.value - 0.1));
            }
            if (most.value < 100) {
                CHECK(fits(most.value + 1e-8));
                CHECK_FALSE(fits(most.value + 0.1));
            }
        }
    }
}

TEST_CASE("sieves in inches are those of the standard in millimetres") {
    // ASTM E11 (from memory): 2 1/2, 2, 1 1/2, 1, 3/4, 1/2 and 3/8 in are 63, 50, 37.5, 25, 19, 12.5, 9.5 mm.
    const Grading in_inches = {{1.5 * inch, {100}}, {1.0 * inch, {97}},       {0.75 * inch, {70}},
                               {0.5 * inch, {40}},  {4.75 * millimetre, {5}}, {2.36 * millimetre, {2}}};
    CHECK(grading_fits(in_inches, StoneSize::no_57));
    CHECK_FALSE(grading_fits(in_inches, StoneSize::no_5));
    // 2 % is the same sieve, more is another: then what passes lies between the neighbours.
    const Envelope at_100 = {{mm(100), {40}, {60}}};
    for (const double sieve : {98.001, 100.0, 101.999})
        CHECK(grading_fits(graded({{10, 0}, {sieve, 50}, {1000, 100}}), at_100));
    for (const double sieve : {97.999, 102.001})
        CHECK_THROWS_MATCHES(grading_fits(graded({{10, 0}, {sieve, 50}, {1000, 100}}), at_100), Refused,
                             has_no_answer("the grading has no sieve of 0.1 m"));
}

TEST_CASE("where a sieve is missing its neighbours decide, if they can") {
    const Envelope envelope = {{mm(100), {100}, {100}}, {mm(20), {30}, {60}}, {mm(5), {0}, {10}}};
    const auto fits = [&](double coarser, double finer) {
        return grading_fits(graded({{100, 100}, {40, coarser}, {10, finer}, {5, 0}}), envelope);
    };
    CHECK(fits(60, 30));
    CHECK(fits(50, 40));
    CHECK_FALSE(fits(29, 20));
    CHECK_FALSE(fits(80, 61));
    for (const auto& [coarser, finer] : {std::pair{61, 40}, std::pair{60, 29}, std::pair{90, 10}})
        CHECK_THROWS_MATCHES(fits(coarser, finer), Refused,
                             has_no_answer("what passes its neighbours does not tell whether it fits"));
    // No neighbour on one side: anything from 0 % or up to 100 %.
    CHECK_THROWS_MATCHES(grading_fits(graded({{100, 100}, {5, 0}}), envelope), Refused,
                         has_no_answer("no sieve of 0.02 m"));
    CHECK(grading_fits(graded({{40, 100}, {20, 50}, {5, 0}}), envelope));
    CHECK_THROWS_MATCHES(grading_fits(graded({{100, 100}, {20, 50}}), envelope), Refused,
                         has_no_answer("no sieve of 0.005 m"));
    CHECK(grading_fits(graded({{100, 100}, {20, 50}, {8, 9}}), envelope));
    // One sieve outside is enough, though another is unknown: before it or behind.
    CHECK_FALSE(grading_fits(graded({{100, 100}, {20, 70}}), envelope));
    CHECK_FALSE(grading_fits(graded({{100, 90}, {40, 80}, {10, 20}, {5, 0}}), envelope));
    CHECK_FALSE(grading_fits(graded({{100, 100}, {40, 80}, {10, 20}, {5, 11}}), envelope));
}

TEST_CASE("envelopes that are none are refused") {
    const Grading grading = graded({{10, 50}});
    const auto with = [&](double sieve, double least, double most) {
        return grading_fits(grading, Envelope{{mm(10), {0}, {100}}, {mm(sieve), {least}, {most}}});
    };
    CHECK(with(10, 50, 50));
    CHECK(with(10, 0, 100 * (1 + 1e-12)));
    CHECK(with(10, 50 + 1e-9, 50));
    CHECK_THROWS_MATCHES(with(0, 0, 100), Refused, refuses_domain("sieve (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(with(10, -1, 100), Refused,
                         refuses_domain("least passing 0.01 m (-1 %) must be from 0 % to 100 %"));
    CHECK_THROWS_MATCHES(with(10, 0, 101), Refused,
                         refuses_domain("most passing 0.01 m (101 %) must be from 0 % to 100 %"));
    CHECK_THROWS_MATCHES(with(10, 60, 50), Refused,
                         refuses_domain("least passing 0.01 m (60 %) must be at most the most (50 %)"));
    CHECK_THROWS_MATCHES(grading_fits(grading, Envelope{}), Refused,
                         refuses_domain("the envelope has no rows"));
    CHECK_THROWS_MATCHES(grading_fits({}, StoneSize::no_57), Refused,
                         refuses_domain("the grading has no rows"));
    CHECK_THROWS_MATCHES(grading_fits(graded({{2, 20}, {1, 30}}), StoneSize::no_57), Refused,
                         refuses_domain("than the finer"));
}

// What passes a size.

TEST_CASE("what passes a size is the inverse of the size that it passes") {
    const Grading stone = {{mm(63), {100}}, {mm(50), {94}}, {mm(37.5), {55}}, {mm(25), {9}}, {mm(12.5), {3}}};
    CHECK(grading_passing(stone, mm(50)).value == 94);
    CHECK(grading_passing(stone, mm(80)).value == 100);
    // math: half-way in the logarithm between 25 and 37.5 mm.
    CHECK(grading_passing(stone, mm(std::sqrt(25 * 37.5))).value == Approx(32).epsilon(1e-12));
    for (double percent = 3.5; percent < 100; percent += 0.5) {
        CAPTURE(percent);
        REQUIRE(grading_passing(stone, grading_size(stone, {percent})).value ==
                Approx(percent).epsilon(1e-9));
    }
    // D100 is the finest sieve that all passes.
    CHECK_THAT(grading_size(stone, {100}), is_near(mm(63)));
    CHECK_THROWS_MATCHES(grading_passing(stone, mm(0.075)), Refused,
                         has_no_answer("is beyond the sieves of the grading (0.0125 m to 0.063 m)"));
    CHECK_THROWS_MATCHES(grading_passing({{mm(2), {0}}, {mm(4), {60}}}, mm(5)), Refused,
                         has_no_answer("beyond"));
    CHECK(grading_passing({{mm(2), {0}}, {mm(4), {60}}}, mm(1)).value == 0);
    CHECK_THROWS_MATCHES(grading_passing(stone, mm(0)), Refused, refuses_domain("size (0 m)"));
}

}  // namespace undercroft::tests
