/// \file entries.hpp
/// The functions of water, by topic.
#pragma once

#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

[[nodiscard]] std::vector<Function> required_storage_functions();
[[nodiscard]] std::vector<Function> rain_functions();
[[nodiscard]] std::vector<Function> published_rain_functions();
[[nodiscard]] std::vector<Function> storm_functions();
[[nodiscard]] std::vector<Function> runoff_functions();
[[nodiscard]] std::vector<Function> graphical_peak_functions();
[[nodiscard]] std::vector<Function> release_functions();
[[nodiscard]] std::vector<Function> concentration_functions();
[[nodiscard]] std::vector<Function> flow_time_functions();
[[nodiscard]] std::vector<Function> hydrograph_functions();
[[nodiscard]] std::vector<Function> outlet_functions();
[[nodiscard]] std::vector<Function> contracted_weir_functions();
[[nodiscard]] std::vector<Function> opening_functions();
[[nodiscard]] std::vector<Function> pipe_functions();
[[nodiscard]] std::vector<Function> pipe_size_functions();
[[nodiscard]] std::vector<Function> pipe_loss_functions();
[[nodiscard]] std::vector<Function> outfall_functions();
[[nodiscard]] std::vector<Function> rating_functions();
[[nodiscard]] std::vector<Function> routing_functions();
[[nodiscard]] std::vector<Function> spill_routing_functions();
[[nodiscard]] std::vector<Function> governing_storm_functions();
[[nodiscard]] std::vector<Function> emptying_functions();
[[nodiscard]] std::vector<Function> soakage_functions();
[[nodiscard]] std::vector<Function> soakaway_functions();
[[nodiscard]] std::vector<Function> groundwater_functions();
[[nodiscard]] std::vector<Function> mound_functions();
[[nodiscard]] std::vector<Function> water_quality_functions();
[[nodiscard]] std::vector<Function> reuse_functions();

}  // namespace undercroft::addin
