#include "calc/water/rain.hpp"

#include <algorithm>

namespace undercroft::calc {

RainCurve::RainCurve(const RainTable& rain) {
    require(rain.size() >= 2, "the rain table needs at least two rows of duration and intensity");
    for (const auto& [duration, intensity] : rain) {
        require_positive("duration", duration);
        require_positive("intensity", intensity);
        Speed falling = intensity;
        if (!curve_.x.empty()) {
            require(is_above(duration, curve_.x.back()), shown("duration", duration),
                    " must be longer than that of the row before");
            require(!is_above(intensity, curve_.y.back()), shown("intensity", intensity),
                    " must not be above that of the shorter duration before");
            falling = std::min(falling, curve_.y.back());
        }
        curve_.add(duration, falling);
    }
}

Speed RainCurve::intensity(Time duration) const {
    const bool inside = duration >= shortest() - slack(duration, shortest()) &&
                        duration <= longest() + slack(duration, longest());
    if (!inside)
        no_answer(shown("duration", duration) + " is outside the rain table (" + in_words(shortest()) +
                  " to " + in_words(longest()) + "), and nothing is extrapolated");
    return log_log(curve_, std::clamp(duration, shortest(), longest()));
}

Speed rain_intensity(const RainTable& rain, Time duration) {
    require_positive("duration", duration);
    return RainCurve(rain).intensity(duration);
}

bool rain_reaches_beyond(const RainTable& rain, Time duration) {
    require_positive("duration", duration);
    const Time longest = RainCurve(rain).longest();
    return longest > duration + slack(longest, duration);
}

}  // namespace undercroft::calc
