/// \file water_quality.hpp
/// The volume that is kept to clean the first of the runoff, and the silt that it leaves behind.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Volume to be treated: WQv = P Rv A with Rv = a + b I, and at least a depth over the whole site.
///
/// a = 0.05, b = 0.9 (Schueler 1987), as in the Maryland Stormwater Design Manual, ch. 2 (P Rv A, at least
/// 0.2 in where I is below 15 %), and New Hampshire Env-Wq 1504.10 (P 1 in). Other places use other lines:
/// local practice governs.
/// \param intercept a.
/// \param slope b.
/// \param least_depth over the site; 0 for none.
/// \throws Refused(domain) for a rain depth not above 0 or above 5 m, an area not above 0, an impervious
/// share or an Rv not from 0 to 1, a least depth below 0.
[[nodiscard]] Volume water_quality_volume(Length rain_depth, Area area, Share impervious, Share intercept,
                                          Share slope, Length least_depth);

/// Depth of silt after some years: y L A e/(rho a), the yearly load of solids that is kept, spread over the
/// floor on which it settles. Arithmetic, common practice.
/// \param yearly_load mass of solids that a unit of drained area sheds in a year.
/// \param kept share that settles.
/// \param silt_density mass of settled silt over its volume.
/// \param floor_area on which it settles.
/// \throws Refused(domain) for a load, density or area not above 0, a share kept not above 0 or over 1, years
/// below 0.
[[nodiscard]] Length silt_depth(MassPerArea yearly_load, Area drained_area, Share kept, Density silt_density,
                                Area floor_area, Share years);

/// Years until silt has grown to a depth, when it is to be cleaned: the inverse.
/// \throws Refused(domain) for a depth below 0, and as silt_depth.
[[nodiscard]] Share silt_years(MassPerArea yearly_load, Area drained_area, Share kept, Density silt_density,
                               Area floor_area, Length depth);

}  // namespace undercroft::calc
