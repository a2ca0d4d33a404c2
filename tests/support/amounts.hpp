/// \file amounts.hpp
/// Short ways to write lengths, times and quantities of water in a test, in SI and in US customary units.
#pragma once

#include "units/types.hpp"

namespace undercroft::tests {

inline Length m(double value) {
    return Length::from_value(value);
}
inline Length cm(double value) {
    return m(0.01 * value);
}
inline Length mm(double value) {
    return m(0.001 * value);
}
inline Area m2(double value) {
    return Area::from_value(value);
}
inline Volume m3(double value) {
    return Volume::from_value(value);
}
inline Time s(double value) {
    return Time::from_value(value);
}
inline Time minutes(double value) {
    return s(60 * value);
}
inline Time hours(double value) {
    return s(3600 * value);
}
inline Flow m3_per_s(double value) {
    return Flow::from_value(value);
}
inline Speed mm_per_h(double value) {
    return Speed::from_value(value / 3.6e6);
}
inline Speed m_per_s(double value) {
    return Speed::from_value(value);
}

// International yard and pound agreement (1959): 1 ft = 0.3048 m.
inline Length ft(double value) {
    return m(0.3048 * value);
}
inline Length inches(double value) {
    return m(0.0254 * value);
}
inline Volume ft3(double value) {
    return m3(0.3048 * 0.3048 * 0.3048 * value);
}
inline Flow cfs(double value) {
    return m3_per_s(0.3048 * 0.3048 * 0.3048 * value);
}

}  // namespace undercroft::tests
