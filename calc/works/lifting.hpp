/// \file lifting.hpp
/// How heavy a unit may be that people lift by hand.
#pragma once

#include "units/types.hpp"

namespace undercroft::calc {

/// How well the hands hold the load.
enum class Coupling { good, fair, poor };

/// A lift as the revised equation takes it.
struct Lift {
    Length horizontal;  ///< hands from the ankles, forward
    Length vertical;    ///< hands above the floor at the start
    Length travel;      ///< up or down
    Angle asymmetry;    ///< turn of the body
    Count per_minute;   ///< lifts in a minute
    Time duration;      ///< of lifting in a day
    Coupling coupling;
};

/// Recommended weight limit, as a mass.
///
/// NIOSH publication 94-110 (1994, rev. 2021), metric form: RWL = 23 kg HM VM DM AM FM CM, HM = 25 cm/H,
/// VM = 1 - 0.003 |V - 75 cm|, DM = 0.82 + 4.5 cm/D, AM = 1 - 0.0032 A; H and D count as 25 cm where they are
/// less. Beyond H 63 cm, V 175 cm, D 175 cm, A 135 deg or 15 lifts a minute the limit is 0. FM by Table 5,
/// straight between its frequencies; CM by Table 7. The form in inches and pounds differs by up to 4 %.
/// \throws Refused(domain) for a horizontal distance, frequency or duration not above 0, a vertical
/// distance, travel or asymmetry below 0, or more than 8 h.
[[nodiscard]] Mass handling_limit(const Lift& lift);

}  // namespace undercroft::calc
