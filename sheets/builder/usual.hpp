/// \file usual.hpp
/// What is usual of a number that is typed in, and what is possible at all.
#pragma once

#include <limits>
#include <string>

namespace undercroft::sheets {

/// Both ends count.
struct Range {
    double low = 0;
    double high = 0;
};

/// `usual 20..200 mm or 0, possible 1..5000`, or `usual any` where every number is usual.
struct Usual {
    bool any = false;
    Range usual;
    Range possible;
    std::string unit;      ///< of all four numbers; empty for a number without one
    bool or_zero = false;  ///< 0 is a number here, not a blank

    /// Widens to what is possible where the text does not say: twenty times, so that a slip of a unit falls
    /// out.
    void guess_possible();
};

/// What stands behind the word `usual`.
/// \throws std::runtime_error for what is no range.
[[nodiscard]] Usual usual_in(const std::string& text);

/// The ends of a range behind the word `possible`, in the unit of what is usual.
/// \throws std::runtime_error for what is no range.
[[nodiscard]] Range range_in(const std::string& text);

/// A number and its unit as a cell holds it: `20 mm`; a bare number without a unit.
[[nodiscard]] std::string quantity_text(double number, const std::string& unit);

/// `20 to 200 mm or 0`: the range in another unit of the same kind, three digits.
/// \throws std::runtime_error for a unit of another kind.
[[nodiscard]] std::string range_words(const Range& range, const Usual& usual, const std::string& unit);

/// The same number in another unit of its kind.
/// \throws std::runtime_error for a unit of another kind.
[[nodiscard]] double converted(double number, const std::string& from, const std::string& to);

}  // namespace undercroft::sheets
