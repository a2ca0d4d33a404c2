// What formulas hide: an error that is made a number, digits that are rounded away, and cells that are named
// by a text.
#include <cmath>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

constexpr double most_lost = 0.005;  // of a result, by rounding it

bool is_number(const Node& node) {
    if (node.kind == NodeKind::operation && node.children.size() == 1) return is_number(node.children[0]);
    return node.kind == NodeKind::number;
}

/// The digits of ROUND; nothing where they are computed.
std::optional<double> digits_of(const Node& call) {
    if (call.children.size() < 2 || call.children[1].kind == NodeKind::missing) return 0;
    const Node& digits = call.children[1];
    if (digits.kind == NodeKind::number) return digits.number;
    if (digits.text == "-" && digits.children.size() == 1 && digits.children[0].kind == NodeKind::number)
        return -digits.children[0].number;
    return std::nullopt;
}

/// The cells named by a text or counted off from another, where a reference would do.
bool counts_cells_off(const Node& call) {
    if (call.text == "INDIRECT") return true;
    return call.text == "OFFSET" && call.children.size() >= 3 && is_number(call.children[1]) &&
           is_number(call.children[2]);
}

class HidingSearch {
public:
    HidingSearch(const AuditedBook& audited, Grouped& grouped) : audited_(audited), grouped_(grouped) {}

    void look(const FormulaCell& formula) {
        formula_ = &formula;
        look_at_root(audited_.formulas.group_of(formula).tree());
        walk(audited_.formulas.group_of(formula).tree(), [&](const Node& node) {
            if (node.kind == NodeKind::call && counts_cells_off(node))
                grouped_.add(FindingKind::text_address, Severity::warning, formula_->group, 0, formula_->at,
                             node.text +
                                 " names its cells by a text or by counting: they stay behind when rows are "
                                 "inserted, and no "
                                 "one who looks for their use finds it; write the reference.");
        });
    }

private:
    void tell(const std::string& says) {
        grouped_.add(FindingKind::swallowed, Severity::warning, formula_->group, 0, formula_->at, says);
    }

    /// What the formula is as a whole, or is computed from.
    void look_at_root(const Node& node) {
        if (node.kind == NodeKind::operation && !is_comparison(node))
            for (const Node& child : node.children) look_at_root(child);
        if (node.kind != NodeKind::call) return;
        const bool catches = (node.text == "IFERROR" || node.text == "IFNA") && node.children.size() == 2;
        if (catches && node.children[0].kind != NodeKind::missing && is_number(node.children[1]))
            tell("an error counts as " + exact_text(node.children[1].number) +
                 " here; let it show, so that somebody looks for it.");
        if (node.text == "ROUND") look_at_rounding(node);
    }

    void look_at_rounding(const Node& call) {
        const std::optional<double> digits = digits_of(call);
        const double* value = formula_->cell->number();
        if (!digits || value == nullptr || *value == 0) return;
        const double lost = std::pow(10, -*digits) / 2 / std::abs(*value);
        if (lost > most_lost)
            tell("ROUND leaves so few digits that up to " + rounded_text(std::round(1000 * lost) / 10) +
                 " % of the result are lost; show fewer digits by the number format, and compute with all.");
    }

    const AuditedBook& audited_;
    Grouped& grouped_;
    const FormulaCell* formula_ = nullptr;
};

}  // namespace

void find_swallowed(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    HidingSearch search(audited, grouped);
    for (const FormulaCell& formula : audited.formulas.all())
        if (audited.formulas.group_of(formula).unreadable().empty()) search.look(formula);
}

}  // namespace undercroft::audit
