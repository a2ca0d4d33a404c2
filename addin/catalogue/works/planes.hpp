/// \file planes.hpp
/// Planes through levels as entries take them: named in what is refused, and held against slips of units that
/// no range of a level can see.
#pragma once

#include "calc/works/plane.hpp"

namespace undercroft::addin {

/// The plane through levels. \throws Refused as calc::plane_through, with the argument's name in front; for a
/// plane steeper than any ground that a bed is built in.
[[nodiscard]] calc::Plane plane_of(const char* name, const calc::CornerLevels& corners, Length tolerance);

/// The same over the rectangle of a bed from (0, 0) to (length, width). \throws Refused(domain) also for
/// corners that span less than half of it: levels are not carried so far.
[[nodiscard]] calc::Plane plane_over(const char* name, const calc::CornerLevels& corners, Length length,
                                     Length width, Length tolerance);

/// \throws Refused(domain) for a place farther from the corners than they are from each other.
void require_near(const char* name, Length place, Length least, Length most);
/// The same along x and y.
void require_near(const calc::CornerLevels& corners, Length x, Length y);

/// \throws Refused(domain) for planes that lie farther apart, over a corner of the rectangle, than any pit is
/// deep.
void require_pit(const char* name, const calc::Plane& upper, const calc::Plane& lower, Length length,
                 Length width);

}  // namespace undercroft::addin
