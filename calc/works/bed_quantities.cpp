#include "calc/works/bed_quantities.hpp"

#include "calc/ground/stone.hpp"
#include "calc/works/excavation.hpp"
#include "calc/works/pit_zones.hpp"

namespace undercroft::calc {

namespace {

constexpr Faces all_round{true, true, true};

Volume chambers_of(const Bed& bed) {
    return arch_area(bed.arch) * bed.chamber_length;
}

}  // namespace

BuildUp build_up(const SiteLayers& layers, Length ground_over_surface) {
    const auto up_to = [&](LayerPart highest) {
        return layers_depth(layers, LayerPart::base_stone, highest);
    };
    const Length depth = up_to(LayerPart::pavement);
    return {up_to(LayerPart::base_stone),       up_to(LayerPart::cover_stone),
            up_to(LayerPart::initial_backfill), up_to(LayerPart::general_backfill),
            up_to(LayerPart::subbase),          depth,
            depth + ground_over_surface};
}

BedQuantities bed_quantities(const Bed& bed, const BuildUp& heights, const BoughtStone& stone,
                             const Earthworks& earth, Length fabric_lap) {
    const auto zone = [&](Length from, Length to) {
        return pit_zone(bed.length, bed.width, heights.pit_depth, bed.batter, from, to);
    };
    BedQuantities all;
    all.pit = pit_volume(bed.length, bed.width, heights.pit_depth, bed.batter);
    all.slopes = pit_walls(bed.length, bed.width, heights.pit_depth, bed.batter);
    all.formation = bed.length * bed.width;
    all.bedding = zone(zero, heights.base_stone);
    all.embedment = zone(zero, heights.bed_height) - all.bedding - chambers_of(bed);
    all.bedding_stone = stone_order_mass(all.bedding, stone.bulk_density, stone.moisture, share(0));
    all.embedment_stone = stone_order_mass(all.embedment, stone.bulk_density, stone.moisture, share(0));

    const Volume initial = zone(heights.bed_height, heights.initial_top);
    const Volume needed = zone(heights.bed_height, heights.general_top);
    const Volume import = fill_imported(all.pit, earth.fit_share, needed, earth.soil);
    const Volume initial_import = std::min(import, initial);  // the stockpile goes into the general backfill
    const auto bought = [&](Volume volume) {
        return fill_mass(volume, earth.degree, earth.greatest_dry_density, earth.fill_moisture, share(0));
    };
    all.fill_laid = needed;
    all.initial_bought = bought(initial_import);
    all.general_bought = bought(import - initial_import);
    all.subbase = zone(heights.general_top, heights.subbase_top);
    all.pavement = zone(heights.subbase_top, heights.bed_depth);

    const Volume bank_away = spoil_carted(all.pit, earth.fit_share, needed, earth.soil);
    all.spoil_away =
        spoil_converted(bank_away, earth.soil, SoilState::bank, SoilState::loose, std::nullopt, std::nullopt);
    all.spoil_loads =
        spoil_loads(all.spoil_away, earth.truck_volume, earth.loose_density, earth.truck_payload);
    all.fabric = lapped_wrap_area(bed.length, bed.width, heights.bed_height, bed.batter, all_round,
                                  {fabric_lap, fabric_lap});
    return all;
}

Count fabric_rolls(const Bed& bed, Length height, const SheetRoll& roll) {
    return rolls_of(cut_list(
        wrap_faces(bed.length, bed.width, height, bed.batter, all_round, {roll.lap, roll.lap}), roll));
}

Count least_fabric_rolls(Area net_fabric, const SheetRoll& roll) {
    return count(whole_up(net_fabric / (roll.length * roll.width)));
}

}  // namespace undercroft::calc
