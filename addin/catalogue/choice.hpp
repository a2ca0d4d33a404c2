/// \file choice.hpp
/// Words to choose from: how an enumeration is spelled in a cell.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace undercroft::addin {

/// A word and, parted by '|', other spellings of it.
template <class E>
struct Choice {
    std::string_view words;
    E value;
};

/// The spellings of an enumeration; specialised beside the entries that take it.
template <class E>
struct Choices;

/// The first spelling of each choice: "ellipse, parabola or circle".
[[nodiscard]] std::string listed(const std::vector<std::string_view>& words);

/// Whether `text` is one of the spellings in `words`; case and spaces at the ends do not matter.
[[nodiscard]] bool is_spelling(std::string_view text, std::string_view words);

/// The first spelling.
[[nodiscard]] std::string_view first_spelling(std::string_view words);

/// The first spellings of an enumeration.
template <class E>
[[nodiscard]] std::vector<std::string_view> choice_words() {
    std::vector<std::string_view> words;
    for (const Choice<E>& choice : Choices<E>::list) words.push_back(first_spelling(choice.words));
    return words;
}

template <class E>
[[nodiscard]] std::string listed_choices() {
    return listed(choice_words<E>());
}

template <class E>
[[nodiscard]] std::string_view spelling_of(E value) {
    for (const Choice<E>& choice : Choices<E>::list)
        if (choice.value == value) return first_spelling(choice.words);
    return "?";
}

}  // namespace undercroft::addin
