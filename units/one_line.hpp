/// \file one_line.hpp
/// Text of other people, made fit to be shown: it can neither command a terminal nor pass for a line of ours.
#pragma once

#include <string>
#include <string_view>

namespace undercroft {

/// On one line, ends of lines as ` / `; control characters, marks of direction and bytes that are no UTF-8 as
/// their numbers, such as `<U+001B>`.
[[nodiscard]] std::string on_one_line(std::string_view text);

/// For a field of a table: what a program that opens it would take for a formula begins with an apostrophe,
/// even in one that takes semicolons, tabs or the ends of lines in it for the ends of fields.
[[nodiscard]] std::string harmless_in_table(const std::string& text);

}  // namespace undercroft
