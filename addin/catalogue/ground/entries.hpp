/// \file ground.hpp
/// The entries of ground, loads, soils and stone: one file a topic, as in calc/ground.
#pragma once

#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

inline constexpr const char* engineer_governs = "Local codes and a licensed engineer govern";

// Loads on the ground and through it.
[[nodiscard]] std::vector<Function> elastic_stress_functions();
[[nodiscard]] std::vector<Function> patch_spread_functions();
[[nodiscard]] std::vector<Function> wheel_load_functions();
[[nodiscard]] std::vector<Function> vehicle_load_functions();
[[nodiscard]] std::vector<Function> plant_load_functions();
[[nodiscard]] std::vector<Function> lift_plan_functions();
[[nodiscard]] std::vector<Function> load_class_functions();
[[nodiscard]] std::vector<Function> fill_load_functions();
[[nodiscard]] std::vector<Function> layer_functions();
[[nodiscard]] std::vector<Function> foot_pressure_functions();
[[nodiscard]] std::vector<Function> base_stone_functions();

// What the ground bears, pushes and floats.
[[nodiscard]] std::vector<Function> bearing_functions();
[[nodiscard]] std::vector<Function> wet_bearing_functions();
[[nodiscard]] std::vector<Function> clay_bearing_functions();
[[nodiscard]] std::vector<Function> settlement_functions();
[[nodiscard]] std::vector<Function> dynamic_cone_functions();
[[nodiscard]] std::vector<Function> presumptive_bearing_functions();
[[nodiscard]] std::vector<Function> strip_spread_functions();
[[nodiscard]] std::vector<Function> earth_pressure_functions();
[[nodiscard]] std::vector<Function> earth_diagram_functions();
[[nodiscard]] std::vector<Function> uplift_functions();
[[nodiscard]] std::vector<Function> bed_uplift_functions();

// Soil, stone, fill and the fabric between them.
[[nodiscard]] std::vector<Function> soil_group_functions();
[[nodiscard]] std::vector<Function> accepted_soil_functions();
[[nodiscard]] std::vector<Function> grading_functions();
[[nodiscard]] std::vector<Function> stone_functions();
[[nodiscard]] std::vector<Function> compaction_functions();
[[nodiscard]] std::vector<Function> fabric_functions();
[[nodiscard]] std::vector<Function> fabric_filter_functions();

}  // namespace undercroft::addin
