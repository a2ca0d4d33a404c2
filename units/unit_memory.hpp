/// \file unit_memory.hpp
/// Texts of units and quantities that were read before, found again without reading them.
#pragma once

#include <string_view>

#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace undercroft {

/// The unit of a text as the office holds it. Texts seen before are found in a memory of fixed size, one
/// for each thread; it never changes an answer, only the time it takes.
/// \throws Refused(value) as parse_unit.
[[nodiscard]] Unit remembered_unit(std::u16string_view text);

/// The same for a text such as `305 mm`. \throws Refused(value) as parse_quantity.
[[nodiscard]] Quantity remembered_quantity(std::u16string_view text);

}  // namespace undercroft
