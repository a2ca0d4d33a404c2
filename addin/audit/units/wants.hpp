/// \file wants.hpp
/// What a parameter of our functions wants of its argument, as far as units go.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "units/unit.hpp"

namespace undercroft::audit {

struct Want {
    enum class Kind {
        nothing,    ///< a text, a choice, TRUE or FALSE
        plain,      ///< a count, share, slope: a number that needs no unit
        dimension,  ///< a quantity of one dimension: a bare number is read in `unit`
        any,        ///< a quantity of whatever dimension
        unit,       ///< the unit or units wanted of the result
        table,      ///< a range with a unit for each column in its first row
        amounts,    ///< a range of two columns, number and unit
    };
    Kind kind = Kind::nothing;
    Unit unit;
    std::string unit_text;
    std::vector<std::string> columns;  ///< default units of a table's columns; empty where none
    std::vector<std::string>
        as_written;                  ///< the same where the table may be one that a function of ours wrote
    std::vector<bool> units_beside;  ///< which columns have a unit beside each number, in a range that wide

    /// Where the columns stand in a range as wide as `width`; nothing for a width of one cell a column.
    [[nodiscard]] std::vector<std::int32_t> places_beside(std::int32_t width) const;
};

[[nodiscard]] Want want_of(const addin::Parameter& parameter);

/// Whether the function multiplies or divides its quantities, so that a number without a unit is a factor.
[[nodiscard]] bool multiplies(const addin::Function& function);

}  // namespace undercroft::audit
