#include "addin/catalogue/water/storage_slot.hpp"

#include "addin/catalogue/usual_water.hpp"

namespace undercroft::addin {

namespace {

using Stages = calc::Table<Length, Volume, Volume, Volume, Area>;

/// Of the five columns, which no entry declares.
const Limits& limits_of_stages() {
    static const Limits limits = [] {
        Limits made;
        for (const Range& range : {usual::table_volume, usual::table_volume, usual::table_volume})
            made.columns.emplace_back(range, dimension_of<Volume>(), false);
        made.columns.emplace(made.columns.begin(), usual::table_depth, dimension_of<Length>(), false);
        made.columns.emplace_back(usual::table_area, dimension_of<Area>(), false);
        return made;
    }();
    return limits;
}

}  // namespace

calc::StorageTable Slot<calc::StorageTable>::read(const Cell& cell, const Terms& terms) {
    const Grid* const* grid = std::get_if<const Grid*>(&cell);
    if (grid == nullptr || (*grid)->columns() != 5)
        return {Slot<calc::Table<Length, Volume>>::read(cell, terms)};
    const Limits* limits = terms.limits == nullptr ? nullptr : &limits_of_stages();
    calc::StorageTable table;
    for (const auto& [depth, chambers, stone, total, area] :
         Slot<Stages>::read(cell, {limits, terms.mixture, terms.argument}))
        table.rows.emplace_back(depth, total);
    return table;
}

}  // namespace undercroft::addin
