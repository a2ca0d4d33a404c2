/// \file reuse.hpp
/// A store of rain for reuse, balanced day by day over years: what it yields, and how large it must be.
#pragma once

#include <chrono>
#include <optional>
#include <vector>

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Which comes first in a day, the demand or the spill.
enum class ReuseRule {
    /// Y = min(D, V[t-1]), V = min(V[t-1] + Q - Y, S - Y): what is not in store in the morning is not taken.
    after_spillage,
    /// Y = min(D, V[t-1] + Q), V = min(V[t-1] + Q - Y, S): what falls in the day is taken first.
    before_spillage,
};

/// Where the water comes from and who wants it.
struct ReuseSupply {
    std::vector<Length> rain;  ///< a value a day
    Area area;
    Share coefficient;          ///< of what falls what reaches the store: runoff and filter
    Length first_flush = zero;  ///< of each day's rain, led past the store
    /// A volume a day: one for all days, twelve by month, or one for each day.
    std::vector<Volume> demand;
    /// Day of the first value of rain, for a demand by month.
    std::optional<std::chrono::year_month_day> first_day = {};
};

/// One day of a balance: inflow, demand, yield, spill, what stands in the store at its end.
struct ReuseDay {
    Volume inflow;
    Volume demand;
    Volume yield;
    Volume spill;
    Volume stored;
};

/// Balance of a store, day by day.
///
/// Q = (P - first flush) A C, at least 0; yield and store by the rule; spill V[t-1] + Q - Y - V. What the
/// demand lacks, D - Y, is topped up from elsewhere. Jenkins and others (1978) and Fewkes and Butler (2000),
/// as quoted in trade papers (the papers themselves were not read); other equations go by the name of the
/// first rule too.
/// \param initial share of the store that is full before the first day.
/// \throws Refused(domain) for no rain, a rain below 0 or above 5 m, an area or store not above 0, a
/// coefficient not above 0 or over 1, a first flush or demand below 0, a demand that is neither one, twelve
/// nor as many as the days, twelve without the first day or with one that is no date, an initial share not
/// from 0 to 1.
[[nodiscard]] std::vector<ReuseDay> reuse_balance(const ReuseSupply& supply, Volume store, ReuseRule rule,
                                                  Share initial);

/// What a balance comes to.
struct ReuseYield {
    Volume inflow;
    Volume demand;
    Volume yield;
    Volume spill;
    Volume at_start;
    Volume at_end;
    Share volume_reliability;  ///< yield over demand; 1 where nothing is wanted
    Share time_reliability;    ///< days whose demand was met in full, over all days
};

/// Totals of the same balance; inflow = yield + spill + what the store gained.
/// \throws Refused as reuse_balance.
[[nodiscard]] ReuseYield reuse_yield(const ReuseSupply& supply, Volume store, ReuseRule rule, Share initial);

/// By what a store is judged.
enum class ReuseReliability { volume, time };

/// The smallest store that reaches a reliability; 0 where what falls in the day is enough.
///
/// Reliability by volume grows with the store, straight between corners: a root (TOMS 748, Boost.Math). In
/// time it goes up in steps, and by volume it may rest where a larger store yields no more: halving, to the
/// last digits.
/// \throws Refused(domain) as reuse_balance, for a reliability not above 0 or over 1, and when nothing flows
/// in; Refused(no_answer) when no store reaches it: the sentence says how far one that never spills comes.
[[nodiscard]] Volume reuse_store(const ReuseSupply& supply, Share reliability, ReuseReliability by,
                                 ReuseRule rule, Share initial);

/// Store, yield, spill, reliability by volume and in time, for each of several stores: yield against store.
using ReuseCurve = Table<Volume, Volume, Volume, Share, Share>;
[[nodiscard]] ReuseCurve reuse_curve(const ReuseSupply& supply, const std::vector<Volume>& stores,
                                     ReuseRule rule, Share initial);

}  // namespace undercroft::calc
