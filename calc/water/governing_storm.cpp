#include "calc/water/governing_storm.hpp"

#include <algorithm>
#include <cmath>

#include "calc/customary.hpp"
#include "calc/solve.hpp"
#include "calc/water/nrcs_storm.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

constexpr double durations_tried = 100;
constexpr double lengths_tried = 60;   // of storms of whole steps, and as many again around the best
constexpr double near_the_best = 0.9;  // summits that may yet be the highest

bool lasts_a_day(const StormCourse& course) {
    const StormShape* shape = std::get_if<StormShape>(&course);
    return shape != nullptr && *shape != StormShape::block && *shape != StormShape::alternating;
}

/// All that storms of one table run through, checked once.
class Search {
public:
    Search(const RainTable& rain, const Catchment& catchment, const StormCourse& course, Time step)
        : rain_(rain), curve_(rain), catchment_(catchment), course_(course), step_(step) {}

    [[nodiscard]] Hydrograph runoff(Time duration) const {
        const auto& [c, area, tc] = catchment_;
        return time_area_hydrograph(c, area, storm(duration), tc);
    }

    [[nodiscard]] std::vector<Time> durations() const {
        if (lasts_a_day(course_)) return {24.0 * hour};
        if (is_alternating(course_)) return whole_steps();
        std::vector<Time> durations = curve_.durations();
        add_kinks(durations, {catchment_.time_of_concentration});
        const double each =
            std::max(1.0, std::floor(durations_tried / static_cast<double>(durations.size())));
        std::vector<Time> between_rows;
        for (std::size_t i = 1; i < durations.size(); ++i)
            for (double k = 1; k < each; ++k)
                between_rows.push_back(durations[i - 1] *
                                       std::pow(durations[i] / durations[i - 1], k / each));
        add_kinks(durations, between_rows);
        return durations;
    }

    /// Storms between two of those durations, where they come in whole steps.
    [[nodiscard]] std::vector<Time> whole_steps_between(Time low, Time high) const {
        if (!is_alternating(course_)) return {};
        const double first = std::round(low / step_) + 1;
        const double last = std::round(high / step_) - 1;
        const double stride = std::max(1.0, std::ceil((last - first) / lengths_tried));
        std::vector<Time> durations;
        for (double n = first; n <= last; n += stride) durations.push_back(n * step_);
        return durations;
    }

    [[nodiscard]] bool is_continuous() const { return !lasts_a_day(course_) && !is_alternating(course_); }

private:
    [[nodiscard]] Hyetograph storm(Time duration) const {
        const Length depth = curve_.intensity(duration) * duration;
        if (const StormPattern* pattern = std::get_if<StormPattern>(&course_))
            return storm_by_pattern(depth, duration, *pattern);
        if (is_alternating(course_)) return storm_of(rain_, duration, step_, course_);
        if (lasts_a_day(course_)) return storm_of_depth(depth, duration, step_, course_);
        return {{zero, zero}, {duration, depth}};
    }

    [[nodiscard]] std::vector<Time> whole_steps() const {
        const double most = whole_down(curve_.longest() / step_);
        const double least = whole_up(curve_.shortest() / step_);
        require(least <= most && least >= 1, shown("step", step_),
                " must fit into the durations of the rain table (", amount(curve_.shortest()), " to ",
                amount(curve_.longest()), ")");
        std::vector<Time> durations;
        const double ratio = most - least < lengths_tried ? 1 : std::pow(most / least, 1 / lengths_tried);
        for (double n = least; n < most; n = std::max(n + 1, std::floor(n * ratio)))
            durations.push_back(n * step_);
        durations.push_back(most * step_);
        return durations;
    }

    const RainTable& rain_;
    RainCurve curve_;
    const Catchment& catchment_;
    const StormCourse& course_;
    Time step_;
};

Time step_or_shortest(const RainTable& rain, const StormCourse& course, std::optional<Time> step) {
    const RainCurve curve(rain);
    if (step) require_positive("step", *step);
    return step.value_or(lasts_a_day(course) ? 0.1 * hour : curve.shortest());
}

/// What a storm leaves to be held; between storms that fill a bed alike the deeper one.
Volume filled(const FloodMarks& marks, const Basin& basin) {
    const Volume bed = basin.levels.back().stored;
    return marks.stored + marks.spilled + 1e-9 * bed * (marks.depth / basin.top());
}

}  // namespace

GoverningStorm governing_storm(const RainTable& rain, const Catchment& catchment, const StorageTable& storage,
                               const RatingTable& rating, const StormCourse& course, Length initial_depth,
                               const std::optional<StorageTable>& surface, std::optional<Time> step) {
    const Search search(rain, catchment, course, step_or_shortest(rain, course, step));
    const Basin basin(storage, rating, surface);
    const Length from = depth_inside(basin, initial_depth);
    const auto marks = [&](Time duration) { return flood_marks_in(basin, search.runoff(duration), from); };
    const auto missing = [&](Time duration) -> Volume { return -filled(marks(duration), basin); };

    const std::vector<Time> durations = search.durations();
    std::vector<Volume> left;
    for (const Time& duration : durations) left.push_back(missing(duration));
    const auto best = static_cast<std::size_t>(std::min_element(left.begin(), left.end()) - left.begin());
    std::pair<Time, Volume> found = {durations[best], left[best]};
    if (search.is_continuous())
        for (std::size_t i = 1; i + 1 < durations.size(); ++i) {
            const bool summit = left[i] <= left[i - 1] && left[i] <= left[i + 1];
            if (!summit || left[i] > near_the_best * left[best]) continue;
            const auto [at, value] = minimum_between(missing, durations[i - 1], durations[i + 1]);
            if (value < found.second) found = {at, value};
        }
    const std::size_t low = best == 0 ? 0 : best - 1;
    const std::size_t high = std::min(best + 1, durations.size() - 1);
    for (const Time& duration : search.whole_steps_between(durations[low], durations[high])) {
        const Volume value = missing(duration);
        if (value < found.second) found = {duration, value};
    }
    return {found.first, marks(found.first)};
}

Hydrograph storm_runoff(const RainTable& rain, const Catchment& catchment, Time duration,
                        const StormCourse& course, std::optional<Time> step) {
    require_positive("duration", duration);
    return Search(rain, catchment, course, step_or_shortest(rain, course, step)).runoff(duration);
}

}  // namespace undercroft::calc
