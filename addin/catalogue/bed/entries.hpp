/// \file entries.hpp
/// The functions of beds, by topic.
#pragma once

#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

[[nodiscard]] std::vector<Function> arch_functions();
[[nodiscard]] std::vector<Function> bed_functions();
[[nodiscard]] std::vector<Function> storage_functions();
[[nodiscard]] std::vector<Function> unit_storage_functions();
[[nodiscard]] std::vector<Function> drawing_functions();

}  // namespace undercroft::addin
