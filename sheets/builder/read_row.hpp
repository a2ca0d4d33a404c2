/// \file read_row.hpp
/// One row of a sheet from its line. See sheets/text/README.md for the grammar.
#pragma once

#include <string>

#include "sheets/builder/lines.hpp"
#include "sheets/builder/row.hpp"

namespace undercroft::sheets {

/// \param word the kind of row, with which the line begins
/// \param rest what stands behind it
/// \throws TextMistake for what cannot be read.
[[nodiscard]] Row read_row(const std::string& word, const Line& line, const std::string& rest);

/// Adds an item to a grid or list. \return false for a row of another kind.
/// \throws TextMistake for another number of fields than the row has columns to type in.
[[nodiscard]] bool add_item(Row& row, const Line& line, const std::string& rest);

/// Adds rows to paste into, as many as `number` says, to a grid. \return false for a row of another kind.
/// \throws TextMistake for a number that is no whole one from 1 to the most that a grid has.
[[nodiscard]] bool add_blank_items(Row& row, const Line& line, const std::string& number);

/// Lets rows be added to a grid or list until it has as many as `most` says. \return false for another kind.
/// \throws TextMistake for a number that is no whole one, or where there are not two rows between which the
/// ranges over them would grow.
[[nodiscard]] bool let_grow(Row& row, const Line& line, const std::string& most);

}  // namespace undercroft::sheets
