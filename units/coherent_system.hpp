/// \file coherent_system.hpp
/// The one system of units in which every quantity is kept: m, kg, s, rad, and what SI has no base unit for.
#pragma once

#include <boost/units/base_dimension.hpp>
#include <boost/units/base_unit.hpp>
#include <boost/units/base_units/angle/radian.hpp>
#include <boost/units/base_units/si/kilogram.hpp>
#include <boost/units/base_units/si/meter.hpp>
#include <boost/units/base_units/si/second.hpp>
#include <boost/units/make_system.hpp>

namespace undercroft {

namespace bu = boost::units;

// Base dimensions that SI does not have.

struct count_base_dimension : bu::base_dimension<count_base_dimension, 7001> {};
struct batter_base_dimension : bu::base_dimension<batter_base_dimension, 7002> {};
struct gradient_base_dimension : bu::base_dimension<gradient_base_dimension, 7003> {};
struct money_base_dimension : bu::base_dimension<money_base_dimension, 7004> {};

using count_dimension = count_base_dimension::dimension_type;
using batter_dimension = batter_base_dimension::dimension_type;
using gradient_dimension = gradient_base_dimension::dimension_type;
using money_dimension = money_base_dimension::dimension_type;

struct count_base_unit : bu::base_unit<count_base_unit, count_dimension, 7001> {};
struct batter_base_unit : bu::base_unit<batter_base_unit, batter_dimension, 7002> {};
struct gradient_base_unit : bu::base_unit<gradient_base_unit, gradient_dimension, 7003> {};
struct money_base_unit : bu::base_unit<money_base_unit, money_dimension, 7004> {};

using coherent_system =
    bu::make_system<bu::si::meter_base_unit, bu::si::kilogram_base_unit, bu::si::second_base_unit,
                    bu::angle::radian_base_unit, count_base_unit, batter_base_unit, gradient_base_unit,
                    money_base_unit>::type;

}  // namespace undercroft
