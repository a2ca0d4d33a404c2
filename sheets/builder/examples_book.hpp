/// \file examples_book.hpp
/// The workbook of small sheets to copy from: plain cells, the functions in cells beside their units, and
/// beside each formula its text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sheets/builder/dual.hpp"
#include "sheets/builder/example_text.hpp"
#include "sheets/builder/grid.hpp"

namespace undercroft::sheets {

/// \throws std::runtime_error for a cell that cannot be made, with its sheet and line.
[[nodiscard]] WorkbookGrid examples_book(const std::vector<ExampleSheet>& examples, System system);

/// A formula as typed, with cells for arguments, as files hold it: `UC.CONVERT(B5:C5; D$4)` to
/// `UNDERCROFT.UC.CONVERT([.B5:.C5];[.D$4])`.
[[nodiscard]] std::string stored_typed_formula(std::string_view formula);

}  // namespace undercroft::sheets
