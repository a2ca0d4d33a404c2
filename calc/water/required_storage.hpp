/// \file required_storage.hpp
/// Storage for a permitted release: the largest shortfall over all durations of rain.
#pragma once

#include <optional>

#include "calc/water/rain.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Largest volume by which runoff exceeds release, over all durations in the rain table's range.
///
/// S(td) = C i(td) A td - k Q td, never below 0. Without a time of concentration k = 1: the release is
/// constant from the start (modified rational method). With one, the release is averaged over the
/// rising and falling limbs: k = 0.5 (1 + tc/td), FAA AC 150/5320-5 (from memory); for td < tc this
/// average would exceed the permitted release, and k stays 1, as in Guo, J. Water Resour. Plan. Manage. 125
/// (1999). The governing duration is searched between the rows too.
/// \throws Refused(domain) for a coefficient not above 0 or over 1, an area or time of concentration not
/// above 0, a release below 0, and as RainCurve.
[[nodiscard]] Volume storage_required(const RainTable& rain, Share coefficient, Area area, Flow release,
                                      std::optional<Time> time_of_concentration);

/// Duration, intensity, volume of inflow, volume released, volume stored.
using StorageDurations = Table<Time, Speed, Volume, Volume, Volume>;

/// The same for each duration of the table, with a row added at the governing duration where it falls
/// between two; no more is released than flows in. \throws Refused(domain) as storage_required.
[[nodiscard]] StorageDurations storage_durations(const RainTable& rain, Share coefficient, Area area,
                                                 Flow release, std::optional<Time> time_of_concentration);

}  // namespace undercroft::calc
