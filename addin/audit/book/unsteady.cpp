#include "addin/audit/book/unsteady.hpp"

#include <algorithm>
#include <string_view>

#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

constexpr std::string_view changing[] = {"NOW",       "TODAY",   "RAND",          "RANDBETWEEN",
                                         "RANDARRAY", "RAND.NV", "RANDBETWEEN.NV"};

/// The clock compared with zero always gives the same.
bool is_clock_and_zero(const Node& node) {
    if (node.kind != NodeKind::operation || node.children.size() != 2) return false;
    const Node& a = node.children[0];
    const Node& b = node.children[1];
    static constexpr std::string_view clocks[] = {"NOW", "TODAY"};
    const bool compares = node.text == "=" || node.text == "<>" || node.text == ">" || node.text == "<";
    return compares && calls_one_of(a, clocks) && b.kind == NodeKind::number && b.number == 0;
}

}  // namespace

bool changes_by_itself(const Node& tree) {
    if (is_clock_and_zero(tree)) return false;
    return calls_one_of(tree, changing) ||
           std::any_of(tree.children.begin(), tree.children.end(), changes_by_itself);
}

bool tells_version(const Node& node) {
    const addin::Function* function = node.kind == NodeKind::call ? addin::find_function(node.text) : nullptr;
    return function != nullptr && function->role == addin::Role::tells_version;
}

bool asks_surroundings(const Node& tree) {
    static constexpr std::string_view askers[] = {"CELL", "INFO"};
    bool found = false;
    walk(tree, [&](const Node& node) { found = found || calls_one_of(node, askers); });
    return found;
}

}  // namespace undercroft::audit
