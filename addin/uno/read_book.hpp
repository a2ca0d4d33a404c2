/// \file read_book.hpp
/// A document that is open in Calc as the audit's plain workbook.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include "addin/audit/book/stored_values.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// Everything of the document that an audit looks at. The document is not changed.
[[nodiscard]] audit::Book read_book(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

/// The results that its formulas show now.
[[nodiscard]] audit::StoredValues read_results(
    const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

}  // namespace undercroft::addin
