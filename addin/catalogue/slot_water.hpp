/// \file slot_water.hpp
/// Two tables that come in more than one shape: storage, and outlets.
#pragma once

#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/slot.hpp"
#include "calc/pool.hpp"
#include "calc/rating.hpp"

namespace undercroft::addin {

/// Depth and volume, or the five columns of UC.STAGE.STORAGE as they are, of which the total counts.
template <>
struct Slot<calc::StorageTable> {
    static calc::StorageTable read(const Cell& cell);
    static std::string kind() {
        return "a table of a length, a volume, or the five columns of UC.STAGE.STORAGE";
    }
    static std::string unit() { return "m; m3"; }
    static Reading reading(const calc::StorageTable& value) {
        return Slot<calc::Table<Length, Volume>>::reading(value.rows);
    }
};

/// Outlets in 3 to 6 columns; or in 10, with a column of units after each of level, size, coefficient, sides.
template <>
struct Slot<calc::OutletTable> {
    static calc::OutletTable read(const Cell& cell);
    static std::string kind() {
        return "a table of a kind, a level, a size and, where wanted, a coefficient, a count, sides";
    }
    static std::string unit() { return "-; m; by the kind"; }
    static Reading reading(const calc::OutletTable& value) {
        return {"table of " + std::to_string(value.size()) + " rows", {}};
    }
};

}  // namespace undercroft::addin
