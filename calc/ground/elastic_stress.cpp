#include "calc/ground/elastic_stress.hpp"

#include <cmath>
#include <numbers>

#include "calc/require.hpp"

namespace undercroft::calc {

Pressure stress_under_point(Force load, Length depth, Length offset) {
    require_positive("load", load);
    require_positive("depth", depth);
    require_not_negative("offset", offset);
    const double ratio = offset / depth;
    return 3.0 * load / (2.0 * std::numbers::pi * depth * depth) * std::pow(1 + ratio * ratio, -2.5);
}

Pressure stress_under_circle(Pressure pressure, Length radius, Length depth) {
    require_positive("pressure", pressure);
    require_positive("radius", radius);
    require_not_negative("depth", depth);
    const double ratio = radius / depth;  // infinite at the surface, where all of the pressure acts
    // 1 - (1 + ratio^2)^-1.5 without loss of digits at great depth.
    return pressure * -std::expm1(-1.5 * std::log1p(ratio * ratio));
}

Share corner_influence(Length x, Length y, Length depth) {
    const double sign = (x < zero) != (y < zero) ? -1 : 1;
    const Length a = abs(x);
    const Length b = abs(y);
    const Area z2 = depth * depth;
    const Length distance = sqrt(a * a + b * b + z2);
    const double angle = inclination(a * b, depth * distance) / radian;
    const double beside = a * b * depth / distance * (1.0 / (a * a + z2) + 1.0 / (b * b + z2));
    return share(sign * (angle + beside) / (2 * std::numbers::pi));
}

Pressure stress_under_rectangle(Pressure pressure, Length length, Length width, Length depth,
                                RectanglePoint at) {
    require_positive("pressure", pressure);
    require_positive("length", length);
    require_positive("width", width);
    require_not_negative("depth", depth);
    if (at == RectanglePoint::corner) return pressure * corner_influence(length, width, depth);
    return pressure * 4.0 * corner_influence(length / 2.0, width / 2.0, depth);
}

}  // namespace undercroft::calc
