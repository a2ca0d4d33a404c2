/// \file preamble.hpp
/// What the reference says once, for all functions: how a quantity is typed, what a blank means, how a table
/// is entered.
#pragma once

#include <string_view>

namespace undercroft::addin {

struct Advice {
    std::string_view title;
    std::string_view text;  ///< code between backquotes
};

inline constexpr Advice advice[] = {
    {"A quantity",
     "A pair of cells, the number and to its right its unit: `A1:B1`. Or a text: `\"305 mm\"`, `\"12 ft 6 "
     "in\"`. "
     "Or a bare number in the default unit that stands in brackets, where that number is usual. A number "
     "that "
     "is unusual without a unit is refused, never guessed at."},
    {"Two systems",
     "Beside feet, pounds and the like no bare number with a dimension is taken; nor beside a quantity where "
     "two are compared, added or looked up: write the unit of each."},
    {"A blank cell",
     "Calc hands a single blank cell over as 0. Where 0 is meant write it with its unit, `\"0 m\"`. To leave "
     "an "
     "argument out write nothing between the semicolons."},
    {"Percent",
     "A cell that shows 38% holds 0.38 and is a share: give it alone, without `%` in the cell beside it. Or "
     "type "
     "38, and `%` beside it. A number beside `%` that is far too small, where a hundred times as much is "
     "usual, is "
     "refused: as one text, `\"0.005 %\"`, it is taken."},
    {"Times, dates and slopes",
     "Type 5 and `min`, not 0:05, which Calc makes a time of day. Type a slope as a text, `1.5H:1V`; 1:2 "
     "becomes "
     "a time and 3/4 a date."},
    {"Separators",
     "Arguments are parted by `;`, which Calc takes in every language. A table stands in cells; where this "
     "page writes one within a formula, its columns are parted by `;` and its rows by `|`. Typed into a cell "
     "such a table wants the office's own marks: `{1,2;3,4}` where the decimal sign is a point, `{1.2;3.4}` "
     "where it is a comma. In a text the decimal sign is a point, and no mark parts thousands."},
    {"A result inside another function",
     "`UC.QUANTITY(UC.PIT.VOLUME(...; \"yd3\"); \"yd3\")` keeps its unit. Without a unit asked for, a result "
     "is in "
     "the default unit and may be handed on bare."},
    {"A table to hand over",
     "Columns of numbers whose first row holds the units; or a unit beside each number. A head above the "
     "unit "
     "row is not part of the range."},
    {"A table that comes back",
     "Select one cell, type the formula, press Ctrl+Shift+Enter: Calc fills the table with its unit row. "
     "`height` "
     "makes it taller than it is, with blank rows, where charts or formulas below need a fixed size."},
    {"Errors by cause",
     "`#VALUE!`: another dimension than wanted, a unit or a word that cannot be read, an argument left out "
     "or "
     "blank, a bare number beside quantities of another system. `#NUM!`: a bare number that is unusual, a "
     "quantity that is not possible, a job outside the method. `#N/A`: what was looked up is not there. "
     "`Err:523`: a search found no solution. `#NAME?`: the add-in is not installed, or a function's name is "
     "misspelt."},
    {"An error",
     "`=UC.WHY(C2)` says in words why C2 is refused, and of a good cell the equation, each symbol with its "
     "value and cell, the result and its source."},
};

}  // namespace undercroft::addin
