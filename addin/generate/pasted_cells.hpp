/// \file pasted_cells.hpp
/// The tables of a formula as cells to paste.
#pragma once

#include "addin/generate/guide.hpp"

namespace undercroft::addin {

/// Its tables side by side, a blank column between them, and the formula with their ranges. A formula without
/// a table stays as it is.
void paste_tables(ShownResult& shown);

}  // namespace undercroft::addin
