/// \file result_units.hpp
/// The formulas of an open workbook, their results handed on with their units.
#pragma once

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// How many formulas were changed. Sheets that are protected without a password are opened for it and
/// protected again; array formulas stay as they are. \throws std::runtime_error where a sheet is protected
/// with a password.
int write_result_units(const Document& document);

}  // namespace undercroft::sheets
