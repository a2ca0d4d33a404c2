#include <algorithm>
#include <iterator>
#include <string_view>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;
using addin::NodeKind;

constexpr std::size_t most_numbers = 4;

/// Functions of Calc whose numbers are part of the computation; in others a number says how, not how much.
constexpr std::string_view computing[] = {
    "SUM", "MAX", "MIN", "AVERAGE", "PRODUCT", "SUMPRODUCT", "IF", "IFERROR", "IFNA",    "SQRT",
    "ABS", "MOD", "SIN", "COS",     "TAN",     "EXP",        "LN", "LOG10",   "RADIANS", "DEGREES"};

/// 0, 1 and 2 are structure, not data.
bool is_structure(double value) {
    return value == 0 || value == 1 || value == 2;
}

/// Factors between units, of shapes (a quarter of pi, a third of a cone), and of gravity, which everybody
/// knows by sight. They are structure where something is multiplied with them or divided by them.
bool is_known_factor(double value) {
    static constexpr double known[] = {4,    10,   12,   24,    25.4,  27,      60,   100,    144,   360,
                                       1000, 1440, 3600, 10000, 43560, 86400,   1e6,  1e9,    0.5,   1e-3,
                                       0.01, 0.1,  9.81, 9.8,   9.807, 9.80665, 32.2, 32.174, 1.486, 1.49};
    return std::find(std::begin(known), std::end(known), value) != std::end(known);
}

/// Such a factor as it is written, also as a power of ten.
bool is_known_factor(const Node& node) {
    if (node.kind == NodeKind::number) return is_known_factor(node.number);
    return node.text == "^" && node.children.size() == 2 && node.children[0].kind == NodeKind::number &&
           node.children[0].number == 10;
}

/// 2/3 as an exponent.
bool is_of_numbers(const Node& node) {
    return node.kind == NodeKind::number ||
           (node.kind == NodeKind::operation &&
            std::all_of(node.children.begin(), node.children.end(), is_of_numbers));
}

class NumberSearch {
public:
    void look(const Node& node, bool counts) {
        switch (node.kind) {
            case NodeKind::number:
                if (counts && !is_structure(node.number)) found_.push_back(node.number);
                return;
            case NodeKind::operation:
                return look_in_operation(node);
            case NodeKind::call:
                // Numbers given to functions of ours are looked at where their units are.
                for (const Node& child : node.children) look(child, calls_one_of(node, computing));
                return;
            default:
                return;
        }
    }
    [[nodiscard]] const std::vector<double>& found() const { return found_; }

private:
    void look_in_operation(const Node& node) {
        if (node.children.size() == 1) return look(node.children[0], true);
        if (node.text == "&" || node.text == ":" || node.text == "~" || node.text == "!") {
            for (const Node& child : node.children) look(child, false);
            return;
        }
        if (node.text == "*" || node.text == "/") {
            for (const Node& child : node.children)
                if (!is_known_factor(child)) look(child, true);
            return;
        }
        look(node.children[0], true);
        const bool exponent = node.text == "^";  // the shape of the formula, not its data
        if (!exponent || !is_of_numbers(node.children[1])) look(node.children[1], !exponent);
    }

    std::vector<double> found_;
};

std::string numbers_text(const std::vector<double>& numbers) {
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < numbers.size() && i < most_numbers; ++i)
        texts.push_back(exact_text(numbers[i]));
    return joined(texts) + (numbers.size() > most_numbers ? " and more" : "");
}

}  // namespace

void find_bare_numbers(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    for (std::uint32_t g = 0; g < audited.formulas.groups().size(); ++g) {
        const FormulaGroup& group = audited.formulas.groups()[g];
        if (!group.unreadable().empty()) continue;
        NumberSearch search;
        search.look(group.tree(), false);
        if (search.found().empty()) continue;
        const std::string says =
            (search.found().size() == 1 ? "the number " : "the numbers ") + numbers_text(search.found()) +
            (search.found().size() == 1 ? " stands" : " stand") +
            " in the formula without a name, a unit or a source; put it in a cell of its own, with its unit.";
        for (const std::uint32_t member : group.members)
            grouped.add(FindingKind::bare_number, Severity::warning, g, 0, audited.formulas.all()[member].at,
                        says);
    }
}

}  // namespace undercroft::audit
