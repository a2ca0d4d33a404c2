/// \file slot_water.hpp
/// The table of storage, which comes in two shapes.
#pragma once

#include "addin/catalogue/slot.hpp"
#include "calc/water/pool.hpp"

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

}  // namespace undercroft::addin
