/// \file audit_sheet.hpp
/// The sheet Audit of a workbook: what an audit found, the map of all formulas, and who signed.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include "addin/audit/report/report.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// Writes the sheet behind all others, in place of that of an earlier audit.
/// \throws css::uno::Exception where the document refuses it, as when its structure is protected
void write_audit_sheet(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document,
                       const audit::Report& report);

}  // namespace undercroft::addin
