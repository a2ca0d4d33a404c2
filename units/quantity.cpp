#include "units/quantity.hpp"

#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "units/text.hpp"

namespace undercroft {

namespace {

const Dimension batter_kind = Dimension::of(Base::batter);
const Dimension gradient_kind = Dimension::of(Base::gradient);
const Dimension angle_kind = Dimension::of(Base::angle);

std::string examples_of(const Dimension& dimension) {
    const NamedDimension* named = find_named(dimension);
    return named == nullptr ? std::string() : ", such as " + std::string(named->examples);
}

/// Whether one dimension is the other times an acceleration.
bool is_force_of(const Dimension& force, const Dimension& mass) {
    static const Dimension acceleration = dimension_of<Acceleration>();
    bool is = force.currency() == mass.currency();
    for (std::size_t i = 0; i < base_count; ++i) {
        const Base base = static_cast<Base>(i);
        is = is && force.sixths(base) == mass.sixths(base) + acceleration.sixths(base);
    }
    return is;
}

/// A mass where a force is wanted is the classic slip; the sentence says it.
std::string mass_is_not_force(const Dimension& wanted, const Dimension& got) {
    if (is_force_of(wanted, got)) return " (a mass is not a force: write kN, lbf or kip, not kg, lb or t)";
    if (is_force_of(got, wanted)) return " (a force is not a mass: write kg, t or lb, not kN or lbf)";
    return {};
}

[[noreturn]] void refuse_other_dimension(const Dimension& wanted, const Dimension& got) {
    if (wanted.same_kind(got))
        refuse_dimension("is in " + got.text() + "; " + wanted.text() +
                         " is wanted: two currencies do not mix");
    refuse_dimension("is " + name_of(got) + "; " + name_of(wanted) + " is wanted" + examples_of(wanted) +
                     mass_is_not_force(wanted, got));
}

double cotangent(double angle) {
    const double c = std::cos(angle);
    return std::abs(c) < 1e-15 ? 0.0 : c / std::sin(angle);
}

/// Run per rise from another way to write a slope.
std::optional<double> batter_from(const Quantity& q) {
    if (q.form == Quantity::Form::percent)
        refuse_value(
            "in % is a rise per run; write the batter as 1.5H:1V, as an angle such as 34 deg, or as a number "
            "= run per rise");
    if (q.dimension == angle_kind) {
        if (!(q.value > 0 && q.value <= std::numbers::pi / 2 + 1e-12))
            refuse_domain("the angle of a wall must be above 0 deg and at most 90 deg");
        return cotangent(q.value);
    }
    if (q.dimension == gradient_kind) {
        if (q.value == 0) refuse_domain("is level; a batter is wanted, such as 1.5H:1V");
        return 1 / q.value;
    }
    if (q.dimension.is_number()) return q.value;
    return std::nullopt;
}

/// Rise per run from another way to write a slope.
std::optional<double> gradient_from(const Quantity& q) {
    if (q.dimension == batter_kind) {
        if (q.value == 0) refuse_domain("is a vertical slope; a gradient is wanted, such as 1V:100H or 1 %");
        return 1 / q.value;
    }
    if (q.dimension == angle_kind) {
        if (!(std::abs(q.value) < std::numbers::pi / 2))
            refuse_domain("the angle of a slope must be less than 90 deg");
        return std::tan(q.value);
    }
    if (q.dimension.is_number()) return q.value;
    return std::nullopt;
}

}  // namespace

Quantity in_dimension(const Quantity& q, const Dimension& wanted) {
    if (q.form == Quantity::Form::bare)
        return {default_unit(wanted).scale.to_coherent(q.value), wanted, Quantity::Form::with_unit};
    if (q.dimension == wanted) return {q.value, wanted, Quantity::Form::with_unit};
    std::optional<double> converted;
    if (wanted == batter_kind) converted = batter_from(q);
    if (wanted == gradient_kind) converted = gradient_from(q);
    const bool counted =
        wanted == Dimension::of(Base::count) && q.dimension.is_number() && q.form != Quantity::Form::percent;
    if (counted) converted = q.value;
    if (!converted) refuse_other_dimension(wanted, q.dimension);
    return {*converted, wanted, Quantity::Form::with_unit};
}

double number_in(const Quantity& quantity, const Unit& unit) {
    return unit.scale.from_coherent(in_dimension(quantity, unit.dimension).value);
}

std::string text_of(const Quantity& quantity) {
    if (quantity.form == Quantity::Form::bare) return rounded_text(quantity.value);
    const std::string unit = default_unit_text(quantity.dimension);
    const double number = default_unit(quantity.dimension).scale.from_coherent(quantity.value);
    return rounded_text(number) + (unit == "1" || unit.empty() ? "" : " " + unit);
}

namespace {

void skip_space(std::string_view& text) {
    while (!text.empty() && text[0] == ' ') text.remove_prefix(1);
}

void refuse_comma(const std::string& text) {
    constexpr std::size_t longest_to_repeat = 80;
    if (text.find(',') != std::string::npos && text.size() > longest_to_repeat)
        refuse_value("a long text with a comma is no quantity: use the point for decimals");
    if (text.find(',') != std::string::npos && text.find('.') != std::string::npos)
        refuse_value("'" + text + "' has a comma: use the point for decimals and no mark between thousands");
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        if (text[i] != ',' || !is_digit(text[i - 1]) || !is_digit(text[i + 1])) continue;
        std::string point = text;
        point[i] = '.';
        std::string joined = text;
        joined.erase(i, 1);
        refuse_value("'" + text + "' has a comma: type " + point + " for a decimal, or " + joined +
                     " without a mark between thousands");
    }
}

/// `1'305 mm`: what some put between thousands is read as feet.
void refuse_thousands_apostrophe(const std::string& text) {
    constexpr std::string_view mark = "′";
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) {
        const std::size_t after = at + mark.size();
        std::size_t digits = 0;
        while (after + digits < text.size() && is_digit(text[after + digits])) ++digits;
        if (digits != 3 || at == 0 || !is_digit(text[at - 1])) continue;
        refuse_value("'" + text + "' has a mark between thousands, or feet: type " + text.substr(0, at) +
                     text.substr(after) + ", or write ft for feet");
    }
}

/// `6 1/2` and `3/4`: a whole number may be followed by a fraction.
std::optional<double> take_mixed_number(std::string_view& text) {
    const std::string_view start = text;
    std::optional<double> value = take_number(text);
    if (!value) return value;
    const std::string_view digits = start.substr(0, start.size() - text.size());
    if (digits.find_first_not_of("0123456789") != std::string_view::npos) return value;
    const auto take_whole = [](std::string_view& rest) -> std::optional<double> {
        std::size_t n = 0;
        while (n < rest.size() && is_digit(rest[n])) ++n;
        if (n == 0 || n > 6) return std::nullopt;
        std::string_view part = rest.substr(0, n);
        rest.remove_prefix(n);
        return take_number(part);
    };
    std::string_view rest = text;
    if (rest.starts_with("/")) {  // 3/4
        rest.remove_prefix(1);
        const auto below = take_whole(rest);
        if (!below) return value;
        if (*below == 0) refuse_value("'" + std::string(start) + "' divides by zero");
        text = rest;
        return *value / *below;
    }
    if (rest.starts_with(" ") || rest.starts_with("-")) {  // 6 1/2, 6-1/2
        rest.remove_prefix(1);
        const auto above = take_whole(rest);
        if (!above || !rest.starts_with("/")) return value;
        rest.remove_prefix(1);
        const auto below = take_whole(rest);
        if (!below || *below == 0) return value;
        text = rest;
        return *value + *above / *below;
    }
    return value;
}

/// The unit text up to the next term of a compound such as `12 ft 6 in` or `5′-6″`.
std::string_view take_unit_text(std::string_view& text) {
    constexpr std::string_view foot_mark = "′";
    std::size_t end = text.size();
    for (std::size_t i = 1; i < text.size(); ++i) {
        const bool after_mark =
            i >= foot_mark.size() && text.substr(i - foot_mark.size(), foot_mark.size()) == foot_mark;
        const bool dash = text[i] == '-' && after_mark && i + 1 < text.size() && is_digit(text[i + 1]);
        const bool digit = is_digit(text[i]) && (text[i - 1] == ' ' || after_mark);
        if (dash || digit) {
            end = i;
            break;
        }
    }
    std::string_view unit = text.substr(0, end);
    text.remove_prefix(end);
    if (text.starts_with("-")) text.remove_prefix(1);
    while (!unit.empty() && unit.back() == ' ') unit.remove_suffix(1);
    return unit;
}

bool can_be_compound(const Dimension& d) {
    return d == Dimension::of(Base::length) || d == Dimension::of(Base::time) ||
           d == Dimension::of(Base::mass);
}

/// `1.5H:1V`, `1V:3H`.
std::optional<Quantity> slope(const std::string& text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string::npos) return std::nullopt;
    const auto side = [](std::string_view part) -> std::pair<std::optional<double>, std::string> {
        skip_space(part);
        const auto n = take_mixed_number(part);
        skip_space(part);
        while (!part.empty() && part.back() == ' ') part.remove_suffix(1);
        return {n, lower_case(part)};
    };
    const auto [left, left_letter] = side(std::string_view(text).substr(0, colon));
    const auto [right, right_letter] = side(std::string_view(text).substr(colon + 1));
    const bool without_letters = left && right && left_letter.empty() && right_letter.empty();
    if (without_letters && *left == *right && *left > 0)  // 1:1 is the same both ways
        return Quantity{1, batter_kind, Quantity::Form::with_unit};
    if (without_letters)
        refuse_value("the slope '" + text + "' can be read in two ways: write " + exact_text(*right) + "H:" +
                     exact_text(*left) + "V or " + exact_text(*left) + "H:" + exact_text(*right) + "V");
    const bool forward = left_letter == "h" && right_letter == "v";
    const bool backward = left_letter == "v" && right_letter == "h";
    if (!left || !right || !(forward || backward))
        refuse_value("'" + text + "' is no slope: write it as 1.5H:1V");
    const double run = forward ? *left : *right;
    const double rise = forward ? *right : *left;
    if (rise == 0) refuse_value("the slope '" + text + "' has no rise: write 0 % where a gradient is wanted");
    return Quantity{run / rise, batter_kind, Quantity::Form::with_unit};
}

/// `1 in 200`: a rise and its run.
std::optional<Quantity> rise_in_run(std::string_view text) {
    const std::optional<double> rise = take_number(text);
    constexpr std::string_view between = " in ";
    if (!rise || !text.starts_with(between)) return std::nullopt;
    text.remove_prefix(between.size());
    const std::optional<double> run = take_number(text);
    if (!run || !text.empty()) return std::nullopt;
    if (*rise == 0) refuse_value("the slope has no rise: write 0 % where a gradient is wanted");
    if (*run == 0) refuse_value("the slope has no run: write 0H:1V where a batter is wanted");
    return Quantity{*rise / *run, gradient_kind, Quantity::Form::with_unit};
}

[[noreturn]] void refuse_text(const std::string& text) {
    if (text.empty()) refuse_value("the text is empty; a number and a unit are wanted, such as 305 mm");
    bool is_unit = true;
    try {
        (void)parse_unit(text);
    } catch (const Refused&) {
        is_unit = false;
    }
    if (is_unit) refuse_value("'" + text + "' is a unit without a number");
    refuse_value("'" + text + "' is no quantity: a number and a unit are wanted, such as 305 mm");
}

}  // namespace

Quantity parse_quantity(std::string_view original) {
    if (original.size() > 256)
        refuse_value("a text of " + std::to_string(original.size()) + " characters is no quantity");
    const std::string text = fold_spelling(original);
    refuse_comma(text);
    refuse_thousands_apostrophe(text);
    std::string_view rest = text;
    double sign = 1;
    if (rest.starts_with("-") || rest.starts_with("+")) {
        sign = rest[0] == '-' ? -1 : 1;
        rest.remove_prefix(1);
        skip_space(rest);
    }
    if (rest.empty() || !(is_digit(rest[0]) || rest[0] == '.')) refuse_text(text);
    if (const auto h_to_v = slope(text)) return *h_to_v;
    if (const auto one_in = rise_in_run(text)) return *one_in;

    std::optional<Quantity> total;
    Scale last;
    while (!rest.empty()) {
        const std::optional<double> number = take_mixed_number(rest);
        if (!number) refuse_text(text);
        skip_space(rest);
        const std::string_view unit_text = take_unit_text(rest);
        skip_space(rest);
        if (unit_text.empty())
            refuse_value("'" + text +
                         "' is only a number: add its unit, or put the number in a cell and its unit in the "
                         "cell to the right");
        const Unit unit = parse_unit(unit_text);
        const Quantity term = Quantity::of(sign * *number, unit);
        if (!std::isfinite(term.value)) refuse_value("'" + text + "' is too large");
        if (!total) {
            total = term;
        } else {
            const double size = unit.scale.to_coherent(1);
            if (!(term.dimension == total->dimension) || !can_be_compound(term.dimension) ||
                !(size < last.to_coherent(1)))
                refuse_value("'" + text +
                             "' is no quantity: parts are added up only from the larger unit to the smaller, "
                             "as in 12 ft 6 in");
            total->value += term.value;
        }
        last = unit.scale;
    }
    return *total;
}

}  // namespace undercroft
