/// \file bed_stack.hpp
/// One kind of unit between base and cover stone under the layers of a site: what the checks of cover, loads
/// and ground find, whatever the bed's plan.
#pragma once

#include "calc/ground/load_classes.hpp"
#include "calc/ground/vehicle_load.hpp"
#include "calc/works/bed_quantities.hpp"

namespace undercroft::calc {

/// A kind of unit, from its supplier's data sheet.
struct ChamberKind {
    Arch arch;
    Length over_feet;  ///< width over the feet of a unit
    Length foot_width;
    Length end_unit;
    Length middle_unit;
    Length joint_overlap;
    Length row_gap;
    Mass mass;
    Density plastic;
    Length least_cover;
    Length greatest_cover;
    Pressure crown_limit;  ///< fill and traffic, loads as they are
    Pressure long_limit;   ///< fill alone, for its life
};

/// Levels over the bed, and what the ground can bear.
struct SiteGround {
    Length ground;
    Length surface;
    Length lowest_surface;
    Length highest_surface;
    Length groundwater;
    Length dry_margin;  ///< formation and groundwater apart by at least
    Pressure cohesion;
    Angle friction;
    UnitWeight unit_weight;
    Share safety;
    Pressure presumptive;
};

struct SiteTraffic {
    LoadClass vehicle;
    Share spread_factor;
    Share presence;
    Surfacing surfacing;
};

/// The checks of a candidate, in the order in which they are named.
enum class OptionCheck {
    none,
    storage,         ///< wanted over provided
    least_cover,     ///< over the cover where the surface is lowest
    greatest_cover,  ///< the cover where the surface is highest, over it
    crown_pressure,  ///< fill and traffic over what the unit carries
    long_pressure,   ///< fill over what it carries for its life
    subgrade,        ///< pressure over what the ground bears
    groundwater,     ///< depth of the formation over the depth that stays dry
    pit_length,      ///< pit and strip over the length there is at ground level
    pit_width,       ///< the same across
};

/// Demand over capacity of the check that comes out worst; it passes up to 1.
struct Worst {
    OptionCheck check = OptionCheck::none;
    double ratio = 0;

    /// Takes a check in, where it is worse than what was found before.
    void take(OptionCheck candidate, double found) {
        if (found > ratio) *this = {candidate, found};
    }
};

/// What a ratio beyond counting is given as: no cover, no depth.
inline constexpr double greatest_ratio = 1000;

/// Demand over capacity, at most greatest_ratio.
template <class Q>
[[nodiscard]] double demand_ratio(const Q& demand, const Q& capacity) {
    if (capacity <= zero) return greatest_ratio;
    return std::min(greatest_ratio, static_cast<double>(demand / capacity));
}

struct BedStack {
    BuildUp heights;
    Length cover_stone;
    Length storage_level;  ///< depth that counts as storage
    Worst worst;           ///< of cover, loads, ground and groundwater
};

/// Layers with base stone, chambers and cover stone under those over the stone.
[[nodiscard]] SiteLayers layers_with(const SiteLayers& over_stone, UnitWeight stone, Length base_stone,
                                     Length rise, Length cover_stone);

/// The stack and its checks.
///
/// Cover by counted_cover less what the surface falls below its level; fill by fill_load of layer_stack and
/// what the surface rises above it, of the heaviest layer of fill; traffic by vehicle_load where the cover is
/// least; subgrade_pressure against the lower of bearing_capacity (Vesic, on the bearing_strip, buoyant where
/// groundwater stands within its width below) over its factor of safety and the presumptive pressure: the
/// rows of the sheet Ground. Where the cover is too thin for vehicle_load, the cover is what fails.
/// \param not_counted height under the top of the stone that does not count as storage. \throws
/// Refused(domain) for a formation above existing ground or a storage of no depth, and as these.
[[nodiscard]] BedStack bed_stack(const ChamberKind& kind, Length base_stone, Length cover_stone,
                                 const SiteLayers& over_stone, UnitWeight stone, const SiteGround& ground,
                                 const SiteTraffic& traffic, Length not_counted);

}  // namespace undercroft::calc
