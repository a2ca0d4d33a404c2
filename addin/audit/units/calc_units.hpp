/// \file calc_units.hpp
/// What functions of Calc do to units.
#pragma once

#include "addin/audit/units/unit_reader.hpp"

namespace undercroft::audit {

/// The unit of what a function of Calc gives; slips among its arguments are noted. Of a function that is not
/// known here the unit is unknown.
[[nodiscard]] Term unit_of_calc_call(UnitReader& reader, const addin::Node& call);

}  // namespace undercroft::audit
