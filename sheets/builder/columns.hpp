/// \file columns.hpp
/// The columns of tables, grids and lists.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sheets/builder/dual.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/usual.hpp"

namespace undercroft::sheets {

struct Column {
    /// What a cell of a list without a unit holds, and how it looks.
    enum class Format {
        standard,  ///< a number with its unit, a text that stands, or a computed number
        entry,     ///< a text typed in
        number,    ///< a number without a unit
        share,     ///< a percentage
        text,      ///< a computed text
        verdict,   ///< a computed check of the item
        shown,     ///< the verdict of a check that stands elsewhere
        plain,     ///< a computed number with all its digits
        place,     ///< a computed coordinate or level, to the thousandth
        date,      ///< a day of the calendar, typed in or computed
        bar,       ///< a computed text of signs of one width, which line up from item to item
    };
    std::string title;
    int span = 1;         ///< columns of the sheet that it takes
    DualText unit;        ///< unit beside the number; empty where there is none
    std::string formula;  ///< the same for each row, with `@name` for other columns; empty where typed in
    std::string name;     ///< by which formulas refer to it
    Format format = Format::standard;
    std::vector<std::string> options;  ///< words to pick from
    std::optional<Usual> usual;        ///< of what is typed in; without it a cell may stay blank

    [[nodiscard]] bool is_typed() const { return formula.empty(); }
    /// Whether its cells are numbers with a unit beside each.
    [[nodiscard]] bool is_pair(System system) const { return !unit.in(system).empty(); }
};

/// Columns of the sheet that they take together.
[[nodiscard]] int width_of(const std::vector<Column>& columns);

/// How many of them are typed in.
[[nodiscard]] std::size_t typed_columns(const std::vector<Column>& columns);

/// Columns of the sheet at the left of a list that hold wording, the first of them perhaps typed in: its key
/// stands for those to the right of them.
[[nodiscard]] int columns_of_words(const std::vector<Column>& columns);

/// What may stand behind the title of a column: in a table only its name, in a grid its unit too.
enum class ColumnsOf { table, grid, list };

/// Reads `To order, span 2, unit t, as order, format text := UC.ORDER(@net; @waste; @pack; @); ...`
/// \throws TextMistake
[[nodiscard]] std::vector<Column> read_columns(const Line& line, const std::string& text, ColumnsOf kind);

}  // namespace undercroft::sheets
