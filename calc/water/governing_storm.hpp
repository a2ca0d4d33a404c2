/// \file governing_storm.hpp
/// The storm that fills a bed most, of all durations of a rain table.
#pragma once

#include <optional>

#include "calc/water/hyetograph.hpp"
#include "calc/water/spill_routing.hpp"
#include "calc/water/time_area.hpp"

namespace undercroft::calc {

/// What runs off to a bed: C, A, and the time after which all of the catchment contributes.
struct Catchment {
    Share coefficient;
    Area area;
    Time time_of_concentration;
};

/// A duration of rain and the marks that its storm leaves in a bed.
struct GoverningStorm {
    Time duration;
    FloodMarks marks;
};

/// The duration within the rain table for which a storm fills the bed most, what it spills counted as if it
/// stood there.
///
/// Each storm runs off by the time-area method (a block as the trapezoid of the modified rational method) and
/// passes the bed exactly (BasinRun). Block storms and patterns are tried at every row of the table, at the
/// time of concentration and between them, evenly in log duration, about 100 in all; around each that fills
/// the bed more than its neighbours the summit is searched by Brent's method (Boost.Math). Storms of
/// alternating blocks, which last whole steps, are tried at about 60 numbers of steps, evenly in log
/// duration, and at as many again around the best. An NRCS storm lasts 24 h.
/// \param step of alternating blocks; left out, the shortest duration of the rain table.
/// \throws Refused as RainCurve, storm_of, time_area_hydrograph and flood_marks; Refused(no_answer) for an
/// NRCS storm when the table does not hold 24 h; Refused(domain) for a step not above 0.
[[nodiscard]] GoverningStorm governing_storm(const RainTable& rain, const Catchment& catchment,
                                             const StorageTable& storage, const RatingTable& rating,
                                             const StormCourse& course, Length initial_depth,
                                             const std::optional<StorageTable>& surface,
                                             std::optional<Time> step);

/// The runoff of one such storm, as governing_storm routes it: for drawing it and for its table. \throws
/// Refused as it.
[[nodiscard]] Hydrograph storm_runoff(const RainTable& rain, const Catchment& catchment, Time duration,
                                      const StormCourse& course, std::optional<Time> step);

}  // namespace undercroft::calc
