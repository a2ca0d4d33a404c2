#include "calc/works/trench_soil.hpp"

namespace undercroft::calc {

namespace {

/// Levels that differ by less are the same.
constexpr Length same_level = 1e-6 * metre;

}  // namespace

TrenchSoil soil_in_water(TrenchSoil soil, Length water_above_formation, Dewatering dewatering) {
    require_not_negative("water above formation", water_above_formation);
    const bool wet = water_above_formation > same_level && dewatering == Dewatering::none;
    return wet && soil != TrenchSoil::stable_rock ? TrenchSoil::type_c : soil;
}

Batter wet_pit_batter(TrenchSoil soil, Length depth, Length water_above_formation, Dewatering dewatering) {
    return pit_batter(soil_in_water(soil, water_above_formation, dewatering), depth);
}

}  // namespace undercroft::calc
