/// \file slot_water.hpp
/// The table of storage, which comes in two shapes.
#pragma once

#include "addin/catalogue/slot.hpp"
#include "calc/water/pool.hpp"

namespace undercroft::addin {

/// Depth and volume, or the five columns of UC.STAGE.STORAGE as they are, of which the total counts.
template <>
struct Slot<calc::StorageTable> {
    static calc::StorageTable read(const Cell& cell, const Terms& terms);
    static ValueType type() {
        ValueType table = Slot<calc::Table<Length, Volume>>::type();
        table.also_from = "UC.STAGE.STORAGE";
        return table;
    }
    static Reading reading(const calc::StorageTable& value) {
        return Slot<calc::Table<Length, Volume>>::reading(value.rows);
    }
};

}  // namespace undercroft::addin
