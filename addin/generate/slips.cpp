#include "addin/generate/slips.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"
#include "units/unit.hpp"

namespace undercroft::addin {

namespace {

std::string quoted(const std::string& text) {
    return '"' + text + '"';
}

/// A number of a few digits, as a person types it.
std::string typed(double number) {
    return rounded_text(number);
}

/// A number in the coherent unit as a quantity with its default unit.
std::string quantity_text(double coherent, const ValueType& type) {
    if (type.shape == Shape::percentage) return quoted(typed(100 * coherent) + " %");
    if (type.dimension == Dimension::of(Base::batter)) return quoted(typed(coherent) + "H:1V");
    if (type.dimension.is_number() || type.dimension == Dimension::of(Base::gradient))
        return quoted(typed(100 * coherent) + " %");
    const double number = default_unit(type.dimension).scale.from_coherent(coherent);
    return quoted(typed(number) + " " + default_unit_text(type.dimension));
}

/// What is refused of one number, wherever it stands.
std::vector<std::string> number_slips(const ValueType& type, const Limits& limits) {
    const bool is_mass = type.dimension == Dimension::of(Base::mass);
    std::vector<std::string> texts = {quoted(is_mass ? "5 m" : "5 kg"), quoted("5 furlong")};
    if (!limits.usual.empty())
        for (const double number : {100 * limits.usual_most, limits.usual_least / 100})
            if (number > 0) texts.push_back(typed(number));
    if (!limits.possible.empty()) {
        if (limits.most < Limits::infinity) texts.push_back(quantity_text(10 * limits.most, type));
        if (limits.least >= 0) texts.push_back(quantity_text(-1, type));
        for (const double end : {limits.least, limits.most, 0.0})
            if (std::isfinite(end)) texts.push_back(quantity_text(end, type));
    }
    return texts;
}

bool is_number_type(const ValueType& type) {
    return type.shape == Shape::quantity || type.shape == Shape::percentage;
}

/// The table with one of its cells changed, in each of the ways that this column does not take.
void add_column_slips(const WrittenRows& rows, bool has_units, std::size_t column, const ValueType& type,
                      const Limits& limits, std::vector<std::string>& texts) {
    const std::size_t first = has_units ? 1 : 0;
    if (rows.size() <= first || rows[first].size() <= column) return;
    for (const std::string& slip : number_slips(type, limits)) {
        WrittenRows changed = rows;
        changed[first][column] = slip;
        const bool is_bare = slip.front() != '"';
        if (is_bare && has_units) changed.erase(changed.begin());
        texts.push_back(written_array(changed));
    }
}

std::vector<std::string> table_slips(const Parameter& parameter, const ValueType& type,
                                     const WrittenRows& rows) {
    std::vector<std::string> texts = {"5", "{\"\"}"};
    ValueType cell = type;
    cell.shape = Shape::quantity;
    if (rows.empty() && type.shape == Shape::grid)  // one quantity may stand for all
        for (const std::string& text : number_slips(cell, parameter.limits)) texts.push_back(text);
    if (rows.empty()) return texts;
    const bool has_units = has_unit_row(rows);
    for (std::size_t c = 0; c < type.columns.size(); ++c) {
        const std::vector<Limits>& columns = parameter.limits.columns;
        const ValueType& of_column =
            type.columns[c].otherwise.empty() ? type.columns[c] : type.columns[c].otherwise.front();
        if (is_number_type(of_column))
            add_column_slips(rows, has_units, c, of_column, c < columns.size() ? columns[c] : Limits(),
                             texts);
        else if (of_column.shape == Shape::choice && rows.size() > (has_units ? 1U : 0U)) {
            WrittenRows changed = rows;
            changed.back()[c] = quoted("any");
            texts.push_back(written_array(changed));
        }
    }
    if (type.shape == Shape::grid || type.shape == Shape::figures)
        add_column_slips(rows, has_units, 0, cell, parameter.limits, texts);
    const auto body = static_cast<std::ptrdiff_t>(has_units ? 1 : 0);
    WrittenRows turned = rows;
    std::reverse(turned.begin() + body, turned.end());
    texts.push_back(written_array(turned));
    texts.push_back(
        written_array({rows.begin(), rows.begin() + std::min<std::ptrdiff_t>(body + 1, std::ssize(rows))}));
    WrittenRows wide = rows;
    for (auto& row : wide) row.insert(row.end(), 3, row.back());
    texts.push_back(written_array(wide));
    return texts;
}

std::vector<std::string> slips_of_type(const Parameter& parameter, const ValueType& type,
                                       const WrittenRows& table) {
    switch (type.shape) {
        case Shape::quantity:
        case Shape::percentage:
            return number_slips(type, parameter.limits);
        case Shape::any_quantity:
            return {"5", quoted("5 kg"), quoted("5 m"), quoted("5 furlong")};
        case Shape::choice:
        case Shape::words:
        case Shape::date:
            return {quoted("any")};
        case Shape::truth:
            return {"5", quoted("any")};
        case Shape::unit:
            return {quoted("furlong"), quoted("kg"), quoted("m")};
        case Shape::units:
            return {quoted("furlong"), quoted("kg;kg;kg;kg;kg;kg"), "20"};
        case Shape::height:
            return {"1.5", quoted("any"), "1"};
        case Shape::table:
        case Shape::grid:
        case Shape::things:
        case Shape::figures:
        case Shape::pasted:
            return table_slips(parameter, type, table);
        case Shape::text:
        case Shape::verdict:
        case Shape::cell:
        case Shape::rows:
            break;
    }
    return {};
}

/// The customary unit of the dimensions of which any job has one.
std::optional<std::string> customary_unit(const ValueType& type) {
    if (type.shape != Shape::quantity) return std::nullopt;
    for (const char* unit : {"ft", "ft2", "ft3", "ft3/s", "in/h", "lbf/ft2", "lbf", "lb/ft3", "ft/s", "lb"})
        if (parse_unit(unit).dimension == type.dimension &&
            default_unit_text(type.dimension).find("ft") == std::string::npos)
            return unit;
    return std::nullopt;
}

/// With two digits, as a person types it.
double in_two_digits(double number) {
    const double unit = std::pow(10.0, std::floor(std::log10(number)) - 1);
    return std::round(number / unit) * unit;
}

double middle(const Limits& limits) {
    return std::sqrt(std::max(limits.usual_least, 1e-3 * limits.usual_most) * limits.usual_most);
}

}  // namespace

std::vector<std::string> slips_of(const Parameter& parameter, const WrittenRows& table) {
    std::vector<std::string> texts;
    if (!parameter.optional) texts.emplace_back();
    for (const std::string& text : slips_of_type(parameter, parameter.type, table)) texts.push_back(text);
    for (const ValueType& other : parameter.type.otherwise)
        for (const std::string& text : slips_of_type(parameter, other, table)) texts.push_back(text);
    return texts;
}

std::string mixed_call(const Function& function, const ExampleCall& call) {
    std::optional<std::size_t> bare;
    std::optional<std::size_t> customary;
    const auto& parameters = function.parameters;
    for (std::size_t i = 0; i < parameters.size(); ++i) {
        if (!call.stands(i) || !customary_unit(parameters[i].type) || parameters[i].limits.usual.empty())
            continue;
        if (!bare)
            bare = i;
        else if (!customary)
            customary = i;
    }
    if (!bare || !customary) return {};
    const auto usual = [&](std::size_t i) { return middle(parameters[i].limits); };
    const ValueType& type = parameters[*customary].type;
    const std::string unit = *customary_unit(type);
    const double coherent = default_unit(type.dimension).scale.to_coherent(usual(*customary));
    const double number = parse_unit(unit).scale.from_coherent(coherent);
    return call.with({{*bare, typed(in_two_digits(usual(*bare)))},
                      {*customary, quoted(typed(in_two_digits(number)) + " " + unit)}});
}

}  // namespace undercroft::addin
