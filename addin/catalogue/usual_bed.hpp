/// \file usual_bed.hpp
/// What is possible and usual of chambers, rows and beds, and of drawings of them. Common practice where no
/// source is named.
#pragma once

#include "addin/catalogue/usual.hpp"

namespace undercroft::addin::usual {

/// Height above the base of a chamber, inside it.
inline constexpr Range depth_in_chamber = Range{"0.03 m", "2.5 m", "0 m", "30 m"}.or_zero();
/// Laid length of one unit: a crate has 0.4 m, a chamber up to 4 m.
inline constexpr Range unit_length{"0.4 m", "6 m", "50 mm", "50 m"};
/// By which joined units overlap.
inline constexpr Range joint_overlap = Range{"0.02 m", "0.3 m", "0 m", "10 m"}.or_zero();
/// Width of a chamber over its feet, by which rows are set out.
inline constexpr Range width_over_feet{"0.4 m", "5 m", "10 mm", "40 m"};
/// Clear stone between rows.
inline constexpr Range row_gap = Range{"0.05 m", "1 m", "0 m", "20 m"}.or_zero();
/// Stone beyond the outer rows and beyond their ends.
inline constexpr Range bed_margin = Range{"0.1 m", "1 m", "0 m", "50 m"}.or_zero();
/// Stone under the chambers, or over their crowns.
inline constexpr Range stone_layer = Range{"0.075 m", "1.2 m", "0 m", "30 m"}.or_zero();
/// All chambers end to end.
inline constexpr Range chamber_length = Range{"10 m", "10 km", "0 m", "1000 km"}.or_zero();
/// Water above the base of a bed.
inline constexpr Range depth_in_bed = Range{"0.05 m", "5 m", "0 m", "100 m"}.or_zero();
/// Water that a bed holds.
inline constexpr Range held_volume = Range{"5 m3", "20000 m3", "0 m3", "1e8 m3"}.or_zero();

/// Units of one kind in a bed.
inline constexpr Range units_of_kind{"1", "5000", "1", "1000000"};
inline constexpr Range units_counted = units_of_kind.or_zero();
/// Of a supplier's table: depth over the base of a unit, and what one unit holds below it.
inline constexpr Range unit_depth = Range{"0.01 m", "3 m", "0.1 mm", "30 m"}.or_zero();
inline constexpr Range unit_volume = Range{"0.005 m3", "12 m3", "0.001 L", "1000 m3"}.or_zero();
/// Plastic of all units of a bed; 20 typed for 20 t is none of a bed in kg.
inline constexpr Range plastic_mass = Range{"200 kg", "500000 kg", "1 g", "1e8 kg"}.or_zero();
inline constexpr Range plastic_density{"850 kg/m3", "1600 kg/m3", "100 kg/m3", "8000 kg/m3",
                                       "common practice: polypropylene 900, polyethylene 950 kg/m3"};
/// Header pipes in the stone of a bed: what they hold, their inside diameter, their invert over the base.
inline constexpr Range header_volume = Range{"0.5 m3", "500 m3", "1 L", "100000 m3"}.or_zero();
inline constexpr Range header_diameter{"0.1 m", "1.8 m", "10 mm", "5 m"};
inline constexpr Range header_invert = Range{"0.05 m", "2 m", "1 mm", "30 m"}.or_zero();

/// Units in a row, and rows side by side: a bed is seldom longer than 200 m or wider than 100 m.
inline constexpr Range units_in_row{"2", "100", "1", "10000"};
inline constexpr Range rows{"1", "50", "1", "10000"};
/// Units from one inspection port to the next; 0 for ports at the ends only.
inline constexpr Range port_interval = Range{"2", "50", "1", "10000"}.or_zero();

// Drawings.

/// What is drawn: a bed, its pit and the ground beside it.
inline constexpr Range drawn_length{"1 m", "250 m", "10 mm", "10 km"};
/// How high it is.
inline constexpr Range drawn_height{"0.3 m", "12 m", "10 mm", "1 km"};
/// The paper it is drawn on, without its edges.
inline constexpr Range paper{"0.05 m", "0.9 m", "5 mm", "10 m",
                             "ISO 216:2007: A0 is 1189 mm long (from memory)"};
/// Denominator of a scale, 1 for full size.
inline constexpr Range scale{"10", "500", "0.001", "1e6"};
/// A level in a cross-section, above the base of the bed or below it.
inline constexpr Range drawn_level = Range{"-10 m", "12 m", "-1 km", "1 km"};
/// What a level is drawn beyond the pit.
inline constexpr Range overhang = Range{"0.2 m", "10 m", "0 m", "1 km"}.or_zero();

}  // namespace undercroft::addin::usual
