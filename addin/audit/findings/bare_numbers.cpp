#include <algorithm>
#include <string_view>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;

/// Functions of Calc whose numbers are part of the computation; in others a number says how, not how much.
constexpr std::string_view computing[] = {
    "SUM", "MAX", "MIN", "AVERAGE", "PRODUCT", "SUMPRODUCT", "IF", "IFERROR", "IFNA",    "SQRT",
    "ABS", "MOD", "SIN", "COS",     "TAN",     "EXP",        "LN", "LOG10",   "RADIANS", "DEGREES"};

bool computes(const std::string& name) {
    return std::find(std::begin(computing), std::end(computing), name) != std::end(computing);
}

/// 0, 1 and 2 are structure, not data.
bool is_structure(double value) {
    return value == 0 || value == 1 || value == 2;
}

class Search {
public:
    void look(const Node& node, bool counts) {
        switch (node.kind) {
            case Node::Kind::number:
                if (counts && !is_structure(node.number)) found_.push_back(node.number);
                return;
            case Node::Kind::operation:
                return look_in_operation(node);
            case Node::Kind::call:
                // Numbers given to functions of ours are looked at where their units are.
                for (const Node& child : node.children) look(child, computes(node.text));
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
        look(node.children[0], true);
        const bool exponent = node.text == "^";  // the shape of the formula, not its data
        look(node.children[1], !exponent);
    }

    std::vector<double> found_;
};

std::string numbers_text(const std::vector<double>& numbers) {
    std::string text;
    for (std::size_t i = 0; i < numbers.size() && i < 4; ++i)
        text += (i == 0 ? "" : ", ") + exact_text(numbers[i]);
    return numbers.size() > 4 ? text + " and more" : text;
}

}  // namespace

void find_bare_numbers(const Workings& workings, Findings& findings) {
    Grouped grouped(findings);
    for (std::uint32_t g = 0; g < workings.formulas.groups().size(); ++g) {
        const FormulaGroup& group = workings.formulas.groups()[g];
        if (!group.unreadable.empty()) continue;
        Search search;
        search.look(group.tree, false);
        if (search.found().empty()) continue;
        const std::string says =
            (search.found().size() == 1 ? "the number " : "the numbers ") + numbers_text(search.found()) +
            (search.found().size() == 1 ? " stands" : " stand") +
            " in the formula without a name, a unit or a source; put it in a cell of its own, with its unit.";
        for (const std::uint32_t member : group.members)
            grouped.add(Kind::bare_number, Severity::warning, g, 0, workings.formulas.all()[member].at, says);
    }
}

}  // namespace undercroft::audit
