/// \file formula.hpp
/// A Calc formula in its English file grammar, read into a tree: `=UNDERCROFT.UC.PITVOLUME(D4:E4;$Site.B3)`.
/// No office is needed.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "addin/formula/reference.hpp"

namespace undercroft::addin {

/// What a part of a formula is.
enum class NodeKind : std::uint8_t {
    number,     ///< `305`
    text,       ///< `"305 mm"`
    error,      ///< `#REF!`, also inside what was a reference: `B#REF!`
    reference,  ///< `D4:E4`
    name,       ///< a defined name
    call,       ///< a function; `text` is its name in upper case
    operation,  ///< `text` is the operator; one child for a sign or %, two otherwise
    array,      ///< `{1;2|3;4}`: a child for each row, which is an array of its items
    missing,    ///< an argument left empty
};

/// A part of a formula with its own parts.
struct Node {
    using Kind = NodeKind;
    NodeKind kind = NodeKind::missing;
    std::string text;
    double number = 0;
    CellReference reference;
    std::vector<Node> children;
    std::size_t begin = 0;  ///< where it stands in the formula
    std::size_t end = 0;
};

/// Reads a formula. A leading `=`, and the braces of an array formula, may be there or not.
/// \throws Refused(value) for what is no formula, is nested deeper than some 65 brackets or 200 signs, or has
/// more than 2000 operators.
[[nodiscard]] Node parse_formula(std::string_view formula);

/// The formula's text of a node.
[[nodiscard]] std::string_view text_of_node(std::string_view formula, const Node& node);

/// Calls `visit` for the node and everything below it, parents first.
template <class Visit>
void walk(const Node& node, const Visit& visit) {
    visit(node);
    for (const Node& child : node.children) walk(child, visit);
}

/// Whether the part compares two others.
[[nodiscard]] bool is_comparison(const Node& node);

/// Whether the part calls one of these functions, whose names are in upper case.
template <std::size_t N>
[[nodiscard]] bool calls_one_of(const Node& node, const std::string_view (&names)[N]) {
    return node.kind == NodeKind::call &&
           std::find(std::begin(names), std::end(names), node.text) != std::end(names);
}

/// What stands between `{=` and `}` of an array formula, or the formula itself, without the `=`.
[[nodiscard]] std::string_view formula_body(std::string_view formula);

}  // namespace undercroft::addin
