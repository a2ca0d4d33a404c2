/// \file text.hpp
/// Text as people type it: folding of look-alike characters, numbers that do not depend on the locale, and
/// the few things that are done to texts everywhere.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercroft {

/// UTF-16 as the office hands it over, to UTF-8.
[[nodiscard]] std::string to_utf8(std::u16string_view text);
[[nodiscard]] std::u16string to_utf16(std::string_view text);

/// One spelling for what looks the same: spaces of all kinds become one space, superscripts become
/// `^` and digits, dots and crosses of multiplication become `*`, quotes become primes.
/// \throws Refused(value) for control characters and invisible marks, which nobody types on purpose.
[[nodiscard]] std::string fold_spelling(std::string_view text);

/// ASCII, whatever the locale.
[[nodiscard]] constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
[[nodiscard]] constexpr bool is_letter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}
[[nodiscard]] std::string lower_case(std::string_view text);
[[nodiscard]] std::string upper_case(std::string_view text);

/// Without the spaces, tabs and ends of lines around it.
[[nodiscard]] std::string trimmed(std::string_view text);

/// What stands between the separators, each trimmed: `m; m3` is two, an empty text is one that is empty.
[[nodiscard]] std::vector<std::string> split(std::string_view text, char separator);

/// `a, b, c` or, with another word before the last, `a, b or c`.
template <class Words>
[[nodiscard]] std::string joined(const Words& words, std::string_view between, std::string_view before_last) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) text += i + 1 == words.size() ? before_last : between;
        text += words[i];
    }
    return text;
}
template <class Words>
[[nodiscard]] std::string joined(const Words& words, std::string_view between = ", ") {
    return joined(words, between, between);
}

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
