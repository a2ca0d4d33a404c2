/// \file spoil_balance.hpp
/// Spoil kept for backfill against fill that is needed: what is kept, imported and carted away.
#pragma once

#include "calc/works/spoil.hpp"

namespace undercroft::calc {

/// The three states of a soil's volume.
enum class SoilState { bank, loose, compacted };

/// Volume in one state of what has a volume in another.
///
/// V2 = V1 k2/k1, with k the volume of one bank volume in that state: 1 in the bank, and loose and compacted
/// that of the named soil in US Army FM 5-434, Table 1-1, or the factors given. \param
/// loose_factor,compacted_factor in place of the table's: loose or compacted volume per bank volume. \throws
/// Refused(domain) for a volume below 0, a loose factor below 1 or a compacted factor not above 0.
[[nodiscard]] Volume spoil_converted(Volume volume, SpoilSoil soil, SoilState from, SoilState to,
                                     std::optional<Share> loose_factor,
                                     std::optional<Share> compacted_factor);

/// Bank volume of spoil kept for backfill: as much as is fit for it, and no more than is needed.
///
///     V_k = min(r V_b, V_f/c)
///
/// with the bank volume V_b, its fit share r, the fill needed V_f as compacted, and c compacted volume per
/// bank volume, of the named soil in US Army FM 5-434, Table 1-1, or the number given. Mass balance. \throws
/// Refused(domain) for a volume below 0, a share outside 0 to 1 or a factor not above 0.
[[nodiscard]] Volume spoil_kept(Volume bank_volume, Share fit_share, Volume fill_needed,
                                const std::variant<SpoilSoil, Share>& soil);

/// Compacted volume of fill that must be bought: V_i = V_f - c V_k, 0 where the kept spoil does.
/// \throws Refused as spoil_kept.
[[nodiscard]] Volume fill_imported(Volume bank_volume, Share fit_share, Volume fill_needed,
                                   const std::variant<SpoilSoil, Share>& soil);

/// Bank volume of spoil that must be carted away: V_b - V_k.
/// \throws Refused as spoil_kept.
[[nodiscard]] Volume spoil_carted(Volume bank_volume, Share fit_share, Volume fill_needed,
                                  const std::variant<SpoilSoil, Share>& soil);

/// Mass of fill to be bought for a compacted volume: M = V D rho_max (1 + w)(1 + waste), with the degree of
/// compaction D, the greatest dry density of the laboratory and the moisture w at which it is delivered. Mass
/// balance.
/// \throws Refused(domain) for a volume or waste below 0, a density not above 0, a moisture outside 0 to 1,
/// or a degree not above 0 or above 1.2.
[[nodiscard]] Mass fill_mass(Volume compacted_volume, Share degree, Density greatest_dry_density,
                             Share moisture, Share waste);

}  // namespace undercroft::calc
