// Routing that goes on when a bed is full.
#include "calc/water/spill_routing.hpp"

#include "calc/water/emptying.hpp"
#include "calc/water/routing.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"
#include "tests/support/pond.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A linear store, O = S/K, up to a capacity.
struct LinearStore {
    StorageTable storage;
    RatingTable rating;

    LinearStore(double k_minutes, double greatest_outflow)
        : storage{{{m(0), m3(0)}, {m(1), m3(60 * k_minutes * greatest_outflow)}}},
          rating{{m(0), m3_per_s(0)}, {m(1), m3_per_s(greatest_outflow)}} {}
};

Hydrograph block(double flow, double minute) {
    return {
        {s(0), m3_per_s(flow)}, {minutes(minute), m3_per_s(flow)}, {minutes(minute) + s(1e-6), m3_per_s(0)}};
}

struct RandomBed {
    StorageTable storage;
    RatingTable rating;

    explicit RandomBed(Random& random, bool monotone) {
        double volume = random.between(0, 20);
        for (double d = 0; d < 2; d += random.between(0.05, 0.5)) {
            storage.rows.emplace_back(m(d), m3(volume));
            volume += random.between(5, 100);
        }
        storage.rows.emplace_back(m(2.5), m3(volume));
        double flow = random.whole(0, 1) * 0.01;
        for (double d = 0; d < 4; d += random.between(0.05, 0.5)) {
            rating.emplace_back(m(d), m3_per_s(flow));
            flow = monotone ? flow + random.whole(0, 2) * random.between(0, 0.05)
                            : std::max(0.0, flow + random.between(-0.03, 0.04));
        }
        rating.emplace_back(m(5), m3_per_s(flow));
    }
};

Hydrograph random_inflow(Random& random, double scale) {
    Hydrograph inflow = {{minutes(random.between(0, 20)), m3_per_s(0)}};
    for (int rows = random.whole(2, 12); rows > 0; --rows)
        inflow.emplace_back(std::get<0>(inflow.back()) + minutes(random.between(0.5, 40)),
                            m3_per_s(scale * random.whole(0, 3) * random.between(0, 0.1)));
    inflow.emplace_back(std::get<0>(inflow.back()) + minutes(10), m3_per_s(0));
    return inflow;
}

Volume volume_flown(const Hydrograph& inflow) {
    Volume volume = m3(0);
    for (std::size_t i = 1; i < inflow.size(); ++i)
        volume += (std::get<1>(inflow[i - 1]) + std::get<1>(inflow[i])) / 2.0 *
                  (std::get<0>(inflow[i]) - std::get<0>(inflow[i - 1]));
    return volume;
}

}  // namespace

TEST_CASE("a linear store that fills, spills and empties in its closed form") {
    // q 0.2 m3/s for 60 min, K 45 min, full at Oc 0.12 m3/s: from -K ln(1 - Oc/q) = 41.233083 min on (q -
    // Oc)(D - t1) = 90.081202 m3 find no room; 60 min after the rain 0.031631657 m3/s flow (math).
    const LinearStore store(45, 0.12);
    const FloodMarks marks = flood_marks(block(0.2, 60), store.storage, store.rating, {}, m(0));
    CHECK_THAT(marks.spills_from, is_near(minutes(41.233083), 1e-7));
    CHECK_THAT(marks.spilled, is_near(m3(90.081202), 1e-7));
    CHECK_THAT(marks.spills_until, is_near(minutes(60), 1e-7));
    CHECK(marks.depth == m(1));
    CHECK_THAT(marks.time, is_near(minutes(41.233083), 1e-7));
    CHECK_THAT(marks.stored, is_near(m3(324)));
    CHECK_THAT(marks.outflow, is_near(m3_per_s(0.12)));
    CHECK(marks.inflow == m3_per_s(0.2));
    for (const auto& [time, in, depth, stored, out, spilled] :
         route_spill(block(0.2, 60), store.storage, store.rating, {}, minutes(7), m(0))) {
        const double t = time.value() / 60;
        const double expected = t < 41.233083 ? 0.2 * (1 - std::exp(-t / 45))
                                : t < 60      ? 0.12
                                              : 0.12 * std::exp(-(t - 60) / 45);
        CHECK(out.value() == Approx(expected).epsilon(1e-6).margin(1e-12));
        CHECK(stored.value() == Approx(2700 * out.value()).epsilon(1e-9));
        CHECK(spilled.value() ==
              Approx(0.08 * 60 * std::clamp(t - 41.233083, 0.0, 60 - 41.233083)).epsilon(1e-6).margin(1e-9));
        if (std::abs(t - 120) < 1e-9) CHECK(out.value() == Approx(0.031631657).epsilon(1e-6));
    }
    // Without a spill: 0.2 (1 - exp(-60/45)).
    const LinearStore ample(45, 0.3);
    const FloodMarks held = flood_marks(block(0.2, 60), ample.storage, ample.rating, {}, m(0));
    CHECK_THAT(held.outflow, is_near(m3_per_s(0.2 * (1 - std::exp(-60.0 / 45))), 1e-8));
    CHECK(held.spilled == m3(0));
    CHECK(held.spills_from == s(0));
    CHECK(held.spills_until == s(0));
}

TEST_CASE("a triangle through a bed with a steady outflow, too small for it") {
    // 0 to 0.3 m3/s at 20 min to 0 at 60 min; outflow 0.05, capacity 300 m3: 75.0 m3 spill from 35.075915
    // to 53.333333 min and it is empty at 156.666667 min (math).
    const StorageTable storage = {{{m(0), m3(0)}, {m(1), m3(300)}}};
    const RatingTable steady = {{m(0), m3_per_s(0.05)}, {m(1), m3_per_s(0.05)}};
    const Hydrograph triangle = {
        {s(0), m3_per_s(0)}, {minutes(20), m3_per_s(0.3)}, {minutes(60), m3_per_s(0)}};
    const FloodMarks marks = flood_marks(triangle, storage, steady, {}, m(0));
    CHECK_THAT(marks.spilled, is_near(m3(75.0), 1e-9));
    CHECK_THAT(marks.spills_from, is_near(minutes(35.075915), 1e-8));
    CHECK_THAT(marks.spills_until, is_near(minutes(53.333333), 1e-8));
    const SpillTable table = route_spill(triangle, storage, steady, {}, minutes(1), m(0));
    Time empty = s(0);
    for (const auto& [time, in, depth, stored, out, spilled] : table) {
        if (stored > m3(0)) empty = time;
        if (time > minutes(3.4) && time < minutes(156.6)) CHECK_THAT(out, is_near(m3_per_s(0.05)));
        if (time < minutes(10.0 / 3)) CHECK_THAT(out, is_near(in));  // an empty bed lets out what flows in
    }
    CHECK_THAT(empty, is_within(minutes(156.666667), minutes(1)));
    // A large enough bed needs 375 m3.
    const StorageTable large = {{{m(0), m3(0)}, {m(1), m3(400)}}};
    CHECK_THAT(flood_marks(triangle, large, steady, {}, m(0)).stored, is_near(m3(375), 1e-9));
    // Rows where spilling begins and ends.
    const auto has_row = [&](double minute) {
        for (const auto& row : table)
            if (std::abs(std::get<0>(row).value() / 60 - minute) < 1e-5) return true;
        return false;
    };
    CHECK(has_row(35.075915));
    CHECK(has_row(53.333333));
}

TEST_CASE("routing without a step follows the differential equation (GSL Runge-Kutta)") {
    Random random;
    int followed = 0;
    for (int i = 0; i < 40; ++i) {
        const RandomBed bed(random, i % 2 == 0);
        const Hydrograph inflow = random_inflow(random, 0.4);
        const Pool pool(bed.storage, bed.rating);
        const auto outflow = [&](double stored) {
            std::size_t k = 0;
            while (k + 2 < pool.stored.size() && stored > pool.stored[k + 1].value()) ++k;
            const double way =
                (stored - pool.stored[k].value()) / (pool.stored[k + 1] - pool.stored[k]).value();
            return pool.outflow[k].value() + way * (pool.outflow[k + 1] - pool.outflow[k]).value();
        };
        std::size_t span = 1;
        const auto gain = [&](double t, double stored) {
            const auto& [t1, q1] = inflow[std::min(span, inflow.size() - 1) - 1];
            const auto& [t2, q2] = inflow[std::min(span, inflow.size() - 1)];
            const double in = span >= inflow.size() ? 0 : (q1 + (s(t) - t1) / (t2 - t1) * (q2 - q1)).value();
            const double q = outflow(stored);
            return stored <= pool.stored.front().value() && in < q ? 0 : in - q;
        };
        const double start =
            pool.stored.front().value() + 0.3 * (pool.stored.back() - pool.stored.front()).value();
        const auto [place, way] = [&] {
            std::size_t k = 0;
            while (start > pool.stored[k + 1].value()) ++k;
            return std::pair(
                k, (start - pool.stored[k].value()) / (pool.stored[k + 1] - pool.stored[k]).value());
        }();
        const Length depth = pool.depth[place] + way * (pool.depth[place + 1] - pool.depth[place]);
        const FloodMarks marks = flood_marks(inflow, bed.storage, bed.rating, {}, depth);
        if (marks.spilled > m3(0)) continue;
        ++followed;
        Ode exact(gain, start, std::get<0>(inflow.front()).value(), 1e-10);
        for (const auto& [time, in, d, stored, out, spilled] :
             route_spill(inflow, bed.storage, bed.rating, {}, minutes(3), depth)) {
            if (span < inflow.size() && time > std::get<0>(inflow[span])) ++span;
            if (span >= inflow.size()) break;
            const double expected = exact.at(time.value());
            CAPTURE(i, time.value());
            REQUIRE(stored.value() == Approx(expected).epsilon(1e-6).margin(2e-4));
        }
    }
    CHECK(followed > 15);
}

TEST_CASE("its summit is what ever finer steps of the storage indication come to") {
    const Pond pond;
    // Chow, Maidment and Mays (1988), Example 8.2.2, with steps of 6 s: 269.6804 ft3/s (math).
    const FloodMarks marks = flood_marks(pond.inflow, pond.storage, pond.rating, {}, m(0));
    CHECK_THAT(marks.outflow, is_near(cfs(269.6804), 1e-6));
    CHECK_THAT(marks.inflow, is_near(cfs(360)));
    Random random;
    for (int i = 0; i < 30; ++i) {
        const RandomBed bed(random, true);
        const Hydrograph inflow = random_inflow(random, 0.3);
        const FloodMarks exact = flood_marks(inflow, bed.storage, bed.rating, {}, m(0));
        if (exact.spilled > m3(0)) continue;
        const Length stepped = greatest_routed_depth(inflow, bed.storage, bed.rating, s(2), m(0));
        REQUIRE_THAT(exact.depth, is_within(stepped, m(1e-3 * stepped.value() + 2e-3)));
    }
}

TEST_CASE("water is neither made nor lost, in any bed, with ponding and without") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const RandomBed bed(random, i % 3 != 0);
        const Hydrograph inflow = random_inflow(random, i % 2 == 0 ? 1 : 8);
        std::optional<StorageTable> surface;
        if (i % 5 < 3)
            surface = StorageTable{
                {{m(random.whole(0, 1) == 0 ? 2.5 : 3.2), m3(0)}, {m(3.5), m3(40)}, {m(4), m3(200)}}};
        const SpillTable table =
            route_spill(inflow, bed.storage, bed.rating, surface, s(random.between(20, 900)), m(0));
        // Outflow by Simpson's rule over a fine table.
        const SpillTable fine = route_spill(inflow, bed.storage, bed.rating, surface, s(5), m(0));
        Volume out = m3(0);
        for (std::size_t r = 1; r < fine.size(); ++r)
            out += (std::get<4>(fine[r - 1]) + std::get<4>(fine[r])) / 2.0 *
                   (std::get<0>(fine[r]) - std::get<0>(fine[r - 1]));
        const Volume in = volume_flown(inflow);
        const Volume gained = std::get<3>(fine.back()) - std::get<3>(fine.front());
        const Volume spilled = std::get<5>(fine.back());
        CAPTURE(i);
        REQUIRE((out + gained + spilled).value() == Approx(in.value()).epsilon(2e-3).margin(0.05));
        // The step changes the rows, not what happened.
        REQUIRE_THAT(std::get<5>(table.back()), is_within(spilled, m3(1e-6 + 1e-9 * in.value())));
        const FloodMarks marks = flood_marks(inflow, bed.storage, bed.rating, surface, m(0));
        Length deepest = m(0);
        Flow most = m3_per_s(0);
        for (std::size_t r = 0; r < table.size(); ++r) {
            const auto& [time, flow, depth, stored, outflow, spill] = table[r];
            deepest = std::max(deepest, depth);
            most = std::max(most, outflow);
            REQUIRE(outflow >= m3_per_s(0));
            if (r > 0) REQUIRE(spill >= std::get<5>(table[r - 1]));
            if (r > 0) REQUIRE(time > std::get<0>(table[r - 1]));
        }
        REQUIRE_THAT(deepest, is_within(marks.depth, m(1e-9)));
        REQUIRE(most <= marks.outflow * (1 + 1e-9));
        REQUIRE_THAT(marks.spilled, is_within(spilled, m3(1e-6 + 1e-9 * in.value())));
    }
}

TEST_CASE("what ponds on the surface stands above the bed and comes back") {
    // A bed of 60 m3 with an outflow of 10 L/s; above 1.2 m a hollow of 500 m2. 0.2 m3/s for 10 min bring 120
    // m3.
    const StorageTable bed = {{{m(0), m3(0)}, {m(1), m3(60)}}};
    const RatingTable rating = {{m(0), m3_per_s(0.01)}, {m(2), m3_per_s(0.01)}};
    const StorageTable hollow = {{{m(1.2), m3(0)}, {m(1.7), m3(250)}}};
    const FloodMarks marks = flood_marks(block(0.2, 10), bed, rating, hollow, m(0));
    CHECK(marks.spilled == m3(0));
    CHECK_THAT(marks.stored, is_near(m3(114), 1e-6));
    CHECK_THAT(marks.depth, is_near(m(1.2 + 54.0 / 500), 1e-6));
    // Without the hollow the same finds no room.
    CHECK_THAT(flood_marks(block(0.2, 10), bed, rating, {}, m(0)).spilled, is_near(m3(54), 1e-6));
    // A hollow too small: what it does not hold spills.
    const StorageTable small = {{{m(1.2), m3(0)}, {m(1.3), m3(20)}}};
    const FloodMarks both = flood_marks(block(0.2, 10), bed, rating, small, m(0));
    CHECK_THAT(both.spilled, is_near(m3(34), 1e-6));
    CHECK_THAT(both.depth, is_near(m(1.3)));
    // In the shafts between bed and surface the level is the one that lets out what flows in.
    const RatingTable rising = {
        {m(0), m3_per_s(0)}, {m(1), m3_per_s(0.01)}, {m(1.2), m3_per_s(0.02)}, {m(2), m3_per_s(0.02)}};
    const FloodMarks between = flood_marks(block(0.015, 600), bed, rising, hollow, m(0));
    CHECK_THAT(between.depth, is_near(m(1.1), 1e-6));
    CHECK_THAT(between.outflow, is_near(m3_per_s(0.015), 1e-6));
    CHECK_THAT(between.stored, is_near(m3(60), 1e-6));
}

TEST_CASE("a bed that is not empty from the start fills higher, up to its second storm") {
    const LinearStore store(45, 0.3);
    const auto depth = [&](double from) {
        return flood_marks(block(0.15, 60), store.storage, store.rating, {}, m(from)).depth;
    };
    CHECK(depth(0.2) > depth(0));
    // S = S0 e^(-t/K) + q K (1 - e^(-t/K)).
    const double e = std::exp(-60.0 / 45);
    CHECK_THAT(depth(0.2), is_near(m(0.2 * e + 0.5 * (1 - e)), 1e-8));
    CHECK_THAT(depth(0.9), is_near(m(0.9)));  // falls from the start
}

TEST_CASE("floods and surfaces that cannot be are refused") {
    const StorageTable bed = {{{m(0), m3(0)}, {m(1), m3(60)}}};
    const RatingTable rating = {{m(0), m3_per_s(0)}, {m(2), m3_per_s(0.01)}};
    const Hydrograph flood = block(0.2, 10);
    const auto pond = [&](const StorageTable& surface) {
        return flood_marks(flood, bed, rating, surface, m(0));
    };
    CHECK_THROWS_MATCHES(pond({{{m(1.2), m3(0)}}}), Refused,
                         refuses_domain("the surface needs at least two rows"));
    CHECK_THROWS_MATCHES(
        pond({{{m(0.9), m3(0)}, {m(1.5), m3(9)}}}), Refused,
        refuses_domain("the surface must begin at or above the top of the storage (1 m), not at 0.9 m"));
    CHECK_THROWS_MATCHES(pond({{{m(1.2), m3(1)}, {m(1.5), m3(9)}}}), Refused,
                         refuses_domain("volume (1 m3) must be 0 in the first row"));
    CHECK_THROWS_MATCHES(pond({{{m(1.2), m3(0)}, {m(1.2), m3(9)}}}), Refused,
                         refuses_domain("surface: depth (1.2 m)"));
    CHECK_THROWS_MATCHES(pond({{{m(1.2), m3(0)}, {m(1.3), m3(0)}}}), Refused,
                         refuses_domain("surface: volume (0 m3)"));
    CHECK_THROWS_MATCHES(pond({{{m(1.2), m3(0)}, {m(2.3), m3(9)}}}), Refused,
                         refuses_domain("the rating ends at 2 m, below the top of the surface (2.3 m)"));
    const auto route = [&](const Hydrograph& inflow, std::optional<Time> step, double from) {
        return route_spill(inflow, bed, rating, {}, step, m(from));
    };
    CHECK_NOTHROW(route(flood, {}, 0));
    CHECK_THROWS_MATCHES(route({flood[0]}, {}, 0), Refused, refuses_domain("two rows"));
    CHECK_THROWS_MATCHES(route({flood[1], flood[0]}, {}, 0), Refused, refuses_domain("must be later"));
    CHECK_THROWS_MATCHES(route({flood[0], {minutes(9), m3_per_s(-1)}}, {}, 0), Refused,
                         refuses_domain("inflow (-1000 L/s)"));
    CHECK_THROWS_MATCHES(route(flood, s(0), 0), Refused, refuses_domain("step (0 min)"));
    CHECK_THROWS_MATCHES(route(flood, s(1e-3), 0), Refused, refuses_domain("more rows than a sheet"));
    CHECK_THROWS_MATCHES(route(flood, {}, 1.1), Refused,
                         refuses_domain("initial depth (1.1 m) must be within the storage (0 m to 1 m)"));
    CHECK_THROWS_MATCHES(flood_marks({flood[0]}, bed, rating, {}, m(0)), Refused, refuses_domain("two rows"));
    CHECK_THROWS_MATCHES(flood_marks(flood, bed, {rating[0]}, {}, m(0)), Refused,
                         refuses_domain("the rating needs at least two rows"));
}

}  // namespace undercroft::tests
