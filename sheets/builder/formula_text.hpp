/// \file formula_text.hpp
/// From a formula as the sheet text writes it, with keys, to the formula as files hold it.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace undercroft::sheets {

/// What a word of a formula stands for in the file, or empty when it is unknown. Called with `bed_length`,
/// `bed_length.value`, `bed_length.unit`, `@` and `@net`.
using Meaning = std::function<std::string(const std::string& word)>;

/// `UC.PIT.VOLUME(bed_length; @)` to `UNDERCROFT.UC.PITVOLUME(bed_length;[.H12])`.
/// \throws std::runtime_error for a word that means nothing.
[[nodiscard]] std::string stored_formula(std::string_view formula, const Meaning& meaning);

/// A text as a formula holds it: in quotes, those inside it doubled.
[[nodiscard]] std::string quoted(const std::string& text);

/// The keys that a formula uses.
/// \throws std::runtime_error for a text that is not closed.
[[nodiscard]] std::vector<std::string> keys_in(std::string_view formula);

}  // namespace undercroft::sheets
