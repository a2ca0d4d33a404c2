/// \file types.hpp
/// The quantities of the trade as Boost.Units types.
///
/// Every quantity is kept in coherent SI units (m, kg, s, rad), so a formula in calc/ that mixes up
/// dimensions does not compile. Counts, batters, gradients and money are dimensions of their own:
/// none of them slips into a formula as a bare number.
#pragma once

#include <boost/units/cmath.hpp>
#include <boost/units/derived_dimension.hpp>
#include <boost/units/get_dimension.hpp>
#include <boost/units/physical_dimensions.hpp>
#include <boost/units/pow.hpp>
#include <boost/units/static_rational.hpp>

#include <cmath>
#include <numbers>

#include "units/coherent_quantity.hpp"

namespace undercroft {

template <class StaticDimension>
using Measure = bu::quantity<bu::unit<StaticDimension, coherent_system>, double>;

// Dimensions that the trade names and Boost.Units does not.

using flow_dimension = bu::derived_dimension<bu::length_base_dimension, 3, bu::time_base_dimension, -1>::type;
using unit_weight_dimension = bu::derived_dimension<bu::mass_base_dimension, 1, bu::length_base_dimension, -2,
                                                    bu::time_base_dimension, -2>::type;
/// C in Q = C L h^1.5: the square root of a length over a time.
using weir_coefficient_dimension =
    boost::mpl::divides<bu::static_power<bu::length_dimension, bu::static_rational<1, 2>>::type,
                        bu::time_dimension>::type;
using line_load_dimension =
    bu::derived_dimension<bu::mass_base_dimension, 1, bu::time_base_dimension, -2>::type;
using mass_per_area_dimension =
    bu::derived_dimension<bu::mass_base_dimension, 1, bu::length_base_dimension, -2>::type;

using Length = Measure<bu::length_dimension>;
using Area = Measure<bu::area_dimension>;
using Volume = Measure<bu::volume_dimension>;
using Time = Measure<bu::time_dimension>;
using Flow = Measure<flow_dimension>;
/// A speed, and also a rain intensity, a soakage rate and a permeability.
using Speed = Measure<bu::velocity_dimension>;
using WeirCoefficient = Measure<weir_coefficient_dimension>;
using Acceleration = Measure<bu::acceleration_dimension>;
using Angle = Measure<bu::plane_angle_dimension>;
using Mass = Measure<bu::mass_dimension>;
using Force = Measure<bu::force_dimension>;
using LineLoad = Measure<line_load_dimension>;
using Pressure = Measure<bu::pressure_dimension>;
using Density = Measure<bu::mass_density_dimension>;
using UnitWeight = Measure<unit_weight_dimension>;
using MassPerArea = Measure<mass_per_area_dimension>;
/// A share of a whole or another pure ratio: porosity, moisture, waste, runoff coefficient.
using Share = Measure<bu::dimensionless_type>;
/// A number of things: rows, units, loads.
using Count = Measure<count_dimension>;
/// The slope of an excavation: horizontal run per unit of rise; 0 is a vertical wall.
using Batter = Measure<batter_dimension>;
/// The slope of a pipe or of the ground: rise per unit of run; 0 is level.
using Gradient = Measure<gradient_dimension>;
/// An amount of money; the runtime Quantity says in which currency.
using Money = Measure<money_dimension>;

// One of each, to write quantities in code: 0.3 * metre.

inline constexpr Length metre = Length::from_value(1);
inline constexpr Area square_metre = Area::from_value(1);
inline constexpr Volume cubic_metre = Volume::from_value(1);
inline constexpr Time second = Time::from_value(1);
inline constexpr Angle radian = Angle::from_value(1);
inline constexpr Mass kilogram = Mass::from_value(1);
inline constexpr Force newton = Force::from_value(1);
inline constexpr Pressure pascal = Pressure::from_value(1);
inline constexpr Count each = Count::from_value(1);

/// Nothing, which is the same in every unit: total = zero; flow > zero.
struct Zero {
    template <class StaticDimension>
    constexpr operator Measure<StaticDimension>() const {  // NOLINT(google-explicit-constructor): a quantity
        return {};
    }
};
inline constexpr Zero zero;

template <class D>
constexpr bool operator==(const Measure<D>& quantity, Zero) {
    return quantity.value() == 0;
}
template <class D>
constexpr bool operator<(const Measure<D>& quantity, Zero) {
    return quantity.value() < 0;
}
template <class D>
constexpr bool operator>(const Measure<D>& quantity, Zero) {
    return quantity.value() > 0;
}
template <class D>
constexpr bool operator<=(const Measure<D>& quantity, Zero) {
    return quantity.value() <= 0;
}
template <class D>
constexpr bool operator>=(const Measure<D>& quantity, Zero) {
    return quantity.value() >= 0;
}

template <class D>
bool is_finite(const Measure<D>& quantity) {
    return std::isfinite(quantity.value());
}

/// Standard acceleration of free fall (ISO 80000-3:2019, item 3-9.2 remark: 9.806 65 m/s2).
inline constexpr Acceleration standard_gravity = Acceleration::from_value(9.80665);

// The only ways between kinds that are numbers to SI and things to the trade.

inline double number(Count n) {
    return n.value();
}
inline double number(Share s) {
    return s.value();
}

/// Horizontal run of a wall at this batter over this rise.
inline Length horizontal_run(Batter batter, Length rise) {
    return batter.value() * rise;
}
/// Rise over which a wall at this batter has this run.
inline Length vertical_rise(Batter batter, Length run) {
    return run / batter.value();
}
/// Rise of a slope at this gradient over this run.
inline Length vertical_rise(Gradient gradient, Length run) {
    return gradient.value() * run;
}

inline Share share(double ratio) {
    return Share::from_value(ratio);
}
inline Count count(double n) {
    return Count::from_value(n);
}
inline Batter batter(double run_per_rise) {
    return Batter::from_value(run_per_rise);
}
inline Gradient gradient(double rise_per_run) {
    return Gradient::from_value(rise_per_run);
}
inline Angle degrees(double value) {
    return Angle::from_value(value * std::numbers::pi / 180.0);
}

inline double sine(Angle angle) {
    return std::sin(angle.value());
}
inline double cosine(Angle angle) {
    return std::cos(angle.value());
}
inline double tangent(Angle angle) {
    return std::tan(angle.value());
}
inline Angle arc_sine(double ratio) {
    return Angle::from_value(std::asin(ratio));
}
/// Angle of a slope of this gradient from the horizontal.
inline Angle inclination(Gradient gradient) {
    return Angle::from_value(std::atan(gradient.value()));
}
/// Angle from the horizontal of the way to a point so far along and so far up, all round.
template <class D>
Angle inclination(const Measure<D>& up, const Measure<D>& along) {
    return Angle::from_value(std::atan2(up.value(), along.value()));
}

}  // namespace undercroft
