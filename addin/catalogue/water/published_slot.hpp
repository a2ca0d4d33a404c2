/// \file published_slot.hpp
/// Rain as an agency publishes it, and its frequencies.
#pragma once

#include "addin/catalogue/slot.hpp"
#include "calc/water/frequency.hpp"
#include "calc/water/published_rain.hpp"

namespace undercroft::addin {

/// The cells of an agency's table as they were pasted; a number that is none is refused.
template <>
struct Slot<calc::PublishedTable> {
    static calc::PublishedTable read(const Cell& cell, const Terms& terms);
    static ValueType type() { return {.shape = Shape::pasted}; }
    static Reading reading(const calc::PublishedTable& table) {
        return {"table of " + std::to_string(table.size()) + " rows", {}};
    }
};

/// "10 years", "10 % AEP", or the number and beside it what it counts.
template <>
struct Slot<calc::Frequency> {
    static calc::Frequency read(const Cell& cell, const Terms& terms);
    static ValueType type() { return {.shape = Shape::text}; }
    static Reading reading(const calc::Frequency& frequency) { return {calc::text_of(frequency), {}}; }
};

}  // namespace undercroft::addin
