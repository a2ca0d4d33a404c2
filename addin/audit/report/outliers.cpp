#include "addin/audit/report/outliers.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

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

ColumnOfNumbers::ColumnOfNumbers(std::span<const double> numbers)
    : tells_something_(numbers.size() >= fewest &&
                       std::all_of(numbers.begin(), numbers.end(), [](double n) { return n > 0; })) {
    if (!tells_something_) return;
    std::partial_sort_copy(numbers.begin(), numbers.end(), least_.begin(), least_.end());
    std::partial_sort_copy(numbers.begin(), numbers.end(), greatest_.begin(), greatest_.end(),
                           std::greater<>());
}

std::optional<Unlike> ColumnOfNumbers::unlike_others(double number) const {
    if (!tells_something_) return std::nullopt;
    const double low = number == least_[0] ? least_[1] : least_[0];
    const double high = number == greatest_[0] ? greatest_[1] : greatest_[0];
    if (high > widest_spread * low) return std::nullopt;
    const double middle = std::sqrt(low * high);
    const bool greater = number > middle;
    const double ratio = greater ? number / middle : middle / number;
    std::optional<double> best;
    const auto consider = [&](double factor) {
        const double corrected = greater ? number / factor : number * factor;
        if (corrected < low / margin || corrected > high * margin) return;
        if (!best || std::abs(std::log(ratio / factor)) < std::abs(std::log(ratio / *best))) best = factor;
    };
    for (const double factor : powers_of_ten) consider(factor);
    for (const double factor : unit_factors) consider(factor);
    if (!best || ratio < powers_of_ten[0] / margin) return std::nullopt;
    return Unlike{times_text(*best, greater), low, high};
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
