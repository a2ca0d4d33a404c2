/// \file vehicle_load.hpp
/// Live load of the vehicles of a bridge code, each with its own tyres, wheels and axles.
#pragma once

#include "calc/ground/load_classes.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Factor m for the number of lanes that are loaded at once: 1.20 for one, 1.00 for two, 0.85 for three, 0.65
/// for more. AASHTO LRFD Bridge Design Specifications, Table 3.6.1.1.2-1; a structure under fill takes one
/// lane, 1.2 (3.6.1.2.6).
/// \throws Refused(domain) for lanes that are not a whole number, at least 1.
[[nodiscard]] Share multiple_presence(Count lanes);

/// Pressure of a vehicle on the top of a buried structure, by wheel_load, times the multiple presence factor.
///
/// AASHTO LRFD 3.6.1.2.2, 3.6.1.2.3 and 3.6.1.2.5: tyres 10 in x 20 in, wheels 6 ft apart; the truck's wheels
/// 16 kip on axles 14 ft apart at the closest, the tandem's 12.5 kip on axles 4 ft apart. HL-93 is the worse
/// of the two at that depth (3.6.1.3.1): the truck in shallow fill, the tandem from 1.66 m on where f
/// is 1.15. AS 5100.2 W80 (from memory): one wheel of 80 kN on 0.25 m x 0.40 m, alone, spread by the same
/// rule. \param presence m: 1.2 for one lane (multiple_presence); 1 where it is not to be counted. \throws
/// Refused(domain) as wheel_load, or for a presence outside 0.65 to 1.2; Refused(no_answer) for the classes
/// of access covers, whose test loads are no wheels.
[[nodiscard]] Pressure vehicle_load(LoadClass vehicle, Length cover, Share distribution_factor,
                                    Share presence, bool impact);

/// What lies on top of the fill.
enum class Surfacing { none, flexible, rigid };

/// Cover that counts: the depth of fill over the crown, without a flexible pavement on it, with a rigid one.
/// AASHTO LRFD 12.6.6.3 (from memory): minimum cover is measured to the underside of a flexible and to the
/// top of a rigid pavement. \throws Refused(domain) for a depth below 0; for a pavement not above 0 where
/// there is one, or above 0 where there is none.
[[nodiscard]] Length counted_cover(Length fill_depth, Length pavement, Surfacing surfacing);

}  // namespace undercroft::calc
