/// \file run_end.hpp
/// Where a run through a pool ends, and what steps it takes where none is given.
#pragma once

namespace undercroft::calc {

/// Share of the greatest volume at which the pool counts as empty again.
inline constexpr double emptied = 1e-3;
/// The run ends at the latest after so many times the time of inflow.
inline constexpr double longest_run = 10;
/// Steps that the time of inflow is cut into where no step is given.
inline constexpr double steps_of_inflow = 100;
/// Share of a step within which two times are one.
inline constexpr double same_time = 1e-9;

}  // namespace undercroft::calc
