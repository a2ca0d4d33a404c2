/// \file unit.hpp
/// A unit of measurement and its text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "units/dimension.hpp"

namespace undercroft {

/// A factor kept as a ratio of two exact numbers, so that 305 mm is 0.305 m and not nearly so.
struct Scale {
    double numerator = 1;
    double denominator = 1;

    [[nodiscard]] double to_coherent(double value) const { return value * numerator / denominator; }
    [[nodiscard]] double from_coherent(double value) const { return value * denominator / numerator; }
    [[nodiscard]] Scale times(const Scale& other) const {
        return {numerator * other.numerator, denominator * other.denominator};
    }
    [[nodiscard]] Scale to_the(int numerator_of_power, int denominator_of_power) const;
};

struct Unit {
    Scale scale;
    Dimension dimension;
    /// `%` and permille: a share written as such. Where a slope is wanted it means rise per run.
    bool percent = false;
    /// Of the US customary or imperial system, in any of its parts.
    bool customary = false;
};

/// One row of the unit table.
struct UnitRow {
    std::string_view symbol;  ///< the spelling used for output
    std::string_view also;    ///< other spellings, parted by '|'
    Scale scale;              ///< to the coherent SI unit
    Dimension dimension;
    bool case_matters;            ///< true for SI symbols only
    std::string_view reference;   ///< the same unit in the grammar of GNU units, for the tests
    std::string_view definition;  ///< where the factor comes from
    bool customary = false;       ///< of the US customary or imperial system
};

/// Every unit there is, in one place. Compound units (kN/m3) are made of these.
[[nodiscard]] const std::vector<UnitRow>& unit_table();

/// Spellings that mean two things, with the choices.
struct AmbiguousUnit {
    std::string_view spelling;
    std::string_view choices;
};
[[nodiscard]] const std::vector<AmbiguousUnit>& ambiguous_units();

/// The ISO 4217 codes of currencies in use.
[[nodiscard]] const std::vector<std::string_view>& currency_codes();

/// Reads a unit: `mm`, `kN/m3`, `m^0.5/s`, `oz/yd2`, `acre-ft`, `m³`, `kg/(m s)`, `AUD/t`.
/// Products by space, `.`, `*`, `·` or `-` between names; one `/`, or negative powers.
/// \throws Refused(value) for an unknown, misspelt or ambiguous unit, with what to type instead.
[[nodiscard]] Unit parse_unit(std::string_view text);

/// The unit in which a bare number of this dimension is read and written: the trade's default unit
/// where there is one, else the coherent SI unit.
[[nodiscard]] Unit default_unit(const Dimension& dimension);

/// The text of the coherent SI unit: `m3/s`; of a dimension without a name, its base units.
[[nodiscard]] std::string si_unit_text(const Dimension& dimension);

/// The text of that unit, for unit rows and messages; a currency's code for money.
[[nodiscard]] std::string default_unit_text(const Dimension& dimension);

}  // namespace undercroft
