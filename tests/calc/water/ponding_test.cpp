// Rain that ponds: Green and Ampt under steady rain.
#include "calc/water/ponding.hpp"

#include "calc/water/groundwater.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Speed centimetres_per_hour(double value) {
    return mm_per_h(10 * value);
}

}  // namespace

TEST_CASE("ponding of Chow, Maidment and Mays, Example 4.4.1", "[published]") {
    // Silt loam, K 0.65 cm/h, N = 5.68 cm (from memory): 1 cm/h ponds after 10.5 h, 5 cm/h after 0.17 h.
    const auto ponds = [](double rain) {
        return ponding_time(centimetres_per_hour(0.65), cm(16.7), share(5.68 / 16.7),
                            centimetres_per_hour(rain));
    };
    CHECK_THAT(ponds(1), is_within(hours(10.5), hours(0.05)));
    CHECK_THAT(ponds(5), is_within(hours(0.17), hours(0.005)));
    CHECK_THAT(ponds(1), is_near(hours(10.548571), 1e-6));
    CHECK_THAT(ponds(5), is_near(hours(0.169747), 3e-6));
    // The open textbook Rain or Shine, sec. 6.5 (inputs seen): K 0.65, psi 17, dtheta 0.34, 1.5
    // cm/h: 2.9466667 h (math).
    CHECK_THAT(ponding_time(centimetres_per_hour(0.65), cm(17), share(0.34), centimetres_per_hour(1.5)),
               is_near(hours(2.9466667), 1e-7));
}

TEST_CASE("what soaks in after ponding (GSL Runge-Kutta, and recomputed figures)") {
    struct Row {
        double k, psi, deficit, rain, time, ponds, infiltrated;
    };
    // Sandy loam and silt loam of Rawls, Brakensiek and Miller (1983) (math).
    for (const Row& row : {Row{1.09, 11.01, 0.2472, 3, 2, 0.517735162, 4.652985685},
                           Row{0.65, 16.68, 0.34, 2.5, 3, 0.797033514, 5.624425464}}) {
        CHECK_THAT(ponding_time(centimetres_per_hour(row.k), cm(row.psi), share(row.deficit),
                                centimetres_per_hour(row.rain)),
                   is_near(hours(row.ponds), 1e-8));
        const Length soaked = rain_infiltration(centimetres_per_hour(row.k), cm(row.psi), share(row.deficit),
                                                centimetres_per_hour(row.rain), hours(row.time));
        CHECK_THAT(soaked, is_near(cm(row.infiltrated), 1e-8));
        // dF/dt = K (1 + N/F) from what is in the ground when it ponds; cm and h.
        const auto rate = [&](double, double f) { return row.k * (1 + row.psi * row.deficit / f); };
        CHECK_THAT(soaked, is_near(cm(Ode(rate, row.rain * row.ponds, row.ponds).at(row.time)), 1e-8));
    }
}

TEST_CASE("all of the rain soaks in until it ponds; never more than it would under water from the start") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Speed k = centimetres_per_hour(random.between(0.03, 12));
        const Length psi = cm(random.between(5, 32));
        const Share deficit = share(random.between(0.05, 0.45));
        const Speed rain = k * random.between(1.05, 10);
        const Time ponds = ponding_time(k, psi, deficit, rain);
        const auto soaked = [&](double times) {
            return rain_infiltration(k, psi, deficit, rain, times * ponds);
        };
        REQUIRE_THAT(soaked(0.5), is_near(Length(rain * ponds / 2.0)));
        REQUIRE_THAT(soaked(1 + 1e-9), is_near(Length(rain * ponds), 1e-8));  // no jump
        REQUIRE(soaked(3) < rain * ponds * 3.0);
        REQUIRE(soaked(3) > soaked(2));
        REQUIRE(soaked(3) <= green_ampt_infiltration(k, psi, deficit, 3.0 * ponds));
        REQUIRE(rain_infiltration(k, psi, deficit, 0.9 * k, ponds) == 0.9 * k * ponds);
    }
    CHECK_THAT(
        rain_infiltration(centimetres_per_hour(1), cm(0), share(0.3), centimetres_per_hour(4), hours(2)),
        is_near(cm(2)));
    CHECK(ponding_time(centimetres_per_hour(1), cm(10), share(0), centimetres_per_hour(4)) == s(0));
}

TEST_CASE("ponding that cannot be is refused") {
    const auto ponds = [](double k, double psi, double deficit, double rain) {
        return ponding_time(centimetres_per_hour(k), cm(psi), share(deficit), centimetres_per_hour(rain));
    };
    CHECK_THROWS_MATCHES(ponds(1, 10, 0.3, 1), Refused,
                         has_no_answer("the ground never ponds: rain (10 mm/h) must exceed"));
    CHECK_THROWS_MATCHES(ponds(0, 10, 0.3, 1), Refused, refuses_domain("conductivity (0 mm/h)"));
    CHECK_THROWS_MATCHES(ponds(1, -1, 0.3, 2), Refused, refuses_domain("suction (-0.01 m)"));
    CHECK_THROWS_MATCHES(ponds(1, 10, 1.3, 2), Refused, refuses_domain("moisture deficit (1.3)"));
    CHECK_THROWS_MATCHES(ponds(1, 10, 0.3, 0), Refused, refuses_domain("rain (0"));
    CHECK_THROWS_MATCHES(
        rain_infiltration(centimetres_per_hour(1), cm(10), share(0.3), centimetres_per_hour(2), s(-1)),
        Refused, refuses_domain("time"));
}

}  // namespace undercroft::tests
