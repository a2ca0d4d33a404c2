// What the audit did not understand: silence about it would be good news that nobody has.
#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_not_followed(const AuditedBook& audited, Findings& findings) {
    for (const FormulaGroup& group : audited.formulas.groups()) {
        if (group.unreadable().empty()) continue;
        std::vector<Spot> cells;
        for (const std::uint32_t member : group.members) {
            const FormulaCell& formula = audited.formulas.all()[member];
            if (formula.cell->error == 0) cells.push_back(formula.at);  // an error is told as such
        }
        if (!cells.empty())
            findings.add(
                FindingKind::not_followed, Severity::warning, std::move(cells),
                "the audit cannot read this formula (" + group.unreadable() + "); check it by hand.");
    }
    if (audited.errors_unexplained > 0)
        findings.add(FindingKind::not_followed, Severity::note,
                     std::to_string(audited.errors_unexplained) +
                         " formulas of the add-in that show an error were not computed again for their "
                         "units; mend the first, "
                         "and audit again.");
}

}  // namespace undercroft::audit
