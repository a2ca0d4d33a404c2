// Checks that look like checks and are none: they cannot fail, pass when they should fail, or hold against a
// number that stands in the formula alone.
#include <algorithm>
#include <cstdlib>
#include <optional>
#include <set>
#include <variant>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/audit/findings/limit_words.hpp"
#include "addin/audit/findings/verdicts.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

std::string key_of(const Node& node) {
    return written(node, [](const addin::CellReference& reference) { return reference.text(); });
}

/// The results that a part can have while each comparison in it may hold or not; nothing where it may be
/// anything.
using Outcome = std::variant<double, std::string>;
using Outcomes = std::optional<std::set<Outcome>>;

const std::set<Outcome> either = {0.0, 1.0};

bool is_constant(const Node& node) {
    if (node.kind == NodeKind::number || node.kind == NodeKind::text) return true;
    if (node.kind == NodeKind::call && (node.text == "TRUE" || node.text == "FALSE")) return true;
    if (node.kind != NodeKind::operation) return false;
    return std::all_of(node.children.begin(), node.children.end(), is_constant);
}

bool is_verdict_of_ours(const Node& node) {
    const addin::Function* function = node.kind == NodeKind::call ? addin::find_function(node.text) : nullptr;
    return function != nullptr && function->outcome.type.shape == addin::Shape::verdict;
}

Outcomes outcomes(const Node& node);

bool holds(const Outcome& outcome) {
    const double* number = std::get_if<double>(&outcome);
    return number == nullptr || *number != 0;
}

Outcomes compared(const Node& node) {
    const Node& a = node.children[0];
    const Node& b = node.children[1];
    const bool takes_equal = node.text.find('=') != std::string::npos;
    if (key_of(a) == key_of(b)) return std::set<Outcome>{takes_equal ? 1.0 : 0.0};
    if (!is_constant(a) || !is_constant(b)) return either;
    const Outcomes left = outcomes(a);
    const Outcomes right = outcomes(b);
    if (!left || !right || left->size() != 1 || right->size() != 1) return either;
    const Outcome& x = *left->begin();
    const Outcome& y = *right->begin();
    const bool is = node.text == "="    ? x == y
                    : node.text == "<>" ? x != y
                    : node.text == "<"  ? x < y
                    : node.text == ">"  ? y < x
                    : node.text == "<=" ? x <= y
                                        : y <= x;
    return std::set<Outcome>{is ? 1.0 : 0.0};
}

/// AND, OR, MIN and MAX over all that their arguments can give.
Outcomes joined_outcomes(const Node& node) {
    const bool all = node.text == "AND" || node.text == "MIN";
    const bool truth = node.text == "AND" || node.text == "OR";
    bool open = false;
    for (const Node& child : node.children) {
        const Outcomes of_child = outcomes(child);
        if (!of_child) {
            open = true;
            continue;
        }
        const bool may_hold = std::any_of(of_child->begin(), of_child->end(), holds);
        const bool may_fail = !std::all_of(of_child->begin(), of_child->end(), holds);
        const bool settles = all ? !may_hold : !may_fail;
        if (settles && (truth || child.kind == NodeKind::number)) {
            if (truth) return std::set<Outcome>{all ? 0.0 : 1.0};
            // MAX(1; check): a verdict is 0 or 1, and nothing beside it is more.
            const bool verdicts_else =
                std::all_of(node.children.begin(), node.children.end(),
                            [&](const Node& other) { return &other == &child || gives_verdict(other); });
            if (verdicts_else) return std::set<Outcome>{all ? 0.0 : 1.0};
        }
        open = open || (may_hold && may_fail);
    }
    if (open && truth) return either;
    if (open) return std::nullopt;
    return std::set<Outcome>{all ? 1.0 : 0.0};
}

Outcomes of_if(const Node& node) {
    if (node.children.size() < 2) return std::nullopt;
    const Outcomes condition = outcomes(node.children[0]);
    const bool may_hold = !condition || std::any_of(condition->begin(), condition->end(), holds);
    const bool may_fail = !condition || !std::all_of(condition->begin(), condition->end(), holds);
    std::set<Outcome> all;
    if (may_hold) {
        const Outcomes yes = outcomes(node.children[1]);
        if (!yes) return std::nullopt;
        all.insert(yes->begin(), yes->end());
    }
    if (may_fail) {
        const Outcomes no = node.children.size() > 2 ? outcomes(node.children[2]) : std::set<Outcome>{0.0};
        if (!no) return std::nullopt;
        all.insert(no->begin(), no->end());
    }
    return all;
}

Outcomes outcomes(const Node& node) {
    if (node.kind == NodeKind::number) return std::set<Outcome>{node.number};
    if (node.kind == NodeKind::text) return std::set<Outcome>{node.text};
    if (node.kind == NodeKind::operation) {
        if (is_comparison(node)) return compared(node);
        if (node.text == "*" && node.children.size() == 2) {  // a verdict as a number
            const Outcomes left = outcomes(node.children[0]);
            if (left && node.children[1].kind == NodeKind::number && node.children[1].number == 1)
                return left;
        }
        return std::nullopt;
    }
    if (node.kind != NodeKind::call) return std::nullopt;
    if (node.text == "TRUE") return std::set<Outcome>{1.0};
    if (node.text == "FALSE") return std::set<Outcome>{0.0};
    if (node.text == "IF") return of_if(node);
    static constexpr std::string_view joining[] = {"AND", "OR", "MAX", "MIN"};
    if (calls_one_of(node, joining)) return joined_outcomes(node);
    if (node.text == "NOT" && node.children.size() == 1) {
        const Outcomes of_child = outcomes(node.children[0]);
        if (!of_child || of_child->size() != 1) return either;
        return std::set<Outcome>{holds(*of_child->begin()) ? 0.0 : 1.0};
    }
    if (is_verdict_of_ours(node)) {
        const bool same = node.children.size() >= 2 && key_of(node.children[0]) == key_of(node.children[1]);
        return same ? std::set<Outcome>{1.0} : either;
    }
    return std::nullopt;
}

/// Whether the part holds a comparison or another verdict, or TRUE itself.
bool holds_check(const Node& node) {
    bool found = false;
    walk(node, [&](const Node& part) {
        found = found || is_comparison(part) || is_verdict_of_ours(part) ||
                (part.kind == NodeKind::call && (part.text == "TRUE" || part.text == "FALSE"));
    });
    return found;
}

/// An IF that gives the same whatever it asks.
const Node* branches_alike(const Node& tree) {
    const Node* found = nullptr;
    walk(tree, [&](const Node& node) {
        if (found != nullptr || node.kind != NodeKind::call || node.text != "IF" || node.children.size() != 3)
            return;
        if (node.children[1].kind != NodeKind::missing &&
            key_of(node.children[1]) == key_of(node.children[2]))
            found = &node;
    });
    return found;
}

/// IFERROR around a check that then passes.
bool error_passes(const Node& tree) {
    bool found = false;
    walk(tree, [&](const Node& node) {
        if (node.kind != NodeKind::call || (node.text != "IFERROR" && node.text != "IFNA") ||
            node.children.size() != 2)
            return;
        const Node& otherwise = node.children[1];
        const Outcomes gives = outcomes(otherwise);
        const bool passes = gives && gives->size() == 1 &&
                            (otherwise.kind == NodeKind::text ? verdict_in_words(otherwise.text) == true
                                                              : holds(*gives->begin()));
        const bool is_check = gives_verdict(node.children[0]) || worded_check(node.children[0]);
        found = found || (is_check && passes);
    });
    return found;
}

/// A number, or a quantity as a text, that a check holds something against; 0 and 1 are no limits but signs
/// and ratios.
std::optional<std::string> literal_limit(const Node& comparison) {
    for (const Node& side : comparison.children) {
        if (side.kind == NodeKind::number && side.number != 0 && side.number != 1 && side.number != 100)
            return exact_text(side.number);
        if (side.kind != NodeKind::text || comparison.kind != NodeKind::call) continue;
        const std::string text = trimmed(side.text);
        if (!text.empty() && is_digit(text[0]) && std::strtod(text.c_str(), nullptr) != 0)
            return '"' + text + '"';
    }
    return std::nullopt;
}

class CheckSearch {
public:
    CheckSearch(const AuditedBook& audited, Grouped& grouped) : audited_(audited), grouped_(grouped) {}

    void look(const FormulaCell& formula) {
        const FormulaGroup& group = audited_.formulas.group_of(formula);
        const Node& tree = group.tree();
        formula_ = &formula;
        if (const Node* alike = branches_alike(tree))
            return tell(
                Severity::error,
                "both branches of the IF are " + std::string(key_of(alike->children[1]).substr(0, 60)) +
                    ", so that it does not depend on what it asks; write what it gives when it fails.");
        const bool is_check = gives_verdict(tree) || worded_check(tree) || tree.text == "TRUE";
        const Outcomes gives = holds_check(tree) ? outcomes(tree) : std::nullopt;
        if (gives && gives->size() == 1)
            return tell(Severity::error,
                        "the check gives the same whatever its inputs are; hold what is demanded against its "
                        "limit again.");
        if (error_passes(tree))
            return tell(Severity::error, "an error passes the check; let the error show.");
        if (!is_check) return;
        look_for_limits(tree);
        look_for_turned(group, tree);
    }

private:
    void tell(Severity severity, const std::string& says) {
        grouped_.add(FindingKind::weak_check, severity, formula_->group, 0, formula_->at, says);
    }

    void look_for_limits(const Node& tree) {
        std::optional<std::string> limit;
        walk(tree, [&](const Node& node) {
            const bool of_size = is_comparison(node) && node.text != "=" && node.text != "<>";
            if (!limit && (of_size || is_verdict_of_ours(node))) limit = literal_limit(node);
        });
        if (limit)
            tell(Severity::warning, "the limit " + *limit +
                                        " of the check stands in the formula alone; put it in a cell of its "
                                        "own, with its unit and "
                                        "source.");
    }

    /// What is the wrong way round in a part that passes when it holds, or when it does not.
    static std::string turned_in(const LimitWords& limits, const Node& node, bool when_true) {
        if (is_comparison(node) && node.text != "=" && node.text != "<>") {
            const bool less = (node.text[0] == '<') == when_true;
            return limits.turned(node.children[less ? 0 : 1], node.children[less ? 1 : 0]);
        }
        if (is_verdict_of_ours(node) && node.children.size() >= 2) {
            const std::string name = addin::find_function(node.text)->name;
            if (name != "UC.ATLEAST" && name != "UC.ATMOST") return {};
            const bool least = (name == "UC.ATLEAST") == when_true;
            return limits.turned(node.children[least ? 1 : 0], node.children[least ? 0 : 1]);
        }
        const bool turns = node.kind == NodeKind::call && node.text == "NOT";
        for (const Node& child : node.children)
            if (std::string found = turned_in(limits, child, turns ? !when_true : when_true); !found.empty())
                return found;
        return {};
    }

    void look_for_turned(const FormulaGroup& group, const Node& tree) {
        const std::optional<WordedCheck> words = worded_check(tree);
        const bool passes_when_true = !words || words->passes_when_true;
        const Node& root = words ? *words->condition : tree;
        const LimitWords limits(audited_, group, formula_->at);
        const std::string turned = turned_in(limits, root, passes_when_true);
        if (!turned.empty())
            tell(Severity::error, "the check is turned round: " + turned + "; turn its sign.");
    }

    const AuditedBook& audited_;
    Grouped& grouped_;
    const FormulaCell* formula_ = nullptr;
};

}  // namespace

void find_weak_checks(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    CheckSearch search(audited, grouped);
    for (const FormulaCell& formula : audited.formulas.all())
        if (audited.formulas.group_of(formula).unreadable().empty()) search.look(formula);
}

}  // namespace undercroft::audit
