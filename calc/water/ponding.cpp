#include "calc/water/ponding.hpp"

#include <algorithm>
#include <cmath>

#include "calc/require.hpp"
#include "calc/water/groundwater.hpp"

namespace undercroft::calc {

namespace {

void require_soil(Speed conductivity, Length suction, Share moisture_deficit, Speed rain) {
    require_positive("conductivity", conductivity);
    require_not_negative("suction", suction);
    require_share("moisture deficit", moisture_deficit);
    require_positive("rain", rain);
}

}  // namespace

Time ponding_time(Speed conductivity, Length suction, Share moisture_deficit, Speed rain) {
    require_soil(conductivity, suction, moisture_deficit, rain);
    if (rain <= conductivity)
        no_answer("the ground never ponds: " + shown("rain", rain) + " must exceed the conductivity (" +
                  in_words(conductivity) + ")");
    return conductivity * suction * moisture_deficit / (rain * (rain - conductivity));
}

Length rain_infiltration(Speed conductivity, Length suction, Share moisture_deficit, Speed rain, Time time) {
    require_soil(conductivity, suction, moisture_deficit, rain);
    require_not_negative("time", time);
    const Length fallen = rain * time;
    if (rain <= conductivity) return fallen;
    const Time ponds = ponding_time(conductivity, suction, moisture_deficit, rain);
    if (time <= ponds) return fallen;
    // Ponded from the start, as much would be in the ground this long after.
    const Length soaked = suction * moisture_deficit;
    const Length at_ponding = rain * ponds;
    const Time since = soaked == zero
                           ? Time(zero)
                           : Time((at_ponding - soaked * std::log1p(at_ponding / soaked)) / conductivity);
    return std::min(fallen,
                    green_ampt_infiltration(conductivity, suction, moisture_deficit, time - ponds + since));
}

}  // namespace undercroft::calc
