#include "calc/water/runoff.hpp"

#include <algorithm>

#include "calc/customary.hpp"

namespace undercroft::calc {

namespace {
constexpr Length most_rain = 5.0 * metre;  // beyond any storm; a slip of units
}

void require_storm_depth(const char* name, Length rain) {
    require(rain <= most_rain, shown(name, rain), " must be at most ", amount(most_rain), ": is it in mm?");
}

Share runoff_coefficient(const Table<Area, Share>& surfaces) {
    Area total = zero;
    Area running_off = zero;
    for (const auto& [area, coefficient] : surfaces) {
        require_not_negative("area", area);
        require_share("coefficient", coefficient);
        total += area;
        running_off += number(coefficient) * area;
    }
    require_positive("total of the areas", total);
    return running_off / total;
}

Flow runoff_peak(Share coefficient, Speed intensity, Area area) {
    require_coefficient(coefficient);
    require_positive("intensity", intensity);
    require_positive("area", area);
    return coefficient * intensity * area;
}

Length runoff_depth(Share curve_number, Length rain_depth, Share abstraction_ratio) {
    require(curve_number >= share(1) && curve_number <= share(100), shown("curve number", curve_number),
            " must be from 1 to 100");
    require_not_negative("rain depth", rain_depth);
    require_storm_depth("rain depth", rain_depth);
    require_share("abstraction ratio", abstraction_ratio);
    const Length retention = (1000.0 / number(curve_number) - 10.0) * inch;
    const Length effective = rain_depth - number(abstraction_ratio) * retention;
    if (effective <= zero) return zero;
    return effective * effective / (effective + retention);
}

}  // namespace undercroft::calc
