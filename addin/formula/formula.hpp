/// \file formula.hpp
/// A Calc formula in its English file grammar, read into a tree: `=UNDERCROFT.UC.PITVOLUME(D4:E4;$Site.B3)`.
/// No office is needed.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace undercroft::addin {

/// One corner of a reference; columns and rows from 0.
struct CellAddress {
    std::int32_t column = 0;
    std::int32_t row = 0;
    bool column_fixed = false;  ///< `$A`
    bool row_fixed = false;     ///< `$1`
    friend bool operator==(const CellAddress&, const CellAddress&) = default;
};

struct Reference {
    std::string document;  ///< URL of another file; empty for this one
    std::string sheet;     ///< empty for the sheet of the formula
    CellAddress first;
    CellAddress last;  ///< the same as `first` for a single cell
    bool is_range = false;

    /// `Site.B3`, `D4:E4`, without the dollar signs.
    [[nodiscard]] std::string text() const;
};

/// `A`, `AB`; columns from 0.
[[nodiscard]] std::string column_letters(std::int32_t column);

struct Node {
    enum class Kind : std::uint8_t {
        number,     ///< `305`
        text,       ///< `"305 mm"`
        error,      ///< `#REF!`
        reference,  ///< `D4:E4`
        name,       ///< a defined name
        call,       ///< a function; `text` is its name in upper case
        operation,  ///< `text` is the operator; one child for a sign or %, two otherwise
        array,      ///< `{1;2|3;4}`: a child for each row, which is an array of its items
        missing,    ///< an argument left empty
    };
    Kind kind = Kind::missing;
    std::string text;
    double number = 0;
    Reference reference;
    std::vector<Node> children;
    std::size_t begin = 0;  ///< where it stands in the formula
    std::size_t end = 0;
};

/// Reads a formula. A leading `=`, and the braces of an array formula, may be there or not.
/// \throws Refused(value) for what is no formula, or nested more than 200 deep.
[[nodiscard]] Node parse_formula(std::string_view formula);

/// The formula's text of a node.
[[nodiscard]] std::string_view text_of_node(std::string_view formula, const Node& node);

/// Calls `visit` for the node and everything below it, parents first.
template <class Visit>
void walk(const Node& node, const Visit& visit) {
    visit(node);
    for (const Node& child : node.children) walk(child, visit);
}

/// What stands between `{=` and `}` of an array formula, or the formula itself, without the `=`.
[[nodiscard]] std::string_view formula_body(std::string_view formula);

}  // namespace undercroft::addin
