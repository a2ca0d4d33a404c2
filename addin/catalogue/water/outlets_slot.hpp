/// \file outlets_slot.hpp
/// The table of outlets, whose columns mean another thing for each kind.
#pragma once

#include "addin/catalogue/slot.hpp"
#include "calc/water/rating.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::OutletKind> {
    static constexpr std::string_view kind = "a kind of outlet";
    static constexpr Choice<calc::OutletKind> list[] = {
        {"orifice", calc::OutletKind::orifice},       {"weir", calc::OutletKind::weir},
        {"notch", calc::OutletKind::notch},           {"pump", calc::OutletKind::pump},
        {"soakage", calc::OutletKind::soakage},       {"rectangle", calc::OutletKind::rectangle},
        {"contracted", calc::OutletKind::contracted}, {"riser", calc::OutletKind::riser},
    };
};

/// Rows of outlets, each number of which is usual for its kind.
struct Outlets {
    calc::OutletTable rows;
};

template <>
struct Slot<Outlets> {
    static Outlets read(const Cell& cell, const Terms& terms);
    static ValueType type() { return Slot<calc::OutletTable>::type(); }
    static Reading reading(const Outlets& value) { return Slot<calc::OutletTable>::reading(value.rows); }
};

}  // namespace undercroft::addin
