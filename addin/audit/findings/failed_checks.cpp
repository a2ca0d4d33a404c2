#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;
using addin::NodeKind;

/// A formula whose result is a verdict: a check of ours, a comparison, several joined by AND and OR, one
/// times 1, or one that counts under a condition.
bool gives_verdict(const Node& node) {
    if (node.kind == NodeKind::operation)
        return is_comparison(node) ||
               (node.text == "*" && node.children.size() == 2 && node.children[0].kind == NodeKind::call &&
                node.children[0].text == "NOT" && node.children[1].kind == NodeKind::number);
    if (node.kind != NodeKind::call) return false;
    if (node.text == "AND" || node.text == "OR" || node.text == "NOT") return true;
    if (node.text == "IF")
        return (node.children.size() > 1 && gives_verdict(node.children[1])) ||
               (node.children.size() > 2 && gives_verdict(node.children[2]));
    const addin::Function* function = addin::find_function(node.text);
    return function != nullptr && function->outcome.type.shape == addin::Shape::verdict;
}

}  // namespace

void find_failed_checks(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    for (const FormulaCell& formula : audited.formulas.all()) {
        const FormulaGroup& group = audited.formulas.group_of(formula);
        const double* value = formula.cell->number();
        if (value == nullptr || *value != 0 || !group.unreadable().empty() || !gives_verdict(group.tree()))
            continue;
        const std::string label = audited.labels.of_row(formula.at);
        grouped.add(FindingKind::check_failed, Severity::error, formula.group, 0, formula.at,
                    "the check fails" + (label.empty() ? "" : ": " + label) +
                        "; change the design, or the input if it was wrong.");
    }
}

}  // namespace undercroft::audit
