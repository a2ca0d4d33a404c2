/// \file measured.hpp
/// A number of a formula with the unit it is in, as far as the workbook says: what adding, multiplying and
/// raising to a power make of units. The numbers themselves are never converted, since Calc does not either.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "units/unit.hpp"

namespace undercroft::audit {

struct Measured {
    enum class Kind {
        number,   ///< without a unit by its nature: a literal, a count of cells, a ratio
        unit,     ///< in `unit`
        bare,     ///< a cell's number that stands without a unit, `why` says which
        truth,    ///< TRUE or FALSE
        text,     ///< no number
        mixed,    ///< a range in different units
        unknown,  ///< cannot be followed, `why` says why
    };
    Kind kind = Kind::number;
    Unit unit;
    std::string unit_text;
    std::string what;               ///< "G5 in mm", "the number 5": for sentences
    std::string why;                ///< of bare, mixed and unknown
    std::optional<Spot> cell;       ///< where it came from
    std::optional<double> literal;  ///< it is this number, written in the formula
    std::vector<double> factors;    ///< literals that it was multiplied with
    bool from_units = false;        ///< a number or truth that came of quantities with units

    [[nodiscard]] bool is_zero() const { return literal && *literal == 0; }
};

[[nodiscard]] Measured literal_number(double value);
[[nodiscard]] Measured pure_number(const std::string& what);
[[nodiscard]] Measured in_unit(const Unit& unit, const std::string& text, const std::string& what,
                               const std::optional<Spot>& cell = {});
[[nodiscard]] Measured bare_number(const std::string& why, const std::optional<Spot>& cell);
[[nodiscard]] Measured unknown_unit(const std::string& why, const std::optional<Spot>& cell = {});
[[nodiscard]] Measured some_text();
[[nodiscard]] Measured truth_of(bool from_units);

/// What came of an operation, and the sentence about a clash where there was one.
struct Combined {
    Measured value;
    std::string clash;
};

/// Two that are added, compared, or stand for each other as the branches of an IF. `verb` is "adds" or
/// "compares".
[[nodiscard]] Combined alike(const Measured& a, const Measured& b, const std::string& verb);
[[nodiscard]] Measured product(const Measured& a, const Measured& b);
[[nodiscard]] Measured quotient(const Measured& a, const Measured& b);
/// To the power numerator/denominator.
[[nodiscard]] Measured power(const Measured& base, int numerator, int denominator);

/// Counts, shares and slopes are plain numbers to arithmetic.
[[nodiscard]] bool is_plain(const Dimension& dimension);
/// The dimension without counts and slopes: 12 units of 2.5 m are 30 m.
[[nodiscard]] Dimension physical(const Dimension& dimension);

}  // namespace undercroft::audit
