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

/// Number of lifts for a thickness: T / t, rounded up to a whole number. Common practice.
/// \throws Refused(domain) when a thickness is not above 0.
[[nodiscard]] Count lifts(Length thickness, Length greatest_lift);

}  // namespace undercroft::calc
