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

/// A format such as `0.00` or `#,##0`, whose marks mean one thing here and another there.
bool is_marked_format(const Node& node) {
    if (node.kind != NodeKind::text) return false;
    const std::size_t mark = node.text.find_first_of(".,");
    return mark != std::string::npos && node.text.find_first_of("0#?") != std::string::npos;
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

bool changes_with_country(const Node& tree) {
    static constexpr std::string_view formatters[] = {"TEXT"};
    static constexpr std::string_view readers[] = {"VALUE", "DATEVALUE", "TIMEVALUE"};
    bool found = false;
    walk(tree, [&](const Node& node) {
        const bool formats =
            calls_one_of(node, formatters) && node.children.size() == 2 && is_marked_format(node.children[1]);
        found = found || formats || calls_one_of(node, readers);
    });
    return found;
}

}  // namespace undercroft::audit
