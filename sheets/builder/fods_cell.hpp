/// \file fods_cell.hpp
/// One cell of a flat OpenDocument spreadsheet.
#pragma once

#include "sheets/builder/grid.hpp"
#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// Adds the cell behind those of the row.
void write_cell(xml_node row, const SheetCell& cell);

}  // namespace undercroft::sheets
