/// \file audit_document.hpp
/// The audit of a document that is open in Calc, for the menu and for the command line alike.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "addin/audit/report/report.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

struct AuditWanted {
    css::uno::Reference<css::sheet::XSpreadsheetDocument> document;
    rtl::OUString
        file;  ///< where the document was just read from, unchanged since; empty: its shown results count
    rtl::OUString
        against;  ///< the template; empty: the one that the document says it was made from, where it is found
    rtl::OUString since;  ///< an earlier revision to compare with; empty: none
    bool writes_sheet = true;
};

/// Computes the document anew, audits it, and writes the sheet Audit where that is wanted.
[[nodiscard]] audit::Report audit_document(const css::uno::Reference<css::uno::XComponentContext>& context,
                                           const AuditWanted& wanted);

/// A template as this office reads it, for the package to keep: JSON of audit::KeptBook.
[[nodiscard]] std::string template_as_read(const css::uno::Reference<css::uno::XComponentContext>& context,
                                           const rtl::OUString& url);

}  // namespace undercroft::addin
