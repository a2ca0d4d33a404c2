/// \file usual_works.hpp
/// What is possible and what is usual of what is dug, carried, cut and ordered.
#pragma once

#include "addin/catalogue/usual.hpp"

namespace undercroft::addin::usual {

// Earthworks.

/// What is dug, filled or carried on a job; 10000 m3 is a thousand truckloads.
inline constexpr Range dug_volume = Range{"5 m3", "10000 m3", "1 L", "1e8 m3"}.or_zero();
/// Depth of a pit, or of a part of it, from its base up.
inline constexpr Range pit_part = Range{"0.3 m", "8 m", "1 mm", "100 m"}.or_zero();
/// The depths for which the standard gives a slope.
inline constexpr Range trench_depth{"0.3 m", "6.1 m", "1 mm", "100 m", "US 29 CFR 1926 Subpart P: to 20 ft"};
/// Groundwater above the formation of a pit.
inline constexpr Range water_in_pit = Range{"0.1 m", "6 m", "1 mm", "100 m"}.or_zero();
/// From one spot level to the next.
inline constexpr Range grid_spacing{"1 m", "50 m", "10 mm", "10 km"};
/// Along a line, from where it is counted.
inline constexpr Range chainage = Range{"2 m", "2000 m", "-1000 km", "1000 km"}.or_zero();
/// A point in plan along one of two axes.
inline constexpr Range plan_place = Range{"-50 m", "200 m", "-10 km", "10 km"};
/// On a site's own grid. Coordinates of a state or nation come in feet as often as in metres: with their
/// unit.
inline constexpr Range grid_place =
    Range{"100 m", "10000 m", "-20000 km", "20000 km",
          "a site's own grid; coordinates of a state or nation, in feet or in metres, with their unit"}
        .or_zero();
/// Of a corner of a site, on its own grid.
inline constexpr Range corner_place{"-100 m", "2000 m", "-20000 km", "20000 km"};
/// Clockwise from grid north.
inline constexpr Range bearing = Range{"1 deg", "360 deg", "0 deg", "360 deg"}.or_zero();
/// How far levels may be off the plane through them.
inline constexpr Range plane_tolerance =
    Range{"0.005 m", "0.1 m", "0.01 mm", "10 m", "common practice: the twist of a graded surface"}.or_zero();
/// What stands on a formation, up to the crown of chambers.
inline constexpr Range crown_height = Range{"0.3 m", "4 m", "1 mm", "100 m"}.or_zero();
/// Of a cutting, across.
inline constexpr Range section_area = Range{"1 m2", "500 m2", "1 cm2", "1 km2"}.or_zero();
/// Volume per volume in the ground.
inline constexpr Range bulking{"0.8", "1.8", "0.3", "3",
                               "US Army FM 5-434, Table 1-1: 0.90 to 1.50 (from memory); 30 is a percentage"};
/// Of what is dug, fit for backfill.
inline constexpr Range fit_share = Range{"0.05", "1", "0.1 %", "100 %"}.or_zero();
/// Between a bed and shoring, on each side.
inline constexpr Range working_space =
    Range{"0.3 m", "1.5 m", "1 mm", "10 m", "common practice: 0.5 to 1 m"}.or_zero();
/// What one truck carries, loose.
inline constexpr Range truck_volume{"3 m3", "30 m3", "10 L", "500 m3"};
/// What one truck may carry: 20 typed for 20 t is no payload in kg.
inline constexpr Range payload{"3000 kg", "45000 kg", "0 kg", "500 t"};
/// Spoil as it lies in the truck.
inline constexpr Range loose_density{"800 kg/m3", "2200 kg/m3", "0 kg/m3", "5000 kg/m3"};

// Sheet goods.

inline constexpr Range roll_length{"20 m", "200 m", "0.5 m", "5 km"};
/// A rest of a roll that is worth joining on.
inline constexpr Range least_piece{"1 m", "200 m", "0.1 m", "5 km", "common practice: 3 m"};
/// A face to be covered, along its strips and across them.
inline constexpr Range face_length{"1.5 m", "150 m", "10 mm", "5 km"};
inline constexpr Range face_width{"0.3 m", "50 m", "1 mm", "5 km"};
inline constexpr Range roll_width{"1 m", "10 m", "0.1 m", "50 m"};
/// An area of fabric or liner.
inline constexpr Range sheet_area{"20 m2", "10000 m2", "1 cm2", "10 km2"};
inline constexpr Range liner_thickness{"0.0005 m", "0.004 m", "0.01 mm", "20 mm",
                                       "common practice: sheet of 0.5 to 3 mm"};
/// Of a polymer; they float or sink.
inline constexpr Range liner_density{"850 kg/m3", "1600 kg/m3", "100 kg/m3", "3000 kg/m3",
                                     "common practice: polypropylene 900, polyethylene 940, PVC 1300 kg/m3"};
/// A width laid over along an edge.
inline constexpr Range edge_lap = Range{"0.1 m", "2 m", "1 mm", "10 m"}.or_zero();

// Pipes.

/// Pieces of pipe of one length.
inline constexpr Range pieces = Range{"1", "1000", "1", "1000000"}.or_zero();
inline constexpr Range piece_length{"0.1 m", "20 m", "1 mm", "1 km"};
inline constexpr Range stock_length{"1 m", "15 m", "10 mm", "1 km", "common practice: 3 to 6 m"};
/// What the cover and frame of a riser take, or its socket.
inline constexpr Range recess = Range{"0.02 m", "0.5 m", "0.1 mm", "10 m"}.or_zero();

// The search of beds.

/// One unit as delivered.
inline constexpr Range unit_mass{"5 kg", "150 kg", "0.1 kg", "5000 kg"};
/// The cover that a supplier allows, least or greatest.
inline constexpr Range cover_limit{"0.3 m", "6 m", "1 mm", "100 m"};
/// From one thickness of stone that is tried to the next.
inline constexpr Range stone_step{"0.01 m", "1.2 m", "0.1 mm", "30 m"};
/// Rows or units in a row that are tried, and from one to the next.
inline constexpr Range tried_count{"1", "100", "1", "10000"};
/// Between the edge of a pit and what must not stand on it.
inline constexpr Range edge_strip =
    Range{"0.5 m", "3 m", "1 mm", "50 m", "US 29 CFR 1926.651(j)(2): 2 ft"}.or_zero();
/// Between a formation and the highest groundwater.
inline constexpr Range dry_margin =
    Range{"0.2 m", "2 m", "1 mm", "30 m", "common practice: 0.3 to 1 m"}.or_zero();
/// Under the top of the stone, down to the overflow and its freeboard.
inline constexpr Range not_counted = Range{"0.025 m", "1 m", "1 mm", "20 m"}.or_zero();
/// Beds that a list shows.
inline constexpr Range listed_beds = Range{"1", "200", "1", "10000"}.or_zero();

// People.

inline constexpr Range crews{"1", "20", "0.01", "1000"};

// The limits of the method: NIOSH publication 94-110, 1.3; usual is what is within them.
inline constexpr const char* niosh = "NIOSH publication 94-110 (rev. 2021), 1.3";
/// Hands in front of the ankles.
inline constexpr Range reach{"0.15 m", "0.7 m", "1 mm", "2 m", niosh};
/// Hands above the floor.
inline constexpr Range hand_height = Range{"0.1 m", "1.8 m", "1 mm", "3 m", niosh}.or_zero();
inline constexpr Range lift_travel = Range{"0.1 m", "1.8 m", "1 mm", "3 m", niosh}.or_zero();
inline constexpr Range body_turn = Range{"10 deg", "135 deg", "0 deg", "180 deg", niosh}.or_zero();
inline constexpr Range lifts_per_minute{"0.1", "10", "0.001", "60", niosh};
/// Of a shift; 2 typed for 2 h is no shift in minutes.
inline constexpr Range lifting_time{"15 min", "480 min", "1 s", "24 h", niosh};

inline constexpr Range persons{"1", "3", "1", "20", "HSE L23 (2016), paragraphs 119, 120: to three"};

}  // namespace undercroft::addin::usual
