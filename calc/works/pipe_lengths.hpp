/// \file pipe_lengths.hpp
/// Risers of inspection ports, and the lengths of pipe that they are cut from.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Length of a riser: from the crown that it stands on to the finished surface, less what its cover and frame
/// take, plus what it enters the socket below: FL - crown - recess + socket. Geometry.
/// \throws Refused(domain) for a recess or socket below 0, or a riser that would not be longer than 0.
[[nodiscard]] Length riser_length(Length surface_level, Length crown_level, Length recess, Length socket);

/// Whole stock lengths to buy for pieces of one length, each cut from one stock length: ceil(n/floor(L/l)).
/// Pieces longer than the stock are joined: whole lengths, and their rests cut from further ones in the same
/// way. The saw's cut is neglected. Common practice. \throws Refused(domain) for pieces that are not a whole
/// number, a length not above 0, or more than a million lengths.
[[nodiscard]] Count stock_lengths(Count pieces, Length piece, Length stock);

}  // namespace undercroft::calc
