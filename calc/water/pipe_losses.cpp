#include "calc/water/pipe_losses.hpp"

#include "calc/interpolate.hpp"
#include "calc/require.hpp"
#include "calc/water/pipe_profile.hpp"
#include "calc/water/pipe_size.hpp"

namespace undercroft::calc {

namespace {

double degrees_of(Angle angle) {
    return angle / degrees(1);
}

void require_turn(Angle turn) {
    require(turn >= degrees(0) && is_at_most(turn, degrees(90)), shown("turn", turn),
            " must be from 0 deg to 90 deg");
}

}  // namespace

Length pipe_friction(Flow flow, Length diameter, Length length, Share roughness) {
    require_not_negative("flow", flow);
    require_positive("diameter", diameter);
    require_positive("length", length);
    require_positive("roughness", roughness);
    return vertical_rise(friction_slope({diameter, length, gradient(0), roughness}, flow, diameter), length);
}

Length header_friction(Flow flow, Length diameter, Length length, Share roughness) {
    return pipe_friction(flow, diameter, length, roughness) / 3.0;
}

Length minor_loss(Share coefficient, Flow flow, Length diameter) {
    require_not_negative("coefficient", coefficient);
    const Speed speed = pipe_speed(flow, diameter, {});
    return number(coefficient) * speed * speed / (2.0 * standard_gravity);
}

Share bend_loss(Angle turn) {
    require_turn(turn);
    return share(0.0033 * degrees_of(turn));
}

Share chamber_loss(ChamberKind kind, Angle turn) {
    require_turn(turn);
    static const Curve<double, double> manhole = {{0, 22.5, 45, 60, 90}, {0.15, 0.45, 0.75, 0.85, 1.00}};
    static const Curve<double, double> inlet = {{0, 90}, {0.50, 1.50}};
    return share(linear(kind == ChamberKind::manhole ? manhole : inlet, degrees_of(turn)));
}

}  // namespace undercroft::calc
