/// \file nrcs_storm.hpp
/// The synthetic 24-hour storms of the NRCS.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Where in the United States a storm falls so: I and IA on the Pacific coast, III on the Gulf of Mexico and
/// the Atlantic coast, II elsewhere.
enum class RainType { type_i, type_ia, type_ii, type_iii };

/// Cumulative share of the 24-hour rain against time: every 0.1 h, of type IA every 0.5 h.
///
/// USDA TR-55 (1986), app. B, and NEH Part 630, ch. 4; ratios as in two public transcriptions that agree
/// digit for digit.
[[nodiscard]] Table<Time, Share> nrcs_storm(RainType type);

}  // namespace undercroft::calc
