/// \file equations.hpp
/// The equations of the functions in the notes of the rows that call them, in the symbols of the sheets.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "sheets/builder/sheet_text.hpp"

namespace undercroft::sheets {

/// Stands in a note for the equation of the function that the row calls.
inline constexpr std::string_view equation_word = "{equation}";

struct Equation {
    std::vector<std::string> symbols;  ///< of the arguments, in their order
    std::string right_side;
};

/// By the name of the function.
using Equations = std::map<std::string, Equation>;

/// Reads `UC.BED.LENGTH | l; e | L = l + 2 e`, line by line.
/// \throws TextMistake for what cannot be read, with its line.
[[nodiscard]] Equations read_equations(std::string_view text);

/// The right side of the equation that a row computes by, in the symbols of the rows that it is computed
/// from; empty where the row does not call one function with rows that have symbols.
[[nodiscard]] std::string equation_of(const Row& row, const std::map<std::string, std::string>& symbols,
                                      const Equations& equations);

/// The symbol of every row that has one, by its key.
[[nodiscard]] std::map<std::string, std::string> symbols_of(const std::vector<Sheet>& sheets);

/// Puts the equations into the notes that want them.
/// \throws std::runtime_error for a note that wants one where there is none.
void fill_equations(std::vector<Sheet>& sheets, const Equations& equations);

}  // namespace undercroft::sheets
