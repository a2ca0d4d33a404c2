// Hydrographs: the trapezoid of the rational method, and a storm by the unit hydrograph.
#include "calc/water/hydrograph.hpp"

#include <gsl/gsl_interp.h>

#include "calc/water/graphical_peak.hpp"
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

TEST_CASE("a burst of runoff passes as the unit hydrograph does (GSL integrates its straight lines)") {
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    gsl_interp* straight = gsl_interp_alloc(gsl_interp_linear, table.x.size());
    gsl_interp_init(straight, table.x.data(), table.y.data(), table.x.size());
    const auto passed = [&](double t) {
        const double end = std::clamp(t, 0.0, 5.0);
        return gsl_interp_eval_integ(straight, table.x.data(), table.y.data(), 0, end, nullptr) / 1.33595;
    };
    const Time tc = minutes(40);
    const double peak_time = 0.05 * 40 / 2 + 0.6 * 40;
    const UnitHydrograph unit(minutes(peak_time));
    for (double t = -1; t < 6; t += 0.037)
        CHECK(unit.passing(s(0), minutes(t * peak_time)) == Approx(passed(t)).epsilon(1e-12).margin(1e-15));
    CHECK_THAT(unit.end(), is_near(minutes(5 * peak_time)));
    // 10 mm in 0.8 min, on a hectare: what passes between t - 0.8 min and t, over that time.
    const Hydrograph hydrograph = storm_hydrograph({{minutes(0), m(0)}, {minutes(0.8), m(0.01)}}, hectare,
                                                   share(100), tc, minutes(0.25));
    for (const auto& [time, flow] : hydrograph) {
        const double t = time.value() / 60;
        const double expected = 0.01 * 1e4 * (passed(t / peak_time) - passed((t - 0.8) / peak_time)) / 48;
        CHECK(flow.value() == Approx(expected).epsilon(1e-3).margin(1e-12));
    }
    gsl_interp_free(straight);
}

TEST_CASE("peak of the unit hydrograph of NEH 630, Example 16-1", "[published]") {
    // USDA NEH Part 630, ch. 16, Example 16-1 (from memory): A = 4.6 mi2, Tc = 2.3 h, D = 0.3 h, 1 in of
    // runoff: Tp = 1.53 h, qp = 1455 ft3/s with the factor 484; that of the table's own area is 483.05
    // (math).
    const Time peak_time = unit_hydrograph_peak_time(hours(0.3), hours(2.3));
    CHECK_THAT(peak_time, is_near(hours(1.53)));
    const UnitHydrograph unit(peak_time);
    const Time moment = s(0.1);
    const double around_peak = unit.passing(peak_time - moment, peak_time + moment);
    const Flow peak = 4.6 * square_mile * inches(1) * around_peak / (2.0 * moment);
    CHECK_THAT(peak, is_near(cfs(1455), 3e-3));
    CHECK_THAT(peak, is_near(cfs(483.05 * 4.6 / 1.53), 2e-4));
    // A short burst on a square mile: the same factor with Tp = (0.025 + 0.6) tc.
    const Hydrograph fine = storm_hydrograph({{hours(0), m(0)}, {hours(0.005), inches(1)}}, square_mile,
                                             share(100), hours(1), hours(0.005));
    CHECK_THAT(peak_of(fine), is_near(cfs(483.05 / 0.625), 5e-4));
}

namespace {

Table<Time, Length> nrcs_rain(RainType type, double inches_of_rain) {
    Table<Time, Length> storm;
    for (const auto& [time, part] : nrcs_storm(type)) storm.emplace_back(time, part * inches(inches_of_rain));
    return storm;
}

}  // namespace

TEST_CASE("no step changes the peak of a storm") {
    for (const double cn : {61., 75., 90.})
        for (const RainType type :
             {RainType::type_i, RainType::type_ia, RainType::type_ii, RainType::type_iii}) {
            const auto peak = [&](double step) {
                return peak_of(
                    storm_hydrograph(nrcs_rain(type, 6), square_mile, share(cn), hours(1), hours(step)));
            };
            const Flow finest = peak(0.004);
            for (const double step : {0.1714, 0.17, 0.133, 0.1, 0.06, 0.031, 0.01}) {
                CAPTURE(cn, static_cast<int>(type), step);
                CHECK_THAT(peak(step), is_near(finest, 1e-4));
            }
        }
}

TEST_CASE("the peak of any storm is right to 0.2 % at every step (GSL integrates the unit hydrograph)") {
    // Runoff in bursts of tc/200 by TR-55's equation, each passing by the integral of Table 16-1; the peak of
    // their sum every tc/100.
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    gsl_interp* straight = gsl_interp_alloc(gsl_interp_linear, table.x.size());
    gsl_interp_init(straight, table.x.data(), table.y.data(), table.x.size());
    std::vector<double> passed(626);  // within k bursts: Tp = 0.625 tc, so that all is over in 3.125 tc
    for (std::size_t k = 0; k < passed.size(); ++k)
        passed[k] = gsl_interp_eval_integ(straight, table.x.data(), table.y.data(), 0,
                                          std::min(5.0, static_cast<double>(k) / 125), nullptr);
    gsl_interp_free(straight);
    Random random;
    for (int i = 0; i < 40; ++i) {
        const double tc = random.between(10, 120);  // min
        const double cn = i % 4 == 0 ? 100 : random.between(60, 98);
        Table<Time, Length> storm = {{minutes(0), m(0)}};
        for (int rows = random.whole(1, 9); rows > 0; --rows)
            storm.emplace_back(std::get<0>(storm.back()) + random.between(0.02, 1.5) * minutes(tc),
                               std::get<1>(storm.back()) + m(random.whole(0, 3) * random.between(0, 0.04)));
        const auto rain_at = [&](double minute) {
            std::size_t k = 0;
            while (k + 2 < storm.size() && minutes(minute) > std::get<0>(storm[k + 1])) ++k;
            const auto& [t1, p1] = storm[k];
            const auto& [t2, p2] = storm[k + 1];
            const double way = std::clamp<double>((minutes(minute) - t1) / (t2 - t1), 0, 1);
            return (p1 + way * (p2 - p1)).value();
        };
        const double kept = 0.0254 * (1000 / cn - 10);
        const auto runoff_at = [&](double minute) {
            const double over = std::max(0.0, rain_at(minute) - 0.2 * kept);
            return over == 0 ? 0 : over * over / (over + kept);
        };
        std::vector<double> bursts;
        const double end = std::get<0>(storm.back()) / minutes(1);
        for (double t = 0; t < end; t += tc / 200) bursts.push_back(runoff_at(t + tc / 200) - runoff_at(t));
        double most = 0;
        for (std::size_t now = 0; now < bursts.size() + passed.size(); now += 2) {
            double flow = 0;
            for (std::size_t j = now > 625 ? now - 625 : 0; j < std::min(now, bursts.size()); ++j)
                flow += bursts[j] * (passed[now - j] - passed[now - j - 1]);
            most = std::max(most, flow);
        }
        if (most == 0) continue;
        const double peak = most / passed.back() * hectare.value() / (60 * tc / 200);
        for (const double step : {0.1714, 0.15, 0.1, 0.053, 0.02, 0.007}) {
            CAPTURE(i, tc, cn, step, storm.size());
            REQUIRE_THAT(
                peak_of(storm_hydrograph(storm, hectare, share(cn), minutes(tc), step * minutes(tc))),
                is_near(m3_per_s(peak), 2e-3));
        }
    }
}

TEST_CASE("a storm's flow is the sum of its bursts, each with its ordinate (GSL linear interpolation)") {
    // Type II, 4.3 in, CN 61, tc 1 h: bursts of 15 s, Tp = 0.625 h.
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    gsl_interp* straight = gsl_interp_alloc(gsl_interp_linear, table.x.size());
    gsl_interp_init(straight, table.x.data(), table.y.data(), table.x.size());
    const Table<Time, Length> storm = nrcs_rain(RainType::type_ii, 4.3);
    std::vector<double> runoff;
    double before = 0;
    for (int i = 1; i <= 24 * 240; ++i) {
        const double row = i / 24.0;  // rows stand every tenth of an hour
        const auto low = static_cast<std::size_t>(std::min(row, 239.0));
        const double start = std::get<1>(storm[low]).value();
        const double rain =
            start + (row - static_cast<double>(low)) * (std::get<1>(storm[low + 1]).value() - start);
        const double now = runoff_depth(share(61), m(rain), share(0.2)).value();
        runoff.push_back(now - before);
        before = now;
    }
    double greatest = 0;
    for (int i = 12 * 240; i < 14 * 240; ++i) {
        double flow = 0;
        for (int j = i - 750; j < i; ++j) {
            const double t = (i - j - 0.5) / 240 / 0.625;
            flow += runoff[static_cast<std::size_t>(j)] *
                    gsl_interp_eval(straight, table.x.data(), table.y.data(), std::min(t, 5.0), nullptr);
        }
        greatest = std::max(greatest, flow * square_mile.value() / (1.33595 * 0.625 * 3600));
    }
    gsl_interp_free(straight);
    CHECK_THAT(peak_of(storm_hydrograph(storm, square_mile, share(61), hours(1), hours(0.17))),
               is_near(m3_per_s(greatest), 2e-3));
}

TEST_CASE("peaks of 24-hour storms are, on the whole, those of TR-55's graphs", "[published]") {
    // USDA TR-55 (1986), Table F-1, whose peaks were computed with the same unit hydrograph; Ia/P within its
    // table.
    for (const RainType type : {RainType::type_i, RainType::type_ii, RainType::type_iii}) {
        double sum = 0;
        int n = 0;
        for (const double tc : {0.5, 1.0, 1.53, 2.0, 3.0})
            for (const double cn : {60., 70., 80., 90.})
                for (const double rain : {4., 6., 8.}) {
                    const double ratio = 0.2 * (1000 / cn - 10) / rain;
                    if (ratio < 0.1 || ratio > 0.5) continue;
                    const Flow peak = peak_of(storm_hydrograph(nrcs_rain(type, rain), square_mile, share(cn),
                                                               hours(tc), hours(0.1 * tc)));
                    const Flow graph =
                        graphical_peak(square_mile, inches(rain), share(cn), hours(tc), type, share(0));
                    CAPTURE(static_cast<int>(type), tc, cn, rain);
                    CHECK_THAT(peak, is_near(graph, 0.15));
                    sum += peak / graph - 1;
                    ++n;
                }
        CHECK(n == 35);
        CHECK(sum / n == Approx(0).margin(0.025));
    }
    // Example 4-1: CN 75, 6.0 in, 0.39 mi2, tc 1.53 h, type II: 345 ft3/s.
    CHECK_THAT(peak_of(storm_hydrograph(nrcs_rain(RainType::type_ii, 6), 0.39 * square_mile, share(75),
                                        hours(1.53), hours(0.2))),
               is_near(cfs(345), 0.04));
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
