/// \file typed_range.hpp
/// Where the fields of a job's row go in a grid, a list or a column of one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sheets/builder/row.hpp"

namespace undercroft::sheets {

/// A cell that is typed in.
struct TypedField {
    int column = 0;        ///< in the range
    bool is_pair = false;  ///< its unit stands beside it
    bool is_day = false;   ///< a day of the calendar
};

struct TypedRange {
    std::vector<TypedField> fields;
    int first_row = 0;  ///< 1 for a grid: its first row holds the units and stays
};

/// The fields of the range that a key names, where it is that of this row or of one of its columns.
[[nodiscard]] std::optional<TypedRange> typed_range(const Row& row, const std::string& key);

}  // namespace undercroft::sheets
