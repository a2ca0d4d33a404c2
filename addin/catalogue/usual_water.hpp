/// \file usual_water.hpp
/// What is possible and usual of rain, runoff, outlets, pipes and water in the ground. Common practice where
/// no source is named.
#pragma once

#include "addin/catalogue/usual_bed.hpp"

namespace undercroft::addin::usual {

// --- rain and runoff ---------------------------------------------------------------------------------------

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

// --- ways of the water -------------------------------------------------------------------------------------

inline constexpr Range flow_path{"30 m", "3000 m", "0.1 m", "1000 km"};
inline constexpr Range sheet_flow_path{"3 m", "91.44 m", "0.1 m", "91.44 m",
                                       "USDA TR-55 (1986): at most 300 ft"};
inline constexpr Range sheet_roughness{"0.01", "0.8", "0.001", "5",
                                       "USDA TR-55 (1986), Table 3-1 (from memory)"};

// --- outlets
// -------------------------------------------------------------------------------------------------

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

// --- tables of stage, storage and flow
// ---------------------------------------------------------------------------

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

// --- pipes
// -----------------------------------------------------------------------------------------------------

inline constexpr Range pipe_diameter{"0.1 m", "2.5 m", "1 mm", "30 m"};
inline constexpr Range pipe_depth = Range{"0.02 m", "2.5 m", "0 m", "30 m"}.or_zero();
inline constexpr Range pipe_flow = Range{"5 L/s", "5000 L/s", "0 L/s", "1e4 m3/s"}.or_zero();
inline constexpr Range pipe_roughness{"0.008", "0.035", "0.001", "0.5",
                                      "Chow, Open-Channel Hydraulics (1959), Table 5-6 (from memory)"};

// --- soakage
// ------------------------------------------------------------------------------------------------------

/// Of a trial pit.
inline constexpr Range test_volume{"0.1 m3", "4 m3", "1 mL", "1000 m3"};
inline constexpr Range test_area{"1 m2", "12 m2", "1 cm2", "10000 m2"};
inline constexpr Range test_time{"10 min", "1000 min", "1 s", "60 d"};
/// 1e-6 m/s to 1.1e-4 m/s: slower ground takes next to nothing, faster is gravel.
inline constexpr Range soakage_rate{"3.6 mm/h", "400 mm/h", "1e-6 mm/h", "1 m/s"};
inline constexpr Range soakage_area = Range{"4 m2", "1000 m2", "0 m2", "10 km2"}.or_zero();
inline constexpr Range soakage_base{"4 m2", "1000 m2", "0.01 m2", "10 km2"};
inline constexpr Range soakage_perimeter = Range{"8 m", "400 m", "0 m", "100 km"}.or_zero();
inline constexpr Range soakage_depth{"0.2 m", "5 m", "1 mm", "100 m"};
inline constexpr Range safety_factor{"1", "10", "1", "100",
                                     "CIRIA C753, The SuDS Manual (2015), ch. 25: 1.5 to 10"};
/// Water held over the volume of a bed: 20 % in poor stone, 98 % in crates.
inline constexpr Range voids{"0.2", "0.98", "5 %", "99.9 %"};
inline constexpr Range fraction_left = Range{"0.05", "0.9", "0 %", "99.9 %"}.or_zero();

// --- water in the ground
// ---------------------------------------------------------------------------------------

inline constexpr const char* rawls = "Rawls, Brakensiek and Miller, J. Hydraulic Eng. 109 (1983), Table 2";
inline constexpr Range wetted_conductivity{"0.3 mm/h", "120 mm/h", "1e-6 mm/h", "1 m/s", rawls};
inline constexpr Range suction = Range{"0.04 m", "0.4 m", "0 m", "100 m", rawls}.or_zero();
inline constexpr Range moisture_deficit = Range{"0.05", "0.5", "0 %", "100 %", rawls}.or_zero();
inline constexpr Range ponding_time = Range{"6 min", "600 min", "0 s", "365 d"}.or_zero();

/// Of a falling-head test in the laboratory: tube, sample, heads.
inline constexpr Range tube_area{"1e-5 m2", "3e-4 m2", "0.1 mm2", "1 m2"};
inline constexpr Range sample_area{"1e-3 m2", "0.01 m2", "1 mm2", "10 m2"};
inline constexpr Range sample_length{"0.03 m", "0.5 m", "1 mm", "10 m"};
inline constexpr Range fall_time{"1 min", "100 min", "0.1 s", "365 d"};
inline constexpr Range test_head{"0.1 m", "2 m", "1 mm", "100 m"};

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
