/// \file cursor.hpp
/// A place in the text of a formula, for the code that reads it from left to right.
#pragma once

#include <cstddef>
#include <string_view>

#include "units/text.hpp"

namespace undercroft::addin {

/// What a sheet's name may hold without quotes; bytes from 0x80 on are part of a letter in UTF-8.
[[nodiscard]] constexpr bool is_sheet_letter(char c) {
    return is_letter(c) || is_digit(c) || c == '_' || static_cast<unsigned char>(c) >= 0x80;
}

/// What the name of a function or a defined name may hold.
[[nodiscard]] constexpr bool is_word_letter(char c) {
    return is_sheet_letter(c) || c == '.';
}

struct Cursor {
    std::string_view text;
    std::size_t at = 0;

    [[nodiscard]] bool is_at_end() const { return at >= text.size(); }
    /// The character here or further ahead; '\0' beyond the end.
    [[nodiscard]] char peek(std::size_t ahead = 0) const {
        return at + ahead < text.size() ? text[at + ahead] : '\0';
    }
    [[nodiscard]] std::string_view rest() const { return text.substr(at); }
    [[nodiscard]] std::string_view since(std::size_t begin) const { return text.substr(begin, at - begin); }

    void skip_space() {
        while (peek() == ' ' || peek() == '\n' || peek() == '\t') ++at;
    }
    /// Goes over the character, if it stands here.
    bool take(char c) {
        if (peek() != c) return false;
        ++at;
        return true;
    }
    bool take(std::string_view word) {
        if (!rest().starts_with(word)) return false;
        at += word.size();
        return true;
    }
};

}  // namespace undercroft::addin
