/// \file rain.hpp
/// Rain of one frequency: mean intensity by duration.
#pragma once

#include <vector>

#include "calc/interpolate.hpp"
#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Rows of duration and mean intensity over it.
using RainTable = Table<Time, Speed>;

/// A rain table that was checked, read between its rows: linear in log duration against log intensity.
class RainCurve {
public:
    /// \throws Refused(domain) for fewer than two rows, durations that are not above 0 and rising, or
    /// intensities that are not above 0 or that rise with the duration.
    explicit RainCurve(const RainTable& rain);

    /// \throws Refused(no_answer) outside the table.
    [[nodiscard]] Speed intensity(Time duration) const;

    [[nodiscard]] Time shortest() const { return curve_.x.front(); }
    [[nodiscard]] Time longest() const { return curve_.x.back(); }
    [[nodiscard]] const std::vector<Time>& durations() const { return curve_.x; }

private:
    Curve<Time, Speed> curve_;
};

/// Mean intensity of a duration. \throws Refused as RainCurve; Refused(domain) for a duration not above 0.
[[nodiscard]] Speed rain_intensity(const RainTable& rain, Time duration);

/// Whether a table goes on beyond a duration; where it ends with the one that governs, a longer rain may
/// govern.
/// \throws Refused as RainCurve; Refused(domain) for a duration not above 0.
[[nodiscard]] bool rain_reaches_beyond(const RainTable& rain, Time duration);

}  // namespace undercroft::calc
