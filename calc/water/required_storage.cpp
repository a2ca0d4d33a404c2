#include "calc/water/required_storage.hpp"

#include <algorithm>

#include "calc/water/governing_duration.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::calc {

namespace {

/// A storm of every duration over one catchment with one release.
struct RainBalance {
    Flow release;
    std::optional<Time> time_of_concentration;
    Share coefficient;
    Area area;

    [[nodiscard]] Volume inflow(Time duration, Speed intensity) const {
        return coefficient * intensity * area * duration;
    }
    /// What may leave meanwhile, whether or not so much arrives.
    [[nodiscard]] Volume allowed(Time duration) const {
        const bool limbs = time_of_concentration && duration > *time_of_concentration;
        const double k = limbs ? 0.5 * (1 + *time_of_concentration / duration) : 1.0;
        return k * release * duration;
    }
    [[nodiscard]] Volume shortfall(Time duration, Speed intensity) const {
        return inflow(duration, intensity) - allowed(duration);
    }
};

RainBalance checked_balance(Share coefficient, Area area, Flow release, std::optional<Time> time) {
    require_coefficient(coefficient);
    require_positive("area", area);
    require_not_negative("release", release);
    if (time) require_positive("time of concentration", *time);
    return {release, time, coefficient, area};
}

Time governing(const RainCurve& rain, const RainBalance& balance) {
    std::vector<Time> kinks;
    if (balance.time_of_concentration) kinks.push_back(*balance.time_of_concentration);
    return governing_duration(
        rain, kinks, [&](Time duration, Speed intensity) { return balance.shortfall(duration, intensity); });
}

}  // namespace

Volume storage_required(const RainTable& rain, Share coefficient, Area area, Flow release,
                        std::optional<Time> time_of_concentration) {
    const RainBalance balance = checked_balance(coefficient, area, release, time_of_concentration);
    const RainCurve curve(rain);
    const Time duration = governing(curve, balance);
    return std::max<Volume>(balance.shortfall(duration, curve.intensity(duration)), zero);
}

StorageDurations storage_durations(const RainTable& rain, Share coefficient, Area area, Flow release,
                                   std::optional<Time> time_of_concentration) {
    const RainBalance balance = checked_balance(coefficient, area, release, time_of_concentration);
    const RainCurve curve(rain);
    std::vector<Time> durations = curve.durations();
    add_kinks(durations, {governing(curve, balance)});

    StorageDurations table;
    for (const Time& duration : durations) {
        const Speed intensity = curve.intensity(duration);
        const Volume inflow = balance.inflow(duration, intensity);
        const Volume released = std::min(balance.allowed(duration), inflow);
        table.emplace_back(duration, intensity, inflow, released, inflow - released);
    }
    return table;
}

}  // namespace undercroft::calc
