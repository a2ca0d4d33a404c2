/// \file as_typed.hpp
#pragma once

#include <string>

namespace undercroft::audit {

/// A formula with our functions by the names that a person types.
[[nodiscard]] std::string as_typed(const std::string& formula);

}  // namespace undercroft::audit
