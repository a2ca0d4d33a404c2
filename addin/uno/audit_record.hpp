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
#include "addin/uno/audit_page.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// Where people write: a name and a date to sign, a reason, a name and a date to accept a finding.
enum SignColumn : sal_Int32 { checker = 1, date = 2, state = 3, whole = 10, by_sheet = rests_column };
enum AcceptColumn : sal_Int32 { reason = 9, who_and_when = 11 };
/// The heads by which these columns are found again, wherever an earlier version put them.
namespace head_of {
inline constexpr std::string_view checker = "Checker";
inline constexpr std::string_view date = "Date";
inline constexpr std::string_view state = "State";
inline constexpr std::string_view whole = "Fingerprint (SHA-256)";
inline constexpr std::string_view by_sheet = "By sheet";
inline constexpr std::string_view reason = "Accepted because";
inline constexpr std::string_view who_and_when = "Name, date";
}  // namespace head_of
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
