#include "units/one_line.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdio>

namespace undercroft {

namespace {

constexpr std::uint32_t no_character = 0xFFFFFFFF;

/// The character that begins at `at` and how long it is; `no_character` and 1 for what is no UTF-8.
struct Character {
    std::uint32_t code = no_character;
    std::size_t length = 1;
};

Character character_at(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const std::uint32_t first = byte(at);
    if (first < 0x80) return {first, 1};
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || at + length > text.size()) return {};
    std::uint32_t code = first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(at + i) & 0xC0U) != 0x80) return {};
        code = code << 6U | (byte(at + i) & 0x3FU);
    }
    const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    if (overlong || surrogate || code > 0x10FFFF) return {};
    return {code, length};
}

bool ends_line(std::uint32_t code) {
    return (code >= 0x0A && code <= 0x0D) || code == 0x85 || code == 0x2028 || code == 0x2029;
}

/// Control characters, and what is not seen but turns the order of what is.
bool is_hidden(std::uint32_t code) {
    return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x061C ||
           (code >= 0x200B && code <= 0x200F) || (code >= 0x202A && code <= 0x202E) ||
           (code >= 0x2060 && code <= 0x206F) || code == 0xFEFF || (code >= 0xE0000 && code <= 0xE007F);
}

std::string number_of(const char* form, std::uint32_t code) {
    std::array<char, 24> text{};
    std::snprintf(text.data(), text.size(), form, static_cast<unsigned>(code));
    return text.data();
}

}  // namespace

std::string on_one_line(std::string_view text) {
    std::string line;
    line.reserve(text.size());
    bool ended = false;  // several ends of a line are one
    for (std::size_t at = 0; at < text.size();) {
        const auto [code, length] = character_at(text, at);
        if (code == no_character)
            line += number_of("<0x%02X>", static_cast<unsigned char>(text[at]));
        else if (ends_line(code))
            line += ended ? "" : " / ";
        else if (code == '\t')
            line += ' ';
        else if (is_hidden(code))
            line += number_of("<U+%04X>", code);
        else
            line.append(text, at, length);
        ended = ends_line(code);
        at += length;
    }
    return line;
}

namespace {

bool is_number(const std::string& text) {
    return text.find_first_not_of("0123456789.-+eE") == std::string::npos &&
           text.find_first_of("0123456789") != std::string::npos;
}

}  // namespace

std::string harmless_in_table(const std::string& text) {
    constexpr std::string_view separators = ";\t\n\r|";
    std::string made;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find_first_of(separators, at), text.size());
        const std::string piece = text.substr(at, end - at);
        const std::size_t first = std::min(piece.find_first_not_of(" \""), piece.size());
        const bool starts_formula =
            first < piece.size() && std::string_view("=+-@").find(piece[first]) != std::string_view::npos;
        const bool is_argument = is_number(piece.substr(0, piece.find_last_not_of(") ") + 1));
        if (starts_formula && !is_argument) made += '\'';
        made += piece;
        if (end < text.size()) made += text[end];
        at = end + 1;
    }
    return made;
}

}  // namespace undercroft
