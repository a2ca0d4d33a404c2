#include "addin/audit/units/measured.hpp"

#include <cmath>

#include "addin/audit/units/unit_cells.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using Kind = Measured::Kind;

Measured literal_number(double value) {
    Measured made;
    made.literal = value;
    made.what = "the number " + exact_text(value);
    return made;
}

Measured pure_number(const std::string& what) {
    Measured made;
    made.what = what;
    return made;
}

Measured in_unit(const Unit& unit, const std::string& text, const std::string& what,
                 const std::optional<Spot>& cell) {
    Measured made;
    made.kind = Kind::unit;
    made.unit = unit;
    made.unit_text = text;
    made.what = what + " in " + text;
    made.cell = cell;
    return made;
}

Measured bare_number(const std::string& why, const std::optional<Spot>& cell) {
    Measured made;
    made.kind = Kind::bare;
    made.why = why;
    made.what = "a number without a unit";
    made.cell = cell;
    return made;
}

Measured unknown_unit(const std::string& why, const std::optional<Spot>& cell) {
    Measured made;
    made.kind = Kind::unknown;
    made.why = why;
    made.cell = cell;
    return made;
}

Measured some_text() {
    Measured made;
    made.kind = Kind::text;
    made.what = "a text";
    return made;
}

Measured truth_of(bool from_units) {
    Measured made;
    made.kind = Kind::truth;
    made.what = "TRUE or FALSE";
    made.from_units = from_units;
    return made;
}

Dimension physical(const Dimension& dimension) {
    Dimension left = dimension;
    for (const Base ratio : {Base::count, Base::batter, Base::gradient})
        left = left.times(Dimension::of(ratio, -left.sixths(ratio), Dimension::parts));
    return left;
}

bool is_plain(const Dimension& dimension) {
    return physical(dimension).is_number();
}

namespace {

/// The one that decides when a part is not known: what cannot be followed before what has no unit.
const Measured* weaker(const Measured& a, const Measured& b) {
    for (const Kind kind : {Kind::unknown, Kind::mixed, Kind::bare, Kind::text})
        for (const Measured* part : {&a, &b})
            if (part->kind == kind) return part;
    return nullptr;
}

bool plain_unit(const Measured& part) {
    return part.kind == Kind::unit && is_plain(part.unit.dimension) && part.unit.scale.to_coherent(1) == 1;
}

std::string joined(const std::string& a, const char* sign, const std::string& b) {
    return a.find('/') == std::string::npos && b.find('/') == std::string::npos
               ? a + sign + b
               : "(" + a + ")" + sign + "(" + b + ")";
}

std::vector<double> all_factors(const Measured& a, const Measured& b, bool divides) {
    std::vector<double> factors = a.factors;
    if (a.literal) factors.push_back(*a.literal);
    for (const double factor : b.factors) factors.push_back(divides ? 1 / factor : factor);
    if (b.literal) factors.push_back(divides ? 1 / *b.literal : *b.literal);
    return factors;
}

bool exponents_too_large(const Dimension& a, const Dimension& b) {
    for (std::size_t i = 0; i < base_count; ++i) {
        const Base base = static_cast<Base>(i);
        if (std::abs(a.sixths(base)) + std::abs(b.sixths(base)) > 120) return true;
    }
    return false;
}

Measured multiplied(const Measured& a, const Measured& b, bool divides) {
    if (const Measured* weak = weaker(a, b)) {
        if (weak->kind == Kind::text) return unknown_unit("it computes with a text");
        return *weak;
    }
    Measured made = a.kind == Kind::unit ? a : b;
    made.literal.reset();
    made.cell.reset();
    made.from_units = a.from_units || b.from_units;
    made.factors = all_factors(a, b, divides);
    if (a.kind == Kind::unit || b.kind == Kind::unit) {
        const Unit one;
        const Unit& left = a.kind == Kind::unit ? a.unit : one;
        const Unit& right = b.kind == Kind::unit ? b.unit : one;
        made.kind = Kind::unit;
        if (exponents_too_large(left.dimension, right.dimension))
            return unknown_unit("a unit to a very high power");
        try {
            made.unit.dimension =
                divides ? left.dimension.per(right.dimension) : left.dimension.times(right.dimension);
        } catch (const Refused& refused) {
            return unknown_unit(refused.what());
        }
        const Scale by = divides ? Scale{right.scale.denominator, right.scale.numerator} : right.scale;
        made.unit.scale = left.scale.times(by);
        made.unit.percent = false;
        const std::string left_text = a.kind == Kind::unit ? a.unit_text : "1";
        if (b.kind != Kind::unit)
            made.unit_text = a.unit_text;
        else if (a.kind != Kind::unit && !divides)
            made.unit_text = b.unit_text;
        else
            made.unit_text = joined(left_text, divides ? "/" : " ", b.unit_text);
        const double size = made.unit.scale.to_coherent(1);
        if (made.unit.dimension.is_number() && std::abs(size - 1) < 1e-12) {  // the units cancel
            made.kind = Kind::number;
            made.from_units = true;
        }
        made.what = divides ? "a quotient in " + made.unit_text : "a product in " + made.unit_text;
        if (made.kind == Kind::number) made.what = "a ratio";
        return made;
    }
    made.kind = Kind::number;
    if (a.literal && b.literal) {
        made.literal = divides ? *a.literal / *b.literal : *a.literal * *b.literal;
        made.factors.clear();
    }
    made.what = made.literal ? "the number " + rounded_text(*made.literal) : "a number";
    return made;
}

}  // namespace

Measured product(const Measured& a, const Measured& b) {
    return multiplied(a, b, false);
}
Measured quotient(const Measured& a, const Measured& b) {
    return multiplied(a, b, true);
}

Combined alike(const Measured& a, const Measured& b, const std::string& verb) {
    if (const Measured* weak = weaker(a, b)) {
        if (weak->kind == Kind::mixed) return {*weak, weak->why};
        return {*weak, {}};
    }
    const bool both_units = a.kind == Kind::unit && b.kind == Kind::unit;
    if (both_units) {
        const bool same = same_unit(a.unit, b.unit) || (plain_unit(a) && plain_unit(b));
        Measured value = a;
        value.factors.clear();
        if (same) return {value, {}};
        return {value, "it " + verb + " " + a.what + " and " + b.what};
    }
    if (a.kind != Kind::unit && b.kind != Kind::unit) {
        Measured value = pure_number("a number");
        value.from_units = a.from_units || b.from_units;
        if (a.literal && b.literal && verb == "adds") value.literal = *a.literal + *b.literal;
        return {value, {}};
    }
    const Measured& unit = a.kind == Kind::unit ? a : b;
    const Measured& number = a.kind == Kind::unit ? b : a;
    Measured value = unit;
    value.factors.clear();
    if (number.is_zero() || plain_unit(unit)) return {value, {}};
    if (number.literal)
        return {bare_number(number.what + " in the formula stands without a unit beside " + unit.what, {}),
                {}};
    if (number.from_units) return {value, "it " + verb + " " + unit.what + " and " + number.what};
    return {bare_number(number.what + " stands without a unit beside " + unit.what, number.cell), {}};
}

Measured power(const Measured& base, int numerator, int denominator) {
    if (base.kind != Kind::unit) {
        Measured value = base;
        value.factors.clear();
        if (value.literal)
            value.literal = std::pow(*value.literal, static_cast<double>(numerator) / denominator);
        return value;
    }
    Measured value = base;
    value.factors.clear();
    value.cell.reset();
    try {
        value.unit.dimension = base.unit.dimension.to_the(numerator, denominator);
    } catch (const Refused&) {
        return unknown_unit("a unit to the power " + std::to_string(numerator) + "/" +
                            std::to_string(denominator));
    }
    value.unit.scale = base.unit.scale.to_the(numerator, denominator);
    value.unit.percent = false;
    const std::string exponent =
        std::to_string(numerator) + (denominator == 1 ? "" : "/" + std::to_string(denominator));
    value.unit_text = "(" + base.unit_text + ")^" + exponent;
    value.what = "a power in " + value.unit_text;
    return value;
}

}  // namespace undercroft::audit
