/// \file usual.hpp
/// What is possible and what is usual of the trade's numbers, each said once for all functions that take it.
#pragma once

#include "addin/catalogue/limits.hpp"

namespace undercroft::addin::usual {}  // namespace undercroft::addin::usual
