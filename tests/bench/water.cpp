// What a recalculation of the sheets waits for: a hundred years of a store of rain, and a governing storm.
#include <cmath>
#include <cstdlib>

#include "calc/water/governing_storm.hpp"
#include "calc/water/reuse.hpp"
#include "tests/bench/paired.hpp"

namespace undercroft::bench {

namespace {

constexpr int rounds = 51;

template <class F>
double median_seconds(const F& work) {
    std::vector<double> times;
    for (int i = 0; i <= rounds; ++i) times.push_back(seconds(work));
    times.erase(times.begin());  // the first is not counted
    return median(times);
}

/// A hundred years of which two days in five are wet, by a simple generator, and a demand by month.
calc::ReuseSupply century() {
    calc::ReuseSupply supply;
    constexpr int days = 36525;
    unsigned number = 1;
    for (int i = 0; i < days; ++i) {
        number = number * 1103515245U + 12345U;
        const double share = static_cast<double>(number >> 8U) / (1 << 24);
        supply.rain.push_back(Length::from_value(share < 0.6 ? 0 : 0.02 * std::pow(share - 0.6, 2) / 0.16));
    }
    supply.area = Area::from_value(1000);
    supply.coefficient = Share::from_value(0.9);
    supply.first_flush = Length::from_value(0.0005);
    for (int month = 0; month < 12; ++month) supply.demand.push_back(Volume::from_value(1 + 0.2 * month));
    supply.first_day =
        std::chrono::year_month_day(std::chrono::year(1912), std::chrono::month(1), std::chrono::day(1));
    return supply;
}

void check(bool holds, const char* why) {
    if (holds) return;
    std::fprintf(stderr, "%s\n", why);
    std::exit(1);
}

/// A bed of 20 depths, its stage as straight as its outlet is curved.
struct Bed {
    calc::StorageTable storage;
    calc::RatingTable rating;
    Bed() {
        constexpr int levels = 150;
        for (int i = 0; i < levels; ++i) {
            const double h = 1.2 * i / (levels - 1);
            storage.rows.emplace_back(Length::from_value(h), Volume::from_value(400 * h));
            rating.emplace_back(Length::from_value(h), Flow::from_value(0.03 * std::sqrt(h)));
        }
    }
};

calc::RainTable rain() {
    calc::RainTable rows;
    for (const double minutes : {5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 180.0, 360.0, 720.0, 1440.0})
        rows.emplace_back(Time::from_value(60 * minutes),
                          Speed::from_value(0.4 / 3600 * std::pow(minutes, -0.7)));
    return rows;
}

}  // namespace

}  // namespace undercroft::bench

int main() {
    using namespace undercroft;
    using namespace undercroft::bench;
    const calc::ReuseSupply supply = century();
    const Volume store = Volume::from_value(20);
    const auto rule = calc::ReuseRule::after_spillage;
    const Share empty = Share::from_value(0);
    report("reuse.yield.ms", 1e3 * median_seconds([&] {
                                 const calc::ReuseYield yield = calc::reuse_yield(supply, store, rule, empty);
                                 check(yield.yield > Volume::from_value(0) && yield.yield < yield.inflow,
                                       "no yield");
                             }));
    report("reuse.rows.ms",
           1e3 * median_seconds([&] {
               check(calc::reuse_balance(supply, store, rule, empty).size() == supply.rain.size(), "no rows");
           }));
    const Bed bed;
    const calc::Catchment catchment{Share::from_value(0.8), Area::from_value(9000), Time::from_value(600)};
    const auto storm = [&](calc::StormShape shape) {
        return 1e3 * median_seconds([&] {
                   const calc::GoverningStorm found =
                       calc::governing_storm(rain(), catchment, bed.storage, bed.rating, shape,
                                             Length::from_value(0), std::nullopt, std::nullopt);
                   check(found.marks.depth > Length::from_value(0.1), "no storm");
               });
    };
    report("governing.block.ms", storm(calc::StormShape::block));
    report("governing.alternating.ms", storm(calc::StormShape::alternating));
    return 0;
}
