/// \file date_slot.hpp
/// A day of the calendar, as Calc holds it or as text.
#pragma once

#include <chrono>

#include "addin/catalogue/slot.hpp"

namespace undercroft::addin {

/// Days since 30 December 1899, as a cell with a date holds, or "2012-01-01" (ISO 8601).
template <>
struct Slot<std::chrono::year_month_day> {
    static std::chrono::year_month_day read(const Cell& cell, const Terms& terms);
    static ValueType type() { return {.shape = Shape::date}; }
    static Reading reading(const std::chrono::year_month_day& day);
};

}  // namespace undercroft::addin
