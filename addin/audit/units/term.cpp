#include "addin/audit/units/term.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <iterator>

#include "addin/audit/book/unit_text.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

Term literal_number(double value) {
    Term made;
    made.literal = value;
    made.what = "the number " + exact_text(value);
    return made;
}

Term pure_number(const std::string& what) {
    Term made;
    made.what = what;
    return made;
}

Term in_unit(const Unit& unit, const std::string& text, const std::string& what,
             const std::optional<Spot>& cell) {
    Term made;
    made.kind = TermKind::unit;
    made.unit = unit;
    made.unit_text = text;
    made.what = what + " in " + text;
    made.cell = cell;
    return made;
}

Term a_date(const std::string& what, const std::optional<Spot>& cell) {
    Term made;
    made.kind = TermKind::date;
    made.what = what;
    made.cell = cell;
    made.from_units = true;
    return made;
}

namespace {

const Unit& day_unit() {
    static const Unit day = parse_unit("d");
    return day;
}

}  // namespace

Term days(const std::string& what) {
    return in_unit(day_unit(), "d", what);
}

bool is_in_days(const Term& term) {
    return term.kind == TermKind::unit && same_unit(term.unit, day_unit());
}

Term bare_number(const std::string& why, const std::optional<Spot>& cell) {
    Term made;
    made.kind = TermKind::bare;
    made.why = why;
    made.what = "a number without a unit";
    made.cell = cell;
    return made;
}

Term unknown_unit(const std::string& why, const std::optional<Spot>& cell) {
    Term made;
    made.kind = TermKind::unknown;
    made.why = why;
    made.cell = cell;
    return made;
}

Term some_text() {
    Term made;
    made.kind = TermKind::text;
    made.what = "a text";
    return made;
}

Term truth_of(bool from_units) {
    Term made;
    made.kind = TermKind::truth;
    made.what = "TRUE or FALSE";
    made.from_units = from_units;
    return made;
}

bool is_plain(const Dimension& dimension) {
    return dimension.without_ratios().is_number();
}

namespace {

/// The one that decides when a part is not known: what cannot be followed before what has no unit.
const Term* weaker(const Term& a, const Term& b) {
    for (const TermKind kind : {TermKind::unknown, TermKind::mixed, TermKind::bare, TermKind::text})
        for (const Term* part : {&a, &b})
            if (part->kind == kind) return part;
    return nullptr;
}

bool plain_unit(const Term& part) {
    return part.kind == TermKind::unit && is_plain(part.unit.dimension) &&
           part.unit.scale.to_coherent(1) == 1;
}

std::string both_units(const std::string& a, const char* sign, const std::string& b) {
    return a.find('/') == std::string::npos && b.find('/') == std::string::npos
               ? a + sign + b
               : "(" + a + ")" + sign + "(" + b + ")";
}

std::vector<double> all_factors(const Term& a, const Term& b, bool divides) {
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

Term multiplied(const Term& a, const Term& b, bool divides) {
    if (const Term* weak = weaker(a, b)) {
        if (weak->kind == TermKind::text) return unknown_unit("it computes with a text");
        return *weak;
    }
    if (a.kind == TermKind::date || b.kind == TermKind::date) {
        if (!divides && a.kind == TermKind::truth) return b;  // (when it is so) * date
        if (!divides && b.kind == TermKind::truth) return a;
        return unknown_unit(std::string("it ") + (divides ? "divides" : "multiplies") + " a date");
    }
    Term made = a.kind == TermKind::unit ? a : b;
    made.literal.reset();
    made.cell.reset();
    made.from_units = a.from_units || b.from_units;
    made.factors = all_factors(a, b, divides);
    made.empirical = a.empirical || b.empirical;
    if (a.kind == TermKind::unit || b.kind == TermKind::unit) {
        const Unit one;
        const Unit& left = a.kind == TermKind::unit ? a.unit : one;
        const Unit& right = b.kind == TermKind::unit ? b.unit : one;
        made.kind = TermKind::unit;
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
        const std::string left_text = a.kind == TermKind::unit ? a.unit_text : "1";
        if (b.kind != TermKind::unit)
            made.unit_text = a.unit_text;
        else if (a.kind != TermKind::unit && !divides)
            made.unit_text = b.unit_text;
        else
            made.unit_text = both_units(left_text, divides ? "/" : " ", b.unit_text);
        const double size = made.unit.scale.to_coherent(1);
        if (made.unit.dimension.is_number() && std::abs(size - 1) < 1e-12) {  // the units cancel
            made.kind = TermKind::number;
            made.from_units = true;
        }
        made.what = divides ? "a quotient in " + made.unit_text : "a product in " + made.unit_text;
        if (made.kind == TermKind::number) made.what = "a ratio";
        return made;
    }
    made.kind = TermKind::number;
    if (a.literal && b.literal) {
        made.literal = divides ? *a.literal / *b.literal : *a.literal * *b.literal;
        made.factors.clear();
    }
    made.what = made.literal ? "the number " + rounded_text(*made.literal) : "a number";
    return made;
}

}  // namespace

Term product(const Term& a, const Term& b) {
    return multiplied(a, b, false);
}
Term quotient(const Term& a, const Term& b) {
    return multiplied(a, b, true);
}

namespace {

constexpr std::size_t most_factors = 8;  // whose products are tried

/// A factor between units of one kind: where it stands, it converts something.
bool is_conversion(double factor) {
    static constexpr double known[] = {1e3, 1e4,  1e6,   1e9,   12,   144,   1728,  27,
                                       60,  3600, 43560, 86400, 25.4, 304.8, 0.3048};
    return std::any_of(std::begin(known), std::end(known),
                       [&](double one) { return is_about(factor, one) || is_about(1 / factor, one); });
}

/// The products of some of the literals, also of none; what converts is in each of them.
std::vector<double> products(const Term& term) {
    std::vector<double> all = {1};
    for (std::size_t i = 0; i < std::min(term.factors.size(), most_factors); ++i) {
        const bool always = is_conversion(term.factors[i]);
        const std::size_t before = all.size();
        for (std::size_t j = 0; j < before; ++j) {
            const double with = all[j] * term.factors[i];
            if (always)
                all[j] = with;
            else
                all.push_back(with);
        }
    }
    return all;
}

/// Two of one kind in units of different size, where numbers in the formula make them the same: the unit of
/// the sum.
std::optional<Term> converted(const Term& a, const Term& b) {
    const double ratio = a.unit.scale.to_coherent(1) / b.unit.scale.to_coherent(1);
    if (has_factor(a, ratio)) return b;
    if (has_factor(b, 1 / ratio)) return a;
    for (const double of_a : products(a))
        for (const double of_b : products(b))
            if (of_a != 1 && of_b != 1 && is_about(of_a / of_b, ratio)) {
                Term value = a;
                value.factors = {of_a};
                return value;
            }
    return std::nullopt;
}

/// The literals that both were multiplied with.
std::vector<double> common_factors(const Term& a, const Term& b) {
    std::vector<double> common;
    for (const double factor : a.factors)
        if (std::find(b.factors.begin(), b.factors.end(), factor) != b.factors.end())
            common.push_back(factor);
    return common;
}

}  // namespace

bool has_factor(const Term& term, double factor) {
    const std::vector<double> all = products(term);
    return factor != 1 &&
           std::any_of(all.begin(), all.end(), [&](double product) { return is_about(product, factor); });
}

namespace {

/// A date and another term: days count on from it, as do numbers without a unit; a quantity in another unit
/// than days is none that can be added to it or compared with it, unless the formula converts it.
Combined alike_date(const Term& date, const Term& other, const std::string& verb) {
    if (other.kind != TermKind::unit) return {date, {}};
    Term counted = days("a date");
    if (alike(counted, other, verb).clash.empty()) return {date, {}};
    return {date, "it " + verb + " a date, which counts days, and " + other.what};
}

}  // namespace

Combined date_less(const Term& date, const Term& less) {
    const bool both = less.kind == TermKind::date && (date.kind == TermKind::date || is_in_days(date));
    if (both) return {days("the time between two dates"), {}};
    return alike(date, less, "adds");
}

Combined alike(const Term& a, const Term& b, const std::string& verb) {
    if (const Term* weak = weaker(a, b)) {
        if (weak->kind == TermKind::mixed) return {*weak, weak->why};
        return {*weak, {}};
    }
    if (a.kind == TermKind::date) return alike_date(a, b, verb);
    if (b.kind == TermKind::date) return alike_date(b, a, verb);
    const bool both_units = a.kind == TermKind::unit && b.kind == TermKind::unit;
    if (both_units) {
        const bool same = same_unit(a.unit, b.unit) || (plain_unit(a) && plain_unit(b));
        Term value = a;
        value.factors = common_factors(a, b);
        value.empirical = a.empirical || b.empirical;
        if (same) return {value, {}};
        if (a.unit.dimension.without_ratios() == b.unit.dimension.without_ratios())
            if (std::optional<Term> sum = converted(a, b)) return {*sum, {}};
        if (value.empirical)
            return {unknown_unit("an empirical formula, whose coefficients have units that nobody writes"),
                    {}};
        return {value, "it " + verb + " " + a.what + " and " + b.what};
    }
    if (a.kind != TermKind::unit && b.kind != TermKind::unit) {
        Term value = pure_number("a number");
        value.from_units = a.from_units || b.from_units;
        if (a.literal && b.literal && verb == "adds") value.literal = *a.literal + *b.literal;
        return {value, {}};
    }
    const Term& unit = a.kind == TermKind::unit ? a : b;
    const Term& number = a.kind == TermKind::unit ? b : a;
    Term value = unit;
    value.factors.clear();
    if (number.is_zero() || plain_unit(unit)) return {value, {}};
    if (number.literal)
        return {bare_number(number.what + " in the formula stands without a unit beside " + unit.what, {}),
                {}};
    if (number.from_units) return {value, "it " + verb + " " + unit.what + " and " + number.what};
    return {bare_number(number.what + " stands without a unit beside " + unit.what, number.cell), {}};
}

Term power(const Term& base, int numerator, int denominator) {
    if (base.kind != TermKind::unit) {
        Term value = base;
        value.factors.clear();
        if (value.literal)
            value.literal = std::pow(*value.literal, static_cast<double>(numerator) / denominator);
        return value;
    }
    Term value = base;
    for (double& factor : value.factors)
        factor = std::pow(factor, static_cast<double>(numerator) / denominator);
    value.empirical = base.empirical || (2 * numerator) % denominator != 0;
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
