// Functions of calc/ against the same formulas on plain doubles, in instructions; to be run under callgrind,
// which writes one profile for each loop:
//   valgrind --tool=callgrind --callgrind-out-file=FILE core_bench
// Without it the program only holds the two to each other: a formula that gives another result is no measure.
#include <valgrind/callgrind.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "calc/ground/earth_pressure.hpp"
#include "calc/ground/elastic_stress.hpp"
#include "calc/ground/uplift.hpp"
#include "calc/water/concentration.hpp"
#include "calc/water/outlet.hpp"
#include "calc/water/pipe.hpp"
#include "calc/water/routing.hpp"
#include "calc/water/runoff.hpp"
#include "calc/works/excavation.hpp"
#include "calc/works/sheet_goods.hpp"
#include "tests/bench/plain.hpp"

namespace undercroft::bench {

namespace {

constexpr int calls = 1000;
constexpr std::size_t cases = 8;

using Given = std::array<double, 5>;

/// Cases that differ a little, so that nothing is computed once for all.
std::array<Given, cases> varied(const Given& given) {
    std::array<Given, cases> all{};
    for (std::size_t i = 0; i < cases; ++i)
        for (std::size_t j = 0; j < given.size(); ++j)
            all[i][j] = given[j] * (1 - 0.01 * static_cast<double>(i));
    return all;
}

template <class F>
void count(const std::string& name, const std::array<Given, cases>& given, const F& function) {
    double total = 0;
    CALLGRIND_ZERO_STATS;
    CALLGRIND_TOGGLE_COLLECT;
    for (int i = 0; i < calls; ++i) total += function(given[static_cast<std::size_t>(i) % cases]);
    CALLGRIND_TOGGLE_COLLECT;
    CALLGRIND_DUMP_STATS_AT(name.c_str());
    if (!std::isfinite(total)) std::exit(1);
}

template <class Typed, class Plain>
void compare(const std::string& name, const Given& given, const Typed& typed, const Plain& plain) {
    const auto all = varied(given);
    for (const Given& one : all) {
        const double a = typed(one);
        const double b = plain(one);
        if (std::abs(a - b) <= 1e-12 * std::abs(b)) continue;
        std::fprintf(stderr, "%s: %.17g typed, %.17g plain\n", name.c_str(), a, b);
        std::exit(1);
    }
    count("typed " + name, all, typed);
    count("plain " + name, all, plain);
}

template <class Q>
Q in(double value) {
    return Q::from_value(value);
}

void compare_tables() {
    calc::Weights weights;
    std::vector<plain::Weight> plain_weights;
    calc::Table<Length, Area> sections;
    std::vector<plain::Section> plain_sections;
    for (int i = 0; i < 50; ++i) {
        const double x = 1 + i;
        weights.emplace_back(in<Area>(300 + x), in<Length>(0.1 + 0.01 * x), in<UnitWeight>(18e3 + x));
        plain_weights.push_back({300 + x, 0.1 + 0.01 * x, 18e3 + x});
        sections.emplace_back(in<Length>(5 * x), in<Area>(20 + x));
        plain_sections.push_back({5 * x, 20 + x});
    }
    compare(
        "uplift_factor, 50 rows", {600, 9806.65},
        [&](const Given& x) {
            return calc::uplift_factor(weights, in<Volume>(x[0]), in<UnitWeight>(x[1])).value();
        },
        [&](const Given& x) { return plain::uplift_factor(plain_weights, x[0], x[1]); });
    compare(
        "pit_sections, 50 rows", {},
        [&](const Given&) { return calc::pit_sections(sections, calc::SectionMethod::end_area).value(); },
        [&](const Given&) { return plain::pit_sections(plain_sections); });
}

void compare_all() {
    const auto all = varied({1, 2, 3, 4, 5});
    count("nothing", all, [](const Given& x) { return x[0]; });
    compare(
        "pit_volume", {40, 12, 2.5, 1.5},
        [](const Given& x) {
            return calc::pit_volume(in<Length>(x[0]), in<Length>(x[1]), in<Length>(x[2]), in<Batter>(x[3]))
                .value();
        },
        [](const Given& x) { return plain::pit_volume(x[0], x[1], x[2], x[3]); });
    compare(
        "pit_area", {40, 12, 2.5, 1.5},
        [](const Given& x) {
            return calc::pit_area(in<Length>(x[0]), in<Length>(x[1]), in<Length>(x[2]), in<Batter>(x[3]))
                .value();
        },
        [](const Given& x) { return plain::pit_area(x[0], x[1], x[2], x[3]); });
    compare(
        "pit_walls", {40, 12, 2.5, 1.5},
        [](const Given& x) {
            return calc::pit_walls(in<Length>(x[0]), in<Length>(x[1]), in<Length>(x[2]), in<Batter>(x[3]))
                .value();
        },
        [](const Given& x) { return plain::pit_walls(x[0], x[1], x[2], x[3]); });
    compare(
        "liner_mass", {800, 0.0015, 940},
        [](const Given& x) {
            return calc::liner_mass(in<Area>(x[0]), in<Length>(x[1]), in<Density>(x[2])).value();
        },
        [](const Given& x) { return plain::liner_mass(x[0], x[1], x[2]); });
    compare(
        "orifice_flow", {0.15, 1.2, 0.6},
        [](const Given& x) {
            return calc::orifice_flow(in<Length>(x[0]), in<Length>(x[1]), in<Share>(x[2])).value();
        },
        [](const Given& x) { return plain::orifice_flow(x[0], x[1], x[2]); });
    compare(
        "weir_flow", {1.2, 0.3, 1.84},
        [](const Given& x) {
            return calc::weir_flow(in<Length>(x[0]), in<Length>(x[1]), in<WeirCoefficient>(x[2]),
                                   in<Count>(2))
                .value();
        },
        [](const Given& x) { return plain::weir_flow(x[0], x[1], x[2], 2); });
    compare(
        "notch_flow", {1.57, 0.3, 1.38},
        [](const Given& x) {
            return calc::notch_flow(in<Angle>(x[0]), in<Length>(x[1]), in<WeirCoefficient>(x[2])).value();
        },
        [](const Given& x) { return plain::notch_flow(x[0], x[1], x[2]); });
    compare(
        "runoff_depth", {80, 0.12, 0.2},
        [](const Given& x) {
            return calc::runoff_depth(in<Share>(x[0]), in<Length>(x[1]), in<Share>(x[2])).value();
        },
        [](const Given& x) { return plain::runoff_depth(x[0], x[1], x[2]); });
    compare(
        "kirpich_time", {300, 0.02},
        [](const Given& x) { return calc::kirpich_time(in<Length>(x[0]), in<Gradient>(x[1])).value(); },
        [](const Given& x) { return plain::kirpich_time(x[0], x[1]); });
    compare(
        "sheet_flow_time", {0.24, 60, 0.09, 0.01},
        [](const Given& x) {
            return calc::sheet_flow_time(in<Share>(x[0]), in<Length>(x[1]), in<Length>(x[2]),
                                         in<Gradient>(x[3]))
                .value();
        },
        [](const Given& x) { return plain::sheet_flow_time(x[0], x[1], x[2], x[3]); });
    compare(
        "pipe_flow", {0.3, 0.01, 0.013, 0.2},
        [](const Given& x) {
            return calc::pipe_flow(in<Length>(x[0]), in<Gradient>(x[1]), in<Share>(x[2]), in<Length>(x[3]))
                .value();
        },
        [](const Given& x) { return plain::pipe_flow(x[0], x[1], x[2], x[3]); });
    compare(
        "stress_under_point", {50e3, 1.5, 0.4},
        [](const Given& x) {
            return calc::stress_under_point(in<Force>(x[0]), in<Length>(x[1]), in<Length>(x[2])).value();
        },
        [](const Given& x) { return plain::stress_under_point(x[0], x[1], x[2]); });
    compare(
        "stress_under_circle", {150e3, 0.25, 0.6},
        [](const Given& x) {
            return calc::stress_under_circle(in<Pressure>(x[0]), in<Length>(x[1]), in<Length>(x[2])).value();
        },
        [](const Given& x) { return plain::stress_under_circle(x[0], x[1], x[2]); });
    compare(
        "stress_under_rectangle", {150e3, 0.6, 0.3, 0.5},
        [](const Given& x) {
            return calc::stress_under_rectangle(in<Pressure>(x[0]), in<Length>(x[1]), in<Length>(x[2]),
                                                in<Length>(x[3]), calc::RectanglePoint::centre)
                .value();
        },
        [](const Given& x) { return plain::stress_under_rectangle(x[0], x[1], x[2], x[3], false); });
    compare(
        "earth_thrust", {0.33, 19e3, 2.2, 10e3, 0.8},
        [](const Given& x) {
            return calc::earth_thrust(in<Share>(x[0]), in<UnitWeight>(x[1]), in<Length>(x[2]),
                                      in<Pressure>(x[3]), in<Length>(x[4]))
                .value();
        },
        [](const Given& x) { return plain::earth_thrust(x[0], x[1], x[2], x[3], x[4]); });
    compare_tables();
}

/// One routing of a triangle of inflow through a pool that stays wet, with so many steps.
void count_routing(int steps) {
    const calc::Hydrograph inflow = {
        {in<Time>(0), in<Flow>(0)}, {in<Time>(3600), in<Flow>(0.5)}, {in<Time>(7200), in<Flow>(0)}};
    const calc::StorageTable storage = {{{in<Length>(0), in<Volume>(0)}, {in<Length>(3), in<Volume>(9000)}}};
    const calc::RatingTable rating = {{in<Length>(0), in<Flow>(0)}, {in<Length>(3), in<Flow>(0.05)}};
    // The pool is far from empty at 10 times the inflow, where the rows end.
    const Time step = in<Time>(72000.0 / steps);
    CALLGRIND_ZERO_STATS;
    CALLGRIND_TOGGLE_COLLECT;
    const calc::RoutedTable rows = calc::route_pool(inflow, storage, rating, step, in<Length>(0));
    CALLGRIND_TOGGLE_COLLECT;
    CALLGRIND_DUMP_STATS_AT(("route " + std::to_string(rows.size() - 1)).c_str());
}

}  // namespace

}  // namespace undercroft::bench

int main() {
    undercroft::bench::compare_all();
    for (const int steps : {1000, 10000, 100000, 1000000}) undercroft::bench::count_routing(steps);
    return 0;
}
