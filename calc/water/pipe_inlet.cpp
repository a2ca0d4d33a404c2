#include "calc/water/pipe_inlet.hpp"

#include <algorithm>
#include <cmath>

#include "calc/customary.hpp"
#include "calc/require.hpp"
#include "calc/water/circular_section.hpp"

namespace undercroft::calc {

namespace {

/// Table 9 of HDS-5.
struct Coefficients {
    double k, m, c, y, slope_factor, entrance_loss;
};

constexpr double last_unsubmerged = 3.5;
constexpr double first_submerged = 4.0;

Coefficients coefficients_of(PipeInlet inlet) {
    switch (inlet) {
        case PipeInlet::square_edge:
            return {0.0098, 2.00, 0.0398, 0.67, -0.5, 0.5};
        case PipeInlet::groove_headwall:
            return {0.0018, 2.00, 0.0292, 0.74, -0.5, 0.2};
        case PipeInlet::groove_projecting:
            return {0.0045, 2.00, 0.0317, 0.69, -0.5, 0.2};
        case PipeInlet::metal_headwall:
            return {0.0078, 2.00, 0.0379, 0.69, -0.5, 0.5};
        case PipeInlet::metal_mitred:
            return {0.0210, 1.33, 0.0463, 0.75, 0.7, 0.7};
        case PipeInlet::metal_projecting:
            return {0.0340, 1.50, 0.0553, 0.54, -0.5, 0.9};
        case PipeInlet::bevel_45:
            return {0.0018, 2.50, 0.0300, 0.74, -0.5, 0.2};
        case PipeInlet::bevel_34:
            return {0.0018, 2.50, 0.0243, 0.83, -0.5, 0.2};
    }
    refuse_value("unknown inlet of a pipe");
}

/// Specific head of the critical depth, over the diameter.
double critical_head(const CircularSection& pipe, Flow flow) {
    if (flow == zero) return 0;
    const Length depth = critical_depth(pipe, flow);
    const Speed speed = flow / pipe.area(depth);
    return (depth + speed * speed / (2.0 * standard_gravity)) / pipe.diameter;
}

}  // namespace

Share entrance_loss_of(PipeInlet inlet) {
    return share(coefficients_of(inlet).entrance_loss);
}

Length inlet_control_headwater(Flow flow, Length diameter, Gradient slope, PipeInlet inlet) {
    require_not_negative("flow", flow);
    require_positive("diameter", diameter);
    require_not_negative("slope", slope);
    const Coefficients of = coefficients_of(inlet);
    const CircularSection pipe{diameter};
    const auto unit = bu::sqrt(foot) / second;
    const double f = flow / (pipe.area(diameter) * bu::sqrt(diameter)) / unit;
    const double by_slope = of.slope_factor * (slope / gradient(1));
    const auto unsubmerged = [&](double number, Flow at) {
        return critical_head(pipe, at) + of.k * std::pow(number, of.m) + by_slope;
    };
    const auto submerged = [&](double number) { return of.c * number * number + of.y + by_slope; };
    double headwater = 0;
    if (f <= last_unsubmerged) {
        headwater = unsubmerged(f, flow);
    } else if (f >= first_submerged) {
        headwater = submerged(f);
    } else {
        const double low = unsubmerged(last_unsubmerged, last_unsubmerged / f * flow);
        const double way = (f - last_unsubmerged) / (first_submerged - last_unsubmerged);
        headwater = low + way * (submerged(first_submerged) - low);
    }
    return std::max(headwater, 0.0) * diameter;
}

}  // namespace undercroft::calc
