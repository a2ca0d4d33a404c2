/// \file stone_sizes.hpp
/// Envelopes of gradings: the published sizes of coarse aggregate, and whether a grading fits.
#pragma once

#include <variant>
#include <vector>

#include "calc/ground/grading.hpp"

namespace undercroft::calc {

/// Size numbers of coarse aggregate.
enum class StoneSize { no_3, no_357, no_4, no_467, no_5, no_56, no_57, no_67 };

/// Sieve, least and most percentage passing.
using Envelope = Table<Length, Percent, Percent>;

/// AASHTO M 43 / ASTM D448, Table 1: the sieves of a size number and the percentages that may pass (57 and 67
/// as printed in Iowa DOT IM 209, Appendix D; the others from memory).
[[nodiscard]] const Envelope& stone_size_envelope(StoneSize size);

/// Whether a grading lies within an envelope at each of its sieves.
///
/// A sieve of the grading within 2 % of the envelope's is the same one (1 1/2 in is 37.5 mm in ASTM E11).
/// Where the grading has no such sieve, what passes it lies between what passes its neighbours; when that
/// decides, it counts. One sieve outside is enough not to fit, whatever the others are.
/// \throws Refused(domain) for a table that is no grading or no envelope; Refused(no_answer) where a sieve is
/// missing and its neighbours do not decide.
[[nodiscard]] bool grading_fits(const Grading& grading, const std::variant<StoneSize, Envelope>& envelope);

}  // namespace undercroft::calc
