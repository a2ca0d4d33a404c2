/// \file unit_choices.hpp
/// The units that a unit cell offers: all of one dimension.
#pragma once

#include <string>
#include <vector>

namespace undercroft::sheets {

/// The usual units of the dimension of this unit, itself among them.
/// \throws std::runtime_error when the text is no unit.
[[nodiscard]] std::vector<std::string> unit_choices(const std::string& unit);

}  // namespace undercroft::sheets
