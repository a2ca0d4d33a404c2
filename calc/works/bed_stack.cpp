#include "calc/works/bed_stack.hpp"

#include "calc/ground/base_stone.hpp"
#include "calc/ground/bearing.hpp"
#include "calc/ground/fill_load.hpp"
#include "calc/water/water_weight.hpp"

namespace undercroft::calc {

namespace {

/// Of what fills the pit over the stone, pavement apart.
UnitWeight heaviest_fill(const SiteLayers& over_stone) {
    UnitWeight heaviest = zero;
    for (const auto& [part, thickness, unit_weight, lift] : over_stone)
        if (part != LayerPart::pavement) heaviest = std::max(heaviest, unit_weight);
    return heaviest;
}

Length cover_that_counts(const SiteLayers& layers, Surfacing surfacing) {
    const Length fill = layers_depth(layers, LayerPart::cover_stone, LayerPart::subbase);
    if (surfacing == Surfacing::none) return counted_cover(fill, zero, surfacing);
    return counted_cover(fill, layers_depth(layers, LayerPart::pavement, LayerPart::pavement), surfacing);
}

Pressure bearing_allowed(const ChamberKind& kind, Length base_stone, Length formation,
                         const SiteGround& ground) {
    const Length strip = bearing_strip(kind.foot_width, base_stone, kind.row_gap);
    const bool wet = formation - ground.groundwater < strip;
    const UnitWeight under = wet ? ground.unit_weight - water_unit_weight : ground.unit_weight;
    const Pressure capacity = bearing_capacity(ground.cohesion, ground.friction, under, zero, strip,
                                               std::nullopt, BearingMethod::vesic);
    return std::min<Pressure>(capacity / ground.safety, ground.presumptive);
}

/// The traffic's pressure at the crown; none where the method does not reach so shallow.
std::optional<Pressure> traffic_pressure(const SiteTraffic& traffic, Length cover) {
    if (cover <= zero) return std::nullopt;
    try {
        return vehicle_load(traffic.vehicle, cover, traffic.spread_factor, traffic.presence, true);
    } catch (const Refused& refused) {
        // What is wrong with the traffic itself is wrong under any cover.
        (void)vehicle_load(traffic.vehicle, 10.0 * metre, traffic.spread_factor, traffic.presence, true);
        return std::nullopt;
    }
}

}  // namespace

SiteLayers layers_with(const SiteLayers& over_stone, UnitWeight stone, Length base_stone, Length rise,
                       Length cover_stone) {
    SiteLayers layers = {{LayerPart::base_stone, base_stone, stone, std::nullopt},
                         {LayerPart::chambers, rise, stone, std::nullopt},
                         {LayerPart::cover_stone, cover_stone, stone, std::nullopt}};
    for (const auto& layer : over_stone) {
        require(std::get<LayerPart>(layer) > LayerPart::cover_stone,
                "the layers are those over the stone: base stone, chambers and cover stone come from the "
                "units and their steps");
        layers.push_back(layer);
    }
    return layers;
}

BedStack bed_stack(const ChamberKind& kind, Length base_stone, Length cover_stone, const SiteLayers& over_stone,
                   UnitWeight stone, const SiteGround& ground, const SiteTraffic& traffic,
                   Length not_counted) {
    const SiteLayers layers = layers_with(over_stone, stone, base_stone, kind.arch.rise, cover_stone);
    BedStack stack;
    stack.heights = build_up(layers, ground.ground - ground.surface);
    stack.cover_stone = cover_stone;
    const BuildUp& heights = stack.heights;
    require(heights.pit_depth > zero, "a bed whose base is ", amount(heights.bed_depth),
            " under the finished surface stands on existing ground or above it: check both levels and the "
            "layers");
    stack.storage_level = heights.bed_height - not_counted;
    require(stack.storage_level > zero, shown("not counted", not_counted),
            " leaves nothing of a bed that is ", amount(heights.bed_height), " high");

    const Length rise_of_surface = std::max<Length>(zero, ground.highest_surface - ground.surface);
    const Length drop_of_surface = std::max<Length>(zero, ground.surface - ground.lowest_surface);
    const Length cover_depth = layers_depth(layers, LayerPart::cover_stone, LayerPart::pavement);
    const Length least = cover_that_counts(layers, traffic.surfacing) - drop_of_surface;
    Worst& worst = stack.worst;
    worst.take(OptionCheck::least_cover, demand_ratio(kind.least_cover, least));
    worst.take(OptionCheck::greatest_cover, demand_ratio(cover_depth + rise_of_surface, kind.greatest_cover));

    const Pressure fill = fill_load(layer_stack(layers, LayerPart::cover_stone, LayerPart::pavement)) +
                          rise_of_surface * heaviest_fill(over_stone);
    worst.take(OptionCheck::long_pressure, demand_ratio(fill, kind.long_limit));
    const std::optional<Pressure> wheels = traffic_pressure(traffic, least);
    if (!wheels) {
        worst.take(OptionCheck::least_cover, greatest_ratio);
    } else {
        const Pressure crown = fill + *wheels;
        worst.take(OptionCheck::crown_pressure, demand_ratio(crown, kind.crown_limit));
        const Pressure under = subgrade_pressure(
            {crown, kind.over_feet, kind.row_gap, kind.foot_width, kind.arch.rise, stone}, base_stone);
        const Length formation = ground.surface - heights.bed_depth;
        worst.take(OptionCheck::subgrade,
                   demand_ratio(under, bearing_allowed(kind, base_stone, formation, ground)));
    }
    worst.take(OptionCheck::groundwater,
               demand_ratio(heights.bed_depth, ground.surface - ground.groundwater - ground.dry_margin));
    return stack;
}

}  // namespace undercroft::calc
