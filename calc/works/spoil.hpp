/// \file spoil.hpp
/// Spoil in its three states - bank, loose, compacted - and the truckloads to carry it away.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "units/types.hpp"

namespace undercroft::calc {

/// Soils of the published table.
enum class SpoilSoil { sand, loam, clay, rock, coral };

enum class SpoilState { loose, compacted };

/// A row of US Army FM 5-434 (2000), Table 1-1: volume of one bank volume when loose and when compacted.
struct SpoilFactors {
    SpoilSoil soil;
    Share bank_to_loose;
    Share bank_to_compacted;
};

[[nodiscard]] const std::vector<SpoilFactors>& spoil_table();

/// Volume in another state of what was `bank_volume` in the ground.
///
/// V = k Vb; the factor k is that of the named soil in US Army FM 5-434, Table 1-1, or the number
/// given: the volume in that state per volume in the bank.
/// \throws Refused(domain) for a volume below 0, a loose factor below 1 (a swell of 25 % is a factor of
/// 1.25), or a factor not above 0.
[[nodiscard]] Volume spoil_volume(Volume bank_volume, const std::variant<SpoilSoil, Share>& soil,
                                  SpoilState state);

/// Truckloads for a loose volume: the whole number of loads by volume or, with a density and a payload, by
/// mass, whichever is more. Common practice.
/// \throws Refused(domain) for a loose volume below 0, a truck volume, density or payload not above 0;
/// Refused(value) when only one of density and payload is given.
[[nodiscard]] Count spoil_loads(Volume loose_volume, Volume truck_volume, std::optional<Density> density,
                                std::optional<Mass> payload);

}  // namespace undercroft::calc
