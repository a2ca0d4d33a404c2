/// \file pipe_losses.hpp
/// Head that pipes, bends, chambers and headers take: FHWA HEC-22, 3rd ed. (2009), ch. 7.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Head lost by friction in a pipe that runs full: h = L (Q n/(K D^(8/3)))^2, K = 0.3117 (m, s).
///
/// HEC-22, ch. 7, which rounds K to 0.312 and the exponent to 2.67.
/// \throws Refused(domain) for a flow below 0, another value not above 0.
[[nodiscard]] Length pipe_friction(Flow flow, Length diameter, Length length, Share roughness);

/// Head lost by friction in a full header that gives its flow off evenly along its length, or gathers it so:
/// a third of that of the whole flow, as the flow falls to nothing from one end to the other (integral of (1
/// - x/L)^2). Common practice. \throws Refused(domain) as pipe_friction.
[[nodiscard]] Length header_friction(Flow flow, Length diameter, Length length, Share roughness);

/// Head lost at an inlet, a bend, a chamber or an outlet that runs full: h = K v^2/2g.
///
/// HEC-22, ch. 7; K is the sum of all on the way: 1.0 at an outlet, 0.5 at a square-edged entrance, of
/// chambers as chamber_loss, of bends as bend_loss.
/// \throws Refused(domain) for a coefficient, flow below 0, a diameter not above 0.
[[nodiscard]] Length minor_loss(Share coefficient, Flow flow, Length diameter);

/// K of a bend in a pipe: 0.0033 for each degree by which it turns. HEC-22, ch. 7.
/// \throws Refused(domain) for an angle not from 0 to 90 degrees.
[[nodiscard]] Share bend_loss(Angle turn);

/// What a chamber is, in the approximate method of HEC-22.
enum class ChamberKind {
    manhole,  ///< the pipe goes through
    inlet,    ///< water falls in from above too
};

/// K of a chamber through which a pipe turns: a manhole 0.15 straight, 0.45, 0.75, 0.85, 1.00 for turns of
/// 22.5, 45, 60, 90 degrees; an inlet 0.50 straight, 1.50 for 90 degrees; straight between.
///
/// HEC-22, ch. 7, approximate method, which gives the angle between the pipes (180 degrees less the turn).
/// \throws Refused(domain) for an angle not from 0 to 90 degrees.
[[nodiscard]] Share chamber_loss(ChamberKind kind, Angle turn);

}  // namespace undercroft::calc
