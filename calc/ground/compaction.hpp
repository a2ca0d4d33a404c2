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

}  // namespace undercroft::calc
