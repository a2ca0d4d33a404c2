/// \file emptying.hpp
/// How long a bed takes to drain.
#pragma once

#include "calc/water/pool.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Time in which the water falls from one depth to another, without inflow: t = integral of dV/Q.
///
/// Between the rows of storage and rating both are straight, and the integral is dV divided by the
/// logarithmic mean of the two flows. Straight to no flow it would never end: there, from the last row
/// without flow to the first with flow, Q ~ x^m of the height x above the former, with m from the next row
/// and at most 1/2, the law of an orifice. (A weir or a part-full orifice has a larger m and, strictly, never
/// quite empties.) The rating need reach no further than from `to_depth` to `from_depth`. Chow, Maidment and
/// Mays, Applied Hydrology (1988), sec. 8.2: dS/dt = -Q; the treatment of the last stretch is common
/// practice.
/// \throws Refused(domain) for a depth outside the storage table or a `to_depth` above `from_depth`, and as
/// Pool; Refused(no_answer) when nothing flows out at a depth above `to_depth`.
[[nodiscard]] Time drain_time(const StorageTable& storage, const RatingTable& rating, Length from_depth,
                              Length to_depth);

}  // namespace undercroft::calc
