/// \file ponding.hpp
/// Rain on bare ground: when it ponds, and how much of it soaks in.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// Time from which steady rain stands on the ground: tp = K N/(i (i - K)), N = psi (moisture deficit).
///
/// Mein and Larson (1973), as in Chow, Maidment and Mays, Applied Hydrology (1988), sec. 4.4 (from memory). 0
/// where N is 0.
/// \throws Refused(domain) for a conductivity or rain not above 0, a suction below 0, a deficit not from 0 to
/// 1; Refused(no_answer) for rain of at most the conductivity, which never ponds.
[[nodiscard]] Time ponding_time(Speed conductivity, Length suction, Share moisture_deficit, Speed rain);

/// Water that has soaked in after a time of steady rain: all of it until it ponds, then by Green and Ampt
/// from what is in the ground: F - Fp - N ln((N + F)/(N + Fp)) = K (t - tp).
///
/// The same source; the rest runs off.
/// \throws Refused(domain) as ponding_time, and for a time below 0.
[[nodiscard]] Length rain_infiltration(Speed conductivity, Length suction, Share moisture_deficit, Speed rain,
                                       Time time);

}  // namespace undercroft::calc
