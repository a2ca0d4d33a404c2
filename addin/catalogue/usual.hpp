/// \file usual.hpp
/// What is possible and what is usual of the trade's numbers, each said once for all functions that take it.
/// Here stands what several rooms need; what one room needs stands in usual_bed.hpp, usual_water.hpp and the
/// like.
///
/// Usual is what a bare number may be: wide enough for a house's soakaway and an airport's apron, and so
/// narrow that a slip of units (mm for m, percent for a share, hours for minutes, ha for m2) mostly falls
/// outside. Possible is what a number with its unit may be: beyond it something else was meant. Where no
/// source is named, the figures are common practice.
#pragma once

#include "addin/catalogue/limits.hpp"

namespace undercroft::addin::usual {

// Order: usual least, usual most, possible least, possible most, source or reason.

// Lengths.

/// The longer side of a bed or a pit in plan, and what lies along it: rows, fabric, liner.
inline constexpr Range plan_length{"3 m", "150 m", "0.1 m", "5 km"};
/// The shorter side of a bed or a pit in plan.
inline constexpr Range plan_width{"1.5 m", "50 m", "0.1 m", "5 km"};
/// How deep a pit is below the ground.
inline constexpr Range pit_depth{"0.3 m", "10 m", "1 mm", "100 m"};
/// How high a bed or its stone is.
inline constexpr Range bed_height{"0.3 m", "5 m", "1 mm", "30 m"};
/// A layer of stone, backfill or pavement.
inline constexpr Range layer_thickness{"0.05 m", "2 m", "1 mm", "30 m"};
/// Stone or clear space beside a chamber, a row or a pipe.
inline constexpr Range margin{"0.05 m", "1.5 m", "1 mm", "20 m"};
/// A lap of fabric, liner or joined units.
inline constexpr Range lap{"0.05 m", "1 m", "1 mm", "5 m"};
/// The inside width of a chamber, the diameter of a pipe of that size.
inline constexpr Range chamber_span{"0.2 m", "5 m", "10 mm", "30 m"};
/// The inside height of a chamber.
inline constexpr Range chamber_rise{"0.15 m", "3 m", "10 mm", "30 m"};
/// Height above a local datum; ground stands from below the sea to the highest mountain.
inline constexpr Range level{"-100 m", "5000 m", "-500 m", "9 km"};

// Areas and volumes.

/// The plan of a bed or a pit.
inline constexpr Range plan_area{"5 m2", "10000 m2", "0.01 m2", "10 km2"};
/// What is dug, filled or spread on a job.
inline constexpr Range earth_volume{"5 m3", "50000 m3", "1 L", "1e8 m3"};

// Slopes.

/// The walls of a pit, run per rise; 0 is a vertical wall.
inline constexpr Range batter =
    Range{"0.25", "3", "0.01", "20", "US 29 CFR 1926 Subpart P has 0.5 to 1.5; flatter where there is room"}
        .or_zero();
/// The fall of a pipe, rise per run.
inline constexpr Range pipe_slope{"0.001", "0.1", "0.00001", "1"};
/// The fall of a bed's formation along its length; 0 is level.
inline constexpr Range bed_fall =
    Range{"0.001", "0.02", "0.00001", "0.5", "common practice: 0.5 % to 1 % where it is drained while built"}
        .or_zero();
/// The fall of the ground, rise per run.
inline constexpr Range ground_slope{"0.004", "0.2", "0.00001", "3"};

// Shares.

/// Of stone as laid: clean crushed stone has 30 % to 45 %.
inline constexpr Range porosity{"0.2", "0.55", "5 %", "80 %", "common practice: 30 % to 45 % in clean stone"};
/// Of ordered goods, for cutting and damage; 0 for none.
inline constexpr Range waste = Range{"0.01", "0.3", "0.1 %", "100 %"}.or_zero();

// Counts.

/// Equal steps of a table.
inline constexpr Range steps{"1", "100", "1", "10000", "a table of more than 100 rows is read by nobody"};

}  // namespace undercroft::addin::usual
