// Hydrographs: the trapezoid of the rational method, and a storm by the unit hydrograph.
#include "calc/water/hydrograph.hpp"

#include <gsl/gsl_interp.h>

#include "calc/water/runoff.hpp"
#include "calc/water/unit_hydrograph.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Area hectare = m2(1e4);
const Area square_mile = m2(1609.344 * 1609.344);

/// Under the straight lines of the table.
Volume volume_of(const Hydrograph& hydrograph) {
    Volume volume = m3(0);
    for (std::size_t i = 1; i < hydrograph.size(); ++i) {
        const auto& [t1, q1] = hydrograph[i - 1];
        const auto& [t2, q2] = hydrograph[i];
        REQUIRE(t2 > t1);
        volume += (q1 + q2) / 2.0 * (t2 - t1);
    }
    return volume;
}

Flow peak_of(const Hydrograph& hydrograph) {
    Flow peak = m3_per_s(0);
    for (const auto& [t, q] : hydrograph) peak = std::max(peak, q);
    return peak;
}

Table<Time, Length> random_storm(Random& random) {
    Table<Time, Length> storm = {{minutes(random.between(0, 30)), m(0)}};
    const int rows = random.whole(1, 20);
    for (int i = 0; i < rows; ++i) {
        const auto& [time, rain] = storm.back();
        storm.emplace_back(time + minutes(random.between(1, 60)),
                           rain + m(random.whole(0, 2) * random.between(0, 0.02)));
    }
    return storm;
}

}  // namespace

TEST_CASE("the trapezoid holds C i A td, whatever the step, with its peak and corners") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Share c = share(random.between(0.05, 1));
        const Speed intensity = mm_per_h(random.between(1, 200));
        const Time td = minutes(random.between(1, 300));
        const Time tc = minutes(random.between(1, 120));
        const Time step = minutes(random.between(0.5, 100));
        const Hydrograph table = rational_hydrograph(c, hectare, intensity, td, tc, step);
        CAPTURE(i, td.value(), tc.value(), step.value());
        REQUIRE_THAT(volume_of(table), is_near(Volume(c * intensity * hectare * td), 1e-9));
        const Flow all = runoff_peak(c, intensity, hectare);
        REQUIRE_THAT(peak_of(table), is_near(Flow(all * std::min(1.0, double(td / tc)))));
        REQUIRE(std::get<1>(table.front()) == m3_per_s(0));
        REQUIRE(std::get<1>(table.back()).value() == Approx(0).margin(1e-15));
        REQUIRE_THAT(std::get<0>(table.back()), is_near(Time(td + tc)));
    }
    // Regular rows where the corners fall on steps.
    CHECK(
        rational_hydrograph(share(1), hectare, mm_per_h(36), minutes(30), minutes(10), minutes(10)).size() ==
        5);
}

TEST_CASE("the unit hydrograph has the ordinates and the mass curve of Table 16-1", "[published]") {
    // USDA NEH Part 630, ch. 16, Table 16-1 (seen in two transcriptions); Qa/Q is the trapezoid of its
    // ordinates (math).
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    struct Row {
        double t, q, mass;
    };
    const Row rows[] = {{0.2, 0.100, 0.0060}, {0.5, 0.470, 0.0647}, {0.9, 0.990, 0.2998},
                        {1.0, 1.000, 0.3743}, {1.5, 0.680, 0.7036}, {2.0, 0.280, 0.8698},
                        {2.6, 0.107, 0.9518}, {3.0, 0.055, 0.9754}, {3.8, 0.015, 0.9941},
                        {4.0, 0.011, 0.9961}, {4.5, 0.005, 0.9991}, {5.0, 0.000, 1.0000}};
    double area = 0;
    for (std::size_t i = 1; i < table.x.size(); ++i)
        area += (table.y[i] + table.y[i - 1]) / 2 * (table.x[i] - table.x[i - 1]);
    CHECK(area == Approx(1.33595).margin(5e-6));
    CHECK(table.x.size() == 33);
    double mass = 0;
    std::size_t found = 0;
    for (std::size_t i = 1; i < table.x.size(); ++i) {
        mass += (table.y[i] + table.y[i - 1]) / 2 * (table.x[i] - table.x[i - 1]);
        for (const Row& row : rows) {
            if (table.x[i] != row.t) continue;
            CAPTURE(row.t);
            CHECK(table.y[i] == row.q);
            CHECK(mass / area == Approx(row.mass).margin(5.1e-5));
            ++found;
        }
    }
    CHECK(found == std::size(rows));
}

TEST_CASE("one step of runoff passes as the unit hydrograph (GSL linear interpolation)") {
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    gsl_interp* straight = gsl_interp_alloc(gsl_interp_linear, table.x.size());
    gsl_interp_init(straight, table.x.data(), table.y.data(), table.x.size());
    const Time tc = minutes(40);
    const Time step = minutes(2);
    const double peak_time = 2.0 / 2 + 0.6 * 40;
    const Hydrograph unit =
        storm_hydrograph({{minutes(0), m(0)}, {step, m(0.01)}}, hectare, share(100), tc, step);
    const double at_peak = gsl_interp_eval(straight, table.x.data(), table.y.data(), 24 / peak_time, nullptr);
    const double scale = std::get<1>(unit[12]).value() / at_peak;
    for (const auto& [time, flow] : unit) {
        const double t = std::min(5.0, time.value() / 60 / peak_time);
        const double q = gsl_interp_eval(straight, table.x.data(), table.y.data(), t, nullptr);
        CHECK(flow.value() == Approx(scale * q).epsilon(1e-12).margin(1e-15));
    }
    gsl_interp_free(straight);
    CHECK_THAT(unit_hydrograph_peak_time(step, tc), is_near(minutes(peak_time)));
}

TEST_CASE("peak of the unit hydrograph of NEH 630, Example 16-1", "[published]") {
    // USDA NEH Part 630, ch. 16, Example 16-1 (from memory): A = 4.6 mi2, Tc = 2.3 h, D = 0.3 h, 1 in of
    // runoff: Tp = 1.53 h, qp = 1455 ft3/s with the factor 484; the row nearest to Tp stands at 1.5 h.
    CHECK_THAT(unit_hydrograph_peak_time(hours(0.3), hours(2.3)), is_near(hours(1.53)));
    const Hydrograph table = storm_hydrograph({{hours(0), m(0)}, {hours(0.3), inches(1)}}, 4.6 * square_mile,
                                              share(100), hours(2.3), hours(0.3));
    CHECK_THAT(peak_of(table), is_near(cfs(1455), 0.01));
    CHECK_THAT(std::get<0>(table[5]), is_near(hours(1.5)));
    CHECK(std::get<1>(table[5]) == peak_of(table));
    // With steps that resolve the table the factor is that of its area: 645.333/1.33595 = 483.05 (math).
    const Hydrograph fine = storm_hydrograph({{hours(0), m(0)}, {hours(0.005), inches(1)}}, square_mile,
                                             share(100), hours(1), hours(0.005));
    const double peak_time = 0.0025 + 0.6;
    CHECK_THAT(peak_of(fine), is_near(cfs(483.05 / peak_time), 1e-3));
}

TEST_CASE("a storm's hydrograph holds its runoff to 1e-9, whatever storm and step") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const Table<Time, Length> storm = random_storm(random);
        const Share cn = share(random.between(50, 100));
        const Time tc = minutes(random.between(5, 120));
        const Time step = random.between(0.02, 0.17) * tc;
        const Hydrograph table = storm_hydrograph(storm, hectare, cn, tc, step);
        const Length runoff = runoff_depth(cn, std::get<1>(storm.back()), share(0.2));
        REQUIRE_THAT(volume_of(table),
                     is_within(Volume(runoff * hectare), m3(1e-9 * (runoff * hectare).value() + 1e-12)));
        REQUIRE(std::get<0>(table.front()) == std::get<0>(storm.front()));
        REQUIRE(std::get<1>(table.front()) == m3_per_s(0));
        REQUIRE(std::get<1>(table.back()) == m3_per_s(0));
        for (const auto& [t, q] : table) REQUIRE(q >= m3_per_s(0));
    }
}

TEST_CASE("twice the rain on an impervious catchment is twice the flow, a later storm the same flow later") {
    const Table<Time, Length> storm = {{minutes(0), m(0)}, {minutes(10), m(0.01)}, {minutes(25), m(0.018)}};
    Table<Time, Length> twice = storm;
    Table<Time, Length> later = storm;
    for (auto& [time, rain] : twice) rain *= 2.0;
    for (auto& [time, rain] : later) time += minutes(60);
    const auto route = [](const Table<Time, Length>& rain) {
        return storm_hydrograph(rain, hectare, share(100), minutes(20), minutes(2));
    };
    const Hydrograph once = route(storm);
    for (std::size_t i = 0; i < once.size(); ++i) {
        CHECK_THAT(std::get<1>(route(twice)[i]), is_near(Flow(2.0 * std::get<1>(once[i]))));
        CHECK_THAT(std::get<1>(route(later)[i]), is_near(std::get<1>(once[i])));
        CHECK_THAT(std::get<0>(route(later)[i]), is_near(Time(std::get<0>(once[i]) + minutes(60))));
    }
    CHECK(route(later).size() == once.size());
    // No more rows than the runoff takes to pass: of the last step's only the end of its own hydrograph is 0.
    CHECK(std::get<1>(once.back()).value() == 0);
    CHECK(std::get<1>(once[once.size() - 2]).value() > 0);
}

TEST_CASE("a hydrograph that cannot be is refused") {
    const auto rational = [](double td, double tc, double step) {
        return rational_hydrograph(share(0.5), hectare, mm_per_h(50), minutes(td), minutes(tc),
                                   minutes(step));
    };
    CHECK_THROWS_MATCHES(rational(0, 10, 1), Refused, refuses_domain("duration (0 min)"));
    CHECK_THROWS_MATCHES(rational(10, 0, 1), Refused, refuses_domain("time of concentration (0 min)"));
    CHECK_THROWS_MATCHES(rational(10, 10, 0), Refused, refuses_domain("step (0 min)"));
    CHECK_THROWS_MATCHES(rational(1e4, 10, 1e-4), Refused, refuses_domain("more rows than a sheet"));

    const auto storm = [](const Table<Time, Length>& rain, double cn, double tc, double step) {
        return storm_hydrograph(rain, hectare, share(cn), minutes(tc), minutes(step));
    };
    const Table<Time, Length> rain = {{minutes(0), m(0)}, {minutes(10), m(0.01)}};
    CHECK_NOTHROW(storm(rain, 80, 10, 1.714));
    CHECK_NOTHROW(
        storm(rain, 80, 10, 0.6 * 10 / 3.5));  // D = Tp / 4 = (D / 2 + 0.6 tc) / 4: the bound itself
    // USDA NEH Part 630, ch. 16: D at most 0.25 Tp, which is 0.1714 tc.
    CHECK_THROWS_MATCHES(storm(rain, 80, 10, 1.72), Refused, refuses_domain("a quarter of the time to peak"));
    CHECK_THROWS_MATCHES(storm(rain, 80, 10, 1e-4), Refused, refuses_domain("more than 20000 rows"));
    CHECK_THROWS_MATCHES(storm(rain, 0, 10, 1), Refused, refuses_domain("curve number (0)"));
    CHECK_THROWS_MATCHES(storm({rain[0]}, 80, 10, 1), Refused, refuses_domain("at least two rows"));
    CHECK_THROWS_MATCHES(storm({rain[1], {minutes(20), m(0.02)}}, 80, 10, 1), Refused,
                         refuses_domain("must be 0 in the first row"));
    CHECK_THROWS_MATCHES(storm({rain[0], rain[1], {minutes(10), m(0.02)}}, 80, 10, 1), Refused,
                         refuses_domain("time (10 min) must be later"));
    CHECK_THROWS_MATCHES(storm({rain[0], rain[1], {minutes(20), m(0.005)}}, 80, 10, 1), Refused,
                         refuses_domain("cumulative rain (0.005 m) must not be below"));
}

}  // namespace undercroft::tests
