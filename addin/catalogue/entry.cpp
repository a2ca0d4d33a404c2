#include "addin/catalogue/entry.hpp"

#include <algorithm>
#include <stdexcept>

#include "units/text.hpp"

namespace undercroft::addin {

void broken_entry(const std::string& name, const std::string& why) {
    throw std::logic_error("catalogue entry " + name + ": " + why);
}

Entry::Entry(const char* name, Binding binding, std::vector<ValueType> arguments, std::vector<bool> optional,
             ValueType result)
    : binding_(std::move(binding)), arguments_(std::move(arguments)), optional_(std::move(optional)) {
    made_.name = name;
    made_.identifier = identifier_of(name);
    for (const ValueType& column : result.columns) made_.outcome.columns.push_back({{}, {}, column});
    made_.outcome.type = std::move(result);
}

Parameter& Entry::last() {
    if (made_.parameters.empty())
        broken_entry(made_.name, "something is said of an argument before the first");
    return made_.parameters.back();
}

Entry& Entry::takes(const char* name, const char* symbol, const char* text) {
    const std::size_t i = made_.parameters.size();
    if (i >= arguments_.size())
        broken_entry(made_.name, "more arguments are described than the function takes");
    Parameter parameter;
    parameter.name = name;
    parameter.symbol = symbol;
    parameter.says = text;
    parameter.type = arguments_[i];
    parameter.optional = optional_[i];
    made_.parameters.push_back(std::move(parameter));
    binding_.fallbacks.emplace_back();
    return *this;
}

Entry& Entry::takes(const char* name, const char* symbol, const char* text, double fallback) {
    takes(name, symbol, text);
    binding_.fallbacks.back() = fallback;
    last().fallback = shown_as_given(Cell(fallback));
    last().optional = true;
    return *this;
}

Entry& Entry::takes(const char* name, const char* symbol, const char* text, const char16_t* fallback) {
    takes(name, symbol, text);
    binding_.fallbacks.back() = std::u16string_view(fallback);
    last().fallback = shown_as_given(Scalar(std::u16string_view(fallback)));
    last().optional = true;
    return *this;
}

namespace {

bool is_number(const ValueType& type) {
    if (!type.otherwise.empty()) return is_number(type.otherwise.front());
    return type.shape == Shape::quantity || type.shape == Shape::percentage || type.shape == Shape::grid ||
           type.shape == Shape::any_quantity || type.shape == Shape::figures;
}

Limits limits_of(const Range& range, const ValueType& type) {
    if (!type.otherwise.empty()) return limits_of(range, type.otherwise.front());
    return {range, type.dimension, type.shape == Shape::percentage};
}

}  // namespace

Entry& Entry::within(const Range& range) {
    if (!is_number(last().type)) broken_entry(made_.name, last().name + " is no number, and has a range");
    try {
        last().limits = limits_of(range, last().type);
    } catch (const Refused& refused) {
        broken_entry(made_.name, last().name + ", its range: " + refused.what());
    }
    return *this;
}

Entry& Entry::within(std::initializer_list<Range> columns) {
    const ValueType& type = last().type;
    const std::vector<ValueType>& types = (type.otherwise.empty() ? type : type.otherwise.front()).columns;
    if (columns.size() > types.size())
        broken_entry(made_.name, last().name + " has fewer columns than ranges");
    std::size_t c = 0;
    for (const Range& range : columns) {
        try {
            last().limits.columns.push_back(is_number(types[c]) ? limits_of(range, types[c]) : Limits());
        } catch (const Refused& refused) {
            broken_entry(made_.name, last().name + ", the range of a column: " + refused.what());
        }
        ++c;
    }
    return *this;
}

Entry& Entry::gives(const char* symbol, const char* text) {
    made_.outcome.symbol = symbol;
    made_.outcome.says = text;
    return *this;
}

Entry& Entry::gives_columns(const char* text, std::vector<std::pair<const char*, const char*>> columns) {
    made_.outcome.says = text;
    if (columns.size() != made_.outcome.columns.size())
        broken_entry(made_.name, "names " + std::to_string(columns.size()) + " of " +
                                     std::to_string(made_.outcome.columns.size()) + " columns");
    for (std::size_t i = 0; i < columns.size(); ++i) {
        made_.outcome.columns[i].name = columns[i].first;
        made_.outcome.columns[i].symbol = columns[i].second;
    }
    return *this;
}

Entry& Entry::found_to(double share, std::initializer_list<std::string_view> columns) {
    std::size_t found = 0;
    if (columns.size() == 0) made_.outcome.found_to = share;
    for (Column& column : made_.outcome.columns) {
        const bool is_meant =
            columns.size() == 0 || std::find(columns.begin(), columns.end(), column.name) != columns.end();
        if (!is_meant) continue;
        column.found_to = share;
        ++found;
    }
    if (found < columns.size()) broken_entry(made_.name, "has no such column that is found by a search");
    return *this;
}

Entry& Entry::wants_unit(const char* name, const char* text) {
    unit_required_ = true;
    return unit_named(name, text);
}

Entry& Entry::unit_named(const char* name, const char* text) {
    unit_name_ = name;
    unit_says_ = text;
    return *this;
}

Entry& Entry::example(const char* formula, const char* value, const char* tolerance, Origin origin,
                      const char* source) {
    made_.examples.push_back({formula, value, tolerance, origin, source});
    return *this;
}

Entry& Entry::examples(const char* formula, const char* tolerance, Origin origin, const char* source,
                       std::initializer_list<std::vector<const char*>> rows) {
    for (const std::vector<const char*>& row : rows) {
        Example example{{}, row.back(), tolerance, origin, source};
        std::string_view rest = formula;
        for (std::size_t i = 0; i + 1 < row.size(); ++i) {
            const std::size_t hole = rest.find("{}");
            if (hole == std::string_view::npos) broken_entry(made_.name, "a row of examples is too long");
            example.formula += std::string(rest.substr(0, hole)) + row[i];
            rest.remove_prefix(hole + 2);
        }
        example.formula += rest;
        made_.examples.push_back(std::move(example));
    }
    return *this;
}

Entry& Entry::related(std::initializer_list<const char*> names) {
    made_.guidance.related.assign(names.begin(), names.end());
    return *this;
}

namespace {

Parameter shaping(const std::string& name, const std::string& says, Shape shape, bool optional) {
    Parameter parameter;
    parameter.name = name;
    parameter.says = says;
    parameter.type.shape = shape;
    parameter.optional = optional;
    return parameter;
}

}  // namespace

void Entry::insert_shaping(std::vector<Parameter>& parameters, const Binding& binding) const {
    std::vector<Parameter> made;
    if (binding.unit_argument == UnitArgument::unit)
        made = {shaping(unit_name_, unit_says_, Shape::unit, !unit_required_)};
    if (binding.unit_argument == UnitArgument::units)
        made = {
            shaping("units", "Units of the columns, parted by ';'", Shape::units, true),
            shaping(
                "height",
                "Rows of values to fill: blank rows make up for what the table lacks. Enter the formula in "
                "one cell with Ctrl+Shift+Enter: Calc spreads the table",
                Shape::height, true)};
    const auto place = parameters.begin() + static_cast<std::ptrdiff_t>(binding.unit_place());
    if (std::any_of(place, parameters.end(), [](const Parameter& later) { return !later.optional; }))
        broken_entry(made_.name, "only an optional argument can be added later");
    parameters.insert(place, made.begin(), made.end());
}

namespace {

Blank blank_of(const Parameter& parameter) {
    if (!parameter.optional) return Blank::never;
    if (parameter.type.is_range())
        return Blank::when_empty_text;  // a blank range is a table yet to be filled
    switch (parameter.type.shape) {
        case Shape::choice:
        case Shape::words:
        case Shape::text:
        case Shape::unit:
        case Shape::units:
        case Shape::height:  // no table has 0 rows
            return parameter.type.otherwise.empty() ? Blank::when_no_text : Blank::when_seen;
        default:
            return Blank::when_seen;
    }
}

}  // namespace

Entry::operator Function() const {
    Function function = made_;
    Binding binding = binding_;
    std::vector<Parameter>& parameters = function.parameters;
    if (parameters.size() != arguments_.size())
        broken_entry(function.name, "describes " + std::to_string(parameters.size()) + " of " +
                                        std::to_string(arguments_.size()) + " arguments");
    for (std::size_t i = 1; i < parameters.size(); ++i)
        if (parameters[i - 1].optional && !parameters[i].optional)
            broken_entry(function.name, "only trailing arguments can be left out");
    if (binding.unit_argument == UnitArgument::none) binding.added_later = 0;
    binding.unit_required = unit_required_;
    for (std::size_t i = 0; i < arguments_.size(); ++i) {
        const double* fallback = std::get_if<double>(&binding.fallbacks[i]);
        const bool none_by_default = fallback != nullptr && *fallback == 0;
        if (!none_by_default && !parameters[i].type.is_range()) {
            parameters[i].limits.bare_none = false;
            parameters[i].limits.none_is_blank = true;
        }
        binding.limits.push_back(parameters[i].limits);
        if (std::holds_alternative<std::monostate>(binding.fallbacks[i])) continue;
        try {
            binding.check_fallback(binding, i);
        } catch (const Refused& refused) {
            broken_entry(function.name, std::string("default of an argument: ") + refused.what());
        }
    }
    insert_shaping(parameters, binding);
    for (const Parameter& parameter : parameters) {
        binding.names.push_back(parameter.name);
        binding.blanks.push_back(blank_of(parameter));
    }
    function.binding = std::make_shared<const Binding>(std::move(binding));
    return function;
}

void Binding::refuse(std::size_t place, const char* sentence) const {
    throw Refused(Cause::value, sentence, Refusal::mixed).at(names[place]);
}

void Binding::require_one_system(const Cell& units, const Mixture& mixture) const {
    if (mixture.bare < 0) return;
    const std::size_t bare = place(static_cast<std::size_t>(mixture.bare));
    if (mixture.customary)
        refuse(bare,
               "has no unit, and another argument is in feet, pounds or the like: write the unit of each");
    if (asks_customary(units, unit_argument))
        refuse(
            bare,
            "has no unit, and the result is asked for in feet, pounds or the like: write the unit of each");
}

Asked Binding::asked(Cells cells, const Mixture& mixture) const {
    const std::size_t at = unit_place();
    const bool has_units = shaping() > 0 && cells.size() > at && !is_left_out(at, cells[at]);
    const Cell units = has_units ? cells[at] : Cell();
    if (unit_required && std::holds_alternative<std::monostate>(units))
        throw Refused(Cause::value, "is left out", Refusal::blank).at(names[at]);
    if (unit_argument != UnitArgument::none || mixture.customary) require_one_system(units, mixture);
    const bool has_height = shaping() > 1 && cells.size() > at + 1 && !is_left_out(at + 1, cells[at + 1]);
    return {{units, has_height ? cells[at + 1] : Cell()}, std::span(names).subspan(at)};
}

Answer Function::call(Cells cells) const {
    return binding->call(*binding, cells);
}

Derivation Function::derive(Cells cells) const {
    Derivation derivation = binding->derive(*binding, cells);
    for (std::size_t i = 0; i < derivation.steps.size(); ++i) {
        Step& step = derivation.steps[i];
        const Parameter& parameter = parameters[binding->place(i)];
        const Cell& cell = cells[binding->place(i)];
        const bool by_default = binding->is_left_out(binding->place(i), cell) && !parameter.fallback.empty();
        step.symbol = parameter.symbol;
        step.argument = parameter.name;
        step.given = by_default ? parameter.fallback + " (default)" : shown_as_given(cell);
    }
    if (!outcome.symbol.empty()) derivation.result = outcome.symbol + " = " + derivation.result;
    return derivation;
}

}  // namespace undercroft::addin
