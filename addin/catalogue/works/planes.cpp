#include "addin/catalogue/works/planes.hpp"

#include <algorithm>

namespace undercroft::addin {

namespace {

constexpr Gradient steepest = Gradient::from_value(0.5);
constexpr Length deepest = 50.0 * metre;

/// Least and greatest place along one axis.
template <std::size_t Axis>
std::pair<Length, Length> span_along(const calc::CornerLevels& corners) {
    const auto before = [](const auto& a, const auto& b) { return std::get<Axis>(a) < std::get<Axis>(b); };
    const auto [least, most] = std::minmax_element(corners.begin(), corners.end(), before);
    return {std::get<Axis>(*least), std::get<Axis>(*most)};
}

template <std::size_t Axis>
void require_span(const char* name, const calc::CornerLevels& corners, Length side, const char* along) {
    const auto [least, most] = span_along<Axis>(corners);
    calc::require(most - least >= 0.5 * side && least <= side && most >= zero, name,
                  ": the corners lie from ", calc::amount(least), " to ", calc::amount(most), along,
                  ", but the base from 0 m to ", calc::amount(side), "; levels are not carried so far");
}

}  // namespace

calc::Plane plane_of(const char* name, const calc::CornerLevels& corners, Length tolerance) {
    try {
        const calc::Plane plane = calc::plane_through(corners, tolerance).plane;
        const Gradient fall = calc::plane_fall(corners, tolerance);
        calc::require(fall <= steepest, "the plane falls by ", calc::amount(fall),
                      " per length, steeper than any ground that a bed is built in: are places and levels in "
                      "their own units?");
        return plane;
    } catch (const Refused& refused) {
        throw refused.at(name);
    }
}

calc::Plane plane_over(const char* name, const calc::CornerLevels& corners, Length length, Length width,
                       Length tolerance) {
    const calc::Plane plane = plane_of(name, corners, tolerance);
    require_span<0>(name, corners, length, " along the length");
    require_span<1>(name, corners, width, " along the width");
    return plane;
}

void require_near(const char* name, Length place, Length least, Length most) {
    const Length span = most - least;
    calc::require(place >= least - span && place <= most + span, calc::shown(name, place),
                  " is farther from the corners (", calc::amount(least), " to ", calc::amount(most),
                  ") than they are from each other: levels are not carried so far");
}

void require_near(const calc::CornerLevels& corners, Length x, Length y) {
    const auto [least_x, most_x] = span_along<0>(corners);
    const auto [least_y, most_y] = span_along<1>(corners);
    require_near("x", x, least_x, most_x);
    require_near("y", y, least_y, most_y);
}

void require_pit(const char* name, const calc::Plane& upper, const calc::Plane& lower, Length length,
                 Length width) {
    for (const Length& x : {Length(zero), length})
        for (const Length& y : {Length(zero), width}) {
            const Length apart = upper.level(x, y) - lower.level(x, y);
            calc::require(abs(apart) <= deepest, name, ": at x ", calc::amount(x), ", y ", calc::amount(y),
                          " it is ", calc::amount(apart),
                          " over the formation, more than any pit: are all levels in one unit?");
        }
}

}  // namespace undercroft::addin
