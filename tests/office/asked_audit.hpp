/// \file asked_audit.hpp
/// The component's audit, asked for in an office of one's own.
#pragma once

#include <string>

#include "sheets/office/office.hpp"

namespace undercroft::tests {

/// What the audit of an open workbook says. \param file where it lies; \param writes the sheet Audit, too
[[nodiscard]] std::string asked_audit(const sheets::Office& office, const sheets::Document& document,
                                      const std::string& file, bool writes = false);

/// Types a checker's name into the sheet Audit that the audit wrote.
void sign(const sheets::Document& document, const std::string& checker);

}  // namespace undercroft::tests
