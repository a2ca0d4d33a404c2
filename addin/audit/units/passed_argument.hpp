/// \file passed_argument.hpp
/// One argument of a function of ours as the formula hands it over.
#pragma once

#include <optional>
#include <string>

#include "addin/audit/units/unit_reader.hpp"
#include "units/quantity.hpp"

namespace undercroft::audit {

struct PassedArgument {
    enum class Kind {
        nothing,   ///< left out
        quantity,  ///< with its unit: a pair of cells, or a text such as "305 mm"
        word,      ///< another text
        literal,   ///< a number in the formula
        cell,      ///< a number's cell alone, without the unit that may stand beside it
        computed,  ///< the result of a formula's part, or of a function
        range,     ///< more cells than a pair
        blank,     ///< a cell that holds nothing
    };
    Kind kind = Kind::nothing;
    Quantity quantity;               ///< one of that unit, for its dimension
    Term value;                      ///< of literal, cell and computed
    std::optional<UnitCell> beside;  ///< of cell
    std::optional<Area> area;
    std::string what;  ///< for sentences
};

/// A unit as the formula hands it over: a text in it, or a cell. Empty where it is neither.
struct PassedUnit {
    std::string text;
    std::optional<Spot> at;
};
[[nodiscard]] PassedUnit passed_unit(const UnitReader& reader, const addin::Node& node);

/// How an argument is handed over.
[[nodiscard]] PassedArgument passed_argument(UnitReader& reader, const addin::Node& node);

}  // namespace undercroft::audit
