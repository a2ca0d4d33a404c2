/// \file pool_tables.hpp
/// What is said of the tables of a pool wherever a function takes them.
#pragma once

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/storage_slot.hpp"

namespace undercroft::addin {

/// The arguments storage and rating.
inline Entry& takes_pool(Entry& entry) {
    return entry
        .takes("storage", "d, S",
               "Two columns: depth and volume held; or the five columns of UC.STAGE.STORAGE as they are")
        .within({usual::table_depth, usual::table_volume})
        .takes("rating", "d, Q", "Two columns: depth and flow, such as UC.OUTLET.RATING gives")
        .within({usual::table_depth, usual::table_flow});
}

}  // namespace undercroft::addin
