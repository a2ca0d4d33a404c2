#include "calc/arithmetic.hpp"

#include <cmath>
#include <functional>
#include <optional>

#include "calc/bare.hpp"
#include "calc/interpolate.hpp"
#include "calc/require.hpp"
#include "units/text.hpp"

namespace undercroft::calc {

namespace {

/// Where only the numbers count, a bare one is a pure number.
Quantity as_pure(const Quantity& q) {
    return q.form == Quantity::Form::bare ? Quantity{q.value, {}, Quantity::Form::with_unit} : q;
}

/// Both in one dimension: that of the one that has a unit.
/// \throws Refused(value) for a bare number beside a quantity.
std::pair<Quantity, Quantity> alike(const Named& a, const Named& b) {
    const bool left_bare = a.quantity.form == Quantity::Form::bare;
    if (left_bare && b.quantity.form == Quantity::Form::bare) return {a.quantity, b.quantity};
    require_unit_beside(a, b);
    require_unit_beside(b, a);
    if (left_bare) return {in_dimension(a.quantity, b.quantity.dimension), b.quantity};
    try {
        return {a.quantity, in_dimension(b.quantity, a.quantity.dimension)};
    } catch (const Refused& refused) {
        throw refused.at(std::string(b.name) + ": " + text_of(b.quantity));
    }
}

double sign_with_tolerance(double a, double b) {
    return std::abs(a - b) <= slack(a, b) ? 0 : a - b;
}

}  // namespace

Quantity sum(const std::vector<Quantity>& amounts) {
    require(!amounts.empty(), "the range holds nothing to sum up");
    Quantity total = amounts.front();
    for (std::size_t i = 1; i < amounts.size(); ++i) {
        const auto [left, right] = alike({amounts.front(), "first figure"}, {amounts[i], "figure"});
        total.value += right.value;
    }
    total.form = Quantity::Form::with_unit;
    return total;
}

namespace {

/// The place of the first before which no other comes.
template <class Before>
std::size_t first_of(const std::vector<Quantity>& amounts, const Before& before) {
    require(!amounts.empty(), "the range holds nothing to choose from");
    std::size_t first = 0;
    for (std::size_t i = 1; i < amounts.size(); ++i) {
        const auto [left, right] = alike({amounts[first], "first figure"}, {amounts[i], "figure"});
        if (before(right.value, left.value)) first = i;
    }
    return first;
}

}  // namespace

Quantity largest(const std::vector<Quantity>& amounts) {
    return amounts[first_of(amounts, std::greater<>{})];
}

Quantity smallest(const std::vector<Quantity>& amounts) {
    return amounts[first_of(amounts, std::less<>{})];
}

Quantity at_largest(const std::vector<Quantity>& amounts, const std::vector<Quantity>& other) {
    require(amounts.size() == other.size(), "range and other have ", std::to_string(amounts.size()), " and ",
            std::to_string(other.size()), " figures; they must have the same number");
    return other[first_of(amounts, std::greater<>{})];
}

Quantity product(const Quantity& a, const Quantity& b) {
    return {a.value * b.value, as_pure(a).dimension.times(as_pure(b).dimension)};
}

Quantity product(const std::vector<Quantity>& factors) {
    require(!factors.empty(), "factors: the range holds nothing to multiply");
    Quantity made = factors.front();
    for (std::size_t i = 1; i < factors.size(); ++i) made = product(made, factors[i]);
    return made;
}

Quantity quotient(const Quantity& a, const Quantity& b) {
    require(b.value != 0, "the divisor must not be 0");
    return {a.value / b.value, as_pure(a).dimension.per(as_pure(b).dimension)};
}

namespace {

/// a + sign b, in the dimension of the two.
Quantity combined(const Quantity& a, const Quantity& b, double sign) {
    const auto [left, right] = alike({a, "a"}, {b, "b"});
    Quantity result = left;
    result.value += sign * right.value;
    if (result.form == Quantity::Form::percent) result.form = Quantity::Form::with_unit;
    return result;
}

}  // namespace

Quantity total(const Quantity& a, const Quantity& b) {
    return combined(a, b, 1);
}

Quantity difference(const Quantity& a, const Quantity& b) {
    return combined(a, b, -1);
}

bool at_least(const Quantity& value, const Quantity& limit) {
    const auto [left, right] = alike({value, "value"}, {limit, "limit"});
    return sign_with_tolerance(left.value, right.value) >= 0;
}

bool at_most(const Quantity& value, const Quantity& limit) {
    const auto [left, right] = alike({value, "value"}, {limit, "limit"});
    return sign_with_tolerance(left.value, right.value) <= 0;
}

namespace {

/// What a tolerance that is no share of the target comes to.
double in_tolerance_of(const Quantity& target, const Quantity& tolerance) {
    if (target.form == Quantity::Form::bare) return as_pure(tolerance).value;
    require_unit_beside({tolerance, "tolerance"}, {target, "target"});
    return in_dimension_of("tolerance", tolerance, target.dimension).value;
}

}  // namespace

bool within(const Quantity& value, const Quantity& target, const Quantity& tolerance) {
    require(tolerance.value >= 0, "tolerance (", amount(tolerance), ") must be 0 or more");
    const auto [left, right] = alike({value, "value"}, {target, "target"});
    const bool relative = tolerance.form == Quantity::Form::percent && !right.is_pure_number();
    const double allowed =
        relative ? tolerance.value * std::abs(right.value) : in_tolerance_of(right, tolerance);
    const double deviation = std::abs(left.value - right.value);
    return deviation <= allowed + slack(left.value, right.value);
}

Quantity lookup(const std::vector<std::tuple<Quantity, Quantity>>& table, const Quantity& x,
                Interpolation method) {
    require(table.size() >= 2, "the table needs at least two rows");
    const Quantity& first_y = std::get<1>(table.front());
    Curve<double, double> curve;
    double at = x.value;
    for (const auto& [row_x, row_y] : table) {
        const auto [left, right] = alike({x, "x"}, {row_x, "first column of the table"});
        at = left.value;
        curve.add(right.value,
                  alike({first_y, "first figure of the second column"}, {row_y, "second column of the table"})
                      .second.value);
        const std::size_t n = curve.x.size();
        require(n < 2 || is_above(curve.x[n - 1], curve.x[n - 2]),
                "the first column must rise from row to row, but row ", std::to_string(n), " does not");
    }
    const double low = curve.x.front();
    const double high = curve.x.back();
    if (at < low - slack(at, low) || at > high + slack(at, high)) {
        const Quantity axis =
            alike({x, "x"}, {std::get<0>(table.front()), "first column of the table"}).second;
        const auto text = [&axis](double value) { return text_of({value, axis.dimension, axis.form}); };
        no_answer("x (" + text(at) + ") is outside the table (" + text(low) + " to " + text(high) +
                  "), and nothing is extrapolated");
    }
    at = std::clamp(at, low, high);

    Quantity result = first_y;
    if (result.form == Quantity::Form::percent) result.form = Quantity::Form::with_unit;
    switch (method) {
        case Interpolation::linear:
            result.value = linear(curve, at);
            return result;
        case Interpolation::logarithmic:
            for (std::size_t i = 0; i < curve.x.size(); ++i)
                require(curve.x[i] > 0 && curve.y[i] > 0, "row ", std::to_string(i + 1),
                        ": the method log needs values above 0");
            result.value = log_log(curve, at);
            return result;
        case Interpolation::monotone:
            require(curve.x.size() >= 4, "the method monotone needs at least four rows");
            result.value = monotone(curve, at);
            return result;
    }
    refuse_value("unknown method");
}

}  // namespace undercroft::calc
