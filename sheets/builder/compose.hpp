/// \file compose.hpp
/// From sheets as text to a workbook as cells: which rows are needed, where each stands, what each cell
/// holds.
#pragma once

#include <vector>

#include "sheets/builder/grid.hpp"
#include "sheets/builder/sheet_text.hpp"

namespace undercroft::sheets {

/// The workbook in one system of units.
///
/// A `given` row links to the sheet that computes its key where that sheet is in the workbook, and is an
/// input where it is not. Of the sheet named Site only the rows stand that other sheets of the workbook use.
/// \throws std::runtime_error that names sheet and line for a key that is unknown or stands twice.
[[nodiscard]] WorkbookGrid compose(const WorkbookText& text, const std::vector<Sheet>& sheets, System system);

}  // namespace undercroft::sheets
