/// \file presumptive_bearing.hpp
/// Bearing pressures that a building code presumes where nothing was tested.
#pragma once

#include <vector>

#include "units/types.hpp"

namespace undercroft::calc {

/// Classes of material of the published table; gravel GW, GP; sand SW, SP, SM, SC, GM, GC; clay CL, ML, MH,
/// CH.
enum class PresumptiveClass { crystalline_bedrock, foliated_rock, gravel, sand, clay };

struct PresumptiveRow {
    PresumptiveClass material;
    Pressure vertical;
};

/// International Building Code (2012), Table 1806.2: vertical foundation pressure.
[[nodiscard]] const std::vector<PresumptiveRow>& presumptive_table();

/// The table's allowable pressure for a class.
[[nodiscard]] Pressure presumptive_bearing(PresumptiveClass material);

}  // namespace undercroft::calc
