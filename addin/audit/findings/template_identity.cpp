#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_other_template(const TemplateMatch& match, Findings& findings) {
    const Identity ours = identity_of(match.workbook());
    const Identity theirs = identity_of(match.from());
    if (ours.name.empty() && !theirs.name.empty())
        findings.add(FindingKind::not_compared, Severity::warning,
                     "the workbook does not say which template it was made from; it was compared with " +
                         theirs.text() + ": is that its own?");
    if (ours.name.empty() || theirs.name.empty()) return;
    if (ours.name != theirs.name || ours.system != theirs.system)
        findings.add(FindingKind::template_changed, Severity::error,
                     "the workbook says that it was made from " + ours.text() +
                         ", and it was compared with " + theirs.text() +
                         "; compare it with its own template.");
    else if (ours.version != theirs.version)
        findings.add(FindingKind::template_changed, Severity::warning,
                     "the workbook was made from version " + ours.version +
                         " of the template, and it was compared with " + theirs.version +
                         "; what is told below may have changed in the template.");
}

}  // namespace undercroft::audit
