#include "calc/ground/load_classes.hpp"

#include "calc/customary.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

const std::vector<LoadClassRow>& load_class_table() {
    static const std::vector<LoadClassRow> table = {
        // AASHTO LRFD Bridge Design Specifications, 3.6.1.2.2 (32-kip axle) and 3.6.1.2.3 (25-kip axles).
        {LoadClass::aashto_truck_wheel, 16.0 * kip, {}},
        {LoadClass::aashto_tandem_wheel, 12.5 * kip, {}},
        // AS 5100.2, W80 wheel (from memory).
        {LoadClass::as5100_w80, 80.0 * kilonewton, {}},
        // AS 3996:2006, Table 3.1: ultimate and serviceability design loads.
        {LoadClass::as3996_a, 10.0 * kilonewton, 6.7 * kilonewton},
        {LoadClass::as3996_b, 80.0 * kilonewton, 53.0 * kilonewton},
        {LoadClass::as3996_c, 150.0 * kilonewton, 100.0 * kilonewton},
        {LoadClass::as3996_d, 210.0 * kilonewton, 140.0 * kilonewton},
        {LoadClass::as3996_e, 400.0 * kilonewton, 267.0 * kilonewton},
        {LoadClass::as3996_f, 600.0 * kilonewton, 400.0 * kilonewton},
        {LoadClass::as3996_g, 900.0 * kilonewton, 600.0 * kilonewton},
        // EN 124:2015, groups 1 to 6: test loads.
        {LoadClass::en124_a15, 15.0 * kilonewton, {}},
        {LoadClass::en124_b125, 125.0 * kilonewton, {}},
        {LoadClass::en124_c250, 250.0 * kilonewton, {}},
        {LoadClass::en124_d400, 400.0 * kilonewton, {}},
        {LoadClass::en124_e600, 600.0 * kilonewton, {}},
        {LoadClass::en124_f900, 900.0 * kilonewton, {}},
    };
    return table;
}

Force class_load(LoadClass load_class, std::optional<LoadState> state) {
    if (load_class == LoadClass::aashto_hl93)
        no_answer(
            "HL-93 is the worse of two vehicles, a truck and a tandem, and has no one wheel: take the load "
            "of "
            "either, or the pressure of the vehicle");
    for (const LoadClassRow& row : load_class_table()) {
        if (row.load_class != load_class) continue;
        if (!state) return row.load;
        if (!row.serviceability)
            no_answer(
                "the standard gives one load for this class, a wheel or test load of no state: leave the "
                "state out");
        return *state == LoadState::ultimate ? row.load : *row.serviceability;
    }
    refuse_value("unknown load class");
}

}  // namespace undercroft::calc
