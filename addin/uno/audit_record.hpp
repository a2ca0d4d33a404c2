/// \file audit_record.hpp
/// What people wrote on the sheet Audit, and what that kept for the next audit.
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/acceptance.hpp"
#include "addin/audit/book/fingerprint.hpp"
#include "addin/audit/book/signed_state.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

inline constexpr const char* sign_columns[] = {
    "Checker",  "Date", "State", "", "Fingerprint (SHA-256) of formulas, inputs, results, formats, settings",
    "By sheet", ""};
enum SignColumn : sal_Int32 { checker = 0, date = 1, state = 2, whole = 4, by_sheet = 5 };
inline constexpr const char* finding_columns[] = {
    "Cell",      "What it is", "Gravity", "Kind", "What is wrong, and what to do", "Accepted because",
    "Name, date"};
enum AcceptColumn : sal_Int32 { reason = 5, who_and_when = 6 };
inline constexpr std::string_view input_record = "input\t";
inline constexpr std::string_view line_record = "line\t";
inline constexpr std::string_view finding_record = "finding\t";

struct AuditRecord {
    std::vector<audit::Signature> signatures;
    std::vector<audit::Acceptance> accepted;
    audit::SignedState at_signing;  ///< what the last signature stands for
};
[[nodiscard]] AuditRecord read_audit_record(
    const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

/// What was signed, a record each.
[[nodiscard]] std::vector<std::string> records_of(const audit::SignedState& state);

/// The sheet Audit; nothing where the document has none.
[[nodiscard]] css::uno::Reference<css::sheet::XSpreadsheet> audit_sheet_of(
    const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

}  // namespace undercroft::addin
