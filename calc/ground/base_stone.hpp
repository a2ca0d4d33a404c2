/// \file base_stone.hpp
/// The base stone under rows of chambers: how thick it must be, and how wide the strip is that bears.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Rows of chambers on their base stone, seen across: what stands on a strip of one pitch.
struct FeetOnStone {
    Pressure crown_pressure;  ///< at crown level, from fill and live load
    Length span;              ///< over the feet of one chamber
    Length row_gap;           ///< clear, between the feet of neighbouring rows
    Length foot_width;
    Length stone_height;     ///< of the stone beside the chambers, from their feet to the crown
    UnitWeight unit_weight;  ///< of the stone as laid
};

/// Pressure on the ground under base stone t: the feet's by foot_pressure, and the weight of the stone beside
/// and under the chambers as if it were everywhere.
///
///     p(t) = q max(1, (S + c)/(2 b + t + c)) + g (h + t), c = min(t, G)
///
/// \throws Refused(domain) as foot_pressure; for a stone height below 0 or a unit weight not above 0.
[[nodiscard]] Pressure subgrade_pressure(const FeetOnStone& feet, Length base_stone);

/// The least thickness of base stone under which the ground bears no more than `allowable`: the inverse of
/// subgrade_pressure, 0 where the feet alone do no harm.
///
/// More stone spreads the feet's load wider and weighs more itself, so the pressure has a floor. With R = qa
/// - g h: once neighbouring spreads have met, t >= G,
///
///     t = (R - g B - sqrt((R - g B)^2 + 4 g (R B - A)))/(2 g), B = 2 b + G, A = q (S + G)
///
/// and before, the lower root of 2 g t^2 + (q + 2 g b - 2 R) t + q S - 2 R b = 0. Equilibrium of one pitch.
/// \throws Refused as subgrade_pressure; Refused(domain) for an allowable pressure not above 0;
/// Refused(no_answer) where no thickness does, with the floor and its thickness.
[[nodiscard]] Length base_stone_needed(const FeetOnStone& feet, Pressure allowable);

/// Width of the strip that bears on the ground under the base stone, both spread 2V:1H: one foot, b + t,
/// while t < G; two feet and the column of stone between them, 2 b + G + t, once their spreads have met. The
/// strips that foot_pressure takes. \throws Refused(domain) for a foot width not above 0, or a base stone or
/// gap below 0.
[[nodiscard]] Length bearing_strip(Length foot_width, Length base_stone, Length row_gap);

}  // namespace undercroft::calc
