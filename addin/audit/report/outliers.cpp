#include "addin/audit/report/outliers.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Between feet and inches, inches and mm, feet and mm, hours and minutes, hours and seconds, m and ft per
/// ...
constexpr double unit_factors[] = {12, 25.4, 304.8, 60, 3600};
constexpr double powers_of_ten[] = {10, 100, 1000, 1e4, 1e5, 1e6};
constexpr double least_of_powers = 100;
constexpr std::size_t fewest = 4;
/// A column whose own numbers spread further tells nothing.
constexpr double widest_spread = 3;
/// How far beyond the others a number still belongs to them.
constexpr double margin = 1.25;
constexpr double nearly = 1e-4;

std::string times_text(double factor, bool greater) {
    return greater ? rounded_text(factor) + " times" : "one " + rounded_text(factor) + "th of";
}

}  // namespace

std::optional<std::string> unlike_others(std::span<const double> column, std::size_t which) {
    if (column.size() < fewest || !(column[which] > 0)) return std::nullopt;
    double low = HUGE_VAL;
    double high = 0;
    for (std::size_t i = 0; i < column.size(); ++i) {
        if (i == which) continue;
        if (!(column[i] > 0)) return std::nullopt;
        low = std::min(low, column[i]);
        high = std::max(high, column[i]);
    }
    if (high > widest_spread * low) return std::nullopt;
    const double middle = std::sqrt(low * high);
    const bool greater = column[which] > middle;
    const double ratio = greater ? column[which] / middle : middle / column[which];
    std::optional<double> best;
    const auto consider = [&](double factor) {
        const double corrected = greater ? column[which] / factor : column[which] * factor;
        if (corrected < low / margin || corrected > high * margin) return;
        if (!best || std::abs(std::log(ratio / factor)) < std::abs(std::log(ratio / *best))) best = factor;
    };
    for (const double factor : powers_of_ten) consider(factor);
    for (const double factor : unit_factors) consider(factor);
    if (!best || ratio < powers_of_ten[0] / margin) return std::nullopt;
    return "about " + times_text(*best, greater) + " the others of its column, which are " +
           rounded_text(low) + (low == high ? "" : " to " + rounded_text(high));
}

std::optional<std::string> slip_between(double was, double is) {
    if (!(was > 0) || !(is > 0) || was == is) return std::nullopt;
    const bool greater = is > was;
    const double ratio = greater ? is / was : was / is;
    const auto fits = [&](double factor) { return std::abs(ratio / factor - 1) < nearly; };
    for (const double factor : unit_factors)
        if (fits(factor)) return times_text(factor, greater);
    for (const double factor : powers_of_ten)
        if (factor >= least_of_powers && fits(factor)) return times_text(factor, greater);
    return std::nullopt;
}

}  // namespace undercroft::audit
