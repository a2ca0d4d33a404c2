/// \file frequency.hpp
/// How rare a rain is: by the mean time between two such, or by the chance of one in a year.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

#include "units/types.hpp"

namespace undercroft::calc {

/// What the number of a frequency counts.
enum class Rarity {
    recurrence,  ///< mean years between two (ARI): 10 years
    exceedance,  ///< chance in a year (AEP): 10 %, 1 in 10
};

/// A frequency as it is written: it stays what it is, as 10 % in a year are 9.49 years, not 10.
struct Frequency {
    Rarity rarity;
    double number;  ///< years, or the chance from 0 to 1

    friend bool operator==(const Frequency&, const Frequency&) = default;
};

/// Mean years between two: for a chance p in a year T = -1/ln(1 - p).
///
/// Poisson's law of independent storms; Bureau of Meteorology and Geoscience Australia, Australian Rainfall
/// and Runoff (2019), Book 1, ch. 2 (from memory): 50 % is 1.44, 20 % is 4.48, 10 % is 9.49 years.
[[nodiscard]] double years_between(const Frequency& frequency);

/// Reads "10 years", "10 y ARI", "10 %", "10 % AEP", "1 in 100", "1/100", "0.5EY" (exceedances a year).
/// Nothing for text that is none, and for a bare number, which says not what it counts.
[[nodiscard]] std::optional<Frequency> frequency_in(std::string_view text);

/// The same. \throws Refused(value) where it finds none.
[[nodiscard]] Frequency frequency_of(std::string_view text);

/// "10 years", "10 % AEP".
[[nodiscard]] std::string text_of(const Frequency& frequency);

}  // namespace undercroft::calc
