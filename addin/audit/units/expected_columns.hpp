/// \file expected_columns.hpp
/// The columns that a table argument expects in a range, as far as units go.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "addin/catalogue/value_type.hpp"

namespace undercroft::audit {

struct ExpectedColumns {
    std::vector<std::string> units;  ///< default units of the columns; empty where a column has none
    std::vector<std::string> units_as_written;  ///< the same of a table that a function of ours wrote
    std::vector<bool> unit_beside;              ///< whether a unit may stand beside each number

    explicit ExpectedColumns(const addin::ValueType& type);

    /// The default unit of column `c` in a range as wide as `width`.
    [[nodiscard]] const std::string& unit(std::size_t c, std::size_t width) const;
    /// Where the columns stand in a range as wide as `width`; nothing for a width of one cell a column.
    [[nodiscard]] std::vector<std::int32_t> places_beside(std::int32_t width) const;
};

}  // namespace undercroft::audit
