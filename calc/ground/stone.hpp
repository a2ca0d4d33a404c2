/// \file stone.hpp
/// Crushed stone: porosity, mass, and the lifts it is laid in.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Porosity from the bulk density and the density of the particles: n = 1 - rho_b / rho_s.
/// ASTM C29/C29M, voids in aggregates.
/// \throws Refused(domain) when a density is not above 0, or the bulk is not lighter than the particles.
[[nodiscard]] Share stone_porosity(Density bulk_density, Density particle_density);

/// Mass of stone that fills a volume: M = V (1 - n) rho_s.
/// \throws Refused(domain) for a volume below 0, a porosity not between 0 and 1, a density not above 0.
[[nodiscard]] Mass stone_mass(Volume volume, Share porosity, Density particle_density);

/// Mass of stone to order for a volume as laid, by its tested bulk density: M = V rho_b (1 + w)(1 + waste).
/// It is stone_mass only where the design porosity is that of the tested density, n = 1 - rho_b/rho_s. \param
/// moisture of the stone as delivered, mass of water per mass of dry stone. \throws Refused(domain) for a
/// volume or waste below 0, a density not above 0, a moisture outside 0 to 1.
[[nodiscard]] Mass stone_order_mass(Volume volume, Density bulk_density, Share moisture, Share waste);

/// Porosity of stone as built: n = 1 - M/((1 + w) V rho_s), from the mass that was delivered and laid and the
/// volume it fills as surveyed. Mass balance; ASTM C29/C29M, voids in aggregates.
/// \throws Refused(domain) for a mass, volume or density not above 0, a moisture outside 0 to 1, or more
/// stone than the volume can hold.
[[nodiscard]] Share porosity_as_built(Mass mass, Volume volume, Density particle_density, Share moisture);

/// Number of lifts for a thickness: T / t, rounded up to a whole number. Common practice.
/// \throws Refused(domain) when a thickness is not above 0.
[[nodiscard]] Count lifts(Length thickness, Length greatest_lift);

}  // namespace undercroft::calc
