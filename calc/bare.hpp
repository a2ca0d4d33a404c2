/// \file bare.hpp
/// Numbers without a unit beside quantities: nobody can say in which unit they were meant.
#pragma once

#include <string>

#include "units/quantity.hpp"
#include "units/refused.hpp"

namespace undercroft::calc {

/// A quantity and how a refusal calls it.
struct Named {
    const Quantity& quantity;
    const char* name;
};

/// Whether a bare number beside it can mean one thing only: it is a count, or a pure number not written in %.
[[nodiscard]] inline bool leaves_no_doubt(const Quantity& quantity) {
    const bool is_plain = quantity.dimension.is_number() || quantity.dimension == Dimension::of(Base::count);
    return is_plain && quantity.form != Quantity::Form::percent;
}

/// \throws Refused(value) for a bare number, 0 as any other, beside a quantity that leaves doubt.
inline void require_unit_beside(const Named& number, const Named& other) {
    const bool is_bare = number.quantity.form == Quantity::Form::bare;
    if (!is_bare || other.quantity.form == Quantity::Form::bare || leaves_no_doubt(other.quantity)) return;
    const bool in_percent = other.quantity.form == Quantity::Form::percent;
    throw Refused(Cause::value,
                  std::string(number.name) + ": " + text_of(number.quantity) + " has no unit, and the " +
                      other.name + (in_percent ? " is in %" : " has one") + ": write the unit of both",
                  Refusal::mixed);
}

}  // namespace undercroft::calc
