/// \file text.hpp
/// Text as people type it: folding of look-alike characters, numbers that do not depend on the locale.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace undercroft {

/// UTF-16 as the office hands it over, to UTF-8.
[[nodiscard]] std::string to_utf8(std::u16string_view text);
[[nodiscard]] std::u16string to_utf16(std::string_view text);

/// One spelling for what looks the same: spaces of all kinds become one space, superscripts become
/// `^` and digits, dots and crosses of multiplication become `*`, quotes become primes.
/// \throws Refused(value) for control characters and invisible marks, which nobody types on purpose.
[[nodiscard]] std::string fold_spelling(std::string_view text);

[[nodiscard]] constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// ASCII lower case.
[[nodiscard]] std::string lower_case(std::string_view text);

/// Number of single-letter edits between two words.
[[nodiscard]] std::size_t edit_distance(std::string_view a, std::string_view b);

/// Reads an unsigned decimal number at the start of `text` and removes it from there; the point is
/// the decimal sign whatever the locale.
[[nodiscard]] std::optional<double> take_number(std::string_view& text);

/// The shortest decimal text that reads back as the same double: 305, 0.1.
[[nodiscard]] std::string exact_text(double value);
/// A number to six significant digits, as a calc sheet prints a result.
[[nodiscard]] std::string rounded_text(double value);

}  // namespace undercroft
