// Level-pool routing in the core against a loop written by hand on plain doubles, which makes the same rows.
#include <malloc.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "calc/water/routing.hpp"
#include "tests/bench/paired.hpp"
#include "tests/bench/plain.hpp"

namespace undercroft::bench {

namespace {

/// A bed of 40 depths whose outlet lets out ever more, and a flow that rises and falls over a day.
struct Job {
    calc::Hydrograph inflow;
    calc::StorageTable storage;
    calc::RatingTable rating;
    std::vector<plain::HydrographRow> plain_inflow;
    std::vector<double> depth;
    std::vector<double> stored;
    std::vector<double> outflow;

    static constexpr double duration = 86400;

    Job() {
        constexpr int levels = 40;
        for (int i = 0; i < levels; ++i) {
            const double h = 3.0 * i / (levels - 1);
            depth.push_back(h);
            stored.push_back(1150 * h + 20 * h * h);
            outflow.push_back(0.05 * h);
            storage.rows.emplace_back(Length::from_value(h), Volume::from_value(stored.back()));
            rating.emplace_back(Length::from_value(h), Flow::from_value(outflow.back()));
        }
        constexpr int rows = 97;
        for (int i = 0; i < rows; ++i) {
            const double t = duration * i / (rows - 1);
            const double q = 0.08 * std::sin(3.14159265 * i / (rows - 1));
            plain_inflow.push_back({t, q});
            inflow.emplace_back(Time::from_value(t), Flow::from_value(q));
        }
    }
};

void check(bool holds, const char* why) {
    if (holds) return;
    std::fprintf(stderr, "%s\n", why);
    std::exit(1);
}

/// As many rows as the core makes with that step: inflow, and the time the bed takes to run empty.
std::size_t route_both(const Job& job, double step, double& typed, double& by_hand_s, double& ratio) {
    const calc::RoutedTable rows =
        calc::route_pool(job.inflow, job.storage, job.rating, Time::from_value(step), Length::from_value(0));
    const std::size_t steps = rows.size() - 1;
    const auto by_hand = plain::route_pool(job.plain_inflow, job.depth, job.stored, job.outflow, step, steps);
    const double a = std::get<2>(rows[steps / 3]).value();
    check(std::abs(a - by_hand[steps / 3].depth) <= 1e-6 * a, "the two routings differ");

    // Some milliseconds at a time, whatever the number of steps.
    const std::size_t often = std::max<std::size_t>(1, 200000 / steps);
    const Paired times = paired(
        steps > 100000 ? 15 : 61,
        [&] {
            for (std::size_t i = 0; i < often; ++i) {
                const auto made = calc::route_pool(job.inflow, job.storage, job.rating,
                                                   Time::from_value(step), Length::from_value(0));
                check(made.size() == rows.size(), "another number of rows");
            }
        },
        [&] {
            for (std::size_t i = 0; i < often; ++i) {
                const auto made =
                    plain::route_pool(job.plain_inflow, job.depth, job.stored, job.outflow, step, steps);
                check(made.size() == rows.size(), "another number of rows");
            }
        });
    typed = median(times.a) / static_cast<double>(often);
    by_hand_s = median(times.b) / static_cast<double>(often);
    ratio = times.ratio();
    return steps;
}

}  // namespace

}  // namespace undercroft::bench

int main() {
    using namespace undercroft::bench;
    // Memory once given back is kept: else 40 MB of rows cost more in fresh pages than in routing, for both.
    mallopt(M_MMAP_THRESHOLD, 1 << 30);
    mallopt(M_TRIM_THRESHOLD, 1 << 30);
    const Job job;
    // Steps that divide the spacing of the inflow, so that both make the same rows; the run is some times as
    // long as the inflow.
    double first = 0;
    double first_by_hand = 0;
    for (const double parts : {4.0, 40.0, 400.0, 4000.0}) {
        double each = 0;
        double by_hand = 0;
        double ratio = 0;
        const std::size_t steps = route_both(job, Job::duration / 96 / parts, each, by_hand, ratio);
        const double per_step = each / static_cast<double>(steps);
        const double per_step_by_hand = by_hand / static_cast<double>(steps);
        if (first == 0) first = per_step;
        if (first_by_hand == 0) first_by_hand = per_step_by_hand;
        const std::string key = "route." + std::to_string(static_cast<int>(parts));
        report(key + ".steps", static_cast<double>(steps), "%.0f");
        report(key + ".ratio", ratio);
        report(key + ".linear", per_step / first);
        report(key + ".linear.by_hand", per_step_by_hand / first_by_hand);
        report(key + ".ns", per_step * 1e9);
    }
    return 0;
}
