/// \file usual_water.hpp
/// What is possible and usual of rain, runoff, outlets, pipes and water in the ground. Common practice where
/// no source is named.
#pragma once

#include "addin/catalogue/usual_bed.hpp"

namespace undercroft::addin::usual {

// Rain and runoff.

/// How long rain lasts that a bed is sized for.
inline constexpr Range rain_duration{"5 min", "1440 min", "1 s", "60 d"};
/// The same in a table of rain, from the shortest burst to two days.
inline constexpr Range table_duration{"4 min", "2880 min", "1 s", "60 d"};
/// Mean intensity over the time of concentration of a site: below 8 mm/h it is mostly in/h.
inline constexpr Range rain_intensity{"8 mm/h", "300 mm/h", "0.01 mm/h", "2 m/h"};
/// The same in a table of rain, where days have little.
inline constexpr Range table_intensity{"2 mm/h", "300 mm/h", "0.001 mm/h", "2 m/h"};
/// Rain of one storm: 1.8 m in 24 h is the most that was ever measured.
inline constexpr Range storm_depth =
    Range{"0.02 m", "0.45 m", "0 mm", "5 m",
          "common practice; World Meteorological Organization, greatest rain in "
          "24 h: 1.825 m (from memory)"}
        .or_zero();
/// The same, where there must be some.
inline constexpr Range two_year_rain{
    "0.02 m", "0.25 m", "1 mm", "5 m",
    "USDA TR-55 (1986), appendix B: 2-year 24-hour rain of 1 in to 6 in (from "
    "memory)"};
/// Rain since a storm began, row by row.
inline constexpr Range cumulative_rain = Range{"0.002 m", "0.3 m", "0 mm", "5 m"}.or_zero();
/// Time since a storm or a flood began, row by row.
inline constexpr Range elapsed_time = Range{"2 min", "2880 min", "-365 d", "365 d"}.or_zero();
/// What drains to one bed.
inline constexpr Range drained_area{"100 m2", "50000 m2", "0.01 m2", "100000 km2"};
/// One surface of it.
inline constexpr Range surface_area = Range{"20 m2", "20000 m2", "0 m2", "100000 km2"}.or_zero();
inline constexpr Range runoff_coefficient{
    "0.1", "1", "0.1 %", "100 %",
    "Chow, Maidment and Mays, Applied Hydrology (1988), Table 15.1.1 (from memory)"};
inline constexpr Range surface_coefficient =
    Range{"0.05", "1", "0 %", "100 %",
          "Chow, Maidment and Mays, Applied Hydrology (1988), Table 15.1.1 (from memory)"}
        .or_zero();
inline constexpr Range curve_number{"30", "100", "1", "100", "USDA TR-55 (1986), Table 2-2 (from memory)"};
inline constexpr Range abstraction_ratio =
    Range{"0.02", "0.4", "0 %", "100 %", "0.2 in USDA TR-55 (1986), 0.05 in later work (from memory)"}
        .or_zero();
inline constexpr Range concentration_time{"4 min", "180 min", "1 s", "60 d"};
/// Step of a hydrograph or of a routing.
inline constexpr Range time_step{"1 min", "30 min", "0.1 s", "10 d"};

/// Of a pattern of rain, row by row.
inline constexpr Range cumulative_share = Range{"0.0005", "1", "0 %", "100 %"}.or_zero();
/// What a changing climate makes of published rain.
inline constexpr Range climate_factor{"1", "2", "10 %", "1000 %",
                                      "common practice: uplifts of 5 % to 60 % by place and year"};
/// Rain of 24 hours, where there must be some.
inline constexpr Range day_rain{"0.02 m", "0.45 m", "1 mm", "5 m",
                                "USDA TR-55 (1986), appendix B (from memory); common practice"};
inline constexpr Range graphical_curve_number{"40", "100", "40", "100", "USDA TR-55 (1986), ch. 4"};
inline constexpr Range graphical_time{"6 min", "240 min", "6 min", "600 min",
                                      "USDA TR-55 (1986), ch. 4: 0.1 h to 10 h"};
inline constexpr Range share_of_ponds =
    Range{"0.002", "0.05", "0 %", "5 %", "USDA TR-55 (1986), Table 4-2"}.or_zero();
inline constexpr Range pervious_curve_number{"30", "95", "1", "98", "USDA TR-55 (1986), fig. 2-3"};
inline constexpr Range impervious_share = Range{"0.05", "1", "0 %", "100 %"}.or_zero();
inline constexpr Range share_of_whole = Range{"0.05", "1", "0 %", "100 %"}.or_zero();
inline constexpr Range permitted_share{"0.1", "1", "0.1 %", "100 %"};
/// The constants of i = a/(t + b)^c, t in minutes.
inline constexpr Range formula_intensity{"200 mm/h", "6000 mm/h", "0.01 mm/h", "100 m/h"};
inline constexpr Range formula_time = Range{"2 min", "40 min", "0 s", "10 d"}.or_zero();
inline constexpr Range formula_exponent{"0.5", "1.2", "0.1 %", "150 %"};
/// What the ground keeps before any runs off, and of what falls then.
inline constexpr Range initial_loss = Range{"0.001 m", "0.06 m", "0 mm", "1 m"}.or_zero();
inline constexpr Range continuing_loss = Range{"0.5 mm/h", "30 mm/h", "0 mm/h", "10 m/h"}.or_zero();

// Quality, upkeep, reuse.

/// Rain whose runoff is cleaned: 5 mm to 50 mm.
inline constexpr Range quality_rain{"0.005 m", "0.06 m", "0.1 mm", "5 m"};
inline constexpr Range quality_intercept = Range{"0.01", "0.3", "0 %", "100 %"}.or_zero();
inline constexpr Range quality_slope = Range{"0.4", "1", "0 %", "100 %"}.or_zero();
inline constexpr Range quality_least = Range{"0.002 m", "0.03 m", "0 mm", "1 m"}.or_zero();
/// Solids of a paved hectare a year: 100 kg to 2000 kg.
inline constexpr Range silt_load{"10 g/m2", "300 g/m2", "0.01 g/m2", "100 kg/m2"};
inline constexpr Range share_kept{"0.2", "1", "0.1 %", "100 %"};
inline constexpr Range silt_density{"800 kg/m3", "2000 kg/m3", "100 kg/m3", "5000 kg/m3"};
inline constexpr Range silt_floor{"10 m2", "1000 m2", "0.01 m2", "10 km2"};
inline constexpr Range years_of_silt = Range{"1", "50", "0", "1000"}.or_zero();
inline constexpr Range silt_depth = Range{"0.01 m", "0.3 m", "0 mm", "10 m"}.or_zero();
/// Of one day: 1.8 m is the most that was ever measured.
inline constexpr Range daily_rain = Range{"0.0001 m", "0.15 m", "0 mm", "5 m"}.or_zero();
inline constexpr Range collecting_area{"30 m2", "10000 m2", "0.01 m2", "100 km2"};
inline constexpr Range collected_share{"0.3", "1", "0.1 %", "100 %"};
inline constexpr Range first_flush = Range{"0.0002 m", "0.005 m", "0 mm", "1 m"}.or_zero();
inline constexpr Range daily_demand = Range{"0.05 m3", "30 m3", "0 L", "1e6 m3"}.or_zero();
inline constexpr Range reuse_store{"1 m3", "400 m3", "1 L", "1e7 m3"};
inline constexpr Range full_share = Range{"0.05", "1", "0 %", "100 %"}.or_zero();
inline constexpr Range reliability{"0.3", "1", "0.1 %", "100 %"};

// Ways of the water.

inline constexpr Range flow_path = Range{"30 m", "3000 m", "0.1 m", "1000 km"}.or_in("ft");
inline constexpr Range sheet_flow_path{"3 m", "91.44 m", "0.1 m", "91.44 m",
                                       "USDA TR-55 (1986): at most 300 ft"};
/// Of water that has gathered, until it finds a drain.
inline constexpr Range shallow_path = Range{"10 m", "500 m", "0.1 m", "1000 km"}.or_in("ft");
/// Of a ditch, its water.
inline constexpr Range flow_area{"0.1 m2", "10 m2", "1 cm2", "10000 m2"};
inline constexpr Range wetted_perimeter = Range{"0.3 m", "30 m", "1 cm", "10 km"}.or_in("ft");
inline constexpr Range channel_slope{"0.001", "0.05", "0.00001", "3"};
inline constexpr Range channel_roughness{"0.012", "0.15", "0.001", "5",
                                         "Chow, Open-Channel Hydraulics (1959), Table 5-6 (from memory)"};
inline constexpr Range sheet_roughness{"0.01", "0.8", "0.001", "5",
                                       "USDA TR-55 (1986), Table 3-1 (from memory)"};

// Outlets.

inline constexpr Range orifice_diameter{"0.02 m", "0.9 m", "1 mm", "10 m"};
inline constexpr Range orifice_head{"0.1 m", "4 m", "1 mm", "100 m"};
inline constexpr Range orifice_coefficient{
    "0.4", "0.98", "5 %", "100 %", "FHWA HEC-22: 0.4 for a ragged edge, 0.6 for a square one (from memory)"};
/// Width or height of a rectangular opening.
inline constexpr Range opening_side{"0.03 m", "2 m", "1 mm", "100 m"};
/// Of the channel or chamber in which a weir stands.
inline constexpr Range channel_width{"0.5 m", "12 m", "1 cm", "10 km"};
/// Of a standing pipe over whose rim the water falls.
inline constexpr Range riser_diameter{"0.15 m", "2.5 m", "1 cm", "30 m"};
inline constexpr Range crest_length{"0.2 m", "11 m", "1 mm", "10 km"};
inline constexpr Range weir_head = Range{"0.05 m", "2 m", "0 m", "100 m"}.or_zero();
/// Of a weir above the floor of its channel or chamber.
inline constexpr Range crest_height{"0.1 m", "3 m", "1 cm", "1 km"};
/// Of a weir whose tailwater stands above the crest.
inline constexpr Range drowning_head{"0.05 m", "2 m", "0.1 mm", "100 m"};
inline constexpr Range weir_exponent{"1.5", "2.5", "1", "3",
                                     "Villemonte (1947): 1.5 of a rectangular weir, 2.5 of a V-notch"};
/// Water above the lowest point of an opening.
inline constexpr Range water_above = Range{"0.05 m", "4 m", "0 m", "100 m"}.or_zero();
/// Water below an outlet, above its crest, its lowest point or the base of the bed; less than 0 is free.
inline constexpr Range tailwater = Range{"0.05 m", "3 m", "-1 km", "1 km"}.or_zero();
/// How far straight lines of a rating may be from its law.
inline constexpr Range rating_tolerance{"0.001", "0.05", "0.01 %", "10 %"};
/// 1.7 for a broad crest, 1.84 for a sharp one, 2.2 for a rounded one; 3.33 is that of feet.
inline constexpr Range weir_coefficient{"1.3 m^0.5/s", "2.3 m^0.5/s", "0.1 m^0.5/s", "5 m^0.5/s"};
/// 2.5 is that of feet.
inline constexpr Range notch_coefficient{"1.2 m^0.5/s", "1.5 m^0.5/s", "0.1 m^0.5/s", "3 m^0.5/s"};
inline constexpr Range notch_angle{"22.5 deg", "120 deg", "0.1 deg", "179.9 deg",
                                   "ISO 1438: 20 deg to 100 deg (from memory); common practice"};
inline constexpr Range end_contractions = Range{"1", "2", "0", "100"}.or_zero();
inline constexpr Range equal_outlets = Range{"1", "20", "0", "10000"}.or_zero();
/// How far the sides of a weir flare per height; 0.25 of Cipolletti.
inline constexpr Range weir_side_slope = Range{"0.1", "1", "0", "5"}.or_zero();
/// What one outlet passes, or a pump lifts.
inline constexpr Range outlet_flow{"0.3 L/s", "300 L/s", "1e-6 L/s", "1e4 m3/s"};
/// What the authority lets out; 0 for nothing.
inline constexpr Range release = Range{"2 L/s", "200 L/s", "0 L/s", "1e4 m3/s"}.or_zero();

// Tables of stage, storage and flow.

inline constexpr Range table_depth = Range{"0.02 m", "4 m", "-10 m", "1 km"}.or_zero();
inline constexpr Range table_volume = Range{"2 m3", "5000 m3", "0 m3", "1e9 m3"}.or_zero();
inline constexpr Range table_area = Range{"5 m2", "10000 m2", "0 m2", "1000 km2"}.or_zero();
inline constexpr Range table_flow = Range{"1 L/s", "500 L/s", "0 L/s", "1e6 m3/s"}.or_zero();
/// Of a flood that comes in.
inline constexpr Range inflow = Range{"2 L/s", "2000 L/s", "0 L/s", "1e6 m3/s"}.or_zero();
/// Up to where a bed is rated, or from where it drains.
inline constexpr Range rated_depth{"0.3 m", "5 m", "1 mm", "1 km"};
/// How deep the water stands before rain, or where it counts as gone.
inline constexpr Range rest_depth = Range{"0.02 m", "2 m", "0 m", "1 km"}.or_zero();

// Pipes.

inline constexpr Range pipe_diameter{"0.1 m", "2.5 m", "1 mm", "30 m"};
inline constexpr Range pipe_depth = Range{"0.02 m", "2.5 m", "0 m", "30 m"}.or_zero();
inline constexpr Range pipe_flow = Range{"5 L/s", "5000 L/s", "0 L/s", "1e4 m3/s"}.or_zero();
/// In a pipe of a bed: a drain, a header, an outfall; and 0 for none.
inline constexpr Range bed_pipe_flow = Range{"5 L/s", "1500 L/s", "0 L/s", "1e4 m3/s"}.or_zero();
/// What such a pipe is sized for.
inline constexpr Range carried_flow{"5 L/s", "1500 L/s", "0.001 L/s", "1e4 m3/s"};
/// Depth of a flow that moves.
inline constexpr Range wet_depth{"0.02 m", "2.5 m", "0.01 mm", "30 m"};
inline constexpr Range pipe_length{"2 m", "200 m", "1 cm", "100 km"};
inline constexpr Range entrance_loss =
    Range{"0.1", "0.9", "0 %", "100 %", "FHWA HDS-5, Table 12 (from memory)"}.or_zero();
inline constexpr Range loss_coefficient = Range{"0.1", "5", "0 %", "100000 %"}.or_zero();
inline constexpr Range pipe_turn = Range{"5 deg", "90 deg", "0 deg", "90 deg"}.or_zero();
/// Rating of a pipe, each row of which is searched.
inline constexpr Range outfall_steps{"1", "100", "1", "1000"};
/// Of a pipe's invert above the base of the bed.
inline constexpr Range invert_level = Range{"0.02 m", "3 m", "0 m", "100 m"}.or_zero();
inline constexpr Range pipe_roughness{"0.008", "0.035", "0.001", "0.5",
                                      "Chow, Open-Channel Hydraulics (1959), Table 5-6 (from memory)"};

// Soakage.

/// Of a trial pit.
inline constexpr Range test_volume{"0.1 m3", "4 m3", "1 mL", "1000 m3"};
inline constexpr Range test_area{"1 m2", "12 m2", "1 cm2", "10000 m2"};
inline constexpr Range test_time{"10 min", "1000 min", "1 s", "60 d"};
/// 1e-6 m/s to 1.1e-4 m/s: slower ground takes next to nothing, faster is gravel.
inline constexpr Range soakage_rate{"3.6 mm/h", "400 mm/h", "1e-6 mm/h", "1 m/s"};
inline constexpr Range soakage_area = Range{"4 m2", "1000 m2", "0 m2", "10 km2"}.or_zero();
inline constexpr Range soakage_base{"4 m2", "1000 m2", "0.01 m2", "10 km2"};
inline constexpr Range soakage_perimeter = Range{"8 m", "400 m", "0 m", "100 km"}.or_zero().or_in("ft");
inline constexpr Range soaking_perimeter = Range{"6 m", "300 m", "1 cm", "100 km"}.or_in("ft");
/// What a soakaway or a bed holds at a time.
inline constexpr Range soaking_volume{"2 m3", "1000 m3", "1 L", "1e9 m3"};
inline constexpr Range soakage_depth = Range{"0.2 m", "5 m", "1 mm", "100 m"}.or_in("ft");
inline constexpr Range safety_factor{"1", "10", "1", "100",
                                     "CIRIA C753, The SuDS Manual (2015), ch. 25: 1.5 to 10"};
/// Water held over the volume of a bed: 20 % in poor stone, 98 % in crates.
inline constexpr Range voids{"0.2", "0.98", "5 %", "99.9 %"};
inline constexpr Range fraction_left = Range{"0.05", "0.9", "0 %", "99.9 %"}.or_zero();

// Water in the ground.

inline constexpr const char* rawls = "Rawls, Brakensiek and Miller, J. Hydraulic Eng. 109 (1983), Table 2";
inline constexpr Range wetted_conductivity{"0.3 mm/h", "120 mm/h", "1e-6 mm/h", "1 m/s", rawls};
inline constexpr Range suction = Range{"0.04 m", "0.4 m", "0 m", "100 m", rawls}.or_zero().or_in("ft");
inline constexpr Range moisture_deficit = Range{"0.05", "0.5", "0 %", "100 %", rawls}.or_zero();
inline constexpr Range ponding_time = Range{"6 min", "600 min", "0 s", "365 d"}.or_zero();

/// Where the rise of a mound is asked for, from the centre of the bed.
inline constexpr Range mound_place = Range{"1 m", "500 m", "-100 km", "100 km"}.or_zero();
/// Water that a bed lets into the ground over its own plan.
inline constexpr Range recharge{"3 mm/h", "200 mm/h", "1e-6 mm/h", "1 m/s"};
/// Of an aquifer that is worth the question: fine sand to gravel.
inline constexpr Range aquifer_permeability{"20 mm/h", "4000 mm/h", "1e-6 mm/h", "10 m/s"};
inline constexpr Range specific_yield{"0.02", "0.35", "0.1 %", "99 %",
                                      "clay 2 %, gravel 25 % (common in textbooks; from memory)"};
inline constexpr Range saturated_depth = Range{"2 m", "50 m", "1 cm", "10 km"}.or_in("ft");
/// From a day to a wet season.
inline constexpr Range mound_time{"1440 min", "150000 min", "1 s", "365000 d"};
/// Of a falling-head test in the laboratory: tube, sample, heads.
inline constexpr Range tube_area{"1e-5 m2", "3e-4 m2", "0.1 mm2", "1 m2"};
inline constexpr Range sample_area{"1e-3 m2", "0.01 m2", "1 mm2", "10 m2"};
inline constexpr Range sample_length{"0.03 m", "0.5 m", "1 mm", "10 m"};
inline constexpr Range fall_time{"1 min", "100 min", "0.1 s", "365 d"};
inline constexpr Range test_head = Range{"0.1 m", "2 m", "1 mm", "100 m"}.or_in("ft");

/// Of water-bearing ground: 1e-6 m/s is silt, 1e-3 m/s is gravel.
inline constexpr Range permeability{"3.6 mm/h", "3600 mm/h", "1e-6 mm/h", "10 m/s"};
inline constexpr Range groundwater_depth = Range{"1 m", "50 m", "0 m", "10 km"}.or_zero();
inline constexpr Range influence_radius{"20 m", "1000 m", "0.1 m", "100 km"};
inline constexpr Range pit_radius{"3 m", "50 m", "10 mm", "10 km"};
inline constexpr Range drawdown = Range{"0.3 m", "10 m", "0 m", "1 km"}.or_zero();
inline constexpr Range standing_water{"20 m3", "5000 m3", "1 L", "1e9 m3"};
inline constexpr Range pumped_flow{"1 L/s", "200 L/s", "1e-6 L/s", "1e4 m3/s"};
inline constexpr Range seepage = Range{"0.5 L/s", "100 L/s", "0 L/s", "1e4 m3/s"}.or_zero();

}  // namespace undercroft::addin::usual
