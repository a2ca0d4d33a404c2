/// \file unit_hydrograph.hpp
/// The NRCS dimensionless unit hydrograph.
#pragma once

#include <vector>

#include "calc/interpolate.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// t/Tp against q/qp, both pure numbers. USDA NEH Part 630, ch. 16 (2007), Table 16-1.
[[nodiscard]] const Curve<double, double>& dimensionless_unit_hydrograph();

/// Time from the start of a unit of runoff to the peak of its flow: Tp = D/2 + 0.6 tc.
[[nodiscard]] Time unit_hydrograph_peak_time(Time duration, Time time_of_concentration);

/// Shares of a unit of runoff that pass at 0, D, 2 D, ... after it began to run off over a time D.
/// They add up to 1, so that flow = share x runoff x area / D keeps the volume.
[[nodiscard]] std::vector<double> unit_hydrograph_shares(Time duration, Time time_of_concentration);

}  // namespace undercroft::calc
