/// \file pasted_cells.hpp
/// The tables of a function's first formula as cells to paste.
#pragma once

#include "addin/generate/guide.hpp"

namespace undercroft::addin {

/// The tables side by side, a blank column between them, and the formula with their ranges; nothing where the
/// formula has no table.
[[nodiscard]] PastedCells pasted_cells(const Function& function);

}  // namespace undercroft::addin
