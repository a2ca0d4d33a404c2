/// \file entries.hpp
/// The functions of water, by topic.
#pragma once

#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

[[nodiscard]] std::vector<Function> required_storage_functions();
[[nodiscard]] std::vector<Function> rain_functions();
[[nodiscard]] std::vector<Function> runoff_functions();
[[nodiscard]] std::vector<Function> concentration_functions();
[[nodiscard]] std::vector<Function> hydrograph_functions();
[[nodiscard]] std::vector<Function> outlet_functions();
[[nodiscard]] std::vector<Function> pipe_functions();
[[nodiscard]] std::vector<Function> rating_functions();
[[nodiscard]] std::vector<Function> routing_functions();
[[nodiscard]] std::vector<Function> emptying_functions();
[[nodiscard]] std::vector<Function> soakage_functions();
[[nodiscard]] std::vector<Function> groundwater_functions();

}  // namespace undercroft::addin
