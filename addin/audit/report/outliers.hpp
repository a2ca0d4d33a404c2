/// \file outliers.hpp
/// Numbers that look like a slip of units or of the decimal point.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>

namespace undercroft::audit {

/// How a number differs from the others of its column.
struct Unlike {
    std::string times;  ///< "1000 times"
    double least = 0;   ///< of the others
    double greatest = 0;
};

/// The numbers of a column, each against the others.
class ColumnOfNumbers {
public:
    explicit ColumnOfNumbers(std::span<const double> numbers);

    /// How a number differs from the others of its column, where it does so by a power of ten or by the
    /// factor between two units. Nothing for a column that
    /// spreads as far by itself, and for less than four numbers.
    [[nodiscard]] std::optional<Unlike> unlike_others(double number) const;

private:
    bool tells_something_ = false;
    std::array<double, 2> least_{};
    std::array<double, 2> greatest_{};
};

/// The same slip, of one number against another of the same thing: "25.4 times". Powers of ten from 100 on,
/// since a design may well be ten times a template's.
[[nodiscard]] std::optional<std::string> slip_between(double was, double is);

}  // namespace undercroft::audit
