#include "calc/water/soakage.hpp"

#include <algorithm>
#include <cmath>

#include "calc/water/governing_duration.hpp"
#include "calc/water/mean_growth.hpp"

namespace undercroft::calc {

namespace {

Speed design_rate(Speed rate, Share safety_factor) {
    require_not_negative("rate", rate);
    require(safety_factor >= share(1) && std::isfinite(number(safety_factor)),
            shown("safety factor", safety_factor), " must be 1 or more");
    return rate / number(safety_factor);
}

/// (1 - exp(-x)) / x, which is 1 at 0.
double mean_decay(double x) {
    return x == 0 ? 1 : -std::expm1(-x) / x;
}

/// Depth after a time of constant rain on an empty bed; 0 when the base takes all of it.
Length depth_after(Time duration, Flow inflow, const SoakageBed& bed) {
    const Flow rising = inflow - bed.rate * bed.base;
    const double walls = bed.perimeter * bed.rate * duration / (number(bed.porosity) * bed.base);
    const Length depth = rising * duration / (number(bed.porosity) * bed.base) * mean_decay(walls);
    return std::max<Length>(depth, zero);
}

}  // namespace

Speed soakage_rate(Volume volume, Area area, Time time) {
    require_positive("volume", volume);
    require_positive("area", area);
    require_positive("time", time);
    return volume / (area * time);
}

Flow soakage_flow(Area base_area, Area wall_area, Speed rate, Share safety_factor) {
    require_not_negative("base area", base_area);
    require_not_negative("wall area", wall_area);
    require_positive("base area and wall area together", Area(base_area + wall_area));
    return design_rate(rate, safety_factor) * (base_area + wall_area);
}

namespace {

/// Rain of every duration on a bed that soaks away.
struct RainOnBed {
    RainCurve rain;
    Area drained_area;
    SoakageBed bed;

    [[nodiscard]] Length depth(Time duration, Speed intensity) const {
        return depth_after(duration, intensity * drained_area, bed);
    }
    [[nodiscard]] Time governing() const {
        return governing_duration(rain, {}, [this](Time duration, Speed i) { return depth(duration, i); });
    }
};

RainOnBed checked_bed(const RainTable& rain, Area drained_area, Length length, Length width, Share porosity,
                      Speed rate, Share safety_factor) {
    require_positive("drained area", drained_area);
    require_positive("length", length);
    require_positive("width", width);
    require_porosity("porosity", porosity);
    const SoakageBed bed{length * width, 2.0 * (length + width), porosity, design_rate(rate, safety_factor)};
    return {RainCurve(rain), drained_area, bed};
}

}  // namespace

Length soakage_depth(const RainTable& rain, Area drained_area, Length length, Length width, Share porosity,
                     Speed rate, Share safety_factor) {
    const RainOnBed bed = checked_bed(rain, drained_area, length, width, porosity, rate, safety_factor);
    const Time duration = bed.governing();
    return bed.depth(duration, bed.rain.intensity(duration));
}

Time soakage_duration(const RainTable& rain, Area drained_area, Length length, Length width, Share porosity,
                      Speed rate, Share safety_factor) {
    return checked_bed(rain, drained_area, length, width, porosity, rate, safety_factor).governing();
}

Time soakage_time(Length depth, Share porosity, Area base_area, Length perimeter, Speed rate,
                  Share safety_factor, Share fraction) {
    require_positive("depth", depth);
    require_porosity("porosity", porosity);
    require_positive("base area", base_area);
    require_not_negative("perimeter", perimeter);
    require_positive("rate", rate);
    require(fraction >= share(0) && fraction < share(1), shown("fraction", fraction),
            " must be from 0 to below 1");
    const Length fall = (1.0 - fraction) * depth;
    const Area soaking_at_end = base_area + fraction * depth * perimeter;
    const double growth = fall * perimeter / soaking_at_end;
    const Volume drained = porosity * base_area * fall;
    return drained / (design_rate(rate, safety_factor) * soaking_at_end) * mean_growth(growth);
}

}  // namespace undercroft::calc
