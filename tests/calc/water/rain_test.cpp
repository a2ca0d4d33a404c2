// Rain by duration: interpolation, and nothing beyond the table.
#include "calc/water/rain.hpp"

#include <gsl/gsl_interp.h>

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// i = c / (t^e + f) in in/h with t in min. Chow, Maidment and Mays, Applied Hydrology (1988), Table 14.2.3,
/// 10-year (from memory).
Speed wenzel(double c, double e, double f, double t) {
    return inches(c / (std::pow(t, e) + f)) / hours(1);
}

}  // namespace

TEST_CASE("a power law of the duration is interpolated exactly") {
    // math, computed apart from this code.
    const RainTable two_rows = {{minutes(10), mm_per_h(100)}, {minutes(60), mm_per_h(25)}};
    CHECK_THAT(rain_intensity(two_rows, minutes(30)), is_near(mm_per_h(42.7413865179), 1e-12));
    Random random;
    for (int i = 0; i < 200; ++i) {
        const double exponent = random.between(0.05, 1.2);
        const auto law = [exponent](double t) { return mm_per_h(800 * std::pow(t, -exponent)); };
        RainTable table;
        for (double t = 5; t < 2000; t *= random.between(1.2, 3)) table.emplace_back(minutes(t), law(t));
        const double at = random.between(5, std::get<0>(table.back()).value() / 60);
        REQUIRE_THAT(rain_intensity(table, minutes(at)), is_near(law(at)));
    }
}

TEST_CASE("10-year 20-minute rain of Denver and Chicago between the rows of 18 and 22 minutes",
          "[published]") {
    // Chow, Maidment and Mays (1988), sec. 14.2: 3.00 in/h for Denver (from memory); Chicago recomputed
    // with its coefficients there.
    struct City {
        double c, e, f, inches_per_hour, tolerance;
    };
    for (const City& city :
         {City{96.6, 0.97, 13.90, 3.00, 0.005}, City{94.9, 0.88, 9.04, 4.125965988, 0.005}}) {
        const auto row = [&](double t) { return std::tuple(minutes(t), wenzel(city.c, city.e, city.f, t)); };
        CHECK_THAT(rain_intensity({row(18), row(22)}, minutes(20)),
                   is_within(Speed(inches(city.inches_per_hour) / hours(1)),
                             Speed(inches(city.tolerance) / hours(1))));
        CHECK_THAT(rain_intensity({row(10), row(20), row(60)}, minutes(20)),
                   is_within(Speed(inches(city.inches_per_hour) / hours(1)),
                             Speed(inches(city.tolerance) / hours(1))));
    }
}

TEST_CASE("interpolation is linear in both logarithms (GSL linear interpolation)") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        RainTable table;
        std::vector<double> log_t;
        std::vector<double> log_i;
        double intensity = 200;
        for (double t = random.between(1, 10); log_t.size() < 8; t *= random.between(1.1, 4)) {
            table.emplace_back(minutes(t), mm_per_h(intensity));
            log_t.push_back(std::log(t));
            log_i.push_back(std::log(intensity));
            intensity *= random.between(0.3, 1);
        }
        gsl_interp* straight = gsl_interp_alloc(gsl_interp_linear, log_t.size());
        gsl_interp_init(straight, log_t.data(), log_i.data(), log_t.size());
        for (int k = 0; k < 50; ++k) {
            const double at = random.between(log_t.front(), log_t.back());
            const double expected =
                std::exp(gsl_interp_eval(straight, log_t.data(), log_i.data(), at, nullptr));
            REQUIRE_THAT(rain_intensity(table, minutes(std::exp(at))), is_near(mm_per_h(expected), 1e-11));
        }
        gsl_interp_free(straight);
        for (const auto& [t, row_intensity] : table) REQUIRE(rain_intensity(table, t) == row_intensity);
    }
}

TEST_CASE("rain that no table holds is refused") {
    const RainTable table = {{minutes(10), mm_per_h(100)}, {minutes(60), mm_per_h(25)}};
    CHECK_THROWS_MATCHES(rain_intensity(table, minutes(9.99)), Refused,
                         has_no_answer("duration (9.99 min) is outside the rain table (10 min to 60 min)"));
    CHECK_THROWS_MATCHES(rain_intensity(table, minutes(61)), Refused,
                         has_no_answer("nothing is extrapolated"));
    CHECK_THROWS_MATCHES(rain_intensity(table, minutes(0)), Refused, refuses_domain("duration (0 min)"));
    // The last row in another unit is still in the table.
    CHECK(rain_intensity(table, minutes(60) * (1 + 1e-13)) == mm_per_h(25));
    CHECK_THROWS_MATCHES(rain_intensity({table[0]}, minutes(10)), Refused,
                         refuses_domain("at least two rows"));
    CHECK_THROWS_MATCHES(rain_intensity({table[1], table[0]}, minutes(30)), Refused,
                         refuses_domain("duration (10 min) must be longer"));
    CHECK_THROWS_MATCHES(rain_intensity({table[0], {minutes(60), mm_per_h(250)}}, minutes(30)), Refused,
                         refuses_domain("intensity (250 mm/h) must not be above"));
    CHECK_THROWS_MATCHES(rain_intensity({{minutes(10), mm_per_h(0)}, table[1]}, minutes(30)), Refused,
                         refuses_domain("intensity (0 mm/h) must be above 0"));
}

}  // namespace undercroft::tests
