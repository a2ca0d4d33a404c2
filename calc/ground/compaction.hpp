/// \file compaction.hpp
/// Density of compacted fill.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Dry density from the wet one: rho_d = rho/(1 + w), w the mass of water per mass of dry soil. Mass balance;
/// Das, Principles of Geotechnical Engineering.
/// \throws Refused(domain) for a density not above 0 or a moisture outside 0 to 1.
[[nodiscard]] Density dry_density(Density wet_density, Share moisture);

/// Relative compaction: R = rho_d/rho_ref, the reference from the laboratory's compaction test.
/// \throws Refused(domain) for a density not above 0.
[[nodiscard]] Share compaction_degree(Density dry_density, Density reference_density);

/// Dry density without air voids, which no fill can exceed: rho_z = (1 - a) rho_w G/(1 + w G), with the
/// density of the grains rho_s = G rho_w, the moisture w by mass and the share of air a; 0 for the zero air
/// voids line. Das, Principles of Geotechnical Engineering, weight-volume relationships (form seen on a
/// public page). A test above it is wrong in density, moisture or grain density. \param water_density 1000
/// kg/m3 (common practice). \throws Refused(domain) for a density not above 0, grains not denser than water,
/// or a moisture or share of air outside 0 to 1.
[[nodiscard]] Density zero_air_density(Density particle_density, Share moisture, Share air,
                                       Density water_density);

}  // namespace undercroft::calc
