/// \file bed_quantities.hpp
/// What a bed of chambers in its pit takes in earth, stone, sheet and units, as the sheets count it.
#pragma once

#include "calc/bed/storage.hpp"
#include "calc/ground/layers.hpp"
#include "calc/works/cut_list.hpp"
#include "calc/works/spoil_balance.hpp"

namespace undercroft::calc {

/// Heights above the base of the bed, and its depths; of a build-up of layers from the base stone up.
struct BuildUp {
    Length base_stone;
    Length bed_height;   ///< top of the cover stone
    Length initial_top;  ///< of the initial backfill
    Length general_top;  ///< of the general backfill
    Length subbase_top;
    Length bed_depth;  ///< finished surface over the base
    Length pit_depth;  ///< existing ground over the base
};

/// The heights of a list of layers. \param ground_over_surface existing ground less finished surface.
/// \throws Refused as layers_depth.
[[nodiscard]] BuildUp build_up(const SiteLayers& layers, Length ground_over_surface);

/// What the stone weighs as it is bought.
struct BoughtStone {
    Density bulk_density;
    Share moisture;
};

/// What becomes of the spoil, and how bought fill is weighed.
struct Earthworks {
    SpoilSoil soil;
    Share fit_share;
    Volume truck_volume;
    Density loose_density;
    Mass truck_payload;
    Share degree;
    Density greatest_dry_density;
    Share fill_moisture;
};

struct BedQuantities {
    Volume pit;   ///< bank
    Area slopes;  ///< of the pit's walls
    Area formation;
    Volume bedding;    ///< base stone as laid
    Volume embedment;  ///< stone beside and over the chambers as laid
    Mass bedding_stone;
    Mass embedment_stone;
    Volume fill_laid;  ///< initial and general backfill, compacted
    Mass initial_bought;
    Mass general_bought;
    Volume subbase;
    Volume pavement;
    Volume spoil_away;  ///< loose
    Count spoil_loads;
    Area fabric;  ///< net, with laps
};

/// Quantities of a bed of that outline; chambers and stone of the bed stand in its pit to the build-up.
///
/// Zones by pit_zone, embedment less the chambers' inside volume, stone by stone_order_mass, backfill bought
/// by fill_imported and spoil away by spoil_carted: the rows of the sheets Excavation and Takeoff. \throws
/// Refused as these.
[[nodiscard]] BedQuantities bed_quantities(const Bed& bed, const BuildUp& heights, const BoughtStone& stone,
                                           const Earthworks& earth, Length fabric_lap);

/// Rolls of fabric around that bed: the cut list of its base, walls and top. \throws Refused as cut_list.
[[nodiscard]] Count fabric_rolls(const Bed& bed, Length height, const SheetRoll& roll);

/// No more than fabric_rolls, and found without a cut list: the net area in whole rolls.
[[nodiscard]] Count least_fabric_rolls(Area net_fabric, const SheetRoll& roll);

}  // namespace undercroft::calc
