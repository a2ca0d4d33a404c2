/// \file function.hpp
/// One declaration a function: its name, what it says, and the typed C++ function behind it. Dimensions
/// are deduced from the C++ signature and stated nowhere else.
#pragma once

#include <functional>
#include <memory>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <vector>

#include "addin/catalogue/cell.hpp"
#include "addin/catalogue/slot.hpp"

namespace undercroft::addin {

/// The arguments of one call, in order; as many as the function has parameters.
using Cells = std::span<const Cell>;

struct Parameter {
    std::string name;      ///< as in the sheet's help: "base length"
    std::string symbol;    ///< as in the equation: "L"
    std::string says;      ///< one sentence without a full stop
    std::string kind;      ///< "a length"
    std::string unit;      ///< default unit of a bare number; empty where there is none
    std::string fallback;  ///< the default as text; empty where there is none
    bool optional = false;
    std::vector<bool> units_beside =
        {};  ///< of a table's columns: whether a unit may stand beside each number
};

struct Column {
    std::string name;
    std::string symbol;
    std::string kind;
    std::string unit;
};

/// What a function gives.
struct Outcome {
    enum class Shape { number, quantity, verdict, text, table };
    Shape shape = Shape::number;
    std::string symbol;
    std::string says;
    std::string kind;
    std::string unit;             ///< default unit, for a quantity
    std::vector<Column> columns;  ///< of a table
};

/// One argument as it was given and understood.
struct Step {
    std::string symbol;
    std::string argument;
    std::string given;
    Reading reading;
};

/// How a result came about.
struct Derivation {
    std::vector<Step> steps;
    std::string result;  ///< "Q = 22.9 L/s"
};

/// A function of the catalogue, its types erased.
struct Function {
    std::string name;        ///< "UC.PIT.VOLUME"
    std::string identifier;  ///< "pitVolume": the method's name, and for ever the name in files
    std::string says;
    std::string equation;
    std::string source;
    std::string caution;
    std::vector<Parameter> parameters;
    Outcome outcome;
    bool reads_cell = false;  ///< takes a cell of the sheet itself, and is answered by the component

    /// Computes. \throws Refused
    std::function<Answer(Cells)> call;
    /// Computes once more and says how. \throws Refused
    std::function<Derivation(Cells)> derive;
};

/// "available length" to "availableLength".
[[nodiscard]] std::string camel_case(std::string_view words);
/// "UC.PIT.VOLUME" to "pitVolume".
[[nodiscard]] std::string identifier_of(std::string_view function_name);

/// A mistake in the catalogue itself; stops the generator, so that nothing is packaged.
[[noreturn]] inline void broken_entry(const std::string& name, const std::string& why) {
    throw std::logic_error("catalogue entry " + name + ": " + why);
}

// --- results --------------------------------------------------------------------------------------

/// What a call asks of its result beyond the arguments of the C++ function: the unit or units, and of a
/// table its height.
struct Asked {
    Cells cells;
    std::span<const Parameter> parameters;

    [[nodiscard]] Cell cell(std::size_t i) const { return i < cells.size() ? cells[i] : Cell(); }
    /// What `reader` makes of the cell; a refusal names its argument.
    template <class Reader>
    [[nodiscard]] auto read(std::size_t i, const Reader& reader) const {
        try {
            return reader(cell(i));
        } catch (const Refused& refused) {
            throw refused.at(i < parameters.size() ? parameters[i].name : "unit");
        }
    }
};

/// The trailing arguments that shape the result.
enum class UnitArgument { none, unit, units };

/// The units asked for a table, in order of its columns; `m; m3` or nothing.
[[nodiscard]] std::vector<Unit> read_units(const Cell& cell, const std::vector<Dimension>& columns);

/// Rows of values that a table fills in the sheet: as many as it has, or the number asked for.
/// \throws Refused(domain) when it has more than that.
[[nodiscard]] std::size_t table_height(const Cell& wanted, std::size_t rows);

/// A number for the cell. \throws Refused(domain) when it is not finite.
[[nodiscard]] double finite_result(double number);

template <class R>
struct Result;

template <class D>
struct Result<Measure<D>> {
    using Q = Measure<D>;
    /// Shares, counts and slopes are plain numbers in the sheet.
    static constexpr bool plain = std::is_same_v<Q, Share> || std::is_same_v<Q, Count> ||
                                  std::is_same_v<Q, Batter> || std::is_same_v<Q, Gradient>;
    static constexpr UnitArgument unit_argument = plain ? UnitArgument::none : UnitArgument::unit;

    static void describe(Outcome& outcome) {
        outcome.shape = plain ? Outcome::Shape::number : Outcome::Shape::quantity;
        outcome.kind = Slot<Q>::kind();
        outcome.unit = Slot<Q>::unit();
    }
    static Answer write(const Q& value, const Asked& asked) {
        return finite_result(number_in(as_quantity(value), asked.read(0, unit_of)));
    }
    static std::string text(const Q& value, const Asked& asked) {
        return amount_text(number_in(as_quantity(value), asked.read(0, unit_of)), asked.cell(0));
    }
    static std::string amount_text(double number, const Cell& unit);

private:
    static Unit unit_of(const Cell& unit) {
        static const Unit standard = default_unit(dimension_of<Q>());
        if (std::holds_alternative<std::monostate>(unit)) return standard;
        const Unit asked = Slot<Unit>::read(unit);
        if (!(asked.dimension == dimension_of<Q>()))
            refuse_value("'" + Slot<std::string>::read(unit) + "' is a unit of " + name_of(asked.dimension) +
                         "; the result is " + Slot<Q>::kind());
        return asked;
    }
};

/// A result whose dimension is known only when it is there.
template <>
struct Result<Quantity> {
    static constexpr UnitArgument unit_argument = UnitArgument::unit;
    static void describe(Outcome& outcome) {
        outcome.shape = Outcome::Shape::quantity;
        outcome.kind = "a quantity";
    }
    static Answer write(const Quantity& value, const Asked& asked);
    static std::string text(const Quantity& value, const Asked& asked);
};

template <>
struct Result<bool> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static void describe(Outcome& outcome) {
        outcome.shape = Outcome::Shape::verdict;
        outcome.kind = "TRUE or FALSE (1 or 0)";
    }
    static Answer write(bool value, const Asked&) { return value ? 1.0 : 0.0; }
    static std::string text(bool value, const Asked&) { return value ? "TRUE" : "FALSE"; }
};

template <>
struct Result<std::string> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static void describe(Outcome& outcome) {
        outcome.shape = Outcome::Shape::text;
        outcome.kind = "a text";
    }
    static Answer write(const std::string& value, const Asked&) { return value; }
    static std::string text(const std::string& value, const Asked&) { return value; }
};

template <>
struct Result<calc::Percent> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static void describe(Outcome& outcome) {
        outcome.shape = Outcome::Shape::number;
        outcome.kind = "a percentage";
        outcome.unit = "%";
    }
    static Answer write(const calc::Percent& value, const Asked&) { return finite_result(value.value); }
    static std::string text(const calc::Percent& value, const Asked&);
};

/// Rows already made of numbers and words, without a unit row.
template <>
struct Result<ResultRows> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static void describe(Outcome& outcome) { outcome.shape = Outcome::Shape::table; }
    static Answer write(const ResultRows& value, const Asked&) { return value; }
    static std::string text(const ResultRows& value, const Asked&) {
        return std::to_string(value.size()) + " rows";
    }
};

/// The dimension of a column, whose cells may be blank.
template <class T>
struct ColumnOf {
    using type = T;
};
template <class T>
struct ColumnOf<std::optional<T>> {
    using type = T;
};

template <class... C>
struct Result<std::vector<std::tuple<C...>>> {
    using Rows = std::vector<std::tuple<C...>>;
    static constexpr UnitArgument unit_argument = UnitArgument::units;

    static void describe(Outcome& outcome) {
        outcome.shape = Outcome::Shape::table;
        outcome.kind = "a table";
        outcome.columns = {Column{{}, {}, Slot<C>::kind(), Slot<C>::unit()}...};
    }
    static Answer write(const Rows& rows, const Asked& asked) {
        const std::size_t height =
            asked.read(1, [&](const Cell& cell) { return table_height(cell, rows.size()); });
        const std::vector<Dimension> dimensions = {dimension_of<typename ColumnOf<C>::type>()...};
        const std::vector<Unit> chosen =
            asked.read(0, [&](const Cell& cell) { return read_units(cell, dimensions); });
        ResultRows result;
        result.reserve(height + 1);
        result.push_back(unit_row(asked.cell(0), dimensions));
        for (const auto& row : rows) result.push_back(numbers(row, chosen, std::index_sequence_for<C...>{}));
        const std::vector<ResultItem> blank(sizeof...(C), std::string());
        while (result.size() < height + 1) result.push_back(blank);
        return result;
    }
    static std::string text(const Rows& rows, const Asked&) {
        return "table of " + std::to_string(rows.size()) + " rows";
    }

private:
    static std::vector<ResultItem> unit_row(const Cell& units, const std::vector<Dimension>& dimensions);
    template <std::size_t... I>
    static std::vector<ResultItem> numbers(const std::tuple<C...>& row, const std::vector<Unit>& units,
                                           std::index_sequence<I...>) {
        return {item(std::get<I>(row), units[I])...};
    }
    template <class Q>
    static ResultItem item(const Q& value, const Unit& unit) {
        return finite_result(number_in(as_quantity(value), unit));
    }
    template <class Q>
    static ResultItem item(const std::optional<Q>& value, const Unit& unit) {
        return value ? item(*value, unit) : ResultItem(std::string());
    }
};

/// The texts of the unit row of a table result.
[[nodiscard]] std::vector<ResultItem> unit_row_texts(const Cell& units,
                                                     const std::vector<Dimension>& columns);

template <class... C>
std::vector<ResultItem> Result<std::vector<std::tuple<C...>>>::unit_row(
    const Cell& units, const std::vector<Dimension>& dimensions) {
    return unit_row_texts(units, dimensions);
}

/// "22.9 L/s": a number and the unit it is in, the default unit's text when none was asked.
[[nodiscard]] std::string amount_text_of(double number, const Cell& unit, const std::string& standard);

template <class D>
std::string Result<Measure<D>>::amount_text(double number, const Cell& unit) {
    return amount_text_of(number, unit, Slot<Q>::unit());
}

// --- the entry ------------------------------------------------------------------------------------

template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;

/// A catalogue entry while it is being written; turns into a Function.
template <class R, class... A>
class Entry {
    using Arguments = std::tuple<std::decay_t<A>...>;
    static constexpr std::size_t arity = sizeof...(A);

public:
    Entry(const char* name, R (*function)(A...)) : function_(function) {
        made_.name = name;
        made_.identifier = identifier_of(name);
        Result<std::decay_t<R>>::describe(made_.outcome);
    }

    /// One sentence that says what the function gives.
    Entry& says(const char* text) { return made_.says = text, *this; }
    Entry& equation(const char* text) { return made_.equation = text, *this; }
    /// Author or body, title, year, and where in it; `common practice` where there is no publication.
    Entry& source(const char* text) { return made_.source = text, *this; }
    /// What must not be forgotten before the result is used.
    Entry& caution(const char* text) { return made_.caution = text, *this; }

    /// The next argument; in the order of the C++ parameters.
    Entry& takes(const char* name, const char* symbol, const char* text) {
        return add(name, symbol, text, {}), *this;
    }
    /// The next argument with its default, as a number or as the text of a quantity or choice.
    Entry& takes(const char* name, const char* symbol, const char* text, double fallback) {
        fallback_cells_.resize(made_.parameters.size() + 1);
        fallback_cells_.back() = fallback;
        return add(name, symbol, text, shown_as_given(Cell(fallback))), *this;
    }
    Entry& takes(const char* name, const char* symbol, const char* text, const char16_t* fallback) {
        fallback_cells_.resize(made_.parameters.size() + 1);
        fallback_cells_.back() = std::u16string_view(fallback);
        return add(name, symbol, text, shown_as_given(Scalar(std::u16string_view(fallback)))), *this;
    }

    Entry& gives(const char* symbol, const char* text) {
        made_.outcome.symbol = symbol;
        made_.outcome.says = text;
        return *this;
    }
    /// The names of a table's columns, in order.
    Entry& gives_columns(const char* text, std::vector<std::pair<const char*, const char*>> columns) {
        made_.outcome.says = text;
        made_.outcome.columns.resize(columns.size());
        for (std::size_t i = 0; i < columns.size(); ++i) {
            made_.outcome.columns[i].name = columns[i].first;
            made_.outcome.columns[i].symbol = columns[i].second;
        }
        return *this;
    }
    /// The result's unit must be asked for.
    Entry& wants_unit(const char* name = "unit", const char* text = "Unit of the result") {
        return unit_name_ = name, unit_says_ = text, unit_required_ = true, *this;
    }
    Entry& unit_named(const char* name, const char* text) {
        return unit_name_ = name, unit_says_ = text, *this;
    }

    operator Function()
        const {  // NOLINT(google-explicit-constructor): an entry is written where a Function stands
        Entry entry = *this;
        return entry.finished();
    }

private:
    template <std::size_t I>
    using Argument = std::tuple_element_t<I, Arguments>;

    void add(const char* name, const char* symbol, const char* text, const std::string& fallback) {
        const std::size_t i = made_.parameters.size();
        if (i >= arity) broken_entry(made_.name, "more arguments are described than the function takes");
        made_.parameters.push_back({name, symbol, text, {}, {}, fallback, !fallback.empty()});
    }

    template <std::size_t... I>
    void describe_parameters(std::index_sequence<I...>) {
        ((made_.parameters[I].kind = Slot<Argument<I>>::kind(),
          made_.parameters[I].unit = Slot<Argument<I>>::unit(),
          made_.parameters[I].units_beside = units_beside<Argument<I>>(),
          made_.parameters[I].optional = made_.parameters[I].optional || is_optional<Argument<I>>),
         ...);
    }

    template <std::size_t I>
    static Argument<I> read(Cells cells, const Function& function, const std::vector<Cell>& fallbacks) {
        const bool left_out = std::holds_alternative<std::monostate>(cells[I]);
        try {
            return Slot<Argument<I>>::read(left_out ? fallbacks[I] : cells[I]);
        } catch (const Refused& refused) {
            throw refused.at(function.parameters[I].name);
        }
    }
    template <std::size_t... I>
    static Arguments read_all([[maybe_unused]] Cells cells, [[maybe_unused]] const Function& function,
                              [[maybe_unused]] const std::vector<Cell>& fallbacks,
                              std::index_sequence<I...>) {
        return Arguments{read<I>(cells, function, fallbacks)...};
    }
    static std::string given(Cells cells, const Function& function, std::size_t i) {
        const bool left_out = std::holds_alternative<std::monostate>(cells[i]);
        const Parameter& parameter = function.parameters[i];
        return left_out && !parameter.fallback.empty() ? parameter.fallback + " (default)"
                                                       : shown_as_given(cells[i]);
    }
    template <std::size_t... I>
    static std::vector<Step> steps(const Arguments& arguments, [[maybe_unused]] Cells cells,
                                   const Function& function, std::index_sequence<I...>) {
        return {Step{function.parameters[I].symbol, function.parameters[I].name, given(cells, function, I),
                     Slot<Argument<I>>::reading(std::get<I>(arguments))}...};
    }

    Function finished() {
        if (made_.parameters.size() != arity)
            broken_entry(made_.name, "describes " + std::to_string(made_.parameters.size()) + " of " +
                                         std::to_string(arity) + " arguments");
        describe_parameters(std::index_sequence_for<A...>{});
        for (std::size_t i = 1; i < arity; ++i)
            if (made_.parameters[i - 1].optional && !made_.parameters[i].optional)
                broken_entry(made_.name, "only trailing arguments can be left out");
        if (Result<std::decay_t<R>>::unit_argument == UnitArgument::unit)
            made_.parameters.push_back({unit_name_, {}, unit_says_, "a unit", {}, {}, !unit_required_});
        if (Result<std::decay_t<R>>::unit_argument == UnitArgument::units) {
            made_.parameters.push_back(
                {"units", {}, "Units of the columns, parted by ';'", "units", {}, {}, true});
            made_.parameters.push_back({"height",
                                        {},
                                        "Rows of values to fill: blank rows make up for what the table lacks",
                                        "a count",
                                        {},
                                        {},
                                        true});
        }
        fallback_cells_.resize(arity);

        // What the calls need, shared by both and by every copy.
        struct Bound {
            Function description;
            std::vector<Cell> fallbacks;
            R (*function)(A...);
        };
        const auto bound = std::make_shared<Bound>(Bound{made_, fallback_cells_, function_});
        check_fallbacks(*bound, std::index_sequence_for<A...>{});

        made_.call = [bound](Cells cells) -> Answer {
            const Arguments arguments =
                read_all(cells, bound->description, bound->fallbacks, std::index_sequence_for<A...>{});
            return Result<std::decay_t<R>>::write(std::apply(bound->function, arguments),
                                                  asked(cells, bound->description));
        };
        made_.derive = [bound](Cells cells) -> Derivation {
            const Arguments arguments =
                read_all(cells, bound->description, bound->fallbacks, std::index_sequence_for<A...>{});
            const auto result = std::apply(bound->function, arguments);
            (void)Result<std::decay_t<R>>::write(
                result, asked(cells, bound->description));  // refuses what the call refuses
            const std::string text = Result<std::decay_t<R>>::text(result, asked(cells, bound->description));
            const std::string& symbol = bound->description.outcome.symbol;
            return {steps(arguments, cells, bound->description, std::index_sequence_for<A...>{}),
                    symbol.empty() ? text : symbol + " = " + text};
        };
        return made_;
    }

    /// The cells beyond the arguments of the C++ function.
    static Asked asked(Cells cells, const Function& function) {
        for (std::size_t i = arity; i < function.parameters.size(); ++i) {
            const bool left_out = i >= cells.size() || std::holds_alternative<std::monostate>(cells[i]);
            if (left_out && !function.parameters[i].optional)
                refuse_value(function.parameters[i].name + ": is left out");
        }
        return {cells.size() > arity ? cells.subspan(arity) : Cells(),
                std::span(function.parameters).subspan(arity)};
    }

    template <class Bound, std::size_t... I>
    static void check_fallbacks(const Bound& bound, std::index_sequence<I...>) {
        try {
            ((std::holds_alternative<std::monostate>(bound.fallbacks[I])
                  ? void()
                  : void(Slot<Argument<I>>::read(bound.fallbacks[I]))),
             ...);
        } catch (const Refused& refused) {
            broken_entry(bound.description.name, std::string("default of an argument: ") + refused.what());
        }
    }

    R (*function_)(A...);
    Function made_;
    std::vector<Cell> fallback_cells_;
    std::string unit_name_ = "unit";
    std::string unit_says_ = "Unit of the result; left out, the default unit of its dimension";
    bool unit_required_ = false;
};

template <class R, class... A>
[[nodiscard]] Entry<R, A...> function(const char* name, R (*f)(A...)) {
    return {name, f};
}

/// The same from a lambda without captures, where the C++ function takes a struct.
template <class F>
requires requires(F f) {
    +f;
}
[[nodiscard]] auto function(const char* name, F f) {
    return function(name, +f);
}

}  // namespace undercroft::addin
