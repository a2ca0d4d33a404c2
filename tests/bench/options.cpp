// The search of beds in the core: how long all beds of a space take that is as large as a car park's, pruned
// by bounds and one by one, and what it allocates.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <new>

#include "tests/bench/paired.hpp"
#include "tests/calc/works/bed_options_job.hpp"

namespace {
std::size_t allocations = 0;
}

void* operator new(std::size_t size) {
    ++allocations;
    if (void* made = std::malloc(size)) return made;
    throw std::bad_alloc();
}
void operator delete(void* made) noexcept {
    std::free(made);
}
void operator delete(void* made, std::size_t) noexcept {
    std::free(made);
}

namespace undercroft::bench {

namespace {

/// 45 m x 14 m for two kinds of unit, base and cover stone in steps of 32 mm: more than 100,000 beds.
calc::OptionsJob large_job() {
    using tests::m;
    calc::OptionsJob job = tests::options_job();
    job.site.length = m(45);
    job.site.width = m(14);
    job.site.ground_length = m(52);
    job.site.ground_width = m(21);
    job.site.storage_wanted = tests::m3(250);
    job.site.ground.presumptive = Pressure::from_value(300e3);
    job.site.ground.friction = degrees(38);
    job.base_stone = {m(0.15), m(0.6), m(0.032)};
    job.cover_stone = {m(0.15), m(0.45), m(0.032)};
    return job;
}

void measure(const std::string& key, const calc::OptionsJob& job, calc::Pruning pruning) {
    constexpr int runs = 7;
    std::vector<double> times;
    calc::Options options;
    for (int run = 0; run < runs; ++run) {
        allocations = 0;
        const std::clock_t start = std::clock();
        options = calc::bed_options(job, {20, 10}, pruning);
        times.push_back(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    const double candidates = number(options.candidates);
    report(key + ".candidates", candidates, "%.0f");
    report(key + ".passed", number(options.passed), "%.0f");
    report(key + ".s", median(times));
    report(key + ".each.us", 1e6 * median(times) / candidates);
    report(key + ".allocations", static_cast<double>(allocations) / candidates);
}

}  // namespace

}  // namespace undercroft::bench

int main() {
    using namespace undercroft;
    const calc::OptionsJob job = bench::large_job();
    bench::measure("options", job, calc::Pruning::by_bounds);
    bench::measure("options.all", job, calc::Pruning::none);
    return 0;
}
