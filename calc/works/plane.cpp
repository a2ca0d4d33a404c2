#include "calc/works/plane.hpp"

#include <array>

namespace undercroft::calc {

FittedPlane plane_through(const CornerLevels& corners, Length tolerance) {
    require(corners.size() >= 3, "a plane needs at least three corners");
    require_not_negative("tolerance", tolerance);
    // About the mean of the corners, and from the first level, so that no digits are lost and level is level.
    const auto n = static_cast<double>(corners.size());
    const Length datum = std::get<2>(corners.front());
    Length mean_x = zero;
    Length mean_y = mean_x;
    Length mean_z = mean_x;
    for (const auto& [x, y, level] : corners) {
        mean_x += x / n;
        mean_y += y / n;
        mean_z += (level - datum) / n;
    }
    Area xx = zero;
    Area xy = xx;
    Area yy = xx;
    Area xz = xx;
    Area yz = xx;
    for (const auto& [x, y, level] : corners) {
        const Length dx = x - mean_x;
        const Length dy = y - mean_y;
        const Length dz = level - datum - mean_z;
        xx += dx * dx;
        xy += dx * dy;
        yy += dy * dy;
        xz += dx * dz;
        yz += dy * dz;
    }
    const auto determinant = xx * yy - xy * xy;
    require(determinant > 1e-12 * (xx * yy) && is_finite(determinant),
            "the corners of a plane must not lie in one line");
    const Gradient along_x = gradient((xz * yy - yz * xy) / determinant);
    const Gradient along_y = gradient((yz * xx - xz * xy) / determinant);
    const Length at_mean = datum + mean_z;
    const Plane plane{at_mean - vertical_rise(along_x, mean_x) - vertical_rise(along_y, mean_y), along_x,
                      along_y};
    Length departure = zero;
    for (const auto& [x, y, level] : corners) departure = std::max(departure, abs(level - plane.level(x, y)));
    require(departure <= tolerance + metre * limit_tolerance, "the corners depart from a plane by ",
            amount(departure), ", more than the ", shown("tolerance", tolerance),
            ": lay planes through parts of it, or take spot levels");
    // Three corners, and four without twist, are on the plane; what departs there are digits.
    return {plane, departure <= metre * limit_tolerance ? Length() : departure};
}

Length plane_level(const CornerLevels& corners, Length x, Length y, Length tolerance) {
    return plane_through(corners, tolerance).plane.level(x, y);
}

Gradient plane_fall(const CornerLevels& corners, Length tolerance) {
    const Plane plane = plane_through(corners, tolerance).plane;
    return sqrt(plane.along_x * plane.along_x + plane.along_y * plane.along_y);
}

Gap plane_gap(const CornerLevels& upper, const CornerLevels& lower, Length length, Length width,
              Length height, Length tolerance) {
    require_positive("length", length);
    require_positive("width", width);
    require_not_negative("height", height);
    const FittedPlane top = plane_through(upper, tolerance);
    const FittedPlane bottom = plane_through(lower, tolerance);
    const std::array<std::pair<Length, Length>, 4> plan = {
        {{zero, zero}, {length, zero}, {length, width}, {zero, width}}};
    const auto depth = [&](const std::pair<Length, Length>& at) {
        return top.plane.level(at.first, at.second) - bottom.plane.level(at.first, at.second) - height;
    };
    const auto shallower = [&](const auto& a, const auto& b) { return depth(a) < depth(b); };
    const auto [shallow, deep] = std::minmax_element(plan.begin(), plan.end(), shallower);
    const Length departure = top.departure + bottom.departure;
    const Gap gap{depth(*shallow) - departure, depth(*deep) + departure};
    require(gap.least > zero,
            "the upper surface must lie above the lower one and what stands on it, but at x ",
            amount(shallow->first), ", y ", amount(shallow->second), " it lies ", amount(Length(-gap.least)),
            " below it");
    return gap;
}

}  // namespace undercroft::calc
