#include "calc/ground/base_stone.hpp"

#include "calc/ground/foot_pressure.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

Pressure pressure(const FeetOnStone& f, Length base_stone) {
    return foot_pressure(f.crown_pressure, f.span, f.row_gap, f.foot_width, base_stone) +
           f.unit_weight * (f.stone_height + base_stone);
}

void require_feet(const FeetOnStone& feet) {
    require_not_negative("stone height", feet.stone_height);
    require_positive("unit weight", feet.unit_weight);
    (void)foot_pressure(feet.crown_pressure, feet.span, feet.row_gap, feet.foot_width, zero);
}

/// Thickness from which all is level under the chambers too, and more stone only weighs more.
Length level_from(const FeetOnStone& f) {
    return f.span - 2.0 * f.foot_width;
}

/// Thickness of the least pressure: on each branch of p(t) where its slope is 0, or at its end.
Length thickness_of_floor(const FeetOnStone& f) {
    const Length apart = std::min(f.row_gap, level_from(f));
    const Length b = f.foot_width;
    // Feet apart: p' = g - q (S - b)/(2 (b + t)^2).
    const Length alone =
        sqrt(f.crown_pressure * (f.span - b) / (2.0 * f.unit_weight)) - b;  // may lie beyond the branch
    if (alone <= apart) return std::max<Length>(alone, zero);
    // Spreads met: p' = g - q (S + G)/(2 b + G + t)^2.
    const Length met = sqrt(f.crown_pressure * (f.span + f.row_gap) / f.unit_weight) - 2.0 * b - f.row_gap;
    return std::clamp<Length>(met, apart, std::max(apart, level_from(f)));
}

/// The lower root of a t^2 - 2 m t + c = 0, for a > 0 and m > 0; exact where c is small.
Length lower_root(UnitWeight a, Pressure m, LineLoad c) {
    const auto square = m * m - a * c;
    const Pressure root = sqrt(std::max<decltype(m * m)>(square, zero));
    return c / (m + root);
}

/// Root of p(t) = qa while the feet stand apart, or once their spreads have met.
Length root_apart(const FeetOnStone& f, Pressure rest) {
    const UnitWeight g = f.unit_weight;
    const Length b = f.foot_width;
    const Pressure half = rest - f.crown_pressure / 2.0 - g * b;
    return lower_root(2.0 * g, half, f.crown_pressure * f.span - 2.0 * rest * b);
}
Length root_met(const FeetOnStone& f, Pressure rest) {
    const Length strip = 2.0 * f.foot_width + f.row_gap;
    const Pressure half = (rest - f.unit_weight * strip) / 2.0;
    return lower_root(f.unit_weight, half, f.crown_pressure * (f.span + f.row_gap) - rest * strip);
}

}  // namespace

Pressure subgrade_pressure(const FeetOnStone& feet, Length base_stone) {
    require_feet(feet);
    return pressure(feet, base_stone);
}

Length base_stone_needed(const FeetOnStone& feet, Pressure allowable) {
    require_feet(feet);
    require_positive("allowable", allowable);
    if (pressure(feet, zero) <= allowable) return zero;
    const Length thickest = thickness_of_floor(feet);
    const Pressure floor = pressure(feet, thickest);
    if (!is_at_most(floor, allowable))
        no_answer("no thickness of base stone does: the pressure never falls below " + in_words(floor) +
                  " (at " + in_words(thickest) + " of stone), above the allowable " + in_words(allowable) +
                  "; replace or reinforce the ground, or lighten the load");
    const Pressure rest = allowable - feet.unit_weight * feet.stone_height;
    const Length met_from = std::min(feet.row_gap, level_from(feet));
    const Length thickness = allowable >= pressure(feet, met_from) || thickest <= met_from
                                 ? root_apart(feet, rest)
                                 : root_met(feet, rest);
    return std::min(thickness, thickest);
}

Length bearing_strip(Length foot_width, Length base_stone, Length row_gap) {
    require_positive("foot width", foot_width);
    require_not_negative("base stone", base_stone);
    require_not_negative("row gap", row_gap);
    if (base_stone < row_gap) return foot_width + base_stone;
    return 2.0 * foot_width + row_gap + base_stone;
}

}  // namespace undercroft::calc
