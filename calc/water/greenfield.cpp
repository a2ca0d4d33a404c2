#include "calc/water/greenfield.hpp"

#include "calc/water/runoff.hpp"

namespace undercroft::calc {

namespace {

void require_permitted(Share share) {
    require_positive("permitted share", share);
    require_share("permitted share", share);
}

}  // namespace

Flow greenfield_rational(const RainTable& rain, Share coefficient, Area area, Time time_of_concentration,
                         Share permitted_share) {
    require_permitted(permitted_share);
    return permitted_share * runoff_peak(coefficient, rain_intensity(rain, time_of_concentration), area);
}

Flow greenfield_nrcs(Area area, Length rain_depth, Share curve_number, Time time_of_concentration,
                     RainType type, Share ponds, Share permitted_share) {
    require_permitted(permitted_share);
    return permitted_share *
           graphical_peak(area, rain_depth, curve_number, time_of_concentration, type, ponds);
}

}  // namespace undercroft::calc
