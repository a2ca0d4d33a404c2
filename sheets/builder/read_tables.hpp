/// \file read_tables.hpp
/// Rows that take more than one line of the sheet, from the fields of their line.
#pragma once

#include "sheets/builder/fields.hpp"
#include "sheets/builder/row.hpp"

namespace undercroft::sheets {

[[nodiscard]] RowKind read_table(const Fields& fields);
[[nodiscard]] RowKind read_grid(const Fields& fields);
[[nodiscard]] RowKind read_list(const Fields& fields);
[[nodiscard]] RowKind read_chart(const Fields& fields);
[[nodiscard]] RowKind read_chart_beside(const Fields& fields);
[[nodiscard]] RowKind read_picture(const Fields& fields);

}  // namespace undercroft::sheets
