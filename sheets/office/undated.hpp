/// \file undated.hpp
/// Workbooks that do not tell when they were made.
#pragma once

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// Saves a copy without a time, neither of the document nor of the parts of its file: the same workbook twice
/// is twice the same bytes. \throws std::runtime_error where it cannot be written.
void store_undated(const Document& document, const std::filesystem::path& path);

}  // namespace undercroft::sheets
