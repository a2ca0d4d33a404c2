#include "calc/water/hyetograph.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

#include "calc/customary.hpp"
#include "calc/interpolate.hpp"
#include "calc/water/nrcs_storm.hpp"
#include "calc/water/runoff.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

void require_times(Time duration, Time step) {
    require_positive("duration", duration);
    require_positive("step", step);
    require(!is_above(step, duration), shown("step", step), " must be at most the duration (",
            amount(duration), ")");
}

/// Cumulative share by the share of the time.
using Course = Curve<double, double>;

Course checked_pattern(const StormPattern& pattern) {
    require(pattern.size() >= 2, "the pattern needs at least two rows of time and cumulative share");
    const Time last = std::get<0>(pattern.back());
    Course course;
    for (const auto& [time, cumulative] : pattern) {
        if (course.x.empty())
            require(time == zero && cumulative == share(0), "the pattern must begin with time 0 and 0 %");
        else
            require(is_above<double>(time / last, course.x.back()), shown("time", time),
                    " of the pattern must be later than that of the row before");
        require(course.y.empty() || number(cumulative) >= course.y.back(),
                shown("cumulative share", cumulative),
                " of the pattern must not be below that of the row before");
        course.add(time / last, number(cumulative));
    }
    require(is_at_least(course.y.back(), 1.0) && is_at_most(course.y.back(), 1.0),
            "the pattern must end at 100 %, not at ", amount(share(course.y.back())));
    course.y.back() = 1;
    return course;
}

Hyetograph spread(Length depth, Time duration, Time step, const Course& course) {
    Hyetograph storm;
    for (const Time& t : multiples(step, duration))
        storm.emplace_back(t, t == duration ? depth : linear(course, t / duration) * depth);
    return storm;
}

/// The NRCS's type of rain that a shape is.
std::optional<RainType> rain_type_of(StormShape shape) {
    switch (shape) {
        case StormShape::type_i:
            return RainType::type_i;
        case StormShape::type_ia:
            return RainType::type_ia;
        case StormShape::type_ii:
            return RainType::type_ii;
        case StormShape::type_iii:
            return RainType::type_iii;
        case StormShape::block:
        case StormShape::alternating:
            return std::nullopt;
    }
    refuse_value("unknown shape of a storm");
}

Course course_of(const StormCourse& storm, Time duration) {
    if (const StormPattern* pattern = std::get_if<StormPattern>(&storm)) return checked_pattern(*pattern);
    const std::optional<RainType> type = rain_type_of(std::get<StormShape>(storm));
    if (!type) return {{0, 1}, {0, 1}};
    const Time day = 24.0 * hour;
    require(is_at_least(duration, day) && is_at_most(duration, day), shown("duration", duration),
            " must be 24 h (", amount(day), ") of an NRCS storm");
    return checked_pattern(nrcs_storm(*type));
}

/// Each block's place in the storm, the greatest first: the middle, right of it, left of it ...
std::vector<std::size_t> places_by_size(std::size_t blocks) {
    std::vector<std::size_t> places = {(blocks - 1) / 2};
    std::size_t left = places.front();
    std::size_t right = places.front() + 1;
    while (places.size() < blocks) {
        if (right < blocks) places.push_back(right++);
        if (left > 0) places.push_back(--left);
    }
    return places;
}

Hyetograph alternating_blocks(const RainCurve& rain, Time duration, Time step) {
    const double n = duration / step;
    require(is_whole(n), shown("duration", duration), " must be a whole number of steps (", amount(step),
            ")");
    require_rows(n);
    const auto blocks = static_cast<std::size_t>(std::round(n));
    std::vector<Length> depths = {zero};
    for (std::size_t k = 1; k <= blocks; ++k) {
        const Time t = k == blocks ? duration : static_cast<double>(k) * step;
        depths.push_back(rain.intensity(t) * t);
        require(depths[k] >= depths[k - 1], "the rain table has less depth in ", amount(t), " than in ",
                amount(step), " less: alternating blocks need depths that rise");
    }
    std::vector<Length> by_size;
    for (std::size_t k = 1; k <= blocks; ++k) by_size.push_back(depths[k] - depths[k - 1]);
    std::sort(by_size.begin(), by_size.end(), std::greater<>());
    std::vector<Length> placed(blocks);
    const std::vector<std::size_t> places = places_by_size(blocks);
    for (std::size_t k = 0; k < blocks; ++k) placed[places[k]] = by_size[k];

    Hyetograph storm = {{zero, zero}};
    for (std::size_t k = 0; k < blocks; ++k) {
        const bool last = k + 1 == blocks;
        storm.emplace_back(last ? duration : static_cast<double>(k + 1) * step,
                           last ? depths.back() : std::get<1>(storm.back()) + placed[k]);
    }
    return storm;
}

}  // namespace

Length rain_depth(const RainTable& rain, Time duration) {
    return rain_intensity(rain, duration) * duration;
}

Hyetograph storm_of(const RainTable& rain, Time duration, Time step, const StormCourse& course) {
    require_times(duration, step);
    if (is_alternating(course)) return alternating_blocks(RainCurve(rain), duration, step);
    return spread(rain_depth(rain, duration), duration, step, course_of(course, duration));
}

Hyetograph storm_of_depth(Length depth, Time duration, Time step, const StormCourse& course) {
    require_positive("depth", depth);
    require_storm_depth("depth", depth);
    require_times(duration, step);
    require(!is_alternating(course), "alternating blocks need a rain table, not one depth");
    return spread(depth, duration, step, course_of(course, duration));
}

Hyetograph storm_by_pattern(Length depth, Time duration, const StormPattern& pattern) {
    require_positive("depth", depth);
    require_storm_depth("depth", depth);
    require_positive("duration", duration);
    const Course course = checked_pattern(pattern);
    Hyetograph storm;
    for (std::size_t i = 0; i < course.x.size(); ++i)
        storm.emplace_back(course.x[i] * duration, course.y[i] * depth);
    std::get<0>(storm.back()) = duration;
    return storm;
}

Speed rain_formula(Speed a, Time b, Share c, Time duration) {
    require_positive("a", a);
    require_not_negative("b", b);
    require(c > share(0) && c <= share(1.5), shown("c", c), " must be above 0 and at most 1.5");
    require_positive("duration", duration);
    return a * std::pow((duration + b) / minute, -number(c));
}

RainTable rain_formula_table(Speed a, Time b, Share c, const std::vector<Time>& durations) {
    RainTable rain;
    for (const Time& duration : durations) rain.emplace_back(duration, rain_formula(a, b, c, duration));
    (void)RainCurve(rain);  // refuses durations that do not rise
    return rain;
}

}  // namespace undercroft::calc
