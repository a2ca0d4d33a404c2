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
    std::vector<std::string> columns;  ///< default units of a table's columns; empty or `-` where none
};

[[nodiscard]] Want want_of(const addin::Parameter& parameter);

/// Whether the function multiplies or divides its quantities, so that a number without a unit is a factor.
[[nodiscard]] bool multiplies(const addin::Function& function);

}  // namespace undercroft::audit
