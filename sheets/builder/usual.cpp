#include "sheets/builder/usual.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <stdexcept>
#include <tuple>
#include <utility>

#include "sheets/builder/lines.hpp"
#include "sheets/builder/numbers.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"
#include "units/unit.hpp"

namespace undercroft::sheets {

namespace {

constexpr double guessed_width = 20;
constexpr std::string_view zero_too = " or 0";

/// `20..200 mm`: the range, and what stands behind it.
std::pair<Range, std::string> range_and_rest(const std::string& text) {
    const std::size_t dots = text.find("..");
    const auto low = dots == std::string::npos ? std::nullopt : number_in(trimmed(text.substr(0, dots)));
    const auto high =
        dots == std::string::npos ? std::nullopt : leading_number(trimmed(text.substr(dots + 2)));
    if (!low || !high || *low >= high->number)
        throw std::runtime_error("'" + text + "' is no range: LOW..HIGH UNIT is wanted");
    return {{*low, high->number}, high->unit};
}

Unit unit_of(const std::string& text) {
    try {
        return parse_unit(text.empty() ? "1" : text);
    } catch (const Refused& refused) {
        throw std::runtime_error(refused.what());
    }
}

std::string three_digits(double number) {
    char buffer[32];
    const auto [end, error] =
        std::to_chars(buffer, buffer + sizeof buffer, number, std::chars_format::general, 3);
    std::string text(buffer, end);
    if (text.find('e') == std::string::npos) return text;
    const double power = std::pow(10, 2 - std::floor(std::log10(std::abs(number))));
    return exact_text(std::round(number * power) / power);
}

}  // namespace

void Usual::guess_possible() {
    possible.high = usual.high * guessed_width;
    possible.low = usual.low < 0 ? usual.low * guessed_width : usual.low / guessed_width;
}

Usual usual_in(const std::string& text) {
    Usual made;
    std::string rest = text;
    if (rest.ends_with(zero_too)) {
        made.or_zero = true;
        rest = trimmed(rest.substr(0, rest.size() - zero_too.size()));
    }
    if (rest == "any") {
        made.any = true;
        return made;
    }
    std::tie(made.usual, made.unit) = range_and_rest(rest);
    (void)unit_of(made.unit);
    made.guess_possible();
    return made;
}

Range range_in(const std::string& text) {
    const auto [range, rest] = range_and_rest(text);
    if (!rest.empty()) throw std::runtime_error("'" + rest + "' stands behind what is possible");
    return range;
}

std::string quantity_text(double number, const std::string& unit) {
    const std::string text = exact_text(number);
    return unit.empty() || unit == "1" ? text : text + " " + unit;
}

double converted(double number, const std::string& from, const std::string& to) {
    const Unit one = unit_of(from);
    const Unit other = unit_of(to);
    if (!(one.dimension == other.dimension))
        throw std::runtime_error("'" + from + "' and '" + to + "' are units of two kinds");
    return other.scale.from_coherent(one.scale.to_coherent(number));
}

std::string range_words(const Range& range, const Usual& usual, const std::string& unit) {
    const auto end = [&](double number) { return three_digits(converted(number, usual.unit, unit)); };
    std::string words = end(range.low) + " to " + end(range.high);
    if (!unit.empty() && unit != "1") words += " " + unit;
    return usual.or_zero ? words + std::string(zero_too) : words;
}

}  // namespace undercroft::sheets
