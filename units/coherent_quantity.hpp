/// \file coherent_quantity.hpp
/// Boost's quantity over our own units, as cheap to hand over as the number in it.
///
/// Boost.Units writes out the copies of its quantity, so by the rules of the machine an argument or a result
/// goes through memory. Here the compiler makes them, and it goes in a register. Everything else is Boost's:
/// the dimensions, the operators, the powers and roots. Conversion between systems of units is left out:
/// there is one system.
#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/unit.hpp>

#include <type_traits>

#include "units/coherent_system.hpp"

namespace boost::units {

template <class Dimension>
class quantity<unit<Dimension, undercroft::coherent_system>, double> {
public:
    using this_type = quantity;
    using value_type = double;
    using unit_type = unit<Dimension, undercroft::coherent_system>;

    constexpr quantity() = default;
    [[nodiscard]] static constexpr quantity from_value(double value) { return quantity(value, 0); }
    [[nodiscard]] constexpr const double& value() const { return value_; }

    constexpr quantity& operator+=(const quantity& other) {
        value_ += other.value_;
        return *this;
    }
    constexpr quantity& operator-=(const quantity& other) {
        value_ -= other.value_;
        return *this;
    }
    constexpr quantity& operator*=(double factor) {
        value_ *= factor;
        return *this;
    }
    constexpr quantity& operator/=(double divisor) {
        value_ /= divisor;
        return *this;
    }

private:
    constexpr quantity(double value, int) : value_(value) {}

    double value_ = 0;
};

/// A number: made from a double and turned into one without a word.
template <>
class quantity<unit<dimensionless_type, undercroft::coherent_system>, double> {
public:
    using this_type = quantity;
    using value_type = double;
    using system_type = undercroft::coherent_system;
    using dimension_type = dimensionless_type;
    using unit_type = unit<dimension_type, system_type>;

    constexpr quantity() = default;
    constexpr quantity(double value) : value_(value) {}  // NOLINT(google-explicit-constructor): as Boost's
    [[nodiscard]] static constexpr quantity from_value(double value) { return {value}; }
    [[nodiscard]] constexpr const double& value() const { return value_; }
    constexpr operator double() const { return value_; }  // NOLINT(google-explicit-constructor): as Boost's

    constexpr quantity& operator+=(const quantity& other) {
        value_ += other.value_;
        return *this;
    }
    constexpr quantity& operator-=(const quantity& other) {
        value_ -= other.value_;
        return *this;
    }
    constexpr quantity& operator*=(double factor) {
        value_ *= factor;
        return *this;
    }
    constexpr quantity& operator/=(double divisor) {
        value_ /= divisor;
        return *this;
    }

private:
    double value_ = 0;
};

}  // namespace boost::units
