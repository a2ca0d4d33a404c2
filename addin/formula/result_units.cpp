#include "addin/formula/result_units.hpp"

#include <algorithm>
#include <optional>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/formula.hpp"

namespace undercroft::addin {

namespace {

class Rewriter {
public:
    explicit Rewriter(std::string_view formula) : formula_(formula) {}

    /// The text of a node, what it hands over written with its unit.
    [[nodiscard]] std::string rewritten(const Node& node) const {
        std::string text;
        std::size_t at = node.begin;
        const Function* function = node.kind == NodeKind::call ? find_function(node.text) : nullptr;
        for (std::size_t i = 0; i < node.children.size(); ++i) {
            const Node& child = node.children[i];
            if (child.end <= child.begin) continue;
            text += formula_.substr(at, child.begin - at);
            text += takes_quantity(function, i) ? with_unit(child, node.text) : rewritten(child);
            at = child.end;
        }
        return text + std::string(formula_.substr(at, node.end - at));
    }

private:
    using UnitText = std::optional<std::string>;

    [[nodiscard]] std::string with_unit(const Node& node, const std::string& caller) const {
        const std::string text = rewritten(node);
        const UnitText unit = unit_of(node);
        if (!unit) return text;
        const bool as_in_files = caller.starts_with("UNDERCROFT.");
        return std::string(as_in_files ? "UNDERCROFT.UC.QUANTITY(" : "UC.QUANTITY(") + text + ";" + *unit +
               ")";
    }

    /// Whether a bare number may be refused there: a quantity that is more than a plain number.
    static bool takes_quantity(const Function* function, std::size_t argument) {
        if (function == nullptr || argument >= function->parameters.size()) return false;
        const ValueType& type = function->parameters[argument].type;
        return function->role != Role::writes &&
               (type.shape == Shape::any_quantity || (type.shape == Shape::quantity && !type.is_plain()));
    }

    /// The unit of a number as it stands in the formula: a text in quotes, or a cell.
    [[nodiscard]] UnitText unit_of(const Node& node) const {
        if (node.kind == NodeKind::operation) return unit_of_operation(node);
        if (node.kind != NodeKind::call) return std::nullopt;
        if (const Function* function = find_function(node.text)) return unit_of_result(*function, node);
        if (node.text == "MIN" || node.text == "MAX") return shared_unit(node, 0);
        if (node.text == "IF") return shared_unit(node, 1);
        return std::nullopt;
    }
    [[nodiscard]] UnitText unit_of_operation(const Node& node) const {
        if (node.text == "+" || node.text == "-") return shared_unit(node, 0);
        if ((node.text == "*" || node.text == "/") && !unit_of(node.children[1]))
            return unit_of(node.children[0]);
        return std::nullopt;
    }
    [[nodiscard]] UnitText unit_of_result(const Function& function, const Node& node) const {
        if (!function.outcome.has_unit()) return std::nullopt;
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            const bool is_asked = function.parameters[i].type.shape == Shape::unit &&
                                  i < node.children.size() && node.children[i].kind != NodeKind::missing;
            if (is_asked) return is_plain(node.children[i]) ? UnitText() : text_of(node.children[i]);
        }
        if (function.outcome.unit().empty()) return std::nullopt;
        return '"' + function.outcome.unit() + '"';
    }
    /// That of all parts from `first` on that have one; none where they differ.
    [[nodiscard]] UnitText shared_unit(const Node& node, std::size_t first) const {
        UnitText shared;
        for (std::size_t i = first; i < node.children.size(); ++i) {
            const UnitText unit = unit_of(node.children[i]);
            if (unit && shared && *unit != *shared) return std::nullopt;
            if (unit) shared = unit;
        }
        return shared;
    }

    /// A unit of plain numbers, which stay bare.
    static bool is_plain(const Node& unit) {
        return unit.kind == NodeKind::text && (unit.text == "1" || unit.text == "%" || unit.text == "each");
    }
    [[nodiscard]] std::string text_of(const Node& node) const {
        return std::string(formula_.substr(node.begin, node.end - node.begin));
    }

    std::string_view formula_;
};

}  // namespace

std::string with_result_units(std::string_view formula) {
    const Node tree = parse_formula(formula);
    return std::string(formula.substr(0, tree.begin)) + Rewriter(formula).rewritten(tree) +
           std::string(formula.substr(tree.end));
}

}  // namespace undercroft::addin
