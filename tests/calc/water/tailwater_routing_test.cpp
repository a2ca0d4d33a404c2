// Routing against a tailwater that changes.
#include "calc/water/tailwater_routing.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const OutletTable outlets = {{OutletKind::orifice, m(0), as_quantity(mm(150)), {}, {}, {}},
                             {OutletKind::weir, m(1.2), as_quantity(m(1)), {}, {}, {}}};
const StorageTable bed = {{{m(0), m3(0)}, {m(1.5), m3(300)}}};
const Hydrograph storm = {{s(0), m3_per_s(0)}, {minutes(30), m3_per_s(0.12)}, {minutes(90), m3_per_s(0.0)}};

}  // namespace

TEST_CASE("a steady tailwater is the rating against it, one below the bed none") {
    for (const double level : {-5., 0., 0.4, 0.9}) {
        const RatingTable rating = outlet_rating(outlets, m(1.5), count(20), share(0.002), {m(level), {}});
        const SpillTable steady = route_spill(storm, bed, rating, {}, minutes(5), m(0));
        const SpillTable changing =
            route_tailwater(storm, bed, outlets, {{s(0), m(level)}}, minutes(5), m(0));
        for (const auto& row : changing) {
            for (const auto& same : steady) {
                if (std::abs((std::get<0>(row) - std::get<0>(same)).value()) > 1e-6) continue;
                CAPTURE(level, std::get<0>(row).value());
                CHECK_THAT(std::get<2>(row), is_within(std::get<2>(same), m(1e-6)));
                CHECK_THAT(std::get<4>(row), is_within(std::get<4>(same), m3_per_s(1e-6)));
            }
        }
    }
}

TEST_CASE("a tide by the differential equation (GSL Runge-Kutta)") {
    // 0.4 m up and down about 0.5 m in 3 h; an orifice of 150 mm under the difference of levels, shut by a
    // flap. C = 0.6.
    const double area = 200;
    TailwaterTable tide;
    for (int i = 0; i <= 240; ++i)
        tide.emplace_back(minutes(5 * i), m(0.5 + 0.4 * std::sin(2 * M_PI * i / 36.0)));
    const OutletTable one = {outlets.front()};
    const double opening = 0.6 * M_PI / 4 * 0.15 * 0.15;
    const auto level_at = [&](double t) {
        const double row = std::min(t / 300, 239.999);
        const auto i = static_cast<std::size_t>(row);
        const double low = std::get<1>(tide[i]).value();
        return low + (row - static_cast<double>(i)) * (std::get<1>(tide[i + 1]).value() - low);
    };
    const auto gain = [&](double t, double h) {
        const double in = t < 1800 ? 0.12 * t / 1800 : std::max(0.0, 0.12 * (5400 - t) / 3600);
        const double free_head = h - 0.075;
        const double head = std::min(h - level_at(t), free_head);
        return (in - (head > 0 ? opening * std::sqrt(2 * 9.80665 * head) : 0)) / area;
    };
    Ode exact(gain, 0.3, 0, 1e-8);
    const SpillTable table = route_tailwater(storm, bed, one, tide, minutes(1), m(0.3));
    for (const auto& [time, in, depth, stored, out, spilled] : table) {
        if (time > hours(12)) break;
        if (std::abs(std::remainder(time.value(), 300)) > 1e-6) continue;
        const double expected = exact.at(time.value());
        CAPTURE(time.value());
        if (expected > 0.2) CHECK_THAT(depth, is_within(m(expected), m(3e-3)));
    }
    // The sea never runs into the bed.
    const SpillTable dry =
        route_tailwater({{s(0), m3_per_s(0)}, {minutes(90), m3_per_s(0)}}, bed, one, tide, minutes(5), m(0));
    for (const auto& row : dry) CHECK(std::get<3>(row) == m3(0));
}

TEST_CASE("a higher tailwater fills the bed deeper, and more spills") {
    Length before = m(0);
    for (const double level : {0., 0.3, 0.6, 0.9, 1.2}) {
        Length deepest = m(0);
        for (const auto& row :
             route_tailwater(storm, bed, outlets, {{s(0), m(level)}, {hours(2), m(level)}}, {}, m(0)))
            deepest = std::max(deepest, std::get<2>(row));
        CHECK(deepest >= before);
        before = deepest;
    }
    const SpillTable full = route_tailwater(storm, bed, {outlets.front()}, {{s(0), m(5)}}, {}, m(0));
    CHECK_THAT(std::get<5>(full.back()), is_near(m3(0.12 * 5400 / 2 - 300), 1e-9));
}

TEST_CASE("tailwaters that are none are refused") {
    const auto route = [](const TailwaterTable& tailwater, std::optional<Time> step = {}, double from = 0) {
        return route_tailwater(storm, bed, outlets, tailwater, step, m(from));
    };
    CHECK_NOTHROW(route({{s(0), m(0)}}));
    CHECK_THROWS_MATCHES(route({}), Refused, refuses_domain("the tailwater needs at least one row"));
    CHECK_THROWS_MATCHES(route({{s(0), m(0)}, {s(0), m(1)}}), Refused,
                         refuses_domain("time (0 min) of the tailwater must be later"));
    CHECK_THROWS_MATCHES(route({{s(0), m(INFINITY)}}), Refused,
                         refuses_domain("a level of the tailwater is no number"));
    CHECK_THROWS_MATCHES(route({{s(0), m(0)}}, s(0)), Refused, refuses_domain("step (0 min)"));
    CHECK_THROWS_MATCHES(route({{s(0), m(0)}}, {}, 2), Refused, refuses_domain("initial depth (2 m)"));
    CHECK_THROWS_MATCHES(route_tailwater({storm[0]}, bed, outlets, {{s(0), m(0)}}, {}, m(0)), Refused,
                         refuses_domain("two rows"));
    CHECK_THROWS_MATCHES(route_tailwater(storm, {}, outlets, {{s(0), m(0)}}, {}, m(0)), Refused,
                         refuses_domain("the storage table needs"));
}

}  // namespace undercroft::tests
