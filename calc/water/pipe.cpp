#include "calc/water/pipe.hpp"

#include <cmath>
#include <numbers>

#include "calc/require.hpp"
#include "calc/solve.hpp"
#include "calc/water/manning.hpp"

namespace undercroft::calc {

namespace {

/// From here on a pipe is full: 12 in and 1 ft differ in the last bit, and at the crown the water line
/// changes with the root of it.
constexpr double full = 1 - 1e-14;

void require_pipe(Length diameter, Gradient slope, Share roughness) {
    require_positive("diameter", diameter);
    require_positive("slope", slope);
    require_positive("roughness", roughness);
}

/// Flow where the water line is seen from the centre at `theta` (radians, 2 pi when full).
inline Flow flow_at(double theta, Length diameter, Gradient slope, Share roughness) {
    const Area area = diameter * diameter / 8.0 * (theta - std::sin(theta));
    const Length wetted = diameter / 2.0 * theta;
    return area * manning_speed(area / wetted, slope, roughness);
}

/// Where the flow is greatest: d(A R^(2/3))/d(theta) = 0, at a depth of 0.938 D.
double theta_of_greatest_flow() {
    const auto slope_of_flow = [](double theta) {
        return 3 * theta - 5 * theta * std::cos(theta) + 2 * std::sin(theta);
    };
    static const double theta = root_between(slope_of_flow, 5.0, 5.5);
    return theta;
}

Length depth_at(double theta, Length diameter) {
    const double s = std::sin(theta / 4);  // 1 - cos(theta/2) without loss of digits
    return diameter * s * s;
}

}  // namespace

Flow pipe_flow(Length diameter, Gradient slope, Share roughness, std::optional<Length> depth) {
    require_pipe(diameter, slope, roughness);
    if (!depth) return flow_at(2 * std::numbers::pi, diameter, slope, roughness);
    require_not_negative("depth", *depth);
    require(is_at_most(*depth, diameter), shown("depth", *depth), " must be at most the diameter (",
            amount(diameter), ")");
    if (*depth == zero) return zero;
    const double filled = *depth / diameter;
    const double theta = filled >= full ? 2 * std::numbers::pi : 4 * std::asin(std::sqrt(filled));
    return flow_at(theta, diameter, slope, roughness);
}

Length pipe_depth(Flow flow, Length diameter, Gradient slope, Share roughness) {
    require_pipe(diameter, slope, roughness);
    require_not_negative("flow", flow);
    const double fullest = theta_of_greatest_flow();
    const Flow greatest = flow_at(fullest, diameter, slope, roughness);
    require(is_finite(greatest),
            "the flow of a pipe of that diameter, slope and roughness is too large for a number");
    require(is_at_most(flow, greatest), shown("flow", flow),
            " must be at most the greatest flow of the pipe (", amount(greatest),
            ", at 0.938 of its diameter)");
    if (flow >= greatest) return depth_at(fullest, diameter);
    if (flow == zero) return zero;
    const auto excess = [&](double theta) {
        return theta == 0 ? -flow : flow_at(theta, diameter, slope, roughness) - flow;
    };
    return depth_at(root_between(excess, 0.0, fullest), diameter);
}

}  // namespace undercroft::calc
