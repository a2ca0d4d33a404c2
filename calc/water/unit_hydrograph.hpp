/// \file unit_hydrograph.hpp
/// The NRCS dimensionless unit hydrograph.
#pragma once

#include "calc/interpolate.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// t/Tp against q/qp, both pure numbers. USDA NEH Part 630, ch. 16 (2007), Table 16-1.
[[nodiscard]] const Curve<double, double>& dimensionless_unit_hydrograph();

/// Time from the start of a unit of runoff over a duration D to the peak of its flow: Tp = D/2 + 0.6 tc.
[[nodiscard]] Time unit_hydrograph_peak_time(Time duration, Time time_of_concentration);

/// The unit hydrograph of a time to peak, as what of it passes.
class UnitHydrograph {
public:
    explicit UnitHydrograph(Time peak_time);

    /// Share that passes between two times after it began: the integral of Table 16-1, straight between its
    /// rows; from the start to the end 1.
    [[nodiscard]] double passing(Time from, Time to) const;
    [[nodiscard]] Time end() const;

private:
    Time peak_time_;
};

}  // namespace undercroft::calc
