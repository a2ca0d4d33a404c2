/// \file slot.hpp
/// How each C++ type of calc/ is read from a cell and written to one. One specialisation a type;
/// containers are built from the slots of what they hold.
#pragma once

#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <variant>
#include <vector>

#include "addin/catalogue/cell.hpp"
#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/reading.hpp"
#include "addin/catalogue/terms.hpp"
#include "addin/catalogue/value_type.hpp"
#include "calc/percent.hpp"
#include "calc/require.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace undercroft::addin {

/// One C++ parameter type at the border.
///   static T read(const Cell&, const Terms&)   throws Refused
///   static ValueType type()
///   static Reading reading(const T&)           for the derivation
template <class T>
struct Slot;

/// A quantity of whatever dimension: a number, a text, or a pair of number and unit.
[[nodiscard]] Quantity read_quantity(const Cell& cell);
/// The same from one cell of a table, a bare number being in the unit of its column.
[[nodiscard]] Quantity read_quantity(const Scalar& scalar, const std::optional<Unit>& column_unit);

/// The cell of a number and the cell of its unit beside it.
/// \throws Refused(value) when one of them is blank or of the other's kind.
[[nodiscard]] Quantity read_pair(const Scalar& number, const Scalar& unit);
[[nodiscard]] bool is_blank(const Scalar& scalar);

/// Nothing in an argument that may be left out: left out, an empty text, a range of one blank cell, or a pair
/// whose number is blank.
[[nodiscard]] bool holds_nothing(const Cell& cell);

[[nodiscard]] Reading reading_of(const Quantity& quantity);

/// A number and `%`, each in a cell of its own.
[[nodiscard]] inline bool is_percent_pair(const Cell& given) {
    const Grid* const* grid = std::get_if<const Grid*>(&given);
    if (grid == nullptr || (*grid)->columns() != 2) return false;
    const Scalar unit = (*grid)->at(0, 1);
    const auto* text = std::get_if<std::u16string_view>(&unit);
    return text != nullptr && *text == u"%";
}
/// A cell of a table, whose unit stands above it.
[[nodiscard]] inline bool is_percent_pair(const Scalar&) {
    return false;
}

/// A quantity in a dimension, on these terms; `given` is said of it in a refusal.
template <class Given>
[[nodiscard]] double read_in(const Dimension& dimension, const Quantity& quantity, const Given& given,
                             const Terms& terms) {
    try {
        terms.meet(quantity, dimension);
        const double coherent = in_dimension(quantity, dimension).value;
        if (quantity.form == Quantity::Form::percent && is_percent_pair(given))
            terms.meet_percent_pair(coherent);
        terms.meet_possible(quantity, coherent);
        return coherent;
    } catch (const Refused& refused) {
        // Of a bare number it is told in which unit it would be read.
        if (quantity.form == Quantity::Form::bare && refused.refusal() != Refusal::other) throw;
        throw refused.saying(shown_as_given(given) + " " + refused.what());
    }
}

template <class D>
struct Slot<Measure<D>> {
    using Q = Measure<D>;
    static const Dimension& dimension() {
        static const Dimension of_type = dimension_of<Q>();
        return of_type;
    }
    static Q read(const Cell& cell, const Terms& terms) { return from(read_quantity(cell), cell, terms); }
    static ValueType type() { return quantity_type(dimension()); }
    static Reading reading(const Q& value) { return reading_of(as_quantity(value)); }
    template <class Given>
    static Q from(const Quantity& quantity, const Given& given, const Terms& terms) {
        return Q::from_value(read_in(dimension(), quantity, given, terms));
    }
};

template <>
struct Slot<Quantity> {
    static Quantity read(const Cell& cell, const Terms& terms) {
        const Quantity quantity = read_quantity(cell);
        terms.meet_any(quantity);
        return quantity;
    }
    static ValueType type() { return {.shape = Shape::any_quantity}; }
    static Reading reading(const Quantity& value) { return reading_of(value); }
    template <class Given>
    static Quantity from(const Quantity& quantity, const Given&, const Terms&) {
        return quantity;
    }
};

/// A figure that its standard reports in percent: a bare number is a percentage.
template <>
struct Slot<calc::Percent> {
    static calc::Percent read(const Cell& cell, const Terms& terms) {
        return from(read_quantity(cell), cell, terms);
    }
    static ValueType type() { return {.shape = Shape::percentage}; }
    static Reading reading(const calc::Percent& value) { return {value.value, "%"}; }
    template <class Given>
    static calc::Percent from(const Quantity& quantity, const Given& given, const Terms& terms) {
        if (quantity.form == Quantity::Form::bare) {
            terms.meet(quantity, {});
            return {quantity.value};
        }
        return {100 * read_in({}, quantity, given, terms)};
    }
};

/// The same where only a text can be meant, so that 0 can only be a blank cell.
[[nodiscard]] inline bool holds_no_text(const Cell& cell) {
    const double* number = std::get_if<double>(&cell);
    return number != nullptr ? *number == 0 : holds_nothing(cell);
}

/// The text of a cell, or of a range of one cell; `wanted` is said where there is none.
[[nodiscard]] std::string read_text(const Cell& cell, std::string (*wanted)());

template <>
struct Slot<std::string> {
    static std::string read(const Cell& cell, const Terms&) {
        return read_text(cell, [] { return std::string("a text"); });
    }
    static ValueType type() { return {.shape = Shape::text}; }
    static Reading reading(const std::string& value) { return {value, {}}; }
};

template <>
struct Slot<Unit> {
    static Unit read(const Cell& cell, const Terms& terms = {});
    static ValueType type() { return {.shape = Shape::unit}; }
    static Reading reading(const Unit& value) {
        return {value.scale.to_coherent(1), si_unit_text(value.dimension)};
    }
};

[[noreturn]] void refuse_choice(const std::string& text, std::string_view kind, const std::string& choices);

template <class E>
[[nodiscard]] E choose(const std::string& text) {
    for (const Choice<E>& choice : Choices<E>::list)
        if (is_spelling(text, choice.words)) return choice.value;
    refuse_choice(text, Choices<E>::kind, listed_choices<E>());
}

template <class E>
requires std::is_enum_v<E>
struct Slot<E> {
    static E read(const Cell& cell, const Terms&) {
        return choose<E>(read_text(cell, [] { return kind_text(type()); }));
    }
    static ValueType type() {
        return {.shape = Shape::choice, .list = Choices<E>::kind, .words = choice_words<E>()};
    }
    static Reading reading(E value) { return {std::string(spelling_of(value)), {}}; }
};

template <>
struct Slot<bool> {
    static bool read(const Cell& cell, const Terms& terms);
    static ValueType type() { return {.shape = Shape::truth}; }
    static Reading reading(bool value) { return {std::string(value ? "TRUE" : "FALSE"), {}}; }
};

template <class T>
struct Slot<std::optional<T>> {
    static std::optional<T> read(const Cell& cell, const Terms& terms) {
        if (std::holds_alternative<std::monostate>(cell)) return std::nullopt;
        return Slot<T>::read(cell, terms);
    }
    static ValueType type() { return Slot<T>::type(); }
    static Reading reading(const std::optional<T>& value) {
        return value ? Slot<T>::reading(*value) : Reading{std::string("left out"), {}};
    }
};

/// Whether the cell holds text that is a word, not a number with a unit.
[[nodiscard]] bool holds_word(const Cell& cell);

/// A word of the list, or a quantity: `"clay"` or 1.43.
template <class E, class Q>
requires std::is_enum_v<E>
struct Slot<std::variant<E, Q>> {
    static std::variant<E, Q> read(const Cell& cell, const Terms& terms) {
        if (holds_word(cell)) return Slot<E>::read(cell, terms);
        return Slot<Q>::read(cell, terms);
    }
    static ValueType type() {
        ValueType either = Slot<E>::type();
        either.otherwise.push_back(Slot<Q>::type());
        return either;
    }
    static Reading reading(const std::variant<E, Q>& value) {
        if (const E* word = std::get_if<E>(&value)) return Slot<E>::reading(*word);
        return Slot<Q>::reading(std::get<Q>(value));
    }
};

/// A table argument opened for reading: where its data rows are, and the unit of each column.
struct OpenTable {
    const Grid* grid = nullptr;
    std::size_t first_row = 0;
    std::size_t end_row = 0;  ///< one past the last row that is not blank
    std::vector<std::optional<Unit>> units;
    std::vector<std::size_t> places;  ///< of each column, where a unit stands beside each quantity
    std::vector<bool> paired;         ///< whether its unit stands to the right of it

    [[nodiscard]] std::size_t place(std::size_t column) const {
        return places.empty() ? column : places[column];
    }
    [[nodiscard]] Scalar at(std::size_t row, std::size_t column) const {
        return grid->at(row, place(column));
    }
    /// \throws Refused(value) for a blank cell, or text that is no quantity.
    [[nodiscard]] Quantity quantity(std::size_t row, std::size_t column) const;
    /// A row in which only units stand.
    [[nodiscard]] bool is_unused(std::size_t row) const;
};

/// Opens a table of `least` to `most` columns. Blank rows at the end are dropped; a first row that holds
/// only unit texts is taken as the units. A range that is as wide as `has_unit` asks for has a column of
/// units beside each quantity instead. \throws Refused(value) when it is no range, the number of columns is
/// wrong, or a unit row is wrong.
[[nodiscard]] OpenTable open_table(const Cell& cell, std::size_t least, std::size_t most,
                                   const std::vector<bool>& has_unit = {});

/// One cell of a table as the type of its column.
template <class T>
struct ColumnSlot {
    static constexpr bool may_be_blank = false;
    static constexpr bool has_unit = !std::is_same_v<T, Count>;
    static T read(const OpenTable& table, std::size_t row, std::size_t column, const Terms& terms) {
        return Slot<T>::from(table.quantity(row, column), table.at(row, column), terms);
    }
};
template <class E>
requires std::is_enum_v<E>
struct ColumnSlot<E> {
    static constexpr bool may_be_blank = false;
    static constexpr bool has_unit = false;
    static E read(const OpenTable& table, std::size_t row, std::size_t column, const Terms& terms) {
        const Scalar scalar = table.at(row, column);
        if (const auto* text = std::get_if<std::u16string_view>(&scalar))
            return Slot<E>::read(Cell(*text), terms);
        refuse_choice(shown_as_given(scalar), Choices<E>::kind, listed_choices<E>());
    }
};
template <class T>
struct ColumnSlot<std::optional<T>> {
    static constexpr bool may_be_blank = true;
    static constexpr bool has_unit = ColumnSlot<T>::has_unit;
    static std::optional<T> read(const OpenTable& table, std::size_t row, std::size_t column,
                                 const Terms& terms) {
        if (is_blank(table.at(row, column))) return std::nullopt;
        return ColumnSlot<T>::read(table, row, column, terms);
    }
};

/// Adds "row 3, column 2" to a refusal: rows and columns of the range, from 1.
[[nodiscard]] Refused at_place(const Refused& refused, std::size_t row, std::size_t column);

template <class... C>
struct Slot<std::vector<std::tuple<C...>>> {
    using Rows = std::vector<std::tuple<C...>>;
    static constexpr std::size_t most = sizeof...(C);
    /// Columns at the right that may be blank may be missing altogether.
    static constexpr std::size_t least = [] {
        constexpr bool blank[] = {ColumnSlot<C>::may_be_blank...};
        std::size_t n = sizeof...(C);
        while (n > 1 && blank[n - 1]) --n;
        return n;
    }();

    /// Which columns may have a unit beside each number.
    static const std::vector<bool>& units_beside() {
        static const std::vector<bool> beside = {ColumnSlot<C>::has_unit...};
        return beside;
    }
    static Rows read(const Cell& cell, const Terms& terms) {
        const OpenTable table = open_table(cell, least, most, units_beside());
        Rows rows;
        rows.reserve(table.end_row - table.first_row);
        for (std::size_t r = table.first_row; r < table.end_row; ++r)
            if (!table.is_unused(r))
                rows.push_back(read_row(table, r, terms, std::index_sequence_for<C...>{}));
        if (rows.empty()) refuse_value("the table has no row of values");
        return rows;
    }
    static ValueType type() {
        ValueType table{.shape = Shape::table};
        (table.columns.push_back(column_type<C>()), ...);
        return table;
    }
    static Reading reading(const Rows& rows) {
        return {"table of " + std::to_string(rows.size()) + " rows", {}};
    }

private:
    template <class T>
    static ValueType column_type() {
        ValueType type = Slot<T>::type();
        type.may_be_blank = ColumnSlot<T>::may_be_blank;
        type.unit_beside = ColumnSlot<T>::has_unit;
        return type;
    }
    template <std::size_t I>
    static auto read_column(const OpenTable& table, std::size_t row, const Terms& terms, std::size_t& place) {
        place = I;
        return ColumnSlot<std::tuple_element_t<I, std::tuple<C...>>>::read(table, row, I, terms.of_column(I));
    }
    template <std::size_t... I>
    static std::tuple<C...> read_row(const OpenTable& table, std::size_t row, const Terms& terms,
                                     std::index_sequence<I...>) {
        std::size_t place = 0;  // the braces keep the order of the columns
        try {
            return std::tuple<C...>{read_column<I>(table, row, terms, place)...};
        } catch (const Refused& refused) {
            throw at_place(refused, row, table.place(place));
        }
    }
};

/// A grid of quantities of one kind, such as spot levels.
template <class Q>
struct Slot<std::vector<std::vector<Q>>> {
    static std::vector<std::vector<Q>> read(const Cell& cell, const Terms& terms) {
        const OpenTable table = open_table(cell, 1, static_cast<std::size_t>(-1));
        std::vector<std::vector<Q>> rows;
        for (std::size_t r = table.first_row; r < table.end_row; ++r) {
            std::vector<Q> row;
            for (std::size_t c = 0; c < table.grid->columns(); ++c) {
                try {
                    row.push_back(ColumnSlot<Q>::read(table, r, c, terms));
                } catch (const Refused& refused) {
                    throw at_place(refused, r, c);
                }
            }
            rows.push_back(std::move(row));
        }
        if (rows.empty()) refuse_value("the range has no row of values");
        return rows;
    }
    static ValueType type() { return {.shape = Shape::grid, .dimension = Slot<Q>::dimension()}; }
    static Reading reading(const std::vector<std::vector<Q>>& rows) {
        return {"grid of " + std::to_string(rows.size()) + " x " + std::to_string(rows.front().size()), {}};
    }
};

/// Figures that are alike: rows of number and unit, or one column of a table, a first row of which may hold
/// its unit. Rows without a number are passed over.
struct Figures {
    std::vector<Quantity> rows;
};
template <>
struct Slot<Figures> {
    static Figures read(const Cell& cell, const Terms& terms);
    static ValueType type() { return {.shape = Shape::figures}; }
    static Reading reading(const Figures& value) {
        return {std::to_string(value.rows.size()) + " figures", {}};
    }
};

/// The same, where each may be another kind of quantity.
struct Factors {
    std::vector<Quantity> rows;
};
template <>
struct Slot<Factors> {
    static Factors read(const Cell& cell, const Terms& terms);
    static ValueType type() { return {.shape = Shape::figures}; }
    static Reading reading(const Factors& value) {
        return {std::to_string(value.rows.size()) + " factors", {}};
    }
};

}  // namespace undercroft::addin
