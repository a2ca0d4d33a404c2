/// \file lines.hpp
/// The lines of our text files: fields parted by '|', a line that starts with spaces going on with the one
/// before, '#' for a remark.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace undercroft::sheets {

/// A mistake in a text file, with its line.
class TextMistake : public std::runtime_error {
public:
    TextMistake(int line, const std::string& why)
        : std::runtime_error("line " + std::to_string(line) + ": " + why) {}
};

struct Line {
    int number = 0;    ///< of its first line in the file, from 1
    std::string text;  ///< with its continuation lines, joined by a space
};

/// Text without the spaces at its ends.
[[nodiscard]] std::string trimmed(std::string_view text);

/// The word at the start of a text, removed from it with the spaces behind it.
[[nodiscard]] std::string take_word(std::string& text);

/// The fields between separators, trimmed. A separator inside double quotes, braces or parentheses does not
/// count.
[[nodiscard]] std::vector<std::string> fields_of(std::string_view text, char separator = '|');

/// The lines that say something.
[[nodiscard]] std::vector<Line> lines_of(std::string_view text);

}  // namespace undercroft::sheets
