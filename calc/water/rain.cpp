#include "calc/water/rain.hpp"

#include <algorithm>

namespace undercroft::calc {

RainCurve::RainCurve(const RainTable& rain) {
    require(rain.size() >= 2, "the rain table needs at least two rows of duration and intensity");
    for (const auto& [duration, intensity] : rain) {
        require_positive("duration", duration);
        require_positive("intensity", intensity);
        double falling = intensity.value();
        if (!points_.x.empty()) {
            require(is_above(duration.value(), points_.x.back()), shown("duration", duration),
                    " must be longer than that of the row before");
            require(!is_above(intensity.value(), points_.y.back()), shown("intensity", intensity),
                    " must not be above that of the shorter duration before");
            falling = std::min(falling, points_.y.back());
        }
        points_.x.push_back(duration.value());
        points_.y.push_back(falling);
    }
}

Speed RainCurve::intensity(Time duration) const {
    const double t = duration.value();
    const bool inside = t >= shortest().value() - slack(t, shortest().value()) &&
                        t <= longest().value() + slack(t, longest().value());
    if (!inside)
        no_answer(shown("duration", duration) + " is outside the rain table (" +
                  text_of(as_quantity(shortest())) + " to " + text_of(as_quantity(longest())) +
                  "), and nothing is extrapolated");
    return Speed::from_value(log_log(points_, std::clamp(t, points_.x.front(), points_.x.back())));
}

std::vector<Time> RainCurve::durations() const {
    std::vector<Time> durations;
    for (const double t : points_.x) durations.push_back(Time::from_value(t));
    return durations;
}

Speed rain_intensity(const RainTable& rain, Time duration) {
    require_positive("duration", duration);
    return RainCurve(rain).intensity(duration);
}

}  // namespace undercroft::calc
