#include "calc/ground/load_spread.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

void require_spread(Batter spread) {
    require_not_negative("spread", spread);
    require(
        is_at_most(spread, batter(1)), shown("spread", spread),
        " must be at most 1 run per rise: load spread is 2V:1H in common practice, and wider than 1V:1H it "
        "is not safe to assume");
}

Pressure spread_load(Force load, Length length, Length width, Length depth, Batter spread) {
    require_positive("load", load);
    require_positive("length", length);
    require_positive("width", width);
    require_not_negative("depth", depth);
    require_spread(spread);
    const Length wider = 2.0 * horizontal_run(spread, depth);
    return load / ((length + wider) * (width + wider));
}

namespace {

/// Distance over which a pressure on a strip of that width falls to the allowable one.
Length distance_to_spread(Pressure pressure, Length width, Pressure allowable, Batter spread) {
    require_spread(spread);
    require_positive("spread", spread);
    const Length wider = width * std::max(0.0, pressure / allowable - 1.0);
    return vertical_rise(spread, wider) / 2.0;
}

}  // namespace

Length base_thickness(Pressure pressure, Length loaded_width, Pressure allowable, Batter spread) {
    require_positive("pressure", pressure);
    require_positive("loaded width", loaded_width);
    require_positive("allowable", allowable);
    return distance_to_spread(pressure, loaded_width, allowable, spread);
}

Length side_fill_width(Pressure lateral_pressure, Length height, Pressure allowable, Batter spread) {
    require_positive("lateral pressure", lateral_pressure);
    require_positive("height", height);
    require_positive("allowable", allowable);
    return distance_to_spread(lateral_pressure, height, allowable, spread);
}

}  // namespace undercroft::calc
