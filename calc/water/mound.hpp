/// \file mound.hpp
/// How far groundwater rises under a basin that soaks away.
#pragma once

#include <optional>

#include "units/types.hpp"

namespace undercroft::calc {

/// A rectangle from which water soaks into an unconfined aquifer.
struct RechargeArea {
    Length length;   ///< along x
    Length width;    ///< along y
    Speed recharge;  ///< depth of water a time
};

/// An unconfined aquifer on a level base.
struct Aquifer {
    Speed permeability;
    Share specific_yield;
    Length saturated_depth;  ///< of the groundwater before
};

/// S*(p, q) = integral from 0 to 1 of erf(p/sqrt u) erf(q/sqrt u) du (Gauss-Kronrod, Boost.Math).
[[nodiscard]] double hantush_integral(double p, double q);

/// Rise of the groundwater at (x, y) from the centre of the area after a time of recharge.
///
/// h^2 - hi^2 = (w b t/(2 Sy)) (S*(a+, b+) + S*(a+, b-) + S*(a-, b+) + S*(a-, b-)), a+- = (l +- x)/sqrt(4 v
/// t), b+- = (a +- y)/sqrt(4 v t), l and a half sides, v = K b/Sy, b = (hi + h)/2 found with h itself (TOMS
/// 748, Boost.Math). Hantush, Water Resources Research 3 (1967), as in USGS SIR 2010-5102, p. 22. Against a
/// groundwater model it is good to about 10 % (the same report).
/// \param recharge_time how long it soaks, where that is shorter than `time`: after it the mound sinks as if
/// as much water were drawn off from then on.
/// \throws Refused(domain) for a length, width, recharge, permeability, depth or time not above 0, a specific
/// yield not between 0 and 1, a recharge time not above 0.
[[nodiscard]] Length mound_rise(Length x, Length y, const RechargeArea& area, const Aquifer& aquifer,
                                Time time, std::optional<Time> recharge_time);

/// h^2 - hi^2 of the same with a mean saturated depth b that is known.
[[nodiscard]] Area mound_growth(Length x, Length y, const RechargeArea& area, const Aquifer& aquifer,
                                Time time, Length mean_depth);

}  // namespace undercroft::calc
