/// \file usual_ground.hpp
/// What is possible and what is usual in loads, soils and stone.
#pragma once

#include "addin/catalogue/usual.hpp"

namespace undercroft::addin::usual {

// Loads.

/// One wheel. A truck's is 16 kip (71 kN) or 80 kN; 16 typed for 16 kip is no truck's wheel in kN.
inline constexpr Range wheel_load{
    "25 kN", "250 kN", "0.1 kN", "2 MN",
    "AASHTO LRFD 3.6.1.2.2: 71 kN; AS 5100.2: 80 kN; an aircraft's wheel: 250 kN"};
/// A load on a patch of the ground: a wheel, a track, an outrigger, a column.
inline constexpr Range patch_load{"20 kN", "1000 kN", "1 N", "100 MN",
                                  "common practice: from half an axle to the outrigger of a large crane"};
/// Plant on one of its tracks, drums or wheels.
inline constexpr Range plant_load{"5 kN", "300 kN", "1 N", "10 MN",
                                  "common practice: from a plate compactor to the track of a 50 t excavator"};
/// The patch of a tyre along the way of the vehicle.
inline constexpr Range tyre_length{"0.15 m", "0.6 m", "10 mm", "2 m", "AASHTO LRFD 3.6.1.2.5: 10 in"};
/// The patch of a tyre, or of two beside each other, across the way.
inline constexpr Range tyre_width{"0.2 m", "0.8 m", "10 mm", "3 m", "AASHTO LRFD 3.6.1.2.5: 20 in"};
/// From wheel to wheel of one axle.
inline constexpr Range wheel_spacing{"1.2 m", "2.5 m", "0.1 m", "10 m", "AASHTO LRFD 3.6.1.2.2: 6 ft"};
/// From axle to axle.
inline constexpr Range axle_spacing{
    "1 m", "9.2 m", "0.1 m", "20 m",
    "AASHTO LRFD 3.6.1.2.2 and 3.6.1.2.3: 4 ft in a tandem, 14 ft to 30 ft in a truck"};
/// Fill over a buried structure.
inline constexpr Range cover =
    Range{"0.6 m", "5 m", "0.1 m", "100 m", "AASHTO LRFD 3.6.1.2.6 spreads wheels from 2 ft of cover on"}
        .or_in("ft");
/// Widening of a wheel's load per depth of fill.
inline constexpr Range distribution_factor{"1", "1.75", "1", "1.75",
                                           "AASHTO LRFD 3.6.1.2.6: 1.00 to 1.75 by edition and fill"};
/// Widening of a load on each side, run per depth.
inline constexpr Range load_spread{"0.25", "1", "0.01", "1",
                                   "common practice: 2V:1H, in codes up to 1V:1H; 2H:1V is a slip"};
/// A side of a loaded patch of the ground.
inline constexpr Range patch_side =
    Range{"0.2 m", "6 m", "1 mm", "5 km", "common practice: from a tyre to a footing or a track"}.or_in("ft");
/// The radius of a loaded circle.
inline constexpr Range patch_radius{"0.1 m", "4 m", "1 mm", "5 km"};
/// Below a load, where its stress is wanted.
inline constexpr Range depth_below_load = Range{"0.3 m", "8 m", "0.001 mm", "1 km"}.or_in("ft");
/// Beside a load.
inline constexpr Range offset_from_load = Range{"0.1 m", "10 m", "0.001 mm", "10 km"}.or_zero().or_in("ft");
/// The place of a patch of plant on either side of the origin.
inline constexpr Range plant_place =
    Range{"-12 m", "12 m", "-1 km", "1 km", "the length of the largest plant"};

/// Factor for lanes that are loaded at once.
inline constexpr Range presence{"0.65", "1.2", "0.65", "1.2", "AASHTO LRFD Table 3.6.1.1.2-1"};
inline constexpr Range lanes{"1", "6", "1", "100", "AASHTO LRFD 3.6.1.1.1: lanes of 12 ft"};
/// From the crown of chambers up to the underside of a pavement.
inline constexpr Range fill_depth = Range{"0.3 m", "6 m", "1 mm", "100 m"}.or_zero().or_in("ft");
/// On the fill: a layer of asphalt, a slab.
inline constexpr Range pavement = Range{"0.05 m", "0.4 m", "1 mm", "3 m"}.or_zero();

// Pressures.

/// Between a foundation, a tyre or a track and the ground.
inline constexpr Range contact_pressure{"15 kPa", "900 kPa", "1 Pa", "100 MPa",
                                        "common practice: from 1 m of fill to the tyre of a loaded truck"};
/// At the crown of buried chambers.
inline constexpr Range crown_pressure{"8 kPa", "200 kPa", "1 Pa", "10 MPa",
                                      "common practice: fill of 0.5 m alone to fill and traffic together"};
/// What ground may bear.
inline constexpr Range allowable_bearing{
    "40 kPa", "600 kPa", "1 kPa", "10 MPa",
    "International Building Code (2012), Table 1806.2: 72 kPa to 575 kPa; soft clay less"};
/// Sideways, of a loaded bed on its side fill.
inline constexpr Range lateral_pressure{"4 kPa", "100 kPa", "1 Pa", "10 MPa"};
/// Sideways, what the wall of a trench can take.
inline constexpr Range allowable_lateral{
    "8 kPa", "200 kPa", "100 Pa", "10 MPa",
    "International Building Code (2012), Table 1806.2: 16 to 63 kPa a metre of depth in soil"};
/// On the ground behind a wall.
inline constexpr Range surcharge =
    Range{"2 kPa", "100 kPa", "1 Pa", "10 MPa", "common practice: 5 kPa for people, 10 to 20 kPa for traffic"}
        .or_zero();

// Soil.

/// Of soil, stone or pavement as it lies.
inline constexpr Range unit_weight{"12 kN/m3", "28 kN/m3", "0.1 kN/m3", "80 kN/m3",
                                   "common practice: loose dry fill to concrete; steel has 77 kN/m3"};
/// The same, or less what it displaces under water.
inline constexpr Range unit_weight_or_submerged{"7 kN/m3", "28 kN/m3", "0.1 kN/m3", "80 kN/m3",
                                                "common practice: soil under water to concrete"};
/// Of water, fresh to salt.
inline constexpr Range water_unit_weight{"9.7 kN/m3", "10.3 kN/m3", "9 kN/m3", "13 kN/m3",
                                         "fresh water 9.8 kN/m3, sea water 10.1 kN/m3"};
/// Internal friction of soil or stone.
inline constexpr Range friction_angle{"15 deg", "50 deg", "0 deg", "60 deg",
                                      "common practice: soft clay to crushed stone"};
/// The same of ground that may have none while undrained.
inline constexpr Range friction_angle_or_none = friction_angle.or_zero();
/// Between ground and wall.
inline constexpr Range wall_friction =
    Range{"4 deg", "35 deg", "0 deg", "60 deg", "common practice: up to two thirds of the friction angle"}
        .or_zero();
/// The back of a wall from the horizontal.
inline constexpr Range wall_angle{"60 deg", "120 deg", "1 deg", "179 deg"};
/// The ground behind a wall, rise per run.
inline constexpr Range backfill_slope =
    Range{"0.02", "1", "0.0001", "2", "common practice: flatter than the friction angle"}.or_zero();
/// Of ground, 0 where it has none.
inline constexpr Range cohesion =
    Range{"5 kPa", "150 kPa", "1 Pa", "10 MPa", "common practice: soft to very stiff clay"}.or_zero();
/// Of clay while undrained.
inline constexpr Range undrained_strength{"8 kPa", "250 kPa", "1 Pa", "10 MPa",
                                          "common practice: very soft to very stiff clay"};
/// What bears: from the strip of one foot to a footing.
inline constexpr Range bearing_width{"0.1 m", "6 m", "1 mm", "1 km"};
/// Of stone or sand through which a load spreads.
inline constexpr Range spread_layer = Range{"0.1 m", "4 m", "1 mm", "30 m"}.or_zero().or_in("ft");
/// On the strength of the ground.
inline constexpr Range bearing_safety{"1.5", "4", "1", "10", "common practice: 2 to 3"};
/// Unit weight of stone less that of the clay it replaces.
inline constexpr Range added_weight = Range{"0.2 kN/m3", "8 kN/m3", "1 N/m3", "50 kN/m3"}.or_zero();
/// The base of a foundation below the ground.
inline constexpr Range foundation_depth = Range{"0.2 m", "5 m", "1 mm", "100 m"}.or_zero().or_in("ft");
/// A foundation's shorter side.
inline constexpr Range foundation_width{"0.3 m", "4 m", "0.000001 mm", "1 km"};
/// A foundation's longer side.
inline constexpr Range foundation_length{"0.5 m", "30 m", "0.000001 mm", "10 km"};
/// A cone with a hammer of 8 kg goes 2 mm into good base stone and 100 mm into mud.
inline constexpr Range penetration{"0.002 m", "0.1 m", "0.01 mm", "1 m",
                                   "ASTM D6951: CBR 100 to 0.5 (from memory)"};
/// Of earth pressure, active to passive.
inline constexpr Range earth_coefficient{"0.15", "8", "0.01", "40",
                                         "Rankine: active at 45 deg 0.17, passive at 45 deg 5.8"};
/// A wall or the side of a trench.
inline constexpr Range wall_height{"0.5 m", "10 m", "1 mm", "100 m"};
/// Groundwater above the foot of a wall.
inline constexpr Range water_depth = Range{"0.1 m", "10 m", "0.1 mm", "100 m"}.or_zero().or_in("ft");
/// Against flotation.
inline constexpr Range uplift_factor{"1", "2", "1", "10",
                                     "USACE EM 1110-2-2100 (2005), Table 3-4: 1.1 to 1.3 (from memory)"};
/// What a bed displaces of the groundwater.
inline constexpr Range submerged_volume{"5 m3", "5000 m3", "1 L", "1e7 m3"};
/// What a soil's sieve lets pass; 1 % and less is more often a share typed for a percentage.
inline constexpr Range passing =
    Range{"1.5 %", "100 %", "0 %", "100 %", "AASHTO M 145 reports whole percentages"}.or_zero();
inline constexpr Range liquid_limit{"12 %", "120 %", "1 %", "500 %", "common practice: silt to fat clay"};
inline constexpr Range plasticity_index{"2 %", "80 %", "0 %", "400 %", "common practice: silt to fat clay"};

/// Groundwater above the base of a bed.
inline constexpr Range water_on_bed{"0.1 m", "6 m", "1 mm", "100 m"};
/// Chambers of a bed, empty.
inline constexpr Range empty_volume = Range{"5 m3", "20000 m3", "1 L", "1e8 m3"}.or_zero();
/// Of a bed and what lies on it, or of the water that lifts it.
inline constexpr Range bed_force{"1000 kN", "30000 kN", "1 N", "1e9 kN"};
inline constexpr Range stabilising_factor{"0.8", "1", "0.01", "1", "EN 1997-1:2004, Table A.15: 0.9"};
inline constexpr Range destabilising_factor{"1", "1.5", "1", "2", "EN 1997-1:2004, Table A.15: 1.0"};
/// Of plant that vibrates: its centrifugal force comes to its weight.
inline constexpr Range vibration{"1", "2.5", "1", "10", "common practice: 1 at rest, 2 vibrating"};

// Settlement.

inline constexpr Range formation_depth = Range{"0.3 m", "8 m", "1 mm", "100 m"}.or_zero();
/// Sides of a loaded rectangle, or of a whole bed.
inline constexpr Range loaded_width{"0.5 m", "60 m", "1 mm", "5 km"};
inline constexpr Range loaded_length{"0.5 m", "200 m", "1 mm", "5 km"};
inline constexpr Range ground_modulus{"2000 kPa", "150000 kPa", "1 kPa", "100000 MPa",
                                      "common practice: soft clay to dense gravel"};
inline constexpr Range poisson = Range{"0.15", "0.5", "0.01", "0.5"}.or_zero();
inline constexpr Range clay_thickness{"0.3 m", "20 m", "1 mm", "500 m"};
inline constexpr Range void_ratio{"0.3", "4", "0.01", "25", "common practice: stiff clay to organic mud"};
inline constexpr Range compression_index{"0.05", "1.5", "0.0001", "15"};
inline constexpr Range recompression_index{"0.005", "0.3", "0.00001", "15"};
/// Of soil, or added to it.
inline constexpr Range effective_stress{"5 kPa", "800 kPa", "1 Pa", "100 MPa"};
inline constexpr Range consolidation{"0.0002 m2/d", "0.5 m2/d", "1e-12 m2/s", "1000 m2/s",
                                     "common practice: 0.1 to 100 m2 a year"};
/// Since a load on clay: a week to decades, in minutes.
inline constexpr Range consolidation_time =
    Range{"10000 min", "20000000 min", "1 s", "1000000 d"}.or_zero().or_in("s");
inline constexpr Range drainage_path{"0.2 m", "15 m", "1 mm", "500 m"};
/// Of the middle of a layer below a base.
inline constexpr Range depth_below_base = Range{"0.1 m", "30 m", "1 mm", "1 km"}.or_zero();
inline constexpr Range hough_index{"20", "300", "1", "2000",
                                   "Hough (1959): silt to dense gravel (from memory)"};

// Stone, fill and fabric.

/// Sieves from silt to rubble; a size typed in mm is no size in m.
inline constexpr Range sieve{"0.00005 m", "0.1 m", "0.0001 mm", "1 m", "ASTM E11: 75 um to 100 mm"};
/// A percentage of a grading at which a size is wanted: D5 to D95.
inline constexpr Range passing_wanted{"5 %", "95 %", "0 %", "100 %", "common practice: D5 to D95"};
/// Stone as laid, dry.
inline constexpr Range bulk_density{"1100 kg/m3", "2100 kg/m3", "100 kg/m3", "5000 kg/m3",
                                    "common practice: crushed stone 1400 to 1700 kg/m3"};
/// The particles of stone.
inline constexpr Range particle_density{"2200 kg/m3", "3200 kg/m3", "300 kg/m3", "8000 kg/m3",
                                        "common practice: limestone to basalt"};
/// Fill as it lies, wet or dry.
inline constexpr Range fill_density{"1200 kg/m3", "2500 kg/m3", "100 kg/m3", "5000 kg/m3"};
/// Water per dry soil by mass.
inline constexpr Range moisture =
    Range{"0.02", "0.5", "0.01 %", "100 %", "common practice: dry sand to wet clay"}.or_zero();
/// The grains of a soil.
inline constexpr Range grain_density{"2450 kg/m3", "2900 kg/m3", "300 kg/m3", "8000 kg/m3",
                                     "common practice: 2600 to 2800 kg/m3"};
/// Air per volume of compacted soil.
inline constexpr Range air = Range{"0.01", "0.2", "0.1 %", "100 %"}.or_zero();
inline constexpr Range water_density{"990 kg/m3", "1030 kg/m3", "950 kg/m3", "1300 kg/m3",
                                     "fresh water 1000 kg/m3, sea water 1025 kg/m3"};
/// Water on stone as it is delivered, per dry stone by mass.
inline constexpr Range stone_moisture =
    Range{"0.005", "0.1", "0.01 %", "100 %", "common practice: to 6 % on washed stone"}.or_zero();
/// Stone that was delivered and laid; 300 typed for 300 t is no bed's in kg.
inline constexpr Range laid_mass{"2000 kg", "20000000 kg", "1 g", "1e9 kg"};
/// Greatest dry density of a compaction test.
inline constexpr Range greatest_density{"1500 kg/m3", "2400 kg/m3", "100 kg/m3", "5000 kg/m3",
                                        "common practice: clay to crushed rock"};
/// Dry density over the greatest of the laboratory.
inline constexpr Range compaction{"0.85", "1.05", "1 %", "120 %", "common practice: 90 % to 100 %"};
/// A layer that is compacted in lifts.
inline constexpr Range filled_thickness{"0.1 m", "5 m", "1 mm", "100 m"};
/// One lift, compacted.
inline constexpr Range lift{"0.075 m", "0.6 m", "1 mm", "10 m", "common practice: 100 to 300 mm"};
/// The size that 85 % of a soil passes.
inline constexpr Range soil_d85 =
    Range{"0.00005 m", "0.005 m", "0.0001 mm", "1 m", "common practice: silt to coarse sand"}.or_in("ft");
/// Of the filter criterion.
inline constexpr Range fabric_factor{"0.5", "2", "0.01", "2",
                                     "FHWA NHI-07-092, chapter 2: 1 to 2 (from memory)"};
/// Of a fabric, across.
inline constexpr Range fabric_permeability{"300 mm/h", "40000 mm/h", "0.001 mm/h", "1e8 mm/h",
                                           "common practice: 0.01 to 1 cm/s"};
inline constexpr Range fabric_thickness{"0.0003 m", "0.008 m", "0.01 mm", "0.1 m",
                                        "common practice: 0.5 mm woven to 5 mm non-woven"};
inline constexpr Range permittivity{"0.02 1/s", "3 1/s", "0.000001 1/s", "1000 1/s",
                                    "common practice: woven to thin non-woven"};
inline constexpr Range fabric_head = Range{"0.01 m", "1 m", "0.01 mm", "100 m"}.or_zero().or_in("ft");
/// Of a soil beside a fabric, gravel to clay.
inline constexpr Range soil_permeability =
    Range{"1 mm/h", "100 mm/h", "0.0000001 mm/h", "1e8 mm/h",
          "common practice: loam to fine sand; clay and gravel with their unit"}
        .or_in("in/h");
/// D60 over D10.
inline constexpr Range uniformity{"1", "50", "1", "100000", "common practice: one size to well graded"};

// Chambers on the ground.

/// The width of one foot of a chamber, or of a strip that bears.
inline constexpr Range foot_width =
    Range{"0.05 m", "0.5 m", "1 mm", "10 m", "common practice: feet of 75 to 200 mm"}.or_in("ft");
/// Stone under the feet of chambers.
inline constexpr Range base_stone =
    Range{"0.075 m", "1 m", "0.0001 mm", "30 m", "common practice: 150 to 600 mm"}.or_zero().or_in("ft");

/// Stone beside chambers, from their feet to the crown.
inline constexpr Range stone_beside = Range{"0.15 m", "2 m", "1 mm", "30 m"}.or_zero();
/// Stone as laid.
inline constexpr Range stone_unit_weight{"13 kN/m3", "19 kN/m3", "0.1 kN/m3", "80 kN/m3",
                                         "common practice: 1350 to 1900 kg/m3 as laid"};

}  // namespace undercroft::addin::usual
