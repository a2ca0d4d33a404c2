// Level-pool routing.
#include "calc/water/routing.hpp"

#include "calc/water/inflow.hpp"
#include "calc/water/stops.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"
#include "tests/support/pond.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

struct RoutedRow {
    Time time;
    Flow inflow;
    Length depth;
    Volume stored;
    Flow outflow;
};
RoutedRow row(const RoutedTable& table, std::size_t i) {
    const auto& [time, inflow, depth, stored, outflow] = table[i];
    return {time, inflow, depth, stored, outflow};
}

Flow peak_outflow(const RoutedTable& table) {
    Flow peak = m3_per_s(0);
    for (const auto& r : table) peak = std::max(peak, std::get<4>(r));
    return peak;
}
Flow peak_inflow(const Hydrograph& inflow) {
    Flow peak = m3_per_s(0);
    for (const auto& [t, q] : inflow) peak = std::max(peak, q);
    return peak;
}
Volume greatest_stored(const RoutedTable& table) {
    Volume greatest = m3(0);
    for (const auto& r : table) greatest = std::max(greatest, std::get<3>(r));
    return greatest;
}

/// In of every step less out of every step is what the storage gained, to 1e-9 of what moved or is there.
void require_balance(const RoutedTable& table) {
    for (std::size_t i = 1; i < table.size(); ++i) {
        const RoutedRow a = row(table, i - 1);
        const RoutedRow b = row(table, i);
        REQUIRE(b.time > a.time);
        const Volume in = (a.inflow + b.inflow) / 2.0 * (b.time - a.time);
        const Volume out = (a.outflow + b.outflow) / 2.0 * (b.time - a.time);
        const double error = (in - out - (b.stored - a.stored)).value();
        REQUIRE(std::abs(error) <= 1e-9 * std::max({in.value(), out.value(), b.stored.value(), 1e-6}));
    }
}

/// A pool that holds and passes anything: storage and rating on depths of their own.
struct RandomPool {
    StorageTable storage;
    RatingTable rating;

    explicit RandomPool(Random& random, bool monotone = true) {
        double depth = 0;
        double volume = 0;
        while (depth < 10) {
            storage.rows.emplace_back(m(depth), m3(volume));
            const double step = random.between(0.05, 1.5);
            depth += step;
            volume += step * random.between(50, 500);
        }
        storage.rows.emplace_back(m(10), m3(volume + 1000));
        double flow = 0;
        for (double d = 0; d < 10; d += random.between(0.05, 2)) {
            rating.emplace_back(m(d), m3_per_s(flow));
            flow += monotone ? random.whole(0, 3) * random.between(0, 0.2)
                             : random.between(-0.3, 0.5) * flow + 0.05;
        }
        rating.emplace_back(m(10), m3_per_s(flow + 0.01));
    }
};

Hydrograph random_inflow(Random& random) {
    Hydrograph inflow = {{minutes(random.between(0, 20)), m3_per_s(0)}};
    const int rows = random.whole(2, 12);
    for (int i = 0; i < rows; ++i)
        inflow.emplace_back(std::get<0>(inflow.back()) + minutes(random.between(0.5, 40)),
                            m3_per_s(random.whole(0, 3) * random.between(0, 0.1)));
    inflow.emplace_back(std::get<0>(inflow.back()) + minutes(10), m3_per_s(0));
    return inflow;
}

}  // namespace

TEST_CASE("the published pond, row by row at its own step", "[published]") {
    // Chow, Maidment and Mays (1988), Table 8.2.2 (routed columns from memory): outflow as printed and, with
    // the stage, recomputed.
    struct Printed {
        double minute, outflow, outflow_exact, stage_exact;
    };
    const Printed rows[] = {{0, 0.0, 0, 0.0},
                            {10, 2.4, 2.3810, 0.3968},
                            {20, 17.1, 17.0665, 1.5026},
                            {30, 61.1, 61.0937, 3.0304},
                            {40, 123.2, 123.1593, 4.6540},
                            {50, 182.2, 182.1828, 6.2701},
                            {60, 230.3, 230.3368, 7.9745},
                            {70, 259.3, 259.2842, 9.2856},
                            {80, 270.0, 269.9989, 9.7727},
                            {90, 267.4, 267.3676, 9.6531},
                            {100, 254.9, 254.9024, 9.0865},
                            {110, 235.2, 235.1913, 8.1905},
                            {120, 206.9, 206.9243, 7.0740},
                            {130, 168.5, 168.4507, 5.8662},
                            {140, 124.1, 124.1104, 4.6778},
                            {150, 79.8, 79.8461, 3.5486},
                            {160, 48.6, 48.5796, 2.6641},
                            {170, 32.7, 32.7107, 2.1043},
                            {180, 22.8, 22.7752, 1.7221},
                            {190, 16.2, 16.1703, 1.4539},
                            {200, 12.6, 12.6033, 1.2557},
                            {210, 9.8, 9.8232, 1.1013},
                            {220, 7.8, 7.7992, 0.9799},
                            {230, 6.8, 6.7941, 0.8794},
                            {240, 5.9, 5.9186, 0.7919}};
    const Pond pond;
    const RoutedTable table = route_pool(pond.inflow, pond.storage, pond.rating, minutes(10), m(0));
    REQUIRE(table.size() > std::size(rows));
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        const Printed& printed = rows[i];
        const RoutedRow routed = row(table, i);
        CAPTURE(printed.minute);
        CHECK_THAT(routed.time, is_within(minutes(printed.minute), s(1e-9)));
        CHECK_THAT(routed.outflow, is_within(cfs(printed.outflow), cfs(0.05)));
        CHECK_THAT(routed.outflow, is_within(cfs(printed.outflow_exact), cfs(5.1e-5)));
        CHECK_THAT(routed.depth, is_within(ft(printed.stage_exact), ft(5.1e-5)));
        CHECK_THAT(routed.stored, is_near(Volume(ft3(43560) * (routed.depth / ft(1))), 1e-12));
    }
    require_balance(table);
}

TEST_CASE("the published pond with finer steps", "[published]") {
    // math, computed apart from this code: greatest outflow and when.
    struct Finer {
        double step, peak, minute;
    };
    const Pond pond;
    for (const Finer& finer : {Finer{5, 269.5077, 85}, Finer{1, 269.6774, 83}, Finer{0.1, 269.6804, 82.6}}) {
        CAPTURE(finer.step);
        const RoutedTable table =
            route_pool(pond.inflow, pond.storage, pond.rating, minutes(finer.step), m(0));
        CHECK_THAT(peak_outflow(table), is_within(cfs(finer.peak), cfs(5.1e-5)));
        for (const auto& r : table)
            if (std::get<4>(r) == peak_outflow(table))
                CHECK_THAT(std::get<0>(r), is_within(minutes(finer.minute), s(1e-6)));
        require_balance(table);
    }
}

TEST_CASE("a linear reservoir under constant inflow by its recursion", "[published]") {
    // math: K = 2 h, dt = 1 h gives 40, 64, 78.4, 87.04, 92.224 of 100 (math).
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(7200 * 200)}}};
    const RatingTable rating = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(200)}};
    const Hydrograph inflow = {{hours(0), m3_per_s(100)}, {hours(5), m3_per_s(100)}};
    const RoutedTable table = route_pool(inflow, storage, rating, hours(1), m(0));
    const double recursion[] = {0, 40, 64, 78.4, 87.04, 92.224};
    for (std::size_t i = 0; i < std::size(recursion); ++i)
        CHECK(row(table, i).outflow.value() == Approx(recursion[i]).epsilon(1e-12));
    // And converges to 100 (1 - exp(-t/2)).
    const RoutedTable fine = route_pool(inflow, storage, rating, s(6), m(0));
    for (int h = 1; h <= 5; ++h)
        CHECK(row(fine, static_cast<std::size_t>(600 * h)).outflow.value() ==
              Approx(100 * (1 - std::exp(-h / 2.0))).epsilon(1e-6));
}

TEST_CASE("a tank that empties through an orifice, whatever the step", "[published]") {
    // math: A = 50 m2, Cd = 0.6, a = 0.01 m2, g = 9.81: 0.20926327289 m and
    // 0.0121575834321 m3/s after an hour from 2 m.
    StorageTable storage;
    RatingTable rating;
    for (int i = 0; i <= 20000; ++i) {
        const double h = 2 * std::pow(i / 20000.0, 2);  // finer where the law bends most
        storage.rows.emplace_back(m(h), m3(50 * h));
        rating.emplace_back(m(h), m3_per_s(0.6 * 0.01 * std::sqrt(2 * 9.81 * h)));
    }
    const Hydrograph none = {{s(0), m3_per_s(0)}, {s(3600), m3_per_s(0)}};
    for (const double step : {60.0, 600.0, 1800.0}) {
        CAPTURE(step);
        const RoutedTable table = route_pool(none, storage, rating, s(step), m(2));
        const RoutedRow hour = row(table, static_cast<std::size_t>(3600 / step));
        CHECK_THAT(hour.time, is_near(s(3600)));
        CHECK_THAT(hour.depth, is_near(m(0.20926327289), 1e-7));
        CHECK_THAT(hour.outflow, is_near(m3_per_s(0.0121575834321), 1e-7));
    }
}

TEST_CASE("routing follows the differential equation (GSL Runge-Kutta)") {
    Random random;
    for (int i = 0; i < 12; ++i) {
        const RandomPool pool(random);
        const Hydrograph inflow = random_inflow(random);
        const Pool merged(pool.storage, pool.rating);
        const auto outflow = [&](double stored) {
            std::size_t k = 0;
            while (k + 2 < merged.stored.size() && stored > merged.stored[k + 1].value()) ++k;
            const double way =
                (stored - merged.stored[k].value()) / (merged.stored[k + 1] - merged.stored[k]).value();
            return merged.outflow[k].value() + way * (merged.outflow[k + 1] - merged.outflow[k]).value();
        };
        std::size_t span = 1;
        const auto inflow_at = [&](double t) {
            if (span >= inflow.size()) return 0.0;
            const auto& [t1, q1] = inflow[span - 1];
            const auto& [t2, q2] = inflow[span];
            return (q1 + (s(t) - t1) / (t2 - t1) * (q2 - q1)).value();
        };
        const auto gain = [&](double t, double stored) { return inflow_at(t) - outflow(stored); };
        const RoutedTable table = route_pool(inflow, pool.storage, pool.rating, s(5), m(0));
        Ode exact(gain, 0, std::get<0>(inflow.front()).value(), 1e-9);
        const double greatest = greatest_stored(table).value();
        for (const auto& [time, in, depth, stored, out] : table) {
            if (span < inflow.size() && time > std::get<0>(inflow[span])) ++span;
            const double expected = exact.at(time.value());
            CAPTURE(i, time.value());
            REQUIRE(stored.value() == Approx(expected).margin(2e-4 * greatest));
            REQUIRE(out.value() == Approx(outflow(stored.value())).epsilon(1e-9).margin(1e-12));
        }
    }
}

TEST_CASE("water is neither made nor lost, in any pool, storm and step") {
    Random random;
    for (int i = 0; i < 400; ++i) {
        const RandomPool pool(random, i % 2 == 0);
        const Hydrograph inflow = random_inflow(random);
        const Time step = minutes(random.between(0.2, 60));
        CAPTURE(i, step.value());
        const RoutedTable table =
            route_pool(inflow, pool.storage, pool.rating, step, m(random.whole(0, 1) * random.between(0, 2)));
        require_balance(table);
        for (const auto& [time, in, depth, stored, out] : table) {
            REQUIRE(out >= m3_per_s(0));
            REQUIRE(stored >= m3(0));
        }
        // Every row of inflow stands in the table, so its volume is whole.
        std::size_t found = 0;
        for (const auto& r : table)
            while (found < inflow.size() &&
                   std::abs((std::get<0>(r) - std::get<0>(inflow[found])).value()) < 1e-6) {
                REQUIRE_THAT(std::get<1>(r), is_within(std::get<1>(inflow[found]), m3_per_s(1e-12)));
                ++found;
            }
        REQUIRE(found == inflow.size());
    }
}

TEST_CASE("from an empty bed no more flows out than in, and a larger storm fills it higher") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const RandomPool pool(random);
        const Hydrograph inflow = random_inflow(random);
        Hydrograph larger = inflow;
        for (auto& [t, q] : larger) q *= 1.1;
        const Time step = minutes(random.between(0.2, 30));
        const RoutedTable table = route_pool(inflow, pool.storage, pool.rating, step, m(0));
        const RoutedTable table_of_larger = route_pool(larger, pool.storage, pool.rating, step, m(0));
        REQUIRE(peak_outflow(table) <= peak_inflow(inflow) * (1 + 1e-9));
        REQUIRE(greatest_stored(table_of_larger) >= greatest_stored(table));
        REQUIRE(peak_outflow(table_of_larger) >= peak_outflow(table) * (1 - 1e-9));
    }
}

TEST_CASE("without a step, halving the one chosen changes the peak by less than 0.1 %") {
    const Pond pond;
    const RoutedTable own = route_pool(pond.inflow, pond.storage, pond.rating, std::nullopt, m(0));
    CHECK_THAT(peak_outflow(own), is_near(cfs(269.6804), 1e-3));
    Random random;
    for (int i = 0; i < 60; ++i) {
        const RandomPool pool(random);
        const Hydrograph inflow = random_inflow(random);
        const RoutedTable table = route_pool(inflow, pool.storage, pool.rating, std::nullopt, m(0));
        // The step is the longest time between two rows after the inflow is over.
        Time step = s(0);
        for (std::size_t r = 1; r < table.size(); ++r)
            step = std::max(step, Time(row(table, r).time - row(table, r - 1).time));
        const RoutedTable halved = route_pool(inflow, pool.storage, pool.rating, step / 2.0, m(0));
        CAPTURE(i, step.value());
        REQUIRE(peak_outflow(halved).value() == Approx(peak_outflow(table).value()).epsilon(1.001e-3));
        REQUIRE(greatest_stored(halved).value() == Approx(greatest_stored(table).value()).epsilon(1.001e-3));
    }
}

TEST_CASE("the table runs on until the bed is empty, or 10 times the inflow is over") {
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(100)}}};
    const Hydrograph inflow = {
        {minutes(0), m3_per_s(0)}, {minutes(10), m3_per_s(0.02)}, {minutes(20), m3_per_s(0)}};
    const auto last = [&](const RatingTable& rating) {
        const RoutedTable table = route_pool(inflow, storage, rating, minutes(1), m(0));
        return row(table, table.size() - 1);
    };
    const RoutedRow fast = last({{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.2)}});
    CHECK(fast.time < minutes(200));
    CHECK(fast.time > minutes(20));
    CHECK(fast.stored < m3(0.012));
    const RoutedRow slow = last({{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.001)}});
    CHECK_THAT(slow.time, is_near(minutes(200)));
    CHECK(slow.stored > m3(5));
    // What stands below the outlet never leaves: no reason to go on.
    const RoutedRow dead = last({{m(0), m3_per_s(0)}, {m(0.5), m3_per_s(0)}, {m(1), m3_per_s(0.2)}});
    CHECK_THAT(dead.time, is_near(minutes(20)));
    CHECK_THAT(dead.stored, is_near(m3(12)));
    // Nor is there any without an outlet, wherever the rating has rows.
    const RoutedRow shut = last({{m(0), m3_per_s(0)}, {m(0.05), m3_per_s(0)}, {m(1), m3_per_s(0)}});
    CHECK_THAT(shut.time, is_near(minutes(20)));
    CHECK_THAT(shut.stored, is_near(m3(12)));
}

TEST_CASE("without a step, the spacing of the inflow is tried first, whenever the storm begins") {
    // A linear reservoir of 100000 s hardly moves in a minute.
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(1000)}}};
    const RatingTable rating = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.01)}};
    for (const double start : {0., 600.}) {
        const Hydrograph inflow = {{minutes(start), m3_per_s(0)},
                                   {minutes(start + 2), m3_per_s(0.02)},
                                   {minutes(start + 3), m3_per_s(0.02)},
                                   {minutes(start + 9), m3_per_s(0)}};
        const RoutedTable table = route_pool(inflow, storage, rating, std::nullopt, m(0));
        REQUIRE(table.size() == 91);  // 10 times the inflow's 9 minutes
        for (std::size_t i = 0; i < table.size(); ++i)
            REQUIRE_THAT(row(table, i).time, is_near(minutes(start + static_cast<double>(i))));
    }
}

TEST_CASE("inflow that does not end at 0 falls to it by the next step") {
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(100)}}};
    const RatingTable rating = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.05)}};
    const RoutedTable table = route_pool({{minutes(0), m3_per_s(0.02)}, {minutes(10), m3_per_s(0.02)}},
                                         storage, rating, minutes(2), m(0));
    CHECK(row(table, 5).inflow == m3_per_s(0.02));
    CHECK_THAT(row(table, 6).time, is_near(minutes(12)));
    CHECK(row(table, 6).inflow == m3_per_s(0));
    require_balance(table);
}

TEST_CASE("a pump and soakage at full strength from the start do not make the flow swing") {
    // A pump that could take twice the inflow, switched on at 0.5 m, over a plan area of 100 m2.
    const StorageTable storage = {{{m(0), m3(0)}, {m(2), m3(200)}}};
    const OutletTable outlets = {{OutletKind::pump, m(0.5), as_quantity(m3_per_s(0.04)), {}, {}, {}}};
    const RatingTable pump = outlet_rating(outlets, m(2), count(4));
    const Hydrograph steady = {{minutes(0), m3_per_s(0.02)}, {minutes(240), m3_per_s(0.02)}};
    const RoutedTable pumped = route_pool(steady, storage, pump, minutes(5), m(0));
    require_balance(pumped);
    CHECK(peak_outflow(pumped) <= m3_per_s(0.02) * (1 + 1e-9));
    for (const auto& [time, in, depth, stored, out] : pumped)
        if (time > minutes(60) && time < minutes(240)) {
            REQUIRE(depth >= m(0.5));
            REQUIRE(depth <= m(0.501));
            REQUIRE_THAT(out, is_near(m3_per_s(0.02), 1e-6));
        }
    // A rating that starts at full strength: an empty bed lets out what flows in, and no more.
    const RatingTable soakage = {{m(0), m3_per_s(0.03)}, {m(2), m3_per_s(0.05)}};
    const RoutedTable soaked = route_pool(steady, storage, soakage, minutes(5), m(0));
    require_balance(soaked);
    CHECK(row(soaked, 0).outflow == m3_per_s(0));
    CHECK(greatest_stored(soaked) < m3(0.1));
    CHECK(peak_outflow(soaked) <= m3_per_s(0.02) * (1 + 1e-9));
    // Water that is there from the start is in the volume, and changes nothing else.
    const StorageTable above = {{{m(0), m3(7)}, {m(2), m3(207)}}};
    const RoutedTable higher = route_pool(steady, above, soakage, minutes(5), m(0));
    for (std::size_t i = 0; i < std::min(soaked.size(), higher.size()); ++i) {  // until either is empty
        CHECK_THAT(row(higher, i).stored, is_near(Volume(row(soaked, i).stored + m3(7)), 1e-9));
        CHECK_THAT(row(higher, i).outflow, is_within(row(soaked, i).outflow, m3_per_s(1e-9)));
    }
}

TEST_CASE("storage and rating on different depths are one pool, straight between all of them") {
    const StorageTable storage = {{{m(0), m3(0)}, {m(0.4), m3(20)}, {m(1), m3(80)}}};
    const RatingTable rating = {{m(0), m3_per_s(0)}, {m(0.3), m3_per_s(0.01)}, {m(1.2), m3_per_s(0.04)}};
    const Pool pool(storage, rating);
    REQUIRE(pool.depth.size() == 4);
    CHECK_THAT(pool.depth[1], is_near(m(0.3)));
    CHECK_THAT(pool.stored[1], is_near(m3(15)));
    CHECK_THAT(pool.outflow[2], is_near(m3_per_s(0.01 + 0.03 / 9)));
    CHECK_THAT(pool.outflow[3], is_near(m3_per_s(0.01 + 0.03 * 7 / 9)));
    // More rows on the same lines change nothing.
    StorageTable finer_storage;
    RatingTable finer_rating;
    std::vector<Length> depths = equal_steps(m(1), 37);
    add_kinks(depths, pool.depth);
    for (const Length& d : depths) {
        const auto [i, way] = pool.place_of(d);
        finer_storage.rows.emplace_back(d, pool.stored_at(d));
        finer_rating.emplace_back(d, pool.outflow[i] + way * (pool.outflow[i + 1] - pool.outflow[i]));
    }
    const Hydrograph inflow = {
        {minutes(0), m3_per_s(0)}, {minutes(30), m3_per_s(0.05)}, {minutes(60), m3_per_s(0)}};
    const RoutedTable coarse = route_pool(inflow, storage, rating, minutes(2), m(0));
    const RoutedTable fine = route_pool(inflow, finer_storage, finer_rating, minutes(2), m(0));
    REQUIRE(coarse.size() == fine.size());
    for (std::size_t i = 0; i < coarse.size(); ++i)
        REQUIRE(row(coarse, i).stored.value() ==
                Approx(row(fine, i).stored.value()).epsilon(1e-10).margin(1e-12));
}

TEST_CASE("a bed that overflows says when and by what") {
    // A closed bed of 60 m3 under a triangle of 120 m3 in 20 min: full half-way, the other half finds no
    // room.
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(60)}}};
    const RatingTable closed = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0)}};
    const Hydrograph triangle = {
        {minutes(0), m3_per_s(0)}, {minutes(10), m3_per_s(0.2)}, {minutes(20), m3_per_s(0)}};
    for (const std::optional<Time>& step : {std::optional<Time>(), std::optional(minutes(0.5)),
                                            std::optional(minutes(3)), std::optional(minutes(60))})
        CHECK_THROWS_MATCHES(route_pool(triangle, storage, closed, step, m(0)), Refused,
                             refuses_domain("the bed overflows at time 10 min by 60 m3"));
    // Linear reservoir of K = 750 s under 0.1 m3/s for 30 min: S = 75 m3 (1 - exp(-t/K)) is 60 m3 at K ln 5 =
    // 20.1180 min, and from then on 0.02 m3/s find no room: 11.858 m3 (math).
    const RatingTable open = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.08)}};
    const Hydrograph block = {
        {minutes(0), m3_per_s(0.1)}, {minutes(30), m3_per_s(0.1)}, {s(1800.001), m3_per_s(0)}};
    CHECK_THROWS_MATCHES(route_pool(block, storage, open, s(1), m(0)), Refused,
                         refuses_domain("the bed overflows at time 20.118 min by 11.85"));
    Pond pond;
    for (auto& [t, q] : pond.inflow) q *= 1.1;
    CHECK_THROWS_MATCHES(route_pool(pond.inflow, pond.storage, pond.rating, minutes(10), m(0)), Refused,
                         refuses_domain("the bed overflows at time "));
}

TEST_CASE("what finds no room is what came in less what went out and what is there") {
    Random random;
    int overflows = 0;
    for (int i = 0; i < 200; ++i) {
        const RandomPool random_pool(random, i % 2 == 0);
        const Pool pool(random_pool.storage, random_pool.rating);
        Hydrograph inflow = random_inflow(random);
        for (auto& [t, q] : inflow) q *= 50.0;
        const Time step = minutes(random.between(0.2, 20));
        const PoolRun run = run_pool(inflow, pool, step, m(0));
        if (run.spilled == m3(0)) continue;
        ++overflows;
        CAPTURE(i, step.value());
        Volume missing = m3(0);
        for (std::size_t r = 1; r < run.rows.size(); ++r) {
            const RoutedRow a = row(run.rows, r - 1);
            const RoutedRow b = row(run.rows, r);
            const Time dt = b.time - a.time;
            const Volume lost =
                (a.inflow + b.inflow - a.outflow - b.outflow) / 2.0 * dt - (b.stored - a.stored);
            const Volume rounding = 1e-12 * (b.stored + (a.inflow + b.inflow) * dt);
            REQUIRE(lost >= -rounding);
            if (lost > rounding) {
                REQUIRE(b.depth == pool.top());
                // The time said lies in the first such step.
                if (missing == m3(0)) {
                    REQUIRE(run.spills_from >= a.time);
                    REQUIRE(run.spills_from <= b.time);
                }
                missing += lost;
            }
        }
        REQUIRE_THAT(missing, is_near(run.spilled, 1e-9));
        REQUIRE_THROWS_MATCHES(
            route_pool(inflow, random_pool.storage, random_pool.rating, step, m(0)), Refused,
            refuses_domain("the bed overflows at time " + text_of(as_quantity(run.spills_from)) + " by " +
                           text_of(as_quantity(run.spilled))));
    }
    CHECK(overflows > 50);
}

TEST_CASE("the greatest depth is the deepest row of the table, unless the step is too long for it") {
    const Pond pond;
    CHECK_THAT(greatest_routed_depth(pond.inflow, pond.storage, pond.rating, minutes(10), m(0)),
               is_within(ft(9.7727), ft(5.1e-5)));  // recomputed apart from this code
    Random random;
    for (int i = 0; i < 50; ++i) {
        const RandomPool pool(random);
        const Hydrograph inflow = random_inflow(random);
        const Length from = m(random.whole(0, 1) * random.between(0, 3));
        const RoutedTable rows = route_pool(inflow, pool.storage, pool.rating, minutes(3), from);
        Length deepest = m(0);
        for (const auto& r : rows) deepest = std::max(deepest, std::get<2>(r));
        const Length found = greatest_routed_depth(inflow, pool.storage, pool.rating, minutes(3), from);
        if (found == deepest) continue;
        // The step leaves it too far off; then it is that of a shorter one.
        REQUIRE_THROWS_WITH(require_peak_kept(rows, inflow, pool.storage, pool.rating, from),
                            Catch::Contains("the step is too long"));
        REQUIRE(found == greatest_routed_depth(inflow, pool.storage, pool.rating, std::nullopt, from));
    }
}

TEST_CASE("a million steps are routed, and one row more than a sheet has is refused") {
    const Pond pond;
    const RoutedTable table = route_pool(pond.inflow, pond.storage, pond.rating, s(0.046), m(0));
    CHECK(table.size() > 999000);
    CHECK_THAT(peak_outflow(table), is_within(cfs(269.6804), cfs(5e-4)));
    CHECK_THROWS_MATCHES(route_pool(pond.inflow, pond.storage, pond.rating, s(0.005), m(0)), Refused,
                         refuses_domain("more rows than a sheet"));
}

TEST_CASE(
    "a step is taken where it keeps the peak depth to 0.2 %, and refused where it does not (GSL "
    "Runge-Kutta)") {
    // Beds and storms of any kind; the greatest depth by dS/dt = I - Q.
    Random random;
    int taken = 0;
    int refused = 0;
    for (int i = 0; i < 40; ++i) {
        StorageTable storage = {{{m(0), m3(0)}}};
        RatingTable rating = {{m(0), m3_per_s(random.whole(0, 3) == 0 ? 0.004 : 0)}};
        for (double d = 0.25; d <= 2.5; d += 0.25) {
            storage.rows.emplace_back(m(d), std::get<1>(storage.rows.back()) + m3(random.between(20, 100)));
            rating.emplace_back(m(d), std::get<1>(rating.back()) + m3_per_s(random.between(0.001, 0.02)));
        }
        const double peak = random.between(0.03, 0.12);
        const double rise = random.between(10, 40);
        const Hydrograph inflow = {
            {minutes(0), m3_per_s(0)}, {minutes(rise), m3_per_s(peak)}, {minutes(2.5 * rise), m3_per_s(0)}};
        const Pool pool(storage, rating);
        const auto at_volume = [&](double volume, const auto& column) {
            std::size_t k = 0;
            while (k + 2 < pool.stored.size() && volume > pool.stored[k + 1].value()) ++k;
            const double way =
                (volume - pool.stored[k].value()) / (pool.stored[k + 1] - pool.stored[k]).value();
            return column[k].value() + way * (column[k + 1] - column[k]).value();
        };
        const auto gain = [&](double t, double volume) {
            const double in = t < 60 * rise ? peak * t / (60 * rise)
                                            : std::max(0.0, peak * (2.5 * rise - t / 60) / (1.5 * rise));
            const double out = at_volume(volume, pool.outflow);
            return volume <= 0 && in < out ? 0 : in - out;
        };
        Ode exact(gain, 0, 0, 1e-9);
        double most = 0;
        for (double t = 0; t <= 150 * rise; t += 1.5 * rise)
            most = std::max(most, at_volume(std::max(0.0, exact.at(t)), pool.depth));
        if (most > 2.4 || most < 0.05) continue;
        for (const std::optional<Time> step : {std::optional<Time>{},
                                               {minutes(0.5)},
                                               {minutes(2)},
                                               {minutes(7)},
                                               {minutes(20)},
                                               {minutes(45)}}) {
            CAPTURE(i, step ? step->value() : 0.0, most);
            const RoutedTable rows = route_pool(inflow, storage, rating, step, m(0));
            Length deepest = m(0);
            for (const auto& [time, in, depth, stored, out] : rows) deepest = std::max(deepest, depth);
            const double error = std::abs(deepest.value() / most - 1);
            bool is_taken = true;
            try {
                require_peak_kept(rows, inflow, storage, rating, m(0));
            } catch (const Refused& reason) {
                is_taken = false;
                CHECK_THAT(std::string(reason.what()), Catch::Contains("the step is too long"));
            }
            ++(is_taken ? taken : refused);
            CHECK((is_taken ? error < 2.05e-3 : error > 1.95e-3));
            if (!step) REQUIRE(is_taken);
        }
    }
    CHECK(taken > 60);
    CHECK(refused > 20);
}

TEST_CASE("tables that make no pool are refused") {
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(60)}}};
    const RatingTable rating = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.1)}};
    const Hydrograph inflow = {{minutes(0), m3_per_s(0)}, {minutes(20), m3_per_s(0.01)}};
    const auto route = [](const Hydrograph& i, const StorageTable& st, const RatingTable& r,
                          std::optional<Time> dt, Length d0) { return route_pool(i, st, r, dt, d0); };
    CHECK_NOTHROW(route(inflow, storage, rating, s(60), m(0)));
    CHECK_THROWS_MATCHES(route(inflow, storage, rating, s(0), m(0)), Refused, refuses_domain("step (0 min)"));
    CHECK_THROWS_MATCHES(route(inflow, storage, rating, s(60), m(2)), Refused,
                         refuses_domain("initial depth (2 m) must be within the storage table (0 m to 1 m)"));
    CHECK_THROWS_MATCHES(route({inflow[0]}, storage, rating, s(60), m(0)), Refused,
                         refuses_domain("two rows"));
    CHECK_THROWS_MATCHES(route({inflow[1], inflow[0]}, storage, rating, s(60), m(0)), Refused,
                         refuses_domain("time (0 min) of inflow must be later"));
    CHECK_THROWS_MATCHES(route({inflow[0], {minutes(20), m3_per_s(-1)}}, storage, rating, s(60), m(0)),
                         Refused, refuses_domain("inflow (-1000 L/s)"));
    CHECK_THROWS_MATCHES(route(inflow, {{{m(0), m3(0)}}}, rating, s(60), m(0)), Refused,
                         refuses_domain("the storage table needs at least two rows"));
    CHECK_THROWS_MATCHES(route(inflow, {{{m(0), m3(0)}, {m(1), m3(0)}}}, rating, s(60), m(0)), Refused,
                         refuses_domain("volume (0 m3) must be above that of the row before"));
    CHECK_THROWS_MATCHES(route(inflow, {{{m(0), m3(0)}, {m(0), m3(1)}}}, rating, s(60), m(0)), Refused,
                         refuses_domain("depth (0 m) must be above that of the row before"));
    CHECK_THROWS_MATCHES(route(inflow, storage, {{m(0), m3_per_s(0)}, {m(0.9), m3_per_s(1)}}, s(60), m(0)),
                         Refused, refuses_domain("must reach over the depths of the storage (0 m to 1 m)"));
    CHECK_THROWS_MATCHES(route(inflow, storage, {{m(0), m3_per_s(-1)}, {m(1), m3_per_s(1)}}, s(60), m(0)),
                         Refused, refuses_domain("flow (-1000 L/s)"));
}

TEST_CASE("a hydrograph whose last flow is above 5 % of its peak is plainly cut off") {
    const auto ending = [](double last) {
        return Hydrograph{
            {minutes(0), m3_per_s(0)}, {minutes(10), m3_per_s(0.2)}, {minutes(20), m3_per_s(last)}};
    };
    CHECK_NOTHROW(require_whole_inflow(ending(0)));
    CHECK_NOTHROW(require_whole_inflow(ending(0.01)));
    CHECK_THROWS_MATCHES(require_whole_inflow(ending(0.0101)), Refused, refuses_domain("is 5 % of its peak"));
    CHECK_THROWS_MATCHES(require_whole_inflow(ending(0.2)), Refused,
                         refuses_domain("inflow (200 L/s) in its last row is 100 % of its peak"));
    CHECK_NOTHROW(require_whole_inflow({{minutes(0), m3_per_s(0)}, {minutes(10), m3_per_s(0)}}));
    CHECK_THROWS_MATCHES(require_whole_inflow({{minutes(0), m3_per_s(0)}}), Refused,
                         refuses_domain("two rows"));
}

}  // namespace undercroft::tests
