/// \file fill.hpp
/// What each row of a sheet puts into its cells.
#pragma once

#include "sheets/builder/cell_writer.hpp"

namespace undercroft::sheets {

/// Fills one row.
void fill_row(CellWriter& writer, const Selection& selection, const Row& row);

/// Title, job, state of the checks and the headings of the columns: after all rows.
void fill_head(CellWriter& writer);

/// Whether a check's formula may answer "open": something that has not been done yet.
[[nodiscard]] inline bool may_be_open(const std::string& formula) {
    return formula.find("\"open\"") != std::string::npos;
}

// Rows that take more than one line of the sheet.
void fill_table(CellWriter& writer, const Row& row, int at);
void fill_grid(CellWriter& writer, const Row& row, int at);
void fill_list(CellWriter& writer, const Row& row, int at);
void fill_chart(CellWriter& writer, const Row& row, int at);
void fill_picture(CellWriter& writer, const Row& row, int at);

}  // namespace undercroft::sheets
