#include "addin/audit/report/comparison.hpp"

#include "addin/audit/findings/verdicts.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;
using addin::NodeKind;

enum class Shown { something, passes, fails };

/// What a branch of an IF shows.
Shown shown_by(const Node& node) {
    const auto shown = [](bool passes) { return passes ? Shown::passes : Shown::fails; };
    if (node.kind == NodeKind::text) {
        const std::optional<bool> passes = verdict_in_words(node.text);
        return passes ? shown(*passes) : Shown::something;
    }
    if (node.kind == NodeKind::number && (node.number == 0 || node.number == 1))
        return shown(node.number == 1);
    if (node.kind == NodeKind::call && node.children.empty() && (node.text == "TRUE" || node.text == "FALSE"))
        return shown(node.text == "TRUE");
    return Shown::something;
}

/// A comparison by an operator, or the other way round.
DecidingComparison by_operator(const Node& node, bool turned) {
    const bool less = node.text == "<" || node.text == "<=";
    const bool greater = node.text == ">" || node.text == ">=";
    if (!less && !greater) return {};
    const bool left_is_demand = less != turned;
    return {&node.children[left_is_demand ? 0 : 1], &node.children[left_is_demand ? 1 : 0]};
}

std::optional<DecidingComparison> found_in(const Node& node, bool turned);

std::optional<DecidingComparison> in_if(const Node& node, bool turned) {
    if (node.children.size() < 2) return std::nullopt;
    const Node& then = node.children[1];
    const Node* otherwise = node.children.size() > 2 ? &node.children[2] : nullptr;
    const Shown first = shown_by(then);
    const Shown second = otherwise == nullptr ? Shown::something : shown_by(*otherwise);
    const bool in_words =
        then.kind == NodeKind::text || (otherwise != nullptr && otherwise->kind == NodeKind::text);
    const bool both = first != Shown::something && second != Shown::something && first != second;
    const bool either = first != Shown::something || second != Shown::something;
    if (both || (in_words && either)) {
        const bool holds_to_pass =
            first == Shown::something ? second == Shown::fails : first == Shown::passes;
        const auto inside = found_in(node.children[0], turned == holds_to_pass);
        return inside ? inside : DecidingComparison{};
    }
    if (auto inside = found_in(then, turned)) return inside;
    return otherwise == nullptr ? std::nullopt : found_in(*otherwise, turned);
}

std::optional<DecidingComparison> found_in(const Node& node, bool turned) {
    if (node.kind == NodeKind::operation) {
        if (addin::is_comparison(node)) return by_operator(node, turned);
        const bool times_one = node.text == "*" && node.children.size() == 2 &&
                               node.children[0].kind == NodeKind::call && node.children[0].text == "NOT" &&
                               node.children[1].kind == NodeKind::number;
        return times_one ? found_in(node.children[0], turned) : std::nullopt;
    }
    if (node.kind != NodeKind::call) return std::nullopt;
    if (node.text == "NOT" && node.children.size() == 1) {
        const auto inside = found_in(node.children[0], !turned);
        return inside ? inside : DecidingComparison{};
    }
    if (node.text == "AND" || node.text == "OR") return DecidingComparison{};
    if (node.text == "IF") return in_if(node, turned);
    const addin::Function* function = addin::find_function(node.text);
    if (function == nullptr || function->outcome.type.shape != addin::Shape::verdict) return std::nullopt;
    if (function->role != addin::Role::compares || node.children.size() < 2) return DecidingComparison{};
    const bool at_most = function->name == "UC.ATMOST";
    if (!at_most && function->name != "UC.ATLEAST") return DecidingComparison{};
    const bool left_is_demand = at_most != turned;
    return DecidingComparison{&node.children[left_is_demand ? 0 : 1], &node.children[left_is_demand ? 1 : 0]};
}

}  // namespace

std::optional<DecidingComparison> comparison_in(const Node& formula) {
    return found_in(formula, false);
}

}  // namespace undercroft::audit
