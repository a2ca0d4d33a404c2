#include "calc/bed/arch.hpp"

#include <boost/math/special_functions/ellint_2.hpp>
#include <cmath>
#include <numbers>

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// The circle of a segment: radius, and height of its centre above the base.
struct Circle {
    Length radius;
    Length centre;
};

Circle circle_of(const Arch& arch) {
    const Length radius = (arch.span * arch.span / 4.0 + arch.rise * arch.rise) / (2.0 * arch.rise);
    return {radius, arch.rise - radius};
}

/// Area of a circle between its centre and a chord at height z, both halves.
Area area_from_centre(Length radius, Length z) {
    const double s = std::clamp(static_cast<double>(z / radius), -1.0, 1.0);
    return radius * radius * (s * std::sqrt(1 - s * s) + std::asin(s));
}

Length half_chord(Length radius, Length z) {
    const Area square = radius * radius - z * z;
    return sqrt(std::max<Area>(square, zero));
}

Length checked_depth(const Arch& arch, Length depth) {
    require_arch(arch);
    require_not_negative("depth", depth);
    require(is_at_most(depth, arch.rise), shown("depth", depth), " must be at most the rise of the arch (",
            amount(arch.rise), ")");
    return std::min(depth, arch.rise);
}

}  // namespace

void require_arch(const Arch& arch) {
    require_positive("span", arch.span);
    require_positive("rise", arch.rise);
    if (arch.shape == Shape::segment && arch.rise < 0.01 * arch.span)
        refuse_domain(shown("rise", arch.rise) + " must be at least 1 % of the span: flatter is no arch");
    const bool round = abs(arch.span - arch.rise) <= slack(arch.span, arch.rise);
    if (arch.shape == Shape::circle && !round)
        refuse_domain("a circle has span = rise = inside diameter, but " + shown("span", arch.span) +
                      " and " + shown("rise", arch.rise) + " differ");
}

Length arch_width(const Arch& arch, Length depth) {
    const Length y = checked_depth(arch, depth);
    const double ratio = y / arch.rise;
    switch (arch.shape) {
        case Shape::ellipse:
            return arch.span * std::sqrt(1 - ratio * ratio);
        case Shape::parabola:
            return arch.span * std::sqrt(1 - ratio);
        case Shape::segment: {
            const Circle circle = circle_of(arch);
            return 2.0 * half_chord(circle.radius, y - circle.centre);
        }
        case Shape::rectangle:
            return arch.span;
        case Shape::circle:
            return 2.0 * half_chord(arch.rise / 2.0, y - arch.rise / 2.0);
    }
    refuse_value("unknown shape");
}

Length arch_widest(const Arch& arch) {
    const bool bulges = arch.shape == Shape::segment && arch.rise > arch.span / 2.0;
    return bulges ? 2.0 * circle_of(arch).radius : arch.span;
}

Area arch_area(const Arch& arch, Length depth) {
    const Length y = checked_depth(arch, depth);
    const double ratio = y / arch.rise;
    switch (arch.shape) {
        case Shape::ellipse:
            return arch.span / 2.0 * arch.rise * (ratio * std::sqrt(1 - ratio * ratio) + std::asin(ratio));
        case Shape::parabola: {
            const double dry = 1 - ratio;
            return 2.0 / 3.0 * arch.span * arch.rise * (1 - dry * std::sqrt(dry));
        }
        case Shape::segment: {
            const Circle circle = circle_of(arch);
            return area_from_centre(circle.radius, y - circle.centre) -
                   area_from_centre(circle.radius, -circle.centre);
        }
        case Shape::rectangle:
            return arch.span * y;
        case Shape::circle: {
            const Length radius = arch.rise / 2.0;
            return area_from_centre(radius, y - radius) - area_from_centre(radius, -radius);
        }
    }
    refuse_value("unknown shape");
}

Area arch_area(const Arch& arch) {
    return arch_area(arch, arch.rise);
}

Length arch_length(const Arch& arch) {
    require_arch(arch);
    const Length half = arch.span / 2.0;
    switch (arch.shape) {
        case Shape::ellipse: {
            const Length major = std::max(half, arch.rise);
            const double ratio = std::min(half, arch.rise) / major;
            return 2.0 * major * boost::math::ellint_2(std::sqrt(1 - ratio * ratio));
        }
        case Shape::parabola: {
            const double slope = 2.0 * arch.rise / half;  // at the foot
            return half * (std::sqrt(1 + slope * slope) + std::asinh(slope) / slope);
        }
        case Shape::segment: {
            const Circle circle = circle_of(arch);
            const double half_angle = inclination(half, -circle.centre) / radian;
            return 2.0 * circle.radius * half_angle;
        }
        case Shape::rectangle:
            return arch.span + 2.0 * arch.rise;
        case Shape::circle:
            return std::numbers::pi * arch.rise;
    }
    refuse_value("unknown shape");
}

}  // namespace undercroft::calc
