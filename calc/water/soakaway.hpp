/// \file soakaway.hpp
/// Infiltration as it is approved: safety factors, and walls to half depth without the base.
#pragma once

#include "calc/water/rain.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// What happens when a soakaway fails.
enum class SoakageFailure {
    none,   ///< no damage or inconvenience
    minor,  ///< minor damage to external areas or inconvenience, such as surface water in a car park
    major,  ///< damage to buildings or structures, or major inconvenience, such as flooded roads
};

/// Safety factor on a tested soakage rate, by the area drained and what its failure does: below 100 m2 1.5,
/// 2, 10; to 1000 m2 1.5, 3, 10; above 1.5, 5, 10.
///
/// CIRIA C753, The SuDS Manual (2015), Table 25.2; the first two rows as quoted in a public
/// low-impact-development guide, the third from memory.
/// \throws Refused(domain) for an area not above 0.
[[nodiscard]] Share soakage_factor(Area drained_area, SoakageFailure failure);

/// Walls that soak in the design of BRE Digest 365: those to half of the effective depth, as50 = P d/2, the
/// base left out.
/// \throws Refused(domain) for a value not above 0.
[[nodiscard]] Area soakaway_walls(Length perimeter, Length effective_depth);

/// Duration, intensity, inflow I = A R, outflow O = as50 f D, storage required S = I - O (never below 0).
using SoakawayDurations = Table<Time, Speed, Volume, Volume, Volume>;

/// Storage that a soakaway needs: the greatest I - O over all durations of the rain table.
///
/// BRE Digest 365, Soakaway design, as engineers print it (a consultant's calculation in public planning
/// papers; the Digest itself was not read). The governing duration is searched between the rows. \throws
/// Refused(domain) for a drained area, perimeter or depth not above 0, a rate below 0, a safety factor below
/// 1, and as RainCurve.
[[nodiscard]] Volume soakaway_storage(const RainTable& rain, Area drained_area, Length perimeter,
                                      Length effective_depth, Speed rate, Share safety_factor);

/// The same for each duration of the table, with a row added at the one that governs where it falls between
/// two.
[[nodiscard]] SoakawayDurations soakaway_durations(const RainTable& rain, Area drained_area, Length perimeter,
                                                   Length effective_depth, Speed rate, Share safety_factor);

/// Time until half of what a soakaway holds is gone: t = 0.5 S/(as50 f), at most 24 h in the Digest.
/// \throws Refused(domain) for a volume, perimeter, depth or rate not above 0, a safety factor below 1.
[[nodiscard]] Time soakaway_half_time(Volume stored, Length perimeter, Length effective_depth, Speed rate,
                                      Share safety_factor);

}  // namespace undercroft::calc
