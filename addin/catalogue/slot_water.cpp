#include "addin/catalogue/slot_water.hpp"

namespace undercroft::addin {

calc::StorageTable Slot<calc::StorageTable>::read(const Cell& cell, const Terms& terms) {
    if (const Grid* const* grid = std::get_if<const Grid*>(&cell);
        grid != nullptr && (*grid)->columns() == 5) {
        calc::StorageTable table;
        for (const auto& [depth, chambers, stone, total, area] :
             Slot<calc::Table<Length, Volume, Volume, Volume, Area>>::read(cell, terms.of_wider_table()))
            table.rows.emplace_back(depth, total);
        return table;
    }
    return {Slot<calc::Table<Length, Volume>>::read(cell, terms)};
}

}  // namespace undercroft::addin
