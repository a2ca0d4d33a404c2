/// \file lifting.hpp
/// How heavy a unit may be that people lift by hand.
#pragma once

#include <string>

#include "units/types.hpp"

namespace undercroft::calc {

/// How well the hands hold the load.
enum class Coupling { good, fair, poor };

/// The two forms of the revised equation, whose constants are no exact conversions of each other.
enum class LiftingForm {
    metric,     ///< 23 kg, 25 cm/H, 1 - 0.003 |V - 75 cm|, 0.82 + 4.5 cm/D
    customary,  ///< 51 lb, 10 in/H, 1 - 0.0075 |V - 30 in|, 0.82 + 1.8 in/D
};

/// A lift as the revised equation takes it.
struct Lift {
    Length horizontal;  ///< hands from the ankles, forward
    Length vertical;    ///< hands above the floor at the start
    Length travel;      ///< up or down
    Angle asymmetry;    ///< turn of the body
    Count per_minute;   ///< lifts in a minute
    Time duration;      ///< of lifting in a day
    Coupling coupling;
    LiftingForm form = LiftingForm::metric;
};

/// Recommended weight limit, as a mass.
///
/// NIOSH publication 94-110 (1994, rev. 2021), 1.3: RWL = LC HM VM DM AM FM CM, metric form LC = 23 kg, HM =
/// 25 cm/H, VM = 1 - 0.003 |V - 75 cm|, DM = 0.82 + 4.5 cm/D, AM = 1 - 0.0032 A; H and D count as 25 cm where
/// they are less. Beyond H 25 in (printed as 63 cm), V and D 70 in (175 cm), A 135 deg or 15 lifts a minute
/// the limit is 0 (1.3.1 to 1.3.3); on the limit it is not, in inches as in centimetres. FM by Table 5,
/// straight between its frequencies; CM by Table 7. The form in inches and pounds differs by up to 4 %.
/// \throws Refused(domain) for a horizontal distance, frequency or duration not above 0, a vertical
/// distance, travel or asymmetry below 0, or more than 8 h.
[[nodiscard]] Mass handling_limit(const Lift& lift);

/// Which reach of the method a lift is beyond, in words, where handling_limit is 0: "hands 0.7 m in front of
/// the ankles, at most 0.635 m (25 in)"; else "within the method's reach". \throws Refused as handling_limit.
[[nodiscard]] std::string handling_reach(const Lift& lift);

/// One end of a lift.
struct LiftEnd {
    Length horizontal;
    Length vertical;
    Angle asymmetry;
};

/// A unit that people lift together and set down where it must lie.
struct TeamLift {
    LiftEnd start;
    LiftEnd end;
    Count per_minute;
    Time duration;
    Coupling coupling;
    Count persons;
    LiftingForm form = LiftingForm::metric;
};

/// Greatest mass of a unit that a team lifts: n k min(RWL at the start, RWL at the end).
///
/// NIOSH 94-110 (rev. 2021): the limit counts at both ends where the load must be set down with care, as a
/// unit in its row is; D is the difference of the two heights, FM takes the height at the start for both
/// ends, CM that of the end. A team of two lifts two thirds of the sum of what its members do, of three one
/// half: HSE L23 (2016), paragraphs 119 and 120. Not for carrying more than a step or two, nor on slopes,
/// kneeling or in restricted space. \throws Refused as handling_limit; Refused(domain) for persons that are
/// not a whole number, at least 1; Refused(no_answer) for more than three, for whom no share is published.
[[nodiscard]] Mass team_limit(const TeamLift& lift);

}  // namespace undercroft::calc
