#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/audit/findings/verdicts.hpp"

namespace undercroft::audit {

namespace {

bool fails(const FormulaCell& formula, const addin::Node& tree) {
    if (const double* value = formula.cell->number()) return *value == 0 && gives_verdict(tree);
    const std::string* shown = formula.cell->text();
    if (shown == nullptr || shown->empty()) return false;
    const std::optional<WordedCheck> check = worded_check(tree);
    return check && *shown == check->fails && check->fails != check->passes;
}

}  // namespace

void find_failed_checks(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    for (const FormulaCell& formula : audited.formulas.all()) {
        const FormulaGroup& group = audited.formulas.group_of(formula);
        if (!group.unreadable().empty() || !fails(formula, group.tree())) continue;
        const std::string label = audited.labels.of_row(formula.at);
        grouped.add(FindingKind::check_failed, Severity::error, formula.group, 0, formula.at,
                    "the check fails" + (label.empty() ? "" : ": " + label) +
                        "; change the design, or the input if it was wrong.");
    }
}

}  // namespace undercroft::audit
