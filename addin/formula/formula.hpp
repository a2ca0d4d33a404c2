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

/// Cells of a sheet, as a formula refers to them.
struct CellReference {
    std::string document;    ///< URL of another file; empty for this one
    std::string sheet;       ///< empty for the sheet of the formula
    std::string last_sheet;  ///< of `Site.A1:Storage.B2`, which spans sheets; else empty
    CellAddress first;
    CellAddress last;  ///< the same as `first` for a single cell
    bool is_range = false;
    bool whole_columns = false;  ///< `A:C`
    bool whole_rows = false;     ///< `1:3`

    /// `Site.B3`, `D4:E4`, without the dollar signs.
    [[nodiscard]] std::string text() const;
};

/// Columns and rows of the largest sheet that Calc can have.
inline constexpr std::int32_t most_columns = 16384;
inline constexpr std::int32_t most_rows = 1048576;

/// `A`, `AB`; columns from 0.
[[nodiscard]] std::string column_letters(std::int32_t column);

/// `B3`; column and row from 0.
[[nodiscard]] std::string cell_letters(std::int32_t column, std::int32_t row);

/// `Site.`, `'Site data'.`: a sheet's name as it stands in front of a cell.
[[nodiscard]] std::string sheet_prefix(std::string_view sheet);

struct Node {
    enum class Kind : std::uint8_t {
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
    Kind kind = Kind::missing;
    std::string text;
    double number = 0;
    CellReference reference;
    std::vector<Node> children;
    std::size_t begin = 0;  ///< where it stands in the formula
    std::size_t end = 0;
};

/// Reads a formula. A leading `=`, and the braces of an array formula, may be there or not.
/// \throws Refused(value) for what is no formula, nested more than 200 deep, or of more than
/// 2000 operators.
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
