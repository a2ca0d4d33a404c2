/// \file fabric_filter.hpp
/// What a fabric beside the stone must hold back and let through, for every soil from gravel to clay.
#pragma once

#include <optional>

#include "calc/percent.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

enum class FabricKind { woven, non_woven };

/// Flow through the fabric: one way, or to and fro, as beside a bed that fills and empties.
enum class FabricFlow { steady, reversing };

/// Flow per area and head through a fabric: its permeability over its thickness, per second.
using Permittivity = decltype(Speed() / Length());

/// Factor B of the retention criterion O95 <= B d85.
///
/// FHWA NHI-07-092 (2008), ch. 2 (from memory). Steady flow, half or less passing 0.075 mm: fabric_factor of
/// the coefficient of uniformity; more than half: 1 woven, 1.8 non-woven. Reversing flow: 0.5 for all soils.
/// \throws Refused(domain) for a percentage outside 0 to 100 or as fabric_factor; Refused(value) for a coarse
/// soil in steady flow without its uniformity.
[[nodiscard]] Share retention_factor(Percent passing_0075_mm, std::optional<Share> uniformity,
                                     FabricKind kind, FabricFlow flow);

/// Largest opening O95 of a fabric that holds the soil back: B d85, at most 0.60 mm (AASHTO M 288,
/// separation) and, where more than half passes 0.075 mm, at most 0.30 mm (FHWA NHI-07-092, ch. 2; both from
/// memory). \throws Refused as retention_factor; Refused(domain) for a d85 not above 0 or above 75 mm.
[[nodiscard]] Length retaining_opening(Length d85, Percent passing_0075_mm, std::optional<Share> uniformity,
                                       FabricKind kind, FabricFlow flow);

/// Largest opening by what passes 0.075 mm alone, for soils too fine for a D85: 0.43 mm below 15 %, 0.25 mm
/// to 50 %, 0.22 mm above. AASHTO M 288, subsurface drainage, as quoted in UFGS 02373. \throws
/// Refused(domain) for a percentage outside 0 to 100.
[[nodiscard]] Length drainage_opening(Percent passing_0075_mm);

/// Least permittivity by what passes 0.075 mm: 0.5 per s below 15 %, 0.2 to 50 %, 0.1 above. AASHTO M 288,
/// subsurface drainage, as quoted in UFGS 02373.
/// \throws Refused(domain) for a percentage outside 0 to 100.
[[nodiscard]] Permittivity drainage_permittivity(Percent passing_0075_mm);

/// Permittivity of a fabric: psi = k/t. ASTM D4491.
/// \throws Refused(domain) for a permeability or thickness not above 0.
[[nodiscard]] Permittivity fabric_permittivity(Speed permeability, Length thickness);

/// Flow through a fabric: Q = psi dh A. ASTM D4491, Darcy.
/// \throws Refused(domain) for a permittivity or area not above 0, or a head below 0.
[[nodiscard]] Flow fabric_flow(Permittivity permittivity, Length head, Area area);

/// Least permeability of a fabric beside a soil: that of the soil, or ten times it where clogging would be
/// critical. FHWA NHI-07-092, ch. 2 (from memory).
/// \throws Refused(domain) for a permeability not above 0.
[[nodiscard]] Speed fabric_permeability_needed(Speed soil_permeability, bool critical);

}  // namespace undercroft::calc
