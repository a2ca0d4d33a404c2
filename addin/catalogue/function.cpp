#include "addin/catalogue/function.hpp"

#include <cmath>

#include "units/text.hpp"

namespace undercroft::addin {

namespace {

bool is_alphanumeric(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}
char upper(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

}  // namespace

std::string camel_case(std::string_view words) {
    std::string identifier;
    bool new_word = false;
    for (const char c : words) {
        if (c == ' ' || c == '-') new_word = true;
        if (!is_alphanumeric(c)) continue;
        identifier += new_word ? upper(c) : c;
        new_word = false;
    }
    return identifier;
}

std::string identifier_of(std::string_view function_name) {
    std::string words = lower_case(function_name.substr(function_name.find('.') + 1));
    for (char& c : words)
        if (c == '.') c = ' ';
    return camel_case(words);
}

std::size_t table_height(const Cell& wanted, std::size_t rows) {
    if (std::holds_alternative<std::monostate>(wanted)) return rows;
    Count height = Slot<Count>::read(wanted);
    const double most = calc::require_whole("height", height, 1);
    if (static_cast<double>(rows) > most)
        refuse_domain("the table has " + std::to_string(rows) + " rows of values; " + exact_text(most) +
                      " are asked for");
    if (most > 1e6) refuse_domain("a table is at most a million rows high");
    return static_cast<std::size_t>(most);
}

double finite_result(double number) {
    if (!std::isfinite(number))
        refuse_domain("the result is not a finite number: an argument is too large or too small");
    return number == 0 ? 0 : number;  // never minus nothing
}

namespace {

/// The texts between ';'.
std::vector<std::string> parted(const std::string& text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == ';')
            parts.emplace_back();
        else
            parts.back() += c;
    }
    for (std::string& part : parts) part = fold_spelling(part);
    return parts;
}

std::vector<std::string> unit_texts(const Cell& cell, const std::vector<Dimension>& columns) {
    std::vector<std::string> texts;
    for (const Dimension& dimension : columns) texts.push_back(default_unit_text(dimension));
    if (std::holds_alternative<std::monostate>(cell)) return texts;
    const std::vector<std::string> asked = parted(read_text(cell, "units parted by ';', such as \"m; m3\""));
    if (asked.size() > columns.size())
        refuse_value(std::to_string(asked.size()) + " units are asked for a table of " +
                     std::to_string(columns.size()) + " columns");
    for (std::size_t i = 0; i < asked.size(); ++i)
        if (!asked[i].empty()) texts[i] = asked[i];
    return texts;
}

}  // namespace

std::vector<Unit> read_units(const Cell& cell, const std::vector<Dimension>& columns) {
    const std::vector<std::string> texts = unit_texts(cell, columns);
    std::vector<Unit> units;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const bool spelled = texts[i] != run_per_rise && !texts[i].empty();
        const Unit unit = spelled && !(columns[i].is_number() && texts[i] == "1") ? parse_unit(texts[i])
                                                                                  : default_unit(columns[i]);
        const bool same = unit.dimension == columns[i] ||
                          (columns[i] == Dimension::of(Base::count) && unit.dimension.is_number()) ||
                          (columns[i] == Dimension::of(Base::gradient) && unit.dimension.is_number());
        if (!same)
            refuse_value("'" + texts[i] + "' is a unit of " + name_of(unit.dimension) + "; column " +
                         std::to_string(i + 1) + " is " + name_of(columns[i]));
        units.push_back({unit.scale, columns[i], unit.percent});
    }
    return units;
}

std::vector<ResultItem> unit_row_texts(const Cell& cell, const std::vector<Dimension>& columns) {
    std::vector<ResultItem> row;
    for (const std::string& text : unit_texts(cell, columns)) row.emplace_back(text);
    return row;
}

std::string amount_text_of(double number, const Cell& unit, const std::string& standard) {
    const std::string text =
        std::holds_alternative<std::monostate>(unit) ? standard : read_text(unit, "a unit");
    return rounded_text(number) + (text == "1" || text.empty() ? "" : " " + text);
}

namespace {

/// A product of a count and a length is a length to the trade: 12 units of 2.5 m are 30 m.
Dimension without_ratios(const Dimension& dimension) {
    Dimension physical = dimension;
    for (const Base ratio : {Base::count, Base::batter, Base::gradient})
        physical = physical.times(Dimension::of(ratio, -physical.sixths(ratio), Dimension::parts));
    return physical;
}

double number_of(const Quantity& value, const Cell& unit_cell) {
    if (std::holds_alternative<std::monostate>(unit_cell)) {
        if (value.form == Quantity::Form::bare) return value.value;
        return default_unit(value.dimension).scale.from_coherent(value.value);
    }
    const Unit unit = Slot<Unit>::read(unit_cell);
    Quantity result = value;
    const bool differs_by_ratio = result.form != Quantity::Form::bare &&
                                  !(result.dimension == unit.dimension) &&
                                  without_ratios(result.dimension) == without_ratios(unit.dimension);
    if (differs_by_ratio) result.dimension = unit.dimension;
    try {
        return number_in(result, unit);
    } catch (const Refused& refused) {
        throw Refused(refused.cause(), "the result " + std::string(refused.what()));
    }
}

}  // namespace

Answer Result<Quantity>::write(const Quantity& value, const Asked& asked) {
    return finite_result(asked.read(0, [&](const Cell& unit) { return number_of(value, unit); }));
}

std::string Result<Quantity>::text(const Quantity& value, const Asked& asked) {
    const std::string standard =
        value.form == Quantity::Form::bare ? std::string() : default_unit_text(value.dimension);
    const double number = asked.read(0, [&](const Cell& unit) { return number_of(value, unit); });
    return amount_text_of(number, asked.cell(0), standard);
}

std::string Result<calc::Percent>::text(const calc::Percent& value, const Asked&) {
    return rounded_text(value.value) + " %";
}

}  // namespace undercroft::addin
