/// \file open_document.hpp
/// An OpenDocument spreadsheet file (.ods, .ots, .fods) as the audit's plain workbook, read without an
/// office.
#pragma once

#include <string>

#include "addin/audit/book/book.hpp"

namespace undercroft::tests {

/// \throws std::runtime_error when the file cannot be read.
[[nodiscard]] audit::Book read_open_document(const std::string& path);

/// `of:=[.G7]*[$Site.$B$2:.$C$2]` as Calc's own grammar writes it: `=G7*$Site.$B$2:$C$2`.
[[nodiscard]] std::string calc_formula(const std::string& open_formula);

}  // namespace undercroft::tests
