/// \file hyetograph.hpp
/// A storm with a shape: cumulative rain against time, from a table of intensity by duration.
#pragma once

#include <optional>
#include <variant>

#include "calc/water/rain.hpp"

namespace undercroft::calc {

/// Rows of time and cumulative rain, from 0 and 0; straight between.
using Hyetograph = Table<Time, Length>;

enum class StormShape {
    block,        ///< the mean intensity all the time
    alternating,  ///< blocks that hold the rain of every shorter duration too, the greatest in the middle
    type_i,       ///< the NRCS's 24-hour storms (nrcs_storm), for 24 hours only
    type_ia,
    type_ii,
    type_iii,
};

/// Rows of time and cumulative share of the rain, from 0 and 0 to 1; straight between. Stretched to the
/// storm's duration.
using StormPattern = Table<Time, Share>;

/// How the rain of a storm falls: by a rule, or by a pattern typed or pasted.
using StormCourse = std::variant<StormShape, StormPattern>;

/// Whether it is the rule of alternating blocks, which needs the whole rain table.
[[nodiscard]] inline bool is_alternating(const StormCourse& course) {
    const StormShape* shape = std::get_if<StormShape>(&course);
    return shape != nullptr && *shape == StormShape::alternating;
}

/// Depth of rain of a duration: its mean intensity (rain_intensity) times it.
/// \throws Refused as rain_intensity.
[[nodiscard]] Length rain_depth(const RainTable& rain, Time duration);

/// A storm of a duration, every `step`, whose depth is that of the table to the last digit.
///
/// Alternating blocks: the depths of 1, 2, 3 ... steps, their differences sorted, the greatest in the middle
/// (of an even number the first of both), then right, left, right ... Chow, Maidment and Mays, Applied
/// Hydrology (1988), sec. 14.4 (from memory). A pattern is read at each step, such as the 24-hour
/// distributions of USDA NEH Part 630, ch. 4.
/// \throws Refused(domain) for a duration or step not above 0, a step longer than the duration, one that with
/// alternating blocks does not divide the duration or is shorter than the table's shortest, a pattern that
/// does not begin at 0 and 0 %, end at 100 % or whose times do not rise or shares fall; and as rain_depth.
[[nodiscard]] Hyetograph storm_of(const RainTable& rain, Time duration, Time step, const StormCourse& course);

/// The same from a depth that is known, for block and pattern.
/// \throws Refused(domain) as storm_of, for a depth not above 0, and for alternating blocks, which need the
/// table.
[[nodiscard]] Hyetograph storm_of_depth(Length depth, Time duration, Time step, const StormCourse& course);

/// A storm of a depth by a pattern, with a row for each of the pattern's.
/// \throws Refused(domain) as storm_of_depth.
[[nodiscard]] Hyetograph storm_by_pattern(Length depth, Time duration, const StormPattern& pattern);

/// Mean intensity by the formula i = a/(t + b)^c, t in minutes: `a` is the intensity where t + b is one
/// minute.
///
/// The common form of intensity-duration-frequency formulas (Chow, Maidment and Mays (1988), sec. 14.2).
/// \throws Refused(domain) for an intensity, duration or exponent not above 0, an exponent over 1.5 or a b
/// below 0.
[[nodiscard]] Speed rain_formula(Speed a, Time b, Share c, Time duration);

/// A rain table of that formula at the durations given. \throws Refused as rain_formula and RainCurve.
[[nodiscard]] RainTable rain_formula_table(Speed a, Time b, Share c, const std::vector<Time>& durations);

}  // namespace undercroft::calc
