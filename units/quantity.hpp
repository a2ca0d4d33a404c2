/// \file quantity.hpp
/// A quantity as it comes from a cell: its dimension is known only at run time.
#pragma once

#include <string>
#include <string_view>

#include "units/dimension.hpp"
#include "units/refused.hpp"
#include "units/unit.hpp"

namespace undercroft {

struct Quantity {
    enum class Form {
        with_unit,  ///< value is in the coherent SI unit of the dimension
        bare,       ///< a number without a unit: read in the default unit of the dimension wanted
        percent,    ///< a share written in % or permille; value is the ratio
    };

    double value = 0;
    Dimension dimension;
    Form form = Form::with_unit;
    bool customary = false;  ///< given in a unit of the US customary or imperial system

    [[nodiscard]] static Quantity bare(double number) { return {number, {}, Form::bare}; }
    [[nodiscard]] static Quantity of(double number, const Unit& unit) {
        return {unit.scale.to_coherent(number), unit.dimension,
                unit.percent ? Form::percent : Form::with_unit, unit.customary};
    }
    [[nodiscard]] bool is_pure_number() const { return form == Form::bare || dimension.is_number(); }
};

/// Reads `305 mm`, `1.5 acre-ft`, `12 ft 6 in`, `6 1/2 in`, `40 %`, `1.5H:1V`, `34 deg`, `85 AUD/t`.
/// \throws Refused(value) for text that is only a number, a decimal comma, an unknown or ambiguous unit.
[[nodiscard]] Quantity parse_quantity(std::string_view text);

/// The quantity in a dimension that is known only at run time: a bare number takes its default unit.
/// \throws Refused(value) when the dimensions differ.
[[nodiscard]] Quantity in_dimension(const Quantity& quantity, const Dimension& wanted);

/// The quantity as a C++ type. Slopes are read from `1.5H:1V`, an angle, a number or, where a gradient
/// is wanted, a percentage.
/// \throws Refused(value) when the dimension is another; the sentence starts with "is a mass; ...".
template <class Q>
[[nodiscard]] Q as(const Quantity& quantity) {
    static const Dimension wanted = dimension_of<Q>();
    return Q::from_value(in_dimension(quantity, wanted).value);
}
/// Any quantity, as it is.
template <>
[[nodiscard]] inline Quantity as<Quantity>(const Quantity& quantity) {
    return quantity;
}

/// A typed quantity as a run-time one.
template <class Q>
[[nodiscard]] Quantity as_quantity(const Q& typed) {
    static const Dimension dimension = dimension_of<Q>();
    return {typed.value(), dimension, Quantity::Form::with_unit};
}
[[nodiscard]] inline Quantity as_quantity(const Quantity& quantity) {
    return quantity;
}

/// The number of this quantity in that unit.
/// \throws Refused(value) when the unit is of another dimension.
[[nodiscard]] double number_in(const Quantity& quantity, const Unit& unit);

/// For example "0.305 m": six digits, in the default unit of the dimension.
[[nodiscard]] std::string text_of(const Quantity& quantity);

}  // namespace undercroft
