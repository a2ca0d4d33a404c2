/// \file shown_number.hpp
/// The number of a cell as its reader sees it: a day of the calendar where the cell shows one, which a
/// workbook keeps as days counted from its own day 0.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

/// `2026-11-02`, with its time of day `2026-11-02 14:30`, with seconds where there are any. Nothing for a day
/// outside the years 1583 to 9999, for which ISO 8601 needs no agreement.
/// \param null_date is day 0, as Book::null_date; what is no day counts as Calc's own, 1899-12-30
[[nodiscard]] std::optional<std::string> day_text(double number, std::string_view null_date,
                                                  bool with_time = false);

/// Whether the cell shows its number as a day.
[[nodiscard]] bool shows_day(const Book& book, const Spot& at);

/// The day that a number is in this cell; nothing where the cell shows none.
[[nodiscard]] std::optional<std::string> day_text(const Book& book, const Spot& at, double number);

/// A number as it stands in this cell, with all its digits, or as the day that it is there.
[[nodiscard]] std::string exact_at(const Book& book, const Spot& at, double number);

/// `the number 12.5`, `the date 2026-11-02`
[[nodiscard]] std::string number_words(const Book& book, const Spot& at, double number);

/// A number as it stands in this cell with six digits, or as the day that it is there.
[[nodiscard]] std::string rounded_at(const Book& book, const Spot& at, double number);

/// A number of a cell of one workbook or another.
struct NumberAt {
    const Book& book;
    Spot at;
    double number = 0;
};

/// Two different numbers that are held against each other, each as it stands in its cell; where both would
/// read alike, as two times of one day do, the numbers themselves.
[[nodiscard]] std::pair<std::string, std::string> exact_at_both(const NumberAt& one, const NumberAt& other);

}  // namespace undercroft::audit
