#include "addin/audit/findings/verdicts.hpp"

#include <algorithm>

#include "addin/audit/findings/words.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

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

std::optional<bool> verdict_in_words(const std::string& text) {
    const Words words = words_of(text);
    if (words.empty() || words.size() > 6) return std::nullopt;
    const bool passes =
        any_of(words, {"ok", "okay", "pass", "passe", "passed", "yes", "adequate", "sufficient", "satisfied",
                       "safe", "acceptable", "good", "fit", "complie"});
    // "no check fails" sums up others.
    if (words.contains("no") && words.contains("check") && words.contains("fail")) return std::nullopt;
    // "not counted" and "no limit given" are no verdicts.
    if (any_of(words, {"not", "no"}) && (passes || words.size() == 1)) return false;
    if (any_of(words, {"ng", "fail", "failed", "inadequate", "insufficient", "exceed", "exceeded", "unsafe",
                       "too", "unacceptable"}))
        return false;
    if (passes) return true;
    return std::nullopt;
}

namespace {

std::optional<WordedCheck> as_worded(const Node& node) {
    if (node.kind != NodeKind::call || node.text != "IF" || node.children.size() != 3) return std::nullopt;
    const Node& yes = node.children[1];
    const Node& no = node.children[2];
    if (yes.kind != NodeKind::text || no.kind != NodeKind::text) return std::nullopt;
    const std::optional<bool> if_true = verdict_in_words(yes.text);
    const std::optional<bool> if_false = verdict_in_words(no.text);
    const bool one_passes = if_true == true || if_false == true;
    const bool one_fails = if_true == false || if_false == false;
    if (!one_passes && !one_fails) return std::nullopt;
    // "yes" and "no" answer many questions; a check compares sizes.
    const Node& condition = node.children[0];
    const bool compares_text =
        is_comparison(condition) && std::any_of(condition.children.begin(), condition.children.end(),
                                                [](const Node& side) { return side.kind == NodeKind::text; });
    if (compares_text) return std::nullopt;
    const bool passes_when_true = if_true == true || if_false == false;
    return WordedCheck{&condition, passes_when_true ? yes.text : no.text,
                       passes_when_true ? no.text : yes.text, passes_when_true};
}

}  // namespace

std::optional<WordedCheck> worded_check(const Node& tree) {
    std::optional<WordedCheck> found;
    walk(tree, [&](const Node& node) {
        if (!found) found = as_worded(node);
    });
    return found;
}

}  // namespace undercroft::audit
