// A workbook of ours that no longer says so: without its template next to nothing of it can be told.
#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_lost_identity(const AuditedBook& audited, bool is_compared, Findings& findings) {
    if (is_compared || !identity_of(audited.book).name.empty()) return;
    if (audited.names.find("functions_version", -1) == nullptr) return;  // every workbook of ours has it
    findings.add(FindingKind::not_compared, Severity::error,
                 "the workbook was made from a template, and no longer says from which, so that it was "
                 "compared with none; give "
                 "the template (undercroft-audit FILE TEMPLATE), or begin again from it.");
}

}  // namespace undercroft::audit
