/// \file load_classes.hpp
/// The loads that standards ask a wheel or a cover to stand for, in one table.
#pragma once

#include <optional>
#include <vector>

#include "units/types.hpp"

namespace undercroft::calc {

enum class LoadClass {
    aashto_truck_wheel,
    aashto_tandem_wheel,
    as5100_w80,
    as3996_a,
    as3996_b,
    as3996_c,
    as3996_d,
    as3996_e,
    as3996_f,
    as3996_g,
    en124_a15,
    en124_b125,
    en124_c250,
    en124_d400,
    en124_e600,
    en124_f900,
    aashto_hl93,  ///< the worse of design truck and tandem; two vehicles, so no one wheel
};

/// A class of access cover in AS 3996 has a load of each state; the others have one load only.
enum class LoadState { ultimate, serviceability };

/// A row: the load of the class (of AS 3996 the ultimate one), and its serviceability load.
struct LoadClassRow {
    LoadClass load_class;
    Force load;
    std::optional<Force> serviceability;
};

/// AASHTO LRFD 3.6.1.2.2 and 3.6.1.2.3 (wheel = half an axle), AS 5100.2 (W80, from memory), AS 3996:2006
/// Table 3.1 and EN 124:2015 (test load).
[[nodiscard]] const std::vector<LoadClassRow>& load_class_table();

/// Load of a class; `state` left out, the one that the table leads with.
/// \throws Refused(no_answer) when a state is asked of a class that does not part them, and for HL-93.
[[nodiscard]] Force class_load(LoadClass load_class, std::optional<LoadState> state);

}  // namespace undercroft::calc
