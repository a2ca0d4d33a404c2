#include "calc/water/flow_time.hpp"

#include <cmath>

#include "calc/customary.hpp"
#include "calc/require.hpp"
#include "calc/water/manning.hpp"

namespace undercroft::calc {

namespace {

Speed speed_at_full_slope(FlowSurface surface) {
    switch (surface) {
        case FlowSurface::forest:
            return 0.76 * metre / second;
        case FlowSurface::fallow:
            return 1.52 * metre / second;
        case FlowSurface::short_grass:
            return 2.13 * metre / second;
        case FlowSurface::cultivated:
            return 2.74 * metre / second;
        case FlowSurface::bare:
            return 3.05 * metre / second;
        case FlowSurface::grassed_waterway:
            return 4.57 * metre / second;
        case FlowSurface::unpaved:
            return 16.1345 * foot / second;
        case FlowSurface::paved:
            return 20.3282 * foot / second;
    }
    refuse_value("unknown surface");
}

}  // namespace

Speed shallow_flow_speed(FlowSurface surface, Gradient slope) {
    require_positive("slope", slope);
    return std::sqrt(slope / gradient(1)) * speed_at_full_slope(surface);
}

Time shallow_flow_time(FlowSurface surface, Length length, Gradient slope) {
    require_positive("length", length);
    return length / shallow_flow_speed(surface, slope);
}

Time channel_flow_time(Length length, Area flow_area, Length wetted_perimeter, Gradient slope,
                       Share roughness) {
    require_positive("length", length);
    require_positive("flow area", flow_area);
    require_positive("wetted perimeter", wetted_perimeter);
    require_positive("slope", slope);
    require_positive("roughness", roughness);
    const Speed speed = manning_speed(flow_area / wetted_perimeter, slope, roughness);
    return length / speed;
}

}  // namespace undercroft::calc
