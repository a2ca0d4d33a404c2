#include "calc/water/reuse.hpp"

#include <algorithm>

#include "calc/solve.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::calc {

namespace {

constexpr std::size_t months = 12;
constexpr double met = 1 - 1e-12;      // of a demand: all but the last digits
constexpr double last_digits = 1e-13;  // of a store, and of its reliability

/// Inflow and demand of each day, checked once for as many stores as are tried.
struct Days {
    std::vector<Volume> inflow;
    std::vector<Volume> demand;
};

std::vector<Volume> demand_by_day(const ReuseSupply& supply) {
    const std::vector<Volume>& demand = supply.demand;
    const std::size_t days = supply.rain.size();
    for (const Volume& volume : demand) require_not_negative("demand", volume);
    if (demand.size() == days && days != 1) return demand;
    if (demand.size() == 1) return std::vector<Volume>(days, demand.front());
    require(demand.size() == months, "the demand has ", amount(count(static_cast<double>(demand.size()))),
            " values: one is wanted, twelve by month, or one for each day (",
            amount(count(static_cast<double>(days))), ")");
    require(supply.first_day.has_value(), "a demand by month needs the date of the first day");
    require(supply.first_day->ok(), "the first day is no date of the calendar");
    std::vector<Volume> by_day;
    by_day.reserve(days);
    std::chrono::sys_days day = *supply.first_day;
    for (std::size_t i = 0; i < days; ++i, day += std::chrono::days(1)) {
        const unsigned month = static_cast<unsigned>(std::chrono::year_month_day(day).month());
        by_day.push_back(demand[month - 1]);
    }
    return by_day;
}

Days checked_days(const ReuseSupply& supply) {
    require(!supply.rain.empty(), "the rain needs at least one day");
    require_positive("area", supply.area);
    require_coefficient(supply.coefficient);
    require_not_negative("first flush", supply.first_flush);
    Days days;
    days.inflow.reserve(supply.rain.size());
    const Area collecting = supply.coefficient * supply.area;
    for (const Length& rain : supply.rain) {
        require_not_negative("rain", rain);
        require_storm_depth("rain", rain);
        days.inflow.push_back(std::max<Length>(rain - supply.first_flush, zero) * collecting);
    }
    days.demand = demand_by_day(supply);
    return days;
}

void require_store(Volume store, Share initial) {
    require_positive("store", store);
    require_share("initial share", initial);
}

/// One day: what is taken from `stored`, which becomes that of the evening, and what is spilled.
struct Taken {
    Volume yield;
    Volume spill;
};
inline Taken pass_day(Volume inflow, Volume demand, Volume store, ReuseRule rule, Volume& stored) {
    const bool after = rule == ReuseRule::after_spillage;
    const Volume yield = std::min(demand, after ? stored : stored + inflow);
    const Volume left = stored + inflow - yield;
    const Volume room = after ? store - yield : store;
    stored = std::min(left, room);
    return {yield, left - stored};
}

ReuseYield yield_of(const Days& days, Volume store, ReuseRule rule, Share initial) {
    ReuseYield total{zero, zero, zero, zero, initial * store, zero, share(1), share(1)};
    Volume stored = total.at_start;
    double days_met = 0;
    for (std::size_t i = 0; i < days.inflow.size(); ++i) {
        const Taken taken = pass_day(days.inflow[i], days.demand[i], store, rule, stored);
        total.inflow += days.inflow[i];
        total.demand += days.demand[i];
        total.yield += taken.yield;
        total.spill += taken.spill;
        if (taken.yield >= met * days.demand[i]) ++days_met;
    }
    total.at_end = stored;
    if (total.demand > zero) total.volume_reliability = total.yield / total.demand;
    total.time_reliability = share(days_met / static_cast<double>(days.inflow.size()));
    return total;
}

}  // namespace

std::vector<ReuseDay> reuse_balance(const ReuseSupply& supply, Volume store, ReuseRule rule, Share initial) {
    const Days days = checked_days(supply);
    require_store(store, initial);
    std::vector<ReuseDay> balance;
    balance.reserve(days.inflow.size());
    Volume stored = initial * store;
    for (std::size_t i = 0; i < days.inflow.size(); ++i) {
        const Taken taken = pass_day(days.inflow[i], days.demand[i], store, rule, stored);
        balance.push_back({days.inflow[i], days.demand[i], taken.yield, taken.spill, stored});
    }
    return balance;
}

ReuseYield reuse_yield(const ReuseSupply& supply, Volume store, ReuseRule rule, Share initial) {
    const Days days = checked_days(supply);
    require_store(store, initial);
    return yield_of(days, store, rule, initial);
}

Volume reuse_store(const ReuseSupply& supply, Share reliability, ReuseReliability by, ReuseRule rule,
                   Share initial) {
    const Days days = checked_days(supply);
    require_share("initial share", initial);
    require_positive("reliability", reliability);
    require_share("reliability", reliability);
    Volume inflow = zero;
    Volume most_wanted = zero;
    for (const Volume& volume : days.inflow) inflow += volume;
    for (const Volume& volume : days.demand) most_wanted = std::max(most_wanted, volume);
    require(inflow > zero, "nothing flows into the store: the rain brings none");
    const Volume largest = inflow + most_wanted;  // never spills
    const auto reached = [&](Volume store) {
        const ReuseYield yield = yield_of(days, store, rule, initial);
        return by == ReuseReliability::volume ? yield.volume_reliability : yield.time_reliability;
    };
    const auto is_enough = [&](Volume store) { return reached(store) >= (1 - last_digits) * reliability; };
    if (!is_enough(largest))
        no_answer("no store reaches a " + shown("reliability", reliability) +
                  ": one that never spills comes to " + in_words(reached(largest)));
    const Volume next_to_none = 1e-9 * largest;
    if (is_enough(next_to_none)) return zero;  // what falls in the day is enough
    // Most stores hold the demand of some days: from there up.
    Volume low = next_to_none;
    Volume high = std::clamp<Volume>(most_wanted, 2.0 * next_to_none, largest);
    while (high < largest && !is_enough(high)) {
        low = high;
        high = std::min<Volume>(4.0 * high, largest);
    }
    if (by == ReuseReliability::volume && reached(high) > reliability) {
        high = root_between([&](Volume store) -> Share { return reached(store) - reliability; }, low, high);
        // Where a larger store yields no more, the smallest of them is wanted.
        if (!is_enough((1 - limit_tolerance) * high)) return high;
    }
    while (high - low > last_digits * high) {
        const Volume middle = (low + high) / 2.0;
        (is_enough(middle) ? high : low) = middle;
    }
    return high;
}

ReuseCurve reuse_curve(const ReuseSupply& supply, const std::vector<Volume>& stores, ReuseRule rule,
                       Share initial) {
    const Days days = checked_days(supply);
    ReuseCurve curve;
    for (const Volume& store : stores) {
        require_store(store, initial);
        const ReuseYield yield = yield_of(days, store, rule, initial);
        curve.emplace_back(store, yield.yield, yield.spill, yield.volume_reliability, yield.time_reliability);
    }
    return curve;
}

}  // namespace undercroft::calc
