/// \file guidance.hpp
/// What the reference tells of a function beyond its arguments; none of it changes what is computed.
#pragma once

#include <string>
#include <vector>

namespace undercroft::addin {

/// What is drawn beside a function, where words are not enough.
enum class Sketch {
    none,
    chamber,      ///< span, rise and feet of an arch
    bed_section,  ///< layers, gaps and margins of a bed
    bed_plan,     ///< rows and units of a bed from above
    pit,          ///< length, width, depth and batter
    outlet_head,  ///< head over an orifice and over a weir
    pipe,         ///< flow in a pipe that is not full
    soakage,      ///< ground that soaks away and the water table
    wheel,        ///< a tyre's load spread through cover
    point,        ///< stress below and beside a load
    foot,         ///< a chamber's feet on base stone
    wall,         ///< earth, surcharge and water behind a wall
    uplift,       ///< what lies on a bed and the water that lifts it
    lap,          ///< laps of sheets
    lifting,      ///< a lift by hand
};

struct Guidance {
    std::vector<std::string> related;  ///< functions that are used with it, or instead of it
    std::string also_called;           ///< other words of the trade for it, parted by commas
    std::vector<std::string> to_try;   ///< formulas to paste into a sheet
    std::vector<std::string> refused;  ///< formulas that are refused, and teach by it
    Sketch sketch = Sketch::none;
};

}  // namespace undercroft::addin
