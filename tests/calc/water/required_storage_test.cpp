// Storage for a permitted release, over all durations of rain.
#include "calc/water/required_storage.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Share all_runs_off = share(1);
const Area one_hectare = m2(1e4);

/// Rows of a law of the duration (min) in mm/h, `ratio` apart.
template <class Law>
RainTable table_of(const Law& law, double from, double to, double ratio) {
    RainTable table;
    for (double t = from; t < to * (1 + 1e-12); t *= ratio) table.emplace_back(minutes(t), mm_per_h(law(t)));
    return table;
}

RainTable random_table_rain(Random& random) {
    RainTable table;
    double depth =
        random.between(2, 10);  // mm, growing by fits and starts, so that there are several summits
    double intensity = 1e9;
    for (double t = 5; table.size() < 10; t *= random.between(1.3, 2.5)) {
        depth *= random.whole(0, 1) == 0 ? 1.02 : 1.6;
        intensity = std::min(intensity, 60 * depth / t);
        table.emplace_back(minutes(t), mm_per_h(intensity));
    }
    return table;
}

/// In every second case none.
std::optional<Time> random_time(Random& random) {
    std::optional<Time> time;
    if (random.whole(0, 1) == 1) time.emplace(minutes(random.between(1, 60)));
    return time;
}

/// The shortfall as its definition says it, from the interpolated rain.
double shortfall(const RainCurve& rain, Time duration, Area area, Flow release, std::optional<Time> tc) {
    const double in = (rain.intensity(duration) * area * duration).value();
    const double td = duration.value();
    const double k = tc && td > tc->value() ? 0.5 * (1 + tc->value() / td) : 1;
    return in - k * release.value() * td;
}

}  // namespace

TEST_CASE("the summit of a power law lies between the rows and is found (closed form)") {
    // S(t) = K t^(1-c) - q t has its summit at t = ((1 - c) K/q)^(1/c); math.
    Random random;
    for (int i = 0; i < 200; ++i) {
        const double c = random.between(0.3, 0.9);
        const RainTable rain = table_of([c](double t) { return 900 * std::pow(t, -c); }, 5, 2880, 2);
        const double k = 900 / 3.6e6 * 1e4 * std::pow(60, c);  // m3/s at 1 s
        const double summit = s(random.between(400, 100000)).value();
        const double q = (1 - c) * k * std::pow(summit, -c);
        const double largest = k * std::pow(summit, 1 - c) - q * summit;
        REQUIRE_THAT(storage_required(rain, all_runs_off, one_hectare, m3_per_s(q), std::nullopt),
                     is_near(m3(largest), 1e-11));
        // With the release averaged over the limbs half of it acts on td, half on tc.
        const Time tc = s(300);
        REQUIRE_THAT(storage_required(rain, all_runs_off, one_hectare, m3_per_s(2 * q), tc),
                     is_near(m3(largest - q * tc.value()), 1e-11));
    }
}

TEST_CASE("the modified rational method has its closed form for i = a/(t + b)") {
    // math; the averaged release after FAA AC 150/5320-5 (from memory):
    // S = 60 (sqrt(K) - sqrt(Qa b))^2 at td = sqrt(K b/Qa) - b; min, m3/s. The table's chords are 1 % apart.
    const double a = 3000;
    const double b = 20;
    const RainTable rain = table_of([=](double t) { return a / (t + b); }, 5, 400, 1.01);
    const Area area = m2(2e4);
    const double k = 0.7 * a * 2 / 360;
    const double q = 0.05;
    const double closed = 60 * std::pow(std::sqrt(k) - std::sqrt(q * b), 2);
    CHECK_THAT(storage_required(rain, share(0.7), area, m3_per_s(q), std::nullopt),
               is_near(m3(closed), 1e-5));
    const double tc = 12;
    const double td = std::sqrt(2 * k * b / q) - b;
    const double averaged = 60 * (k * td / (td + b) - q * (td + tc) / 2);
    CHECK_THAT(storage_required(rain, share(0.7), area, m3_per_s(q), minutes(tc)),
               is_near(m3(averaged), 1e-5));
}

TEST_CASE("two summits between the same rows, one on each side of the time of concentration (closed form)") {
    // Up to tc the release is q t, from there on q (t + tc)/2, less steep: the summits of a power law lie at
    // t1 = ((1 - c) K/q)^(1/c) and at t1 2^(1/c), and either may be the higher; math.
    Random random;
    int early = 0;
    for (int i = 0; i < 200; ++i) {
        const double c = random.between(0.3, 0.9);
        const auto law = [c](double t) { return mm_per_h(900 * std::pow(t, -c)); };
        const RainTable rain = {{minutes(1), law(1)}, {minutes(1e5), law(1e5)}};
        const double k = 900 / 3.6e6 * 1e4 * std::pow(60, c);  // m3/s at 1 s
        const double t1 = random.between(600, 6000);
        const double t2 = t1 * std::pow(2, 1 / c);
        const double tc = random.between(t1, t2);
        const double q = (1 - c) * k * std::pow(t1, -c);
        const double before = k * std::pow(t1, 1 - c) - q * t1;
        const double after = k * std::pow(t2, 1 - c) - q * (t2 + tc) / 2;
        CAPTURE(i, before, after);
        REQUIRE_THAT(storage_required(rain, all_runs_off, one_hectare, m3_per_s(q), s(tc)),
                     is_near(m3(std::max(before, after)), 1e-11));
        if (before > after) ++early;
    }
    CHECK(early > 20);
    CHECK(early < 180);
}

TEST_CASE("without release all the rain of the longest duration is stored") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        RainTable rain;
        for (double t = 5; t < 3000; t *= random.between(1.3, 3))
            rain.emplace_back(minutes(t), mm_per_h(900 * std::pow(t, -0.7)));
        const auto& [longest, intensity] = rain.back();
        REQUIRE_THAT(storage_required(rain, all_runs_off, one_hectare, m3_per_s(0), std::nullopt),
                     is_near(Volume(intensity * one_hectare * longest), 1e-14));
    }
}

TEST_CASE("no duration between the rows needs more: every summit is looked at") {
    Random random;
    constexpr int durations = 20000;
    int between_rows = 0;
    for (int i = 0; i < 150; ++i) {
        const RainTable rain = random_table_rain(random);
        const RainCurve curve(rain);
        const Time first = curve.shortest();
        const Time last = curve.longest();
        const Flow release = m3_per_s(random.between(0, 0.08));
        const std::optional<Time> tc = random_time(random);
        const double required = storage_required(rain, all_runs_off, one_hectare, release, tc).value();
        double best = 0;
        double best_at_rows = 0;
        for (int k = 0; k <= durations; ++k) {
            const Time t = s(first.value() * std::pow(last / first, k / double(durations)));
            best = std::max(best, shortfall(curve, std::clamp(t, first, last), one_hectare, release, tc));
        }
        for (const auto& [t, intensity] : rain)
            best_at_rows = std::max(best_at_rows, shortfall(curve, t, one_hectare, release, tc));
        best = std::max(best, best_at_rows);
        CAPTURE(i, required, best);
        REQUIRE(required >= best * (1 - 1e-12));
        REQUIRE(required <= best * (1 + 1e-6) + 1e-9);
        if (required > best_at_rows * (1 + 1e-6)) ++between_rows;
    }
    CHECK(between_rows > 10);  // rows alone would have missed these
}

TEST_CASE("a storm shorter than the time of concentration releases no more than is permitted") {
    const RainTable rain = {{minutes(5), mm_per_h(120)}, {minutes(10), mm_per_h(1)}};
    // Guo (1999): the factor is at most 1. 120 mm/h for 5 min on 1 ha is 100 m3, the release 6 m3.
    CHECK_THAT(storage_required(rain, all_runs_off, one_hectare, m3_per_s(0.02), minutes(8)),
               is_near(m3(94)));
    CHECK_THAT(storage_required(rain, all_runs_off, one_hectare, m3_per_s(0.02), std::nullopt),
               is_near(m3(94)));
}

TEST_CASE("more storage for more area or runoff, less for more release, none when all may pass") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const RainTable rain = random_table_rain(random);
        const Flow release = m3_per_s(random.between(0.005, 0.05));
        const auto required = [&](double c, Area area, Flow q) {
            return storage_required(rain, share(c), area, q, std::nullopt);
        };
        const Volume base = required(0.5, one_hectare, release);
        REQUIRE(required(0.6, one_hectare, release) >= base);
        REQUIRE(required(0.5, 1.2 * one_hectare, release) >= base);
        REQUIRE(required(0.5, one_hectare, 1.2 * release) <= base);
        REQUIRE_THAT(required(0.5, 2.0 * one_hectare, 2.0 * release), is_near(Volume(2.0 * base), 1e-9));
    }
    const RainTable rain = random_table_rain(random);
    CHECK(storage_required(rain, share(0.5), one_hectare, m3_per_s(100), std::nullopt) == m3(0));
}

TEST_CASE("the table of durations balances row by row, and its largest is what is required") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const RainTable rain = random_table_rain(random);
        const Flow release = m3_per_s(random.between(0.001, 0.05));
        const std::optional<Time> tc = random_time(random);
        const StorageDurations table = storage_durations(rain, share(0.8), one_hectare, release, tc);
        Volume largest = m3(0);
        for (std::size_t r = 0; r < table.size(); ++r) {
            const auto& [duration, intensity, inflow, released, stored] = table[r];
            if (r > 0) REQUIRE(duration > std::get<0>(table[r - 1]));
            REQUIRE_THAT(inflow, is_near(Volume(0.8 * intensity * one_hectare * duration)));
            REQUIRE((inflow - released - stored).value() == Approx(0).margin(1e-9));
            REQUIRE(released <= release * duration * (1 + 1e-12));
            REQUIRE(stored >= m3(0));
            largest = std::max(largest, stored);
        }
        REQUIRE(table.size() <= rain.size() + 1);
        REQUIRE_THAT(largest, is_near(storage_required(rain, share(0.8), one_hectare, release, tc)));
    }
}

TEST_CASE("a permitted release that makes no sense is refused") {
    const RainTable rain = {{minutes(5), mm_per_h(120)}, {minutes(10), mm_per_h(80)}};
    const auto required = [&](double c, double area, double q, std::optional<Time> tc) {
        return storage_required(rain, share(c), m2(area), m3_per_s(q), tc);
    };
    CHECK_THROWS_MATCHES(required(0, 1, 1, {}), Refused, refuses_domain("coefficient (0) must be above 0"));
    CHECK_THROWS_MATCHES(required(1.1, 1, 1, {}), Refused, refuses_domain("coefficient (1.1)"));
    CHECK_THROWS_MATCHES(required(0.5, 0, 1, {}), Refused, refuses_domain("area (0 m2) must be above 0"));
    CHECK_THROWS_MATCHES(required(0.5, 1, -0.001, {}), Refused, refuses_domain("release (-1 L/s)"));
    CHECK_THROWS_MATCHES(required(0.5, 1, 1, s(0)), Refused,
                         refuses_domain("time of concentration (0 min) must be above 0"));
}

}  // namespace undercroft::tests
