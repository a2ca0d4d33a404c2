/// \file bed_uplift.hpp
/// Flotation of a whole bed between battered walls: which soil counts, its weight and its water alike.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// The soil that is counted as holding the bed down, and as displacing water: the prism over the base alone,
/// or with it the wedges that lie on the battered walls. One and the same soil on both sides of the factor.
enum class HeldSoil { prism, wedges };

/// A bed and what lies on it, in the pit it was laid in.
struct BuriedBed {
    Length base_length;
    Length base_width;
    Batter batter;
    /// Thickness and unit weight from the base up; the first is the bed itself, of stone. What lies under
    /// water has its saturated weight.
    Table<Length, UnitWeight> layers;
    Volume chambers;  ///< empty, within the first layer
    Length water_height;
    UnitWeight water_unit_weight;
};

/// Weight of the bed and of what lies on it, the chambers empty: sum of V g, less C g of the bed's stone.
/// \throws Refused(domain) for a length or width not above 0, a batter below 0, no layer, a thickness below
/// 0, a unit weight not above 0, or chambers that are not smaller than the first layer.
[[nodiscard]] Force bed_weight(const BuriedBed& bed, HeldSoil soil);

/// Weight of the water that the same soil displaces up to the height of the groundwater: gw V_w.
/// \throws Refused(domain) as bed_weight; for a water height not above 0 or above the layers, or a unit
/// weight of water not above 0.
[[nodiscard]] Force bed_uplift(const BuriedBed& bed, HeldSoil soil);

/// Factor against flotation of the empty bed: F = weight/uplift, all weights as in air, in the convention of
/// uplift_factor. The prism alone is on the safe side: with the wedges the factor is greater wherever they
/// weigh more than their water. To count the wedges' water but not their weight, or the reverse, is no
/// convention. USACE EM 1110-2-2100 (2005), eq. 3-2; required values as at uplift_factor. \throws Refused as
/// bed_weight and bed_uplift.
[[nodiscard]] Share bed_uplift_factor(const BuriedBed& bed, HeldSoil soil);

/// Uplift by partial factors: the ratio of destabilising to stabilising, g_dst U/(g_stb G), at most 1.
/// EN 1997-1:2004, 2.4.7.4 and Tables A.15, A.16 (in reproductions): g_dst 1.0 and g_stb 0.9 for permanent
/// actions; national annexes differ, such as 1.1 for g_dst in the United Kingdom.
/// \throws Refused(domain) for a force not above 0, a destabilising factor below 1 or a stabilising one
/// outside 0 to 1.
[[nodiscard]] Share uplift_ratio(Force weight, Force uplift, Share stabilising, Share destabilising);

}  // namespace undercroft::calc
