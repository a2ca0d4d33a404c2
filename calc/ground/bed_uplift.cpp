#include "calc/ground/bed_uplift.hpp"

#include "calc/works/excavation.hpp"

namespace undercroft::calc {

namespace {

/// The soil that counts, from the base of the bed up to a height.
Volume soil_to(const BuriedBed& bed, HeldSoil soil, Length height) {
    const Batter batter_of_soil = soil == HeldSoil::wedges ? bed.batter : batter(0);
    return pit_volume(bed.base_length, bed.base_width, height, batter_of_soil);
}

}  // namespace

Force bed_weight(const BuriedBed& bed, HeldSoil soil) {
    require_not_negative("batter", bed.batter);
    require(!bed.layers.empty(), "the bed has no layer");
    require_not_negative("chambers", bed.chambers);
    Force weight = zero;
    Length top = zero;
    Volume below = zero;
    for (std::size_t i = 0; i < bed.layers.size(); ++i) {
        const auto& [thickness, unit_weight] = bed.layers[i];
        require_not_negative("thickness", thickness);
        require_positive("unit weight", unit_weight);
        top += thickness;
        const Volume up_to_here = soil_to(bed, soil, top);
        Volume solid = up_to_here - below;
        if (i == 0) {
            require(bed.chambers < solid || bed.chambers == zero, shown("chambers", bed.chambers),
                    " must be less than the first layer, the bed (", amount(solid), ")");
            solid -= bed.chambers;
        }
        weight += unit_weight * solid;
        below = up_to_here;
    }
    return weight;
}

Force bed_uplift(const BuriedBed& bed, HeldSoil soil) {
    (void)bed_weight(bed, soil);  // the same preconditions
    Length top = zero;
    for (const auto& [thickness, unit_weight] : bed.layers) top += thickness;
    require_positive("water height", bed.water_height);
    require(is_at_most(bed.water_height, top), shown("water height", bed.water_height),
            " must be at most the height of the layers (", amount(top), ")");
    require_positive("water unit weight", bed.water_unit_weight);
    return bed.water_unit_weight * soil_to(bed, soil, bed.water_height);
}

Share bed_uplift_factor(const BuriedBed& bed, HeldSoil soil) {
    const Force weight = bed_weight(bed, soil);
    return weight / bed_uplift(bed, soil);
}

Share uplift_ratio(Force weight, Force uplift, Share stabilising, Share destabilising) {
    require_positive("weight", weight);
    require_positive("uplift", uplift);
    require_positive("stabilising factor", stabilising);
    require(stabilising <= share(1), shown("stabilising factor", stabilising), " must be at most 1");
    require(destabilising >= share(1) && is_finite(destabilising),
            shown("destabilising factor", destabilising), " must be at least 1");
    return destabilising * uplift / (stabilising * weight);
}

}  // namespace undercroft::calc
