/// \file plant_load.hpp
/// Stress under construction plant: tracks, drums and wheels as loaded patches.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Load, length along x, width along y, and the place x, y of the patch's centre; one row a patch.
using Patches = Table<Force, Length, Length, Length, Length>;

/// Stress at a depth under the point x, y: the sum over all patches of q times the influences of their four
/// corners. Boussinesq; Newmark (1935).
/// \throws Refused(domain) for a load, length or width not above 0, a depth not above 0, or more than 40
/// patches.
[[nodiscard]] Pressure stress_of_patches(const Patches& patches, Length depth, Length x, Length y);

/// The greatest stress at that depth: uphill from the centres of the patches and the points between two of
/// them, those with a tenth of the greatest stress or more; from the best peak on until no step of a
/// micrometre gains.
/// \throws Refused(domain) as stress_of_patches.
[[nodiscard]] Pressure plant_load(const Patches& patches, Length depth);

}  // namespace undercroft::calc
