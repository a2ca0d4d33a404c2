// How long a bed takes to drain.
#include "calc/water/emptying.hpp"

#include "calc/water/outlet.hpp"
#include "calc/water/stops.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A tank with vertical walls of 50 m2 that empties through an orifice: Q = Cd a sqrt(2 g h), rated in n
/// equal steps to 2 m.
RatingTable orifice_rating(int n) {
    RatingTable rating;
    for (int i = 0; i <= n; ++i)
        rating.emplace_back(m(2.0 * i / n), m3_per_s(0.6 * 0.01 * std::sqrt(2 * 9.81 * 2.0 * i / n)));
    return rating;
}
const StorageTable tank = {{{m(0), m3(0)}, {m(2), m3(100)}}};
const double exact_time = 5321.25714012;  // s, to empty (math)

Time drained(const StorageTable& storage, const RatingTable& rating, double from, double to) {
    return drain_time(storage, rating, m(from), m(to));
}

}  // namespace

TEST_CASE("a tank empties through an orifice, the closer the finer its rating", "[published]") {
    // math: 5321.25714012 s; after an hour 0.20926327289 m are left.
    double error_before = 1;
    for (const int n : {4, 16, 64, 256, 1024}) {
        const double error = drained(tank, orifice_rating(n), 2, 0).value() / exact_time - 1;
        CAPTURE(n, error);
        CHECK(error > 0);                   // chords lie below the root
        CHECK(error < error_before / 1.7);  // the spans next to the bottom count most
        error_before = error;
    }
    CHECK(error_before < 2.1e-4);
    CHECK_THAT(drained(tank, orifice_rating(20000), 2, 0.20926327289), is_near(s(3600), 1e-7));
    // The last span, from the first row with flow to the bottom, is the orifice's own: 2 V/Q.
    const RatingTable two_rows = {{m(0), m3_per_s(0)}, {m(2), m3_per_s(0.03)}};
    CHECK_THAT(drained(tank, two_rows, 2, 0), is_near(s(2 * 100 / 0.03)));
    const RatingTable ten = orifice_rating(10);
    CHECK_THAT(drained(tank, ten, 0.2, 0), is_near(s(exact_time * std::sqrt(0.1)), 1e-12));
    CHECK_THAT(drained(tank, ten, 0.1, 0.02),
               is_near(s(exact_time * (std::sqrt(0.05) - std::sqrt(0.01))), 1e-12));
}

TEST_CASE("between rows the time is the integral of dV/Q (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        StorageTable storage = {{{m(0), m3(random.between(0, 50))}}};
        RatingTable rating = {{m(0), m3_per_s(random.between(0.001, 0.1))}};
        for (int k = 1; k <= 4; ++k) {
            storage.rows.emplace_back(m(0.5 * k),
                                      std::get<1>(storage.rows.back()) + m3(random.between(1, 100)));
            rating.emplace_back(m(0.5 * k), m3_per_s(random.between(0.001, 0.1)));
        }
        const double from = random.between(0.5, 2);
        const double to = random.between(0.0, 0.99) * from;
        double expected = 0;
        for (std::size_t k = 1; k <= 4; ++k) {
            const double low = std::max(to, 0.5 * static_cast<double>(k - 1));
            const double high = std::min(from, 0.5 * static_cast<double>(k));
            if (low >= high) continue;
            const double area =
                (std::get<1>(storage.rows[k]) - std::get<1>(storage.rows[k - 1])).value() / 0.5;
            const double q1 = std::get<1>(rating[k - 1]).value();
            const double q2 = std::get<1>(rating[k]).value();
            const double start = 0.5 * static_cast<double>(k - 1);
            expected +=
                integral([=](double h) { return area / (q1 + (h - start) / 0.5 * (q2 - q1)); }, low, high);
        }
        CAPTURE(i, from, to);
        REQUIRE_THAT(drained(storage, rating, from, to), is_near(s(expected), 1e-10));
    }
}

TEST_CASE("after that time just the lower depth is left (GSL Runge-Kutta)") {
    // Storage and rating on depths of their own; dV/dt = -Q(V), with Q straight in V between all of them.
    Random random;
    for (int i = 0; i < 60; ++i) {
        StorageTable storage = {{{m(0), m3(random.between(0, 50))}}};
        while (std::get<0>(storage.rows.back()) < m(3))
            storage.rows.emplace_back(std::get<0>(storage.rows.back()) + m(random.between(0.1, 1)),
                                      std::get<1>(storage.rows.back()) + m3(random.between(1, 100)));
        RatingTable rating;
        for (double d = 0; d < 5; d += random.between(0.1, 1))
            rating.emplace_back(m(d), m3_per_s(random.between(0.005, 0.1)));
        const Pool pool(storage, rating);
        const auto outflow = [&](double volume) {
            std::size_t k = 0;
            while (k + 2 < pool.stored.size() && volume > pool.stored[k + 1].value()) ++k;
            const double way =
                (volume - pool.stored[k].value()) / (pool.stored[k + 1] - pool.stored[k]).value();
            return pool.outflow[k].value() + way * (pool.outflow[k + 1] - pool.outflow[k]).value();
        };
        const auto loss = [&](double, double volume) { return -outflow(volume); };
        const double from = random.between(1, 3);
        const double to = random.between(0.0, 0.95) * from;
        const Time time = drained(storage, rating, from, to);
        CAPTURE(i, from, to);
        REQUIRE(Ode(loss, pool.stored_at(m(from)).value(), 0).at(time.value()) ==
                Approx(pool.stored_at(m(to)).value()).epsilon(1e-8));
    }
}

TEST_CASE("a steady flow and a linear reservoir have their closed forms") {
    const RatingTable steady = {{m(0), m3_per_s(0.02)}, {m(2), m3_per_s(0.02)}};
    CHECK_THAT(drained(tank, steady, 2, 0), is_near(s(5000)));
    const RatingTable linear = {{m(0), m3_per_s(0.01)}, {m(2), m3_per_s(0.03)}};
    CHECK_THAT(drained(tank, linear, 2, 0), is_near(s(5000 * std::log(3.0))));  // A/k ln(Q2/Q1)
    // Flows that differ by nothing or next to nothing.
    const RatingTable nearly = {{m(0), m3_per_s(0.02)}, {m(2), m3_per_s(0.02 * (1 + 1e-13))}};
    CHECK_THAT(drained(tank, nearly, 2, 0), is_near(s(5000), 1e-12));
    // A pump that is at full strength a millimetre above the bottom.
    const OutletTable pump = {{OutletKind::pump, m(0), as_quantity(m3_per_s(0.02)), {}, {}, {}}};
    CHECK_THAT(drained(tank, outlet_rating(pump, m(2), count(4)), 2, 0), is_near(s(5000)));
    const OutletTable soakage = {
        {OutletKind::soakage, m(0), as_quantity(m2(50)), as_quantity(mm_per_h(36)), {}, {}}};
    CHECK_THAT(drained(tank, outlet_rating(soakage, m(2), count(4)), 2, 0), is_near(s(100 / 5e-4)));
}

TEST_CASE("times add up, grow with the depth and shrink with the flow") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const RatingTable rating = orifice_rating(random.whole(1, 30));
        RatingTable more = rating;
        for (auto& [d, q] : more) q *= 1.5;
        const double high = random.between(0.1, 2);
        const double middle = random.between(0.0, 1.0) * high;
        const Time all = drained(tank, rating, high, 0);
        REQUIRE((drained(tank, rating, high, middle) + drained(tank, rating, middle, 0)).value() ==
                Approx(all.value()).epsilon(1e-12));
        REQUIRE(all >= drained(tank, rating, middle, 0));
        REQUIRE_THAT(drained(tank, more, high, 0), is_near(Time(all / 1.5), 1e-11));
        REQUIRE(drained(tank, rating, high, high) == s(0));
    }
}

TEST_CASE("a finer storage table on the same line changes nothing") {
    StorageTable finer;
    for (int i = 0; i <= 200; ++i) finer.rows.emplace_back(m(i / 100.0), m3(i / 2.0));
    for (const int n : {1, 3, 7, 50})
        CHECK_THAT(drained(finer, orifice_rating(n), 1.9, 0.013),
                   is_near(drained(tank, orifice_rating(n), 1.9, 0.013), 1e-11));
}

TEST_CASE("steeper laws near the bottom are taken as an orifice's, flatter ones as they are") {
    // Q ~ x^0.25 and, as of a weir, x^1.5 in equal steps of 0.1 m: the last span takes V/(Q (1 - m)), m at
    // most 1/2.
    const auto law = [](double exponent) {
        RatingTable rating;
        for (int i = 0; i <= 20; ++i)
            rating.emplace_back(m(i / 10.0), m3_per_s(0.01 * std::pow(i / 10.0, exponent)));
        return rating;
    };
    const double q_low = 0.01 * std::pow(0.1, 0.25);
    CHECK_THAT(drained(tank, law(0.25), 0.1, 0), is_near(s(5 / (q_low * 0.75))));
    const double q_weir = 0.01 * std::pow(0.1, 1.5);
    CHECK_THAT(drained(tank, law(1.5), 0.1, 0), is_near(s(5 / (q_weir * 0.5))));
    // The same law above an outlet that stands 0.3 m high.
    const RatingTable raised = {{m(0), m3_per_s(0)},
                                {m(0.3), m3_per_s(0)},
                                {m(0.4), m3_per_s(q_low)},
                                {m(0.5), m3_per_s(q_low * std::pow(2, 0.25))},
                                {m(2), m3_per_s(0.05)}};
    CHECK_THAT(drained(tank, raised, 0.4, 0.3), is_near(s(5 / (q_low * 0.75))));
}

TEST_CASE("a bed with no outlet at its bottom never empties, and says so") {
    const RatingTable raised = {{m(0), m3_per_s(0)}, {m(0.2), m3_per_s(0)}, {m(2), m3_per_s(0.05)}};
    CHECK_THROWS_MATCHES(drained(tank, raised, 2, 0), Refused,
                         has_no_answer("never empties to 0 m: nothing flows out at 0.2 m"));
    CHECK_THROWS_MATCHES(drained(tank, raised, 0.1, 0), Refused, has_no_answer("nothing flows out at 0.1 m"));
    CHECK_THAT(drained(tank, raised, 2, 0.2), is_near(s(2 * 90 / 0.05)));
    const RatingTable throttled = {{m(0), m3_per_s(0.01)}, {m(1), m3_per_s(0)}, {m(2), m3_per_s(0.05)}};
    CHECK_THROWS_MATCHES(drained(tank, throttled, 2, 0), Refused, has_no_answer("nothing flows out at 1 m"));
}

TEST_CASE("depths outside the storage table are refused") {
    const RatingTable rating = orifice_rating(10);
    CHECK_THROWS_MATCHES(drained(tank, rating, 2.1, 0), Refused,
                         refuses_domain("from depth (2.1 m) must be within the storage table (0 m to 2 m)"));
    CHECK_THROWS_MATCHES(drained(tank, rating, 1, -0.1), Refused, refuses_domain("to depth (-0.1 m)"));
    CHECK_THROWS_MATCHES(drained(tank, rating, 1, 1.5), Refused,
                         refuses_domain("to depth (1.5 m) must not be above the from depth (1 m)"));
    CHECK_NOTHROW(drained(tank, rating, 2 * (1 + 1e-12), 0));  // the top, in another unit
}

TEST_CASE("the law of the first span is read from its upper end and the next row, whatever comes then") {
    // Q = 0.01 m3/s (h/1 m)^0.3 up to 2 m; the row at 3 m is of another law. A prism of 10 m3 a metre empties
    // its first metre in the integral of 10/(0.01 h^0.3): 1000 s/0.7.
    const RatingTable rating = {{m(0), m3_per_s(0)},
                                {m(1), m3_per_s(0.01)},
                                {m(2), m3_per_s(0.01 * std::pow(2, 0.3))},
                                {m(3), m3_per_s(0.1)}};
    const StorageTable prism = {{{m(0), m3(0)}, {m(3), m3(30)}}};
    CHECK_THAT(drain_time(prism, rating, m(1), m(0)), is_near(s(1000 / 0.7), 1e-12));
    const RatingTable three_rows(rating.begin(), rating.end() - 1);
    const StorageTable lower = {{{m(0), m3(0)}, {m(2), m3(20)}}};
    CHECK_THAT(drain_time(lower, three_rows, m(1), m(0)), is_near(s(1000 / 0.7), 1e-12));
}

TEST_CASE("with a rating packed to 0.2 % the time is right to 0.1 % (GSL QAGS of dV/Q by the laws)") {
    // 400 m3 in 1.14 m; an orifice and an overflow, a weir alone, a weir high up, a small orifice. Unpacked,
    // 20 steps are 0.4 to 2.7 % short or long.
    struct Case {
        double orifice, weir, level, from, to;
    };
    const StorageTable bed = {{{m(0), m3(0)}, {m(1.14), m3(400)}}};
    for (const Case& c :
         {Case{0.112, 1.2, 1.05, 0.75, 0.05}, Case{0.112, 1.2, 1.05, 1.14, 0.05},
          Case{0, 0.6, 0.72, 1.1, 0.77}, Case{0, 0.6, 0, 1.1, 0.05}, Case{0.05, 0, 0, 1.1, 0.05}}) {
        OutletTable outlets;
        if (c.orifice > 0)
            outlets.push_back({OutletKind::orifice, m(0), as_quantity(m(c.orifice)), {}, {}, {}});
        if (c.weir > 0) outlets.push_back({OutletKind::weir, m(c.level), as_quantity(m(c.weir)), {}, {}, {}});
        const auto lawful = [&](double h) {
            const double over = std::max(h - c.level, 0.0);
            const double weir = 1.84 * c.weir * std::pow(over, 1.5);
            return weir +
                   (c.orifice > 0 ? part_full_orifice_flow(m(c.orifice), m(h), share(0.6)).value() : 0);
        };
        double expected = 0;  // in parts, so that the quadrature meets no corner
        std::vector<Length> parts = {m(c.to), m(c.from)};
        add_kinks(parts, {m(c.orifice), m(c.level)});
        for (std::size_t i = 1; i < parts.size(); ++i)
            expected += integral([&](double h) { return 400 / 1.14 / lawful(h); }, parts[i - 1].value(),
                                 parts[i].value());
        const RatingTable rating = outlet_rating(outlets, m(1.14), count(20), share(0.002));
        CAPTURE(c.orifice, c.weir, c.level, rating.size());
        CHECK_THAT(drained(bed, rating, c.from, c.to), is_near(s(expected), 1e-3));
        const RatingTable plain = outlet_rating(outlets, m(1.14), count(20));
        CHECK(std::abs(drained(bed, plain, c.from, c.to).value() / expected - 1) > 2.5e-3);
    }
}

TEST_CASE(
    "at every number of steps of a packed rating the time is right to 0.2 % (GSL QAGS of dV/Q by the laws)") {
    // A bed whose plan grows with its height; an orifice, a weir higher up, soakage from the base.
    Random random;
    for (int i = 0; i < 25; ++i) {
        const double diameter = random.between(0.06, 0.3);
        const double crest = random.between(0.3, 2);
        const double level = random.between(0.4, 1.2);
        const double soakage = random.whole(0, 1) * random.between(1e-4, 2e-3);  // m3/s
        const double from = random.between(0.7, 1.45);
        const double to = random.between(0.03, 0.3);
        OutletTable outlets = {{OutletKind::orifice, m(0), as_quantity(m(diameter)), {}, {}, {}},
                               {OutletKind::weir, m(level), as_quantity(m(crest)), {}, {}, {}}};
        if (soakage > 0)
            outlets.push_back({OutletKind::soakage,
                               m(0),
                               as_quantity(m2(100)),
                               as_quantity(mm_per_h(36000 * soakage)),
                               {},
                               {}});
        const auto lawful = [&](double h) {
            return part_full_orifice_flow(m(diameter), m(h), share(0.6)).value() + soakage +
                   1.84 * crest * std::pow(std::max(0.0, h - level), 1.5);
        };
        const double grows = random.between(0, 60);
        StorageTable bed;  // 300 m2 at the base, straight in area: V = 300 h + grows h^2/2
        for (int k = 0; k <= 300; ++k) {
            const double h = 1.5 * k / 300;
            bed.rows.emplace_back(m(h), m3(300 * h + grows * h * h / 2));
        }
        std::vector<Length> parts = {m(to), m(from)};
        add_kinks(parts, {m(diameter), m(level)});
        double expected = 0;
        for (std::size_t k = 1; k < parts.size(); ++k)
            expected += integral([&](double h) { return (300 + grows * h) / lawful(h); },
                                 parts[k - 1].value(), parts[k].value());
        for (const double steps : {1., 2., 3., 7., 20., 100.})
            for (const double tolerance : {0.0005, 0.001, 0.002}) {
                const RatingTable rating = outlet_rating(outlets, m(1.5), count(steps), share(tolerance));
                CAPTURE(i, diameter, crest, level, soakage, from, to, steps, tolerance, rating.size());
                REQUIRE_THAT(drained(bed, rating, from, to), is_near(s(expected), 2e-3));
            }
    }
}

TEST_CASE("any table empties in the integral of its own law, its last span too (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        StorageTable storage = {{{m(0), m3(0)}}};
        RatingTable rating = {{m(0), m3_per_s(0)}};
        double flow = 0;
        for (double d = 0; d < 2;) {
            d += random.between(0.02, 0.7);
            flow += random.between(0.001, 0.05);
            storage.rows.emplace_back(m(d), std::get<1>(storage.rows.back()) + m3(random.between(5, 80)));
            rating.emplace_back(m(d), m3_per_s(flow));
        }
        const double from = random.between(0.3, 1) * std::get<0>(storage.rows.back()).value();
        const double to = random.between(0, 0.6) * from;
        const auto at = [&](const auto& rows, std::size_t k) {
            return std::pair(std::get<0>(rows[k]).value(), std::get<1>(rows[k]).value());
        };
        double expected = 0;
        for (std::size_t k = 0; k + 1 < rating.size(); ++k) {
            const auto [d1, q1] = at(rating, k);
            const auto [d2, q2] = at(rating, k + 1);
            const double area = (at(storage.rows, k + 1).second - at(storage.rows, k).second) / (d2 - d1);
            const double low = std::max(to, d1);
            const double high = std::min(from, d2);
            if (low >= high) continue;
            double exponent = 1;
            if (k == 0) {
                exponent = 0.5;
                if (rating.size() > 2) {
                    const auto [d3, q3] = at(rating, 2);
                    exponent = std::min(0.5, std::log(q3 / q2) / std::log(d3 / d2));
                }
            }
            // With x = (h - d1)^(1 - m) the last span has no pole.
            if (k == 0)
                expected += integral([&, end = d2, flow = q2, p = 1 - exponent](
                                         double) { return area * std::pow(end, exponent) / flow / p; },
                                     std::pow(low, 1 - exponent), std::pow(high, 1 - exponent));
            else
                expected += integral([&, q1 = q1, q2 = q2, d1 = d1, d2 = d2](
                                         double h) { return area / (q1 + (h - d1) / (d2 - d1) * (q2 - q1)); },
                                     low, high);
        }
        CAPTURE(i, from, to, rating.size());
        REQUIRE_THAT(drained(storage, rating, from, to), is_near(s(expected), 1e-9));
    }
}

TEST_CASE("the rating need only cover the way of the water") {
    // The storage table begins 0.5 m lower and ends higher than the rating.
    const StorageTable deep = {{{m(-0.5), m3(0)}, {m(3), m3(175)}}};
    const RatingTable steady = {{m(0), m3_per_s(0.02)}, {m(2), m3_per_s(0.02)}};
    CHECK_THAT(drained(deep, steady, 2, 0), is_near(s(5000)));
    CHECK_THAT(drained(deep, steady, 1.5, 1), is_near(s(1250)));
    CHECK_THROWS_MATCHES(drained(deep, steady, 2.5, 0), Refused,
                         refuses_domain("must reach over the depths of the storage"));
    CHECK_THROWS_MATCHES(drained(deep, steady, 2, -0.1), Refused,
                         refuses_domain("must reach over the depths"));
    CHECK_THROWS_MATCHES(drained({}, steady, 2, 0), Refused,
                         refuses_domain("the storage table needs at least two rows"));
    CHECK(drained(deep, steady, 1, 1) == s(0));
}

}  // namespace undercroft::tests
