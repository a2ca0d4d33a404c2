/// \file number_format.hpp
/// What a cell is shown as by its number format and called by its labels, and whether that is what a function
/// reads: a function sees the number behind it.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "addin/catalogue/value_type.hpp"
#include "units/unit.hpp"

namespace undercroft::audit {

enum class ShownAs : std::uint8_t { number, percent, time, date };

struct NumberFormat {
    ShownAs shown_as = ShownAs::number;
    std::string unit{};       ///< the text that the format writes behind the number: `0.00" mm"`
    bool hides = false;       ///< shows nothing of a number: `;;;`
    int thousands = 0;        ///< how many times it is divided by 1000 before it is shown: `0,`
    int decimals = -1;        ///< how many are shown; -1: as many as there are
    bool shows_time = false;  ///< of a date: its time of day too
    friend auto operator<=>(const NumberFormat&, const NumberFormat&) = default;
};

/// The text that a format code writes behind a number, without spaces around; that of its first part.
[[nodiscard]] std::string text_behind(std::string_view format_code);

/// The words that a format code writes, and on which condition: `[=1]"PASS";"FAIL"` of `[=1]"PASS";0"
/// "\F\A\I\L`. The same in every country, whose signs for digits and days are left out.
[[nodiscard]] std::string words_of_format(std::string_view format_code);

/// What a format code makes of a number: whether it hides it, cuts thousands off, and how many decimals are
/// left. \param decimals as the office counts them, whose codes are in the signs of its country ("0,000"
/// shows three in Germany); -1: the code is in English signs.
void read_format_code(std::string_view format_code, NumberFormat& format, int decimals = -1);

/// The unit in a label or heading: "Depth (mm)", "Depth [mm]", "Depth in mm", "Depth, mm".
[[nodiscard]] std::optional<std::string> unit_in_label(std::string_view label);

/// A number as it stands on its sheet.
struct SeenNumber {
    std::string cell;  ///< "B5"
    double number = 0;
    NumberFormat format{};
    std::string day{};        ///< that it is shown as: "2025-04-03"; empty where that is not known
    std::string unit_cell{};  ///< the unit beside it or at the head of its table; empty for none
    std::string row_label{};
    std::string column_head{};
};

/// How what is seen differs from what its unit cell says; nothing where it does not.
[[nodiscard]] std::optional<std::string> format_against_unit(const SeenNumber& seen);

/// How what is seen of a number without a unit differs from what an argument of that type reads.
[[nodiscard]] std::optional<std::string> format_against_type(const SeenNumber& seen,
                                                             const addin::ValueType& type);

}  // namespace undercroft::audit
