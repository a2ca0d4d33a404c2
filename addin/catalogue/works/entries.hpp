/// \file works.hpp
/// The entries of excavation, spoil and takeoff: one file a topic, as in calc/works.
#pragma once

#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

// What is dug.
[[nodiscard]] std::vector<Function> excavation_functions();
[[nodiscard]] std::vector<Function> trench_soil_functions();
[[nodiscard]] std::vector<Function> pit_zone_functions();
[[nodiscard]] std::vector<Function> plane_functions();
[[nodiscard]] std::vector<Function> plane_pit_functions();
[[nodiscard]] std::vector<Function> spot_grid_functions();
[[nodiscard]] std::vector<Function> setting_out_functions();
[[nodiscard]] std::vector<Function> spoil_functions();
[[nodiscard]] std::vector<Function> spoil_balance_functions();

// What is cut, ordered and carried.
[[nodiscard]] std::vector<Function> wrap_functions();
[[nodiscard]] std::vector<Function> sheet_goods_functions();
[[nodiscard]] std::vector<Function> cut_list_functions();
[[nodiscard]] std::vector<Function> pipe_length_functions();
[[nodiscard]] std::vector<Function> order_functions();
[[nodiscard]] std::vector<Function> lifting_functions();

// What is searched.
[[nodiscard]] std::vector<Function> bed_option_functions();

}  // namespace undercroft::addin
