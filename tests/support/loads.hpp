/// \file loads.hpp
/// Short ways to write loads, pressures and weights in a test, in SI and in US customary units.
#pragma once

#include "calc/customary.hpp"

namespace undercroft::tests {

inline Force kn(double value) {
    return value * calc::kilonewton;
}
inline Force kips(double value) {
    return value * calc::kip;
}
inline Pressure kpa(double value) {
    return value * calc::kilopascal;
}
inline Pressure psf(double value) {
    return value * calc::pound_force / (calc::foot * calc::foot);
}
inline Pressure ksf(double value) {
    return psf(1000 * value);
}
inline UnitWeight kn_per_m3(double value) {
    return UnitWeight::from_value(1000 * value);
}
/// Pounds-force per cubic foot.
inline UnitWeight pcf(double value) {
    return value * calc::pound_force / (calc::foot * calc::foot * calc::foot);
}
inline LineLoad kn_per_m(double value) {
    return LineLoad::from_value(1000 * value);
}

}  // namespace undercroft::tests
