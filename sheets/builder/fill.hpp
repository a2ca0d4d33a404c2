/// \file fill.hpp
/// What each row of a sheet puts into its cells: one function a kind of row.
#pragma once

#include "sheets/builder/cell_writer.hpp"

namespace undercroft::sheets {

/// Fills one row.
void fill_row(CellWriter& writer, const Selection& selection, const Row& row);

// The kinds of row; `at` is the first row of the sheet that it takes.
void fill_section(CellWriter& writer, const Row& row, int at);
void fill_paragraph(CellWriter& writer, const Row& row, int at, const std::string& style);
void fill_input(CellWriter& writer, const Row& row, const rows::Input& input, int at);
void fill_given(CellWriter& writer, const Row& row, const rows::Given& given, bool is_link, int at);
void fill_text(CellWriter& writer, const Row& row, const rows::Text& text, int at);
void fill_choice(CellWriter& writer, const Row& row, const rows::Choice& choice, int at);
void fill_result(CellWriter& writer, const Row& row, const rows::Result& result, int at);
void fill_words(CellWriter& writer, const Row& row, const rows::Words& words, int at);
void fill_check(CellWriter& writer, const Row& row, const rows::Check& check, int at);
void fill_summary(CellWriter& writer, const Selection& selection, int at);
void fill_dashboard(CellWriter& writer, const Selection& selection, int at);
void fill_table(CellWriter& writer, const Row& row, const rows::Table& table, int at);
void fill_grid(CellWriter& writer, const Row& row, const rows::Grid& grid, int at);
void fill_list(CellWriter& writer, const Row& row, const rows::List& list, int at);
void fill_chart(CellWriter& writer, const Row& row, const rows::Chart& chart, int at);
void fill_picture(CellWriter& writer, const Row& row, const rows::Picture& picture, int at);

/// Title, job, state of the checks and the headings of the columns: after all rows.
void fill_head(CellWriter& writer);

/// Title, note and the headings of the columns of a table, grid or list.
void fill_table_head(CellWriter& writer, const Row& row, int at);

/// A cell that passes or fails.
SheetCell& put_verdict(CellWriter& writer, int at, int column, const std::string& stored);

}  // namespace undercroft::sheets
