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
#include "calc/percent.hpp"
#include "calc/require.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace undercroft::addin {

/// How an argument was understood, for the checker: "0.305" and "m".
struct Reading {
    std::variant<double, std::string> value;
    std::string unit;
};

/// One C++ parameter type at the border.
///   static T read(const Cell&)          throws Refused
///   static std::string kind()           "a length"
///   static std::string unit()           default unit of a bare number, or empty
///   static Reading reading(const T&)    for the derivation
template <class T>
struct Slot;

// --- quantities -----------------------------------------------------------------------------------

/// A quantity of whatever dimension: a number, a text, or a pair of number and unit.
[[nodiscard]] Quantity read_quantity(const Cell& cell);
/// The same from one cell of a table, a bare number being in the unit of its column.
[[nodiscard]] Quantity read_quantity(const Scalar& scalar, const std::optional<Unit>& column_unit);

/// The cell of a number and the cell of its unit beside it.
/// \throws Refused(value) when one of them is blank or of the other's kind.
[[nodiscard]] Quantity read_pair(const Scalar& number, const Scalar& unit);
[[nodiscard]] bool is_blank(const Scalar& scalar);

[[nodiscard]] Reading reading_of(const Quantity& quantity);

template <class Q>
[[nodiscard]] Q read_as(const Cell& cell) {
    const Quantity quantity = read_quantity(cell);
    try {
        return as<Q>(quantity);
    } catch (const Refused& refused) {
        throw Refused(refused.cause(), shown_as_given(cell) + " " + refused.what());
    }
}

template <class D>
struct Slot<Measure<D>> {
    using Q = Measure<D>;
    static Q read(const Cell& cell) { return read_as<Q>(cell); }
    static std::string kind() { return name_of(dimension_of<Q>()); }
    static std::string unit() { return default_unit_text(dimension_of<Q>()); }
    static Reading reading(const Q& value) { return reading_of(as_quantity(value)); }
    static Q from(const Quantity& quantity) { return as<Q>(quantity); }
};

template <>
struct Slot<Quantity> {
    static Quantity read(const Cell& cell) { return read_quantity(cell); }
    static std::string kind() { return "a quantity"; }
    static std::string unit() { return {}; }
    static Reading reading(const Quantity& value) { return reading_of(value); }
    static Quantity from(const Quantity& quantity) { return quantity; }
};

/// A figure that its standard reports in percent: a bare number is a percentage.
template <>
struct Slot<calc::Percent> {
    static calc::Percent read(const Cell& cell);
    static std::string kind() { return "a percentage"; }
    static std::string unit() { return "%"; }
    static Reading reading(const calc::Percent& value) { return {value.value, "%"}; }
    static calc::Percent from(const Quantity& quantity);
};

// --- words ----------------------------------------------------------------------------------------

/// The text of a cell, or of a range of one cell.
[[nodiscard]] std::string read_text(const Cell& cell, const std::string& wanted);

template <>
struct Slot<std::string> {
    static std::string read(const Cell& cell) { return read_text(cell, "a text"); }
    static std::string kind() { return "a text"; }
    static std::string unit() { return {}; }
    static Reading reading(const std::string& value) { return {value, {}}; }
};

template <>
struct Slot<Unit> {
    static Unit read(const Cell& cell);
    static std::string kind() { return "a unit"; }
    static std::string unit() { return {}; }
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
    static E read(const Cell& cell) { return choose<E>(read_text(cell, kind())); }
    static std::string kind() { return std::string(Choices<E>::kind) + ": " + listed_choices<E>(); }
    static std::string unit() { return {}; }
    static Reading reading(E value) { return {std::string(spelling_of(value)), {}}; }
};

template <>
struct Slot<bool> {
    static bool read(const Cell& cell);
    static std::string kind() { return "TRUE or FALSE"; }
    static std::string unit() { return {}; }
    static Reading reading(bool value) { return {std::string(value ? "TRUE" : "FALSE"), {}}; }
};

// --- what may be left out, and what may be one thing or another -------------------------------------

template <class T>
struct Slot<std::optional<T>> {
    static std::optional<T> read(const Cell& cell) {
        if (std::holds_alternative<std::monostate>(cell)) return std::nullopt;
        return Slot<T>::read(cell);
    }
    static std::string kind() { return Slot<T>::kind(); }
    static std::string unit() { return Slot<T>::unit(); }
    static std::vector<bool> units_beside() requires requires { Slot<T>::units_beside(); }
    { return Slot<T>::units_beside(); }
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
    static std::variant<E, Q> read(const Cell& cell) {
        if (holds_word(cell)) return Slot<E>::read(cell);
        return Slot<Q>::read(cell);
    }
    static std::string kind() { return Slot<E>::kind() + ", or " + Slot<Q>::kind(); }
    static std::string unit() { return {}; }
    static Reading reading(const std::variant<E, Q>& value) {
        if (const E* word = std::get_if<E>(&value)) return Slot<E>::reading(*word);
        return Slot<Q>::reading(std::get<Q>(value));
    }
};

// --- tables ---------------------------------------------------------------------------------------

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
    static T read(const OpenTable& table, std::size_t row, std::size_t column) {
        const Quantity quantity = table.quantity(row, column);
        try {
            return Slot<T>::from(quantity);
        } catch (const Refused& refused) {
            throw Refused(refused.cause(), shown_as_given(table.at(row, column)) + " " + refused.what());
        }
    }
};
template <class E>
requires std::is_enum_v<E>
struct ColumnSlot<E> {
    static constexpr bool may_be_blank = false;
    static constexpr bool has_unit = false;
    static E read(const OpenTable& table, std::size_t row, std::size_t column) {
        const Scalar scalar = table.at(row, column);
        if (const auto* text = std::get_if<std::u16string_view>(&scalar)) return Slot<E>::read(Cell(*text));
        refuse_choice(shown_as_given(scalar), Choices<E>::kind, listed_choices<E>());
    }
};
template <class T>
struct ColumnSlot<std::optional<T>> {
    static constexpr bool may_be_blank = true;
    static constexpr bool has_unit = ColumnSlot<T>::has_unit;
    static std::optional<T> read(const OpenTable& table, std::size_t row, std::size_t column) {
        if (is_blank(table.at(row, column))) return std::nullopt;
        return ColumnSlot<T>::read(table, row, column);
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

    static std::vector<bool> units_beside() { return {ColumnSlot<C>::has_unit...}; }

    static Rows read(const Cell& cell) {
        const OpenTable table = open_table(cell, least, most, units_beside());
        Rows rows;
        rows.reserve(table.end_row - table.first_row);
        for (std::size_t r = table.first_row; r < table.end_row; ++r)
            if (!table.is_unused(r)) rows.push_back(read_row(table, r, std::index_sequence_for<C...>{}));
        if (rows.empty()) refuse_value("the table has no row of values");
        return rows;
    }
    static std::string kind() {
        std::string text = "a table of ";
        std::size_t i = 0;
        ((text += std::string(i == 0 ? "" : ", ") + column_kind<C>(), ++i), ...);
        return text;
    }
    static std::string unit() {
        std::string text;
        std::size_t i = 0;
        ((text += std::string(i == 0 ? "" : "; ") + column_unit<C>(), ++i), ...);
        return text;
    }
    static Reading reading(const Rows& rows) {
        return {"table of " + std::to_string(rows.size()) + " rows", {}};
    }

private:
    template <class T>
    static std::string column_kind() {
        if constexpr (std::is_enum_v<T>)
            return std::string(Choices<T>::kind);
        else
            return Slot<T>::kind();
    }
    template <class T>
    static std::string column_unit() {
        const std::string unit = Slot<T>::unit();
        return unit.empty() ? "-" : unit;
    }
    template <std::size_t I>
    static auto read_column(const OpenTable& table, std::size_t row) {
        using T = std::tuple_element_t<I, std::tuple<C...>>;
        try {
            return ColumnSlot<T>::read(table, row, I);
        } catch (const Refused& refused) {
            throw at_place(refused, row, table.place(I));
        }
    }
    template <std::size_t... I>
    static std::tuple<C...> read_row(const OpenTable& table, std::size_t row, std::index_sequence<I...>) {
        return std::tuple<C...>{read_column<I>(table, row)...};
    }
};

/// Of a table's columns, whether a unit may stand beside each number; empty for anything else.
template <class T>
[[nodiscard]] std::vector<bool> units_beside() {
    if constexpr (requires { Slot<T>::units_beside(); })
        return Slot<T>::units_beside();
    else
        return {};
}

/// A grid of quantities of one kind, such as spot levels.
template <class Q>
struct Slot<std::vector<std::vector<Q>>> {
    static std::vector<std::vector<Q>> read(const Cell& cell) {
        const OpenTable table = open_table(cell, 1, static_cast<std::size_t>(-1));
        std::vector<std::vector<Q>> rows;
        for (std::size_t r = table.first_row; r < table.end_row; ++r) {
            std::vector<Q> row;
            for (std::size_t c = 0; c < table.grid->columns(); ++c) {
                try {
                    row.push_back(ColumnSlot<Q>::read(table, r, c));
                } catch (const Refused& refused) {
                    throw at_place(refused, r, c);
                }
            }
            rows.push_back(std::move(row));
        }
        if (rows.empty()) refuse_value("the range has no row of values");
        return rows;
    }
    static std::string kind() { return "a grid of cells, each " + Slot<Q>::kind(); }
    static std::string unit() { return Slot<Q>::unit(); }
    static Reading reading(const std::vector<std::vector<Q>>& rows) {
        return {"grid of " + std::to_string(rows.size()) + " x " + std::to_string(rows.front().size()), {}};
    }
};

/// Amounts of a takeoff: rows of number and unit, blank rows passed over.
struct Amounts {
    std::vector<Quantity> rows;
};
template <>
struct Slot<Amounts> {
    static Amounts read(const Cell& cell);
    static std::string kind() { return "a range of two columns, number and unit"; }
    static std::string unit() { return {}; }
    static Reading reading(const Amounts& value) {
        return {std::to_string(value.rows.size()) + " amounts", {}};
    }
};

/// Figures to choose from: amounts as above, or one column of a table, a first row of which may hold its
/// unit.
struct Figures {
    std::vector<Quantity> rows;
};
template <>
struct Slot<Figures> {
    static Figures read(const Cell& cell);
    static std::string kind() {
        return "a column of figures, its unit in the first row, or two columns, number and unit";
    }
    static std::string unit() { return {}; }
    static Reading reading(const Figures& value) {
        return {std::to_string(value.rows.size()) + " figures", {}};
    }
};

}  // namespace undercroft::addin
