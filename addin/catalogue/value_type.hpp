/// \file value_type.hpp
/// What an argument, a column or a result is: its shape, its dimension, its words or its columns. Every
/// sentence about it - help, reference, refusal - is written from this.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/dimension.hpp"

namespace undercroft::addin {

enum class Shape {
    quantity,      ///< of one dimension: a length, a flow; counts, shares and slopes too
    any_quantity,  ///< of whatever dimension
    percentage,    ///< a figure that its standard reports in percent: a bare number is a percentage
    choice,        ///< a word of a list, or what stands in `otherwise`
    words,         ///< one or more words of a list
    truth,         ///< TRUE or FALSE
    verdict,       ///< a result that is TRUE or FALSE, as 1 or 0
    text,
    unit,     ///< a unit
    units,    ///< the units of a table's columns in one text
    height,   ///< rows of values that a table fills
    table,    ///< a range with a unit for each column in its first row, or beside its numbers
    grid,     ///< a range of quantities of one dimension
    things,   ///< a table with headings in its first row and names in its first column
    figures,  ///< rows of number and unit, or one column of a table
    pasted,   ///< a range as it was pasted: numbers and texts, of which each is what it says
    date,     ///< a day of the calendar
    cell,     ///< a cell of the sheet itself
    rows,     ///< a result of numbers and words, without a unit row
};

struct ValueType {
    Shape shape = Shape::text;
    Dimension dimension{};                  ///< of a quantity; of a grid, that of its cells
    std::string_view list{};                ///< what a list is of: "a shape"
    std::vector<std::string_view> words{};  ///< the first spelling of each word of a list
    std::vector<ValueType> columns{};       ///< of a table
    std::vector<ValueType> otherwise{};     ///< of a choice: what may stand there instead, at most one
    bool may_be_blank = false;              ///< of a column: its cells, or at the right end it as a whole
    bool unit_beside = false;               ///< of a column: a unit may stand beside each of its numbers
    std::string_view also_from{};  ///< a function whose table is taken as it is, whatever its columns

    /// A number to arithmetic, although a dimension of its own to us: a share, a count, a slope.
    [[nodiscard]] bool is_plain() const;
    /// A range of several cells.
    [[nodiscard]] bool is_range() const;
};

[[nodiscard]] ValueType quantity_type(const Dimension& dimension);

/// "a length", "a shape: ellipse or circle", "a table of a time, a speed".
[[nodiscard]] std::string kind_text(const ValueType& type);

/// The unit of a bare number, or of a table those of its columns: "m", "min; mm/h"; empty where none is.
[[nodiscard]] std::string bare_unit_text(const ValueType& type);

}  // namespace undercroft::addin
