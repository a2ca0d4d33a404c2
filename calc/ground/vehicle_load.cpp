#include "calc/ground/vehicle_load.hpp"

#include "calc/customary.hpp"
#include "calc/ground/wheel_load.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// AASHTO LRFD 3.6.1.2.5: tyres of 20 in x 10 in; wheels of an axle 6 ft apart.
Wheel aashto_wheel(LoadClass vehicle, Length axle_spacing) {
    return {class_load(vehicle, {}), 10.0 * inch, 20.0 * inch, 6.0 * foot, axle_spacing};
}
Wheel truck() {
    return aashto_wheel(LoadClass::aashto_truck_wheel, 14.0 * foot);
}
Wheel tandem() {
    return aashto_wheel(LoadClass::aashto_tandem_wheel, 4.0 * foot);
}

}  // namespace

Share multiple_presence(Count lanes) {
    const double n = require_whole("lanes", lanes, 1);
    if (n == 1) return share(1.20);
    if (n == 2) return share(1.00);
    return n == 3 ? share(0.85) : share(0.65);
}

Pressure vehicle_load(LoadClass vehicle, Length cover, Share distribution_factor, Share presence,
                      bool impact) {
    require(presence >= share(0.65 - limit_tolerance) && presence <= share(1.2 + limit_tolerance),
            shown("presence", presence), " must be from 0.65 to 1.2, the factors of AASHTO LRFD 3.6.1.1.2");
    const auto pressure = [&](const Wheel& wheel) {
        return presence * wheel_load(wheel, cover, distribution_factor, impact);
    };
    switch (vehicle) {
        case LoadClass::aashto_hl93:
            return std::max(pressure(truck()), pressure(tandem()));
        case LoadClass::aashto_truck_wheel:
            return pressure(truck());
        case LoadClass::aashto_tandem_wheel:
            return pressure(tandem());
        case LoadClass::as5100_w80:
            return pressure({class_load(vehicle, {}), 250.0 * millimetre, 400.0 * millimetre, {}, {}});
        default:
            no_answer(
                "the load of an access cover is a test load on the cover, not a wheel: it has no tyre, no "
                "axle "
                "and no dynamic allowance, and does not spread through fill; take the vehicle that may stand "
                "over the chambers");
    }
}

Length counted_cover(Length fill_depth, Length pavement, Surfacing surfacing) {
    require_not_negative("fill depth", fill_depth);
    if (surfacing == Surfacing::none) {
        require(pavement == zero, shown("pavement", pavement), " must be 0 where there is no pavement");
        return fill_depth;
    }
    require_positive("pavement", pavement);
    return surfacing == Surfacing::rigid ? fill_depth + pavement : fill_depth;
}

}  // namespace undercroft::calc
