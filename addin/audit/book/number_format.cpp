#include "addin/audit/book/number_format.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "addin/audit/book/unit_text.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

std::optional<Unit> unit_of(const std::string& text) {
    try {
        return text.empty() ? std::nullopt : std::optional(parse_unit(text));
    } catch (const Refused&) {
        return std::nullopt;
    }
}

std::optional<std::string> as_unit(std::string_view text) {
    const std::string word = trimmed(text);
    return word != "1" && word != "-" && unit_of(word) ? std::optional(word) : std::nullopt;
}

/// "the time 0:05" and "the date 2025-04-03", near enough to recognise the cell.
std::string shown_text(const SeenNumber& seen) {
    if (seen.format.shown_as == ShownAs::percent) return rounded_text(100 * seen.number) + " %";
    if (seen.format.shown_as == ShownAs::date) return seen.day.empty() ? "a date" : "the date " + seen.day;
    const auto minutes = static_cast<long>(std::lround(seen.number * 24 * 60));
    const long rest = std::abs(minutes % 60);
    return "the time " + std::to_string(minutes / 60) + (rest < 10 ? ":0" : ":") + std::to_string(rest);
}

bool is_day_or_time(const SeenNumber& seen) {
    return seen.format.shown_as == ShownAs::time || seen.format.shown_as == ShownAs::date;
}

std::string day_or_time(const SeenNumber& seen) {
    return seen.cell + " is shown as " + shown_text(seen) + ", and to a function it is the number " +
           rounded_text(seen.number) +
           ": type a duration as a number with min or h beside it, a slope as "
           "text such as 2H:1V";
}

}  // namespace

std::string text_behind(std::string_view format_code) {
    std::string text;
    bool quoted = false;
    for (std::size_t i = 0; i < format_code.size(); ++i) {
        const char c = format_code[i];
        if (c == '\0') continue;  // Calc leaves one where a text stands among digits with decimals
        if (c == '"') {
            quoted = !quoted;
        } else if (quoted) {
            text += c;
        } else if (c == '\\' && i + 1 < format_code.size()) {
            text += format_code[++i];
        } else if (c == ';') {
            break;
        } else if (c == '[') {  // a colour, condition or locale
            i = std::min(format_code.find(']', i), format_code.size());
        } else if (std::string_view("0#?.,/").find(c) != std::string_view::npos) {
            text.clear();  // it stood in front of a digit
        } else {
            text += c;
        }
    }
    return trimmed(text);
}

std::string words_of_format(std::string_view format_code) {
    constexpr std::string_view conditions = "<>=";
    std::string text;
    std::string word;
    bool quoted = false;
    const auto end_word = [&] {
        if (!trimmed(word).empty()) text += '"' + trimmed(word) + '"';
        word.clear();
    };
    for (std::size_t i = 0; i < format_code.size(); ++i) {
        const char c = format_code[i];
        if (c == '\0') continue;
        if (c == '"') {
            quoted = !quoted;
        } else if (quoted) {
            word += c;
        } else if (c == '\\' && i + 1 < format_code.size()) {
            word += format_code[++i];
        } else if (c == '[') {
            end_word();
            const std::size_t end = std::min(format_code.find(']', i), format_code.size());
            std::string inside(format_code.substr(i + 1, end - i - 1));
            std::replace(inside.begin(), inside.end(), ',', '.');
            if (!inside.empty() && conditions.find(inside[0]) != std::string_view::npos)
                text += '[' + inside + ']';
            i = end;
        } else {
            end_word();
            if (c == ';') text += c;
        }
    }
    end_word();
    return text;
}

namespace {

/// What parts the thousands in the digits of a format, which end at `last`: not the mark before the decimals,
/// and the one that stands among digits without any.
char group_mark(std::string_view shape, std::size_t last, int decimals) {
    const auto count = static_cast<std::size_t>(decimals);
    if (decimals > 0 && last >= count) return shape[last - count] == ',' ? '.' : ',';
    return shape.substr(0, last).find('.') != std::string_view::npos ? '.' : ',';
}

}  // namespace

void read_format_code(std::string_view format_code, NumberFormat& format, int decimals) {
    std::string shape;  // the first part without its texts, colours and conditions
    bool quoted = false;
    bool ends = false;
    for (std::size_t i = 0; i < format_code.size() && !ends; ++i) {
        const char c = format_code[i];
        if (c == '"')
            quoted = !quoted;
        else if (!quoted && c == '\\')
            ++i;
        else if (!quoted && c == '[')
            i = std::min(format_code.find(']', i), format_code.size());
        else if (!quoted && c == ';')
            ends = true;
        else if (!quoted)
            shape += c;
    }
    const std::string digits = "0#?";
    const std::size_t last = shape.find_last_of(digits);
    format.hides = ends && trimmed(shape).empty() && text_behind(format_code).empty();
    if (last == std::string::npos || shape.find_first_of("/Ee") != std::string::npos) return;
    if (decimals < 0) {
        const std::size_t point = shape.find('.');
        decimals = point == std::string::npos || point > last ? 0 : static_cast<int>(last - point);
    }
    format.decimals = decimals;
    const char group = group_mark(shape, last, decimals);
    for (std::size_t i = last + 1; i < shape.size() && shape[i] == group; ++i) ++format.thousands;
}

std::optional<std::string> unit_in_label(std::string_view label) {
    const std::string text = trimmed(label);
    for (const auto& [opening, closing] : {std::pair('(', ')'), std::pair('[', ']')}) {
        if (text.empty() || text.back() != closing) continue;
        const std::size_t begin = text.rfind(opening);
        if (begin != std::string::npos && begin > 0)
            return as_unit(std::string_view(text).substr(begin + 1, text.size() - begin - 2));
    }
    for (const std::string_view before : {" in ", ", "}) {
        const std::size_t at = text.rfind(before);
        if (at != std::string::npos && at > 0)
            return as_unit(std::string_view(text).substr(at + before.size()));
    }
    return std::nullopt;
}

std::optional<std::string> format_against_unit(const SeenNumber& seen) {
    if (is_day_or_time(seen)) return day_or_time(seen);
    const std::optional<Unit> beside = unit_of(seen.unit_cell);
    if (!beside) return std::nullopt;
    if (seen.format.shown_as == ShownAs::percent && beside->percent)
        return seen.cell + " is shown as " + shown_text(seen) + ", and with " + seen.unit_cell +
               " beside it is read as " + rounded_text(seen.number) + " " + seen.unit_cell + ": type " +
               rounded_text(100 * seen.number) + " without the percent format";
    const std::optional<Unit> written = unit_of(seen.format.unit);
    if (written && seen.format.shown_as == ShownAs::number && !same_unit(*written, *beside))
        return seen.cell + " is shown in " + seen.format.unit + " by its number format, and with " +
               seen.unit_cell + " beside it is read in " + seen.unit_cell + ": only one of them can be meant";
    return std::nullopt;
}

std::optional<std::string> format_against_type(const SeenNumber& seen, const addin::ValueType& type) {
    if (is_day_or_time(seen)) return day_or_time(seen);
    if (type.shape == addin::Shape::percentage && seen.format.shown_as == ShownAs::percent)
        return seen.cell + " is shown as " + shown_text(seen) + ", and is read as " +
               rounded_text(seen.number) + " %: write % beside a number without the percent format";
    if (type.shape != addin::Shape::quantity) return std::nullopt;
    const Unit read_in = default_unit(type.dimension);
    const auto differs = [&](const std::string& text) {
        const std::optional<Unit> unit = unit_of(text);
        return unit && unit->dimension == type.dimension && !same_unit(*unit, read_in);
    };
    const std::string is_read = " is read in " + addin::bare_unit_text(type);
    if (differs(seen.format.unit))
        return seen.cell + " is shown in " + seen.format.unit +
               " by its number format, which no function sees: "
               "without a unit beside it, it" +
               is_read;
    for (const std::string* label : {&seen.row_label, &seen.column_head}) {
        const std::optional<std::string> unit = unit_in_label(*label);
        if (unit && differs(*unit))
            return seen.cell + " is called \"" + *label + "\", and without a unit beside it, it" + is_read +
                   ": write UC.QUANTITY(" + seen.cell + ";\"" + *unit + "\"), or the unit beside it";
    }
    return std::nullopt;
}

}  // namespace undercroft::audit
