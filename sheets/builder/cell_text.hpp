/// \file cell_text.hpp
/// Addresses of cells as Calc writes them.
#pragma once

#include <string>

namespace undercroft::sheets {

/// `$G$12`, `G12`; rows and columns from 0.
[[nodiscard]] std::string cell_text(int row, int column, bool fixed = false);

}  // namespace undercroft::sheets
