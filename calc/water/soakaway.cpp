#include "calc/water/soakaway.hpp"

#include <algorithm>

#include "calc/water/governing_duration.hpp"

namespace undercroft::calc {

namespace {

void require_safety_factor(Share factor) {
    require(factor >= share(1) && is_finite(factor), shown("safety factor", factor), " must be 1 or more");
}

struct SoakBalance {
    Area drained_area;
    Flow soakage;

    [[nodiscard]] Volume inflow(Time duration, Speed intensity) const {
        return intensity * duration * drained_area;
    }
    [[nodiscard]] Volume outflow(Time duration) const { return soakage * duration; }
    [[nodiscard]] Volume missing(Time duration, Speed intensity) const {
        return inflow(duration, intensity) - outflow(duration);
    }
    [[nodiscard]] Time governing(const RainCurve& rain) const {
        return governing_duration(rain, {}, [this](Time duration, Speed i) { return missing(duration, i); });
    }
};

SoakBalance checked_balance(Area drained_area, Length perimeter, Length effective_depth, Speed rate,
                            Share factor) {
    require_positive("drained area", drained_area);
    require_not_negative("rate", rate);
    require_safety_factor(factor);
    return {drained_area, rate / number(factor) * soakaway_walls(perimeter, effective_depth)};
}

}  // namespace

Share soakage_factor(Area drained_area, SoakageFailure failure) {
    require_positive("drained area", drained_area);
    if (failure == SoakageFailure::none) return share(1.5);
    if (failure == SoakageFailure::major) return share(10);
    if (!is_at_least(drained_area, 100.0 * square_metre)) return share(2);
    return share(is_at_most(drained_area, 1000.0 * square_metre) ? 3 : 5);
}

Area soakaway_walls(Length perimeter, Length effective_depth) {
    require_positive("perimeter", perimeter);
    require_positive("effective depth", effective_depth);
    return perimeter * effective_depth / 2.0;
}

Volume soakaway_storage(const RainTable& rain, Area drained_area, Length perimeter, Length effective_depth,
                        Speed rate, Share safety_factor) {
    const SoakBalance balance =
        checked_balance(drained_area, perimeter, effective_depth, rate, safety_factor);
    const RainCurve curve(rain);
    const Time duration = balance.governing(curve);
    return std::max<Volume>(balance.missing(duration, curve.intensity(duration)), zero);
}

SoakawayDurations soakaway_durations(const RainTable& rain, Area drained_area, Length perimeter,
                                     Length effective_depth, Speed rate, Share safety_factor) {
    const SoakBalance balance =
        checked_balance(drained_area, perimeter, effective_depth, rate, safety_factor);
    const RainCurve curve(rain);
    std::vector<Time> durations = curve.durations();
    add_kinks(durations, {balance.governing(curve)});
    SoakawayDurations table;
    for (const Time& duration : durations) {
        const Speed intensity = curve.intensity(duration);
        table.emplace_back(duration, intensity, balance.inflow(duration, intensity),
                           balance.outflow(duration),
                           std::max<Volume>(balance.missing(duration, intensity), zero));
    }
    return table;
}

Time soakaway_half_time(Volume stored, Length perimeter, Length effective_depth, Speed rate,
                        Share safety_factor) {
    require_positive("stored volume", stored);
    require_positive("rate", rate);
    require_safety_factor(safety_factor);
    return 0.5 * stored / (soakaway_walls(perimeter, effective_depth) * rate / number(safety_factor));
}

}  // namespace undercroft::calc
