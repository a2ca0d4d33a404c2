// Runoff by the time-area method.
#include "calc/water/time_area.hpp"

#include "calc/water/runoff.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Area catchment_hectare = m2(1e4);

/// Steady rain in each step.
Hyetograph rain_of(const std::vector<double>& mm_per_hour, double step) {
    Hyetograph rain = {{s(0), m(0)}};
    for (const double i : mm_per_hour)
        rain.emplace_back(std::get<0>(rain.back()) + minutes(step),
                          std::get<1>(rain.back()) + mm_per_h(i) * minutes(step));
    return rain;
}

Flow flow_at(const Hydrograph& table, double minute) {
    for (std::size_t i = 1; i < table.size(); ++i) {
        const auto& [t1, q1] = table[i - 1];
        const auto& [t2, q2] = table[i];
        if (minutes(minute) <= t2 * (1 + 1e-12)) return q1 + (minutes(minute) - t1) / (t2 - t1) * (q2 - q1);
    }
    return m3_per_s(0);
}

Volume volume_run_off(const Hydrograph& table) {
    Volume volume = m3(0);
    for (std::size_t i = 1; i < table.size(); ++i) {
        const auto& [t1, q1] = table[i - 1];
        const auto& [t2, q2] = table[i];
        REQUIRE(t2 > t1);
        volume += (q1 + q2) / 2.0 * (t2 - t1);
    }
    return volume;
}

}  // namespace

TEST_CASE("steady rain gives the trapezoid of the modified rational method") {
    // C 0.7, A 2 ha, tc 15 min, 40 mm/h: C i A = 0.155556 m3/s (math).
    const Hydrograph long_rain =
        time_area_hydrograph(share(0.7), 2.0 * catchment_hectare, rain_of({40}, 30), minutes(15));
    const Hydrograph short_rain =
        time_area_hydrograph(share(0.7), 2.0 * catchment_hectare, rain_of({40}, 10), minutes(15));
    for (const auto& [minute, flow] : {std::pair{0., 0.},
                                       {5, 0.051852},
                                       {10, 0.103704},
                                       {15, 0.155556},
                                       {30, 0.155556},
                                       {35, 0.103704},
                                       {40, 0.051852},
                                       {45, 0}})
        CHECK_THAT(flow_at(long_rain, minute), is_within(m3_per_s(flow), m3_per_s(6e-7)));
    for (const auto& [minute, flow] :
         {std::pair{5., 0.051852}, {10, 0.103704}, {15, 0.103704}, {20, 0.051852}, {25, 0}})
        CHECK_THAT(flow_at(short_rain, minute), is_within(m3_per_s(flow), m3_per_s(6e-7)));
    Random random;
    for (int i = 0; i < 200; ++i) {
        const double td = random.between(1, 200);
        const double tc = random.between(1, 100);
        const Hydrograph area =
            time_area_hydrograph(share(0.6), catchment_hectare, rain_of({50}, td), minutes(tc));
        for (const auto& [time, flow] : rational_hydrograph(share(0.6), catchment_hectare, mm_per_h(50),
                                                            minutes(td), minutes(tc), minutes(td / 7)))
            REQUIRE_THAT(flow_at(area, time.value() / 60), is_within(flow, m3_per_s(1e-12)));
    }
}

TEST_CASE("a storm of five steps, with a time of concentration that divides them and one that does not") {
    // C 0.8, A 1.5 ha; 12, 30, 60, 24, 6 mm/h in 10-min steps (math): 264 m3.
    const Hyetograph storm = rain_of({12, 30, 60, 24, 6}, 10);
    const Hydrograph twenty = time_area_hydrograph(share(0.8), 1.5 * catchment_hectare, storm, minutes(20));
    for (const auto& [minute, flow] :
         {std::pair{10., 0.02}, {20, 0.07}, {30, 0.15}, {40, 0.14}, {50, 0.05}, {60, 0.01}, {70, 0}})
        CHECK_THAT(flow_at(twenty, minute), is_within(m3_per_s(flow), m3_per_s(1e-9)));
    CHECK_THAT(volume_run_off(twenty), is_near(m3(264)));
    const Hydrograph fifteen = time_area_hydrograph(share(0.8), 1.5 * catchment_hectare, storm, minutes(15));
    for (const auto& [minute, flow] : {std::pair{5., 0.013333},
                                       {10, 0.026667},
                                       {15, 0.06},
                                       {20, 0.08},
                                       {25, 0.133333},
                                       {30, 0.166667},
                                       {35, 0.16},
                                       {40, 0.12},
                                       {45, 0.06},
                                       {50, 0.04},
                                       {55, 0.013333},
                                       {60, 0.006667},
                                       {65, 0}})
        CHECK_THAT(flow_at(fifteen, minute), is_within(m3_per_s(flow), m3_per_s(6e-7)));
    CHECK_THAT(volume_run_off(fifteen), is_near(m3(264)));
    // US: C 0.8, 4 ac, tc 20 min; 1.2, 3.0, 6.0, 2.4, 0.6 in/h, with 43560/43200.
    const Hydrograph us = time_area_hydrograph(
        share(0.8), 4.0 * 43560.0 * ft(1) * ft(1),
        rain_of({25.4 * 1.2, 25.4 * 3, 25.4 * 6, 25.4 * 2.4, 25.4 * 0.6}, 10), minutes(20));
    for (const auto& [minute, flow] :
         {std::pair{10., 1.936}, {20, 6.776}, {30, 14.52}, {40, 13.552}, {50, 4.84}, {60, 0.968}, {70, 0}})
        CHECK_THAT(flow_at(us, minute), is_within(cfs(flow), cfs(1e-6)));
}

TEST_CASE(
    "the flow is the rain of the last time of concentration, its volume C A E, whatever storm and losses") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        std::vector<double> rain;
        for (int k = random.whole(1, 20); k > 0; --k)
            rain.push_back(random.whole(0, 3) * random.between(0, 50));
        const double step = random.between(2, 20);
        const double tc = random.between(2, 60);
        const RainLosses losses = {mm(random.whole(0, 1) * random.between(0, 10)),
                                   mm_per_h(random.whole(0, 1) * random.between(0, 20))};
        const Hydrograph table =
            time_area_hydrograph(share(0.7), catchment_hectare, rain_of(rain, step), minutes(tc), losses);
        // By minutes of a thousandth of a step: initial loss first, continuing loss then.
        double kept = losses.initial.value();
        double excess = 0;
        const int fine = 1000;
        for (const double intensity : rain)
            for (int k = 0; k < fine; ++k) {
                const double fallen = (mm_per_h(intensity) * minutes(step / fine)).value();
                const double initial = std::min(kept, fallen);
                kept -= initial;
                if (initial == fallen) continue;
                const double wet_share = fallen == 0 ? 0 : 1 - initial / fallen;
                excess += std::max(
                    0.0, fallen - initial - wet_share * (losses.continuing * minutes(step / fine)).value());
            }
        CAPTURE(i, losses.initial.value(), losses.continuing.value());
        REQUIRE_THAT(volume_run_off(table),
                     is_within(Volume(0.7 * catchment_hectare * m(excess)), m3(1e-9 + 1e-9 * excess * 7000)));
        for (const auto& [time, flow] : table) REQUIRE(flow >= m3_per_s(0));
        REQUIRE(std::get<1>(table.back()) == m3_per_s(0));
    }
    // Nothing runs off while the ground takes all.
    const Hydrograph dry = time_area_hydrograph(share(0.7), catchment_hectare, rain_of({10, 20}, 10),
                                                minutes(10), {mm(50), mm_per_h(0)});
    CHECK(volume_run_off(dry) == m3(0));
}

TEST_CASE("time-area runoff that cannot be is refused") {
    const Hyetograph storm = rain_of({10, 20}, 10);
    const auto flow = [&](double c, double a, double tc, const Hyetograph& rain,
                          const RainLosses& losses = {}) {
        return time_area_hydrograph(share(c), m2(a), rain, minutes(tc), losses);
    };
    CHECK_THROWS_MATCHES(flow(0, 1, 5, storm), Refused, refuses_domain("coefficient (0)"));
    CHECK_THROWS_MATCHES(flow(1.1, 1, 5, storm), Refused, refuses_domain("coefficient (1.1)"));
    CHECK_THROWS_MATCHES(flow(1, 0, 5, storm), Refused, refuses_domain("area (0 m2)"));
    CHECK_THROWS_MATCHES(flow(1, 1, 0, storm), Refused, refuses_domain("time of concentration (0 min)"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, {storm[0]}), Refused, refuses_domain("at least two rows"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, {storm[1], storm[2]}), Refused,
                         refuses_domain("must be 0 in the first row"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, {storm[0], storm[2], storm[1]}), Refused,
                         refuses_domain("must be later"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, {storm[0], storm[1], {minutes(30), m(0.0001)}}), Refused,
                         refuses_domain("must not be below"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, {storm[0], {minutes(30), m(7)}}), Refused,
                         refuses_domain("is it in mm?"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, storm, {m(-1), mm_per_h(0)}), Refused,
                         refuses_domain("initial loss (-1 m)"));
    CHECK_THROWS_MATCHES(flow(1, 1, 5, storm, {m(0), mm_per_h(-1)}), Refused,
                         refuses_domain("continuing loss"));
}

}  // namespace undercroft::tests
