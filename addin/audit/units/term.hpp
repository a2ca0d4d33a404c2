/// \file term.hpp
/// The parts of a formula with the units they are in, as far as the workbook says: what adding, multiplying
/// and raising to a power make of units. The numbers themselves are never converted, since Calc does not
/// either.
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "units/unit.hpp"

namespace undercroft::audit {

/// What is known of the unit of a part of a formula.
enum class TermKind {
    number,   ///< without a unit by its nature: a literal, a count of cells, a ratio
    unit,     ///< in `unit`
    bare,     ///< a cell's number that stands without a unit, `why` says which
    date,     ///< a day of the calendar, which Calc counts in days
    truth,    ///< TRUE or FALSE
    text,     ///< no number
    mixed,    ///< a range in different units
    unknown,  ///< cannot be followed, `why` says why
};

/// A part of a formula with the unit that its number is in.
struct Term {
    using Kind = TermKind;
    TermKind kind = TermKind::number;
    Unit unit;
    std::string unit_text;
    std::string what;               ///< "G5 in mm", "the number 5": for sentences
    std::string why;                ///< of bare, mixed and unknown
    std::optional<Spot> cell;       ///< where it came from
    std::optional<double> literal;  ///< it is this number, written in the formula
    std::vector<double> factors;    ///< literals that it was multiplied with
    bool empirical = false;   ///< a quantity to an odd power: its coefficient has a unit that nobody writes
    bool from_units = false;  ///< a number or truth that came of quantities with units

    [[nodiscard]] bool is_zero() const { return literal && *literal == 0; }
};

[[nodiscard]] Term literal_number(double value);
[[nodiscard]] Term pure_number(const std::string& what);
[[nodiscard]] Term in_unit(const Unit& unit, const std::string& text, const std::string& what,
                           const std::optional<Spot>& cell = {});
[[nodiscard]] Term a_date(const std::string& what, const std::optional<Spot>& cell = {});
/// So many days, such as lie between two dates.
[[nodiscard]] Term days(const std::string& what);
/// Whether it is in the unit in which dates are counted.
[[nodiscard]] bool is_in_days(const Term& term);
[[nodiscard]] Term bare_number(const std::string& why, const std::optional<Spot>& cell);
[[nodiscard]] Term unknown_unit(const std::string& why, const std::optional<Spot>& cell = {});
[[nodiscard]] Term some_text();
[[nodiscard]] Term truth_of(bool from_units);

/// Whether a number is meant to be another one that is written with fewer digits: 3.28 for 3.28084.
[[nodiscard]] inline bool is_about(double a, double b) {
    return std::abs(a - b) <= 2e-3 * std::abs(b);
}

/// Whether some of the literals that a term was multiplied with, together, are this factor.
[[nodiscard]] bool has_factor(const Term& term, double factor);

/// What came of an operation, and the sentence about a clash where there was one.
struct Combined {
    Term value;
    std::string clash;
};

/// A date and what is taken from it: the days between two dates, or another date.
[[nodiscard]] Combined date_less(const Term& date, const Term& less);

/// Two that are added, compared, or stand for each other as the branches of an IF. `verb` is "adds" or
/// "compares".
[[nodiscard]] Combined alike(const Term& a, const Term& b, const std::string& verb);
[[nodiscard]] Term product(const Term& a, const Term& b);
[[nodiscard]] Term quotient(const Term& a, const Term& b);
/// To the power numerator/denominator.
[[nodiscard]] Term power(const Term& base, int numerator, int denominator);

/// Counts, shares and slopes are plain numbers to arithmetic.
[[nodiscard]] bool is_plain(const Dimension& dimension);

}  // namespace undercroft::audit
