/// \file head_rows.hpp
/// The rows above the first row of a sheet. Beside the page they count what is open: in `state_row` how much,
/// in `job_row` on which rows.
#pragma once

#include "sheets/builder/layout.hpp"

namespace undercroft::sheets {

inline constexpr int title_row = 0;
inline constexpr int job_row = 1;
inline constexpr int state_row = 2;
inline constexpr int heading_row = 3;
static_assert(heading_row + 1 == first_row);

}  // namespace undercroft::sheets
