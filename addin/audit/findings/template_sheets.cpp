#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

void find_missing(const TemplateMatch& match, Findings& findings) {
    for (const BookSheet& sheet : match.from().sheets)
        if (match.workbook().sheet_named(sheet.name) < 0 && !is_audit_sheet(sheet))
            findings.add(
                FindingKind::template_rows, Severity::error,
                "the sheet " + sheet.name + " of the template is missing; begin again from the template.");
}

void find_added(const TemplateMatch& match, Findings& findings) {
    for (const BookSheet& sheet : match.workbook().sheets)
        if (match.from().sheet_named(sheet.name) < 0 && !is_audit_sheet(sheet))
            findings.add(FindingKind::template_rows, Severity::warning,
                         "the sheet " + sheet.name + " is not in the template; read all of it.");
}

void find_unprotected(const TemplateMatch& match, Findings& findings) {
    for (const BookSheet& sheet : match.from().sheets) {
        const std::int32_t place = match.workbook().sheet_named(sheet.name);
        if (place < 0 || !sheet.is_protected) continue;
        if (!match.workbook().sheets[static_cast<std::size_t>(place)].is_protected)
            findings.add(FindingKind::template_changed, Severity::warning,
                         "the sheet " + sheet.name +
                             " is not protected any more; protect it (Tools > Protect Sheet).");
    }
}

}  // namespace

void find_changed_sheets(const TemplateMatch& match, Findings& findings) {
    find_missing(match, findings);
    find_added(match, findings);
    find_unprotected(match, findings);
}

}  // namespace undercroft::audit
