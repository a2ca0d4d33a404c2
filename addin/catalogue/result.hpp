/// \file result.hpp
/// How the C++ result of a function leaves: as a number in the unit asked for, a verdict, a text, or a table
/// under its row of units.
#pragma once

#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <tuple>
#include <type_traits>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "addin/catalogue/slot.hpp"

namespace undercroft::addin {

/// What a call asks of its result beyond the arguments of the C++ function: the unit or units, and of a
/// table its height.
struct Asked {
    std::array<Cell, 2> cells;  ///< nothing where the default is wanted
    std::span<const std::string> names;

    [[nodiscard]] Cell cell(std::size_t i) const { return cells[i]; }
    /// What `reader` makes of the cell; a refusal names its argument.
    template <class Reader>
    [[nodiscard]] auto read(std::size_t i, const Reader& reader) const {
        try {
            return reader(cell(i));
        } catch (const Refused& refused) {
            throw refused.at(i < names.size() ? names[i] : "unit");
        }
    }
};

/// The trailing arguments that shape the result.
enum class UnitArgument { none, unit, units };

/// Whether a unit asked for belongs to the US customary or imperial system; false where none can be read.
[[nodiscard]] bool asks_customary(const Cell& units, UnitArgument kind);

/// The units asked for a table, in order of its columns; `m; m3` or nothing.
[[nodiscard]] std::vector<Unit> read_units(const Cell& cell, const std::vector<Dimension>& columns);

/// Rows of values that a table fills in the sheet: as many as it has, or the number asked for.
/// \throws Refused(domain) when it has more than that.
[[nodiscard]] std::size_t table_height(const Cell& wanted, std::size_t rows);

/// A number for the cell. \throws Refused(domain) when it is not finite.
[[nodiscard]] double finite_result(double number);

/// The unit asked for, or the standard one. \throws Refused(value) when it is one of another dimension.
[[nodiscard]] Unit unit_asked(const Cell& unit, const Unit& standard);

/// The texts of the unit row of a table result.
[[nodiscard]] std::vector<ResultItem> unit_row_texts(const Cell& units,
                                                     const std::vector<Dimension>& columns);

/// "22.9 L/s": a number and the unit it is in, the default unit's text when none was asked.
[[nodiscard]] std::string amount_text(double number, const Cell& unit, const std::string& standard);

template <class R>
struct Result;

template <class D>
struct Result<Measure<D>> {
    using Q = Measure<D>;
    /// Shares, counts and slopes are plain numbers in the sheet.
    static constexpr UnitArgument unit_argument = std::is_same_v<Q, Share> || std::is_same_v<Q, Count> ||
                                                          std::is_same_v<Q, Batter> ||
                                                          std::is_same_v<Q, Gradient>
                                                      ? UnitArgument::none
                                                      : UnitArgument::unit;

    static ValueType type() { return Slot<Q>::type(); }
    static Answer write(const Q& value, const Asked& asked) { return number(value, asked); }
    static std::string text(const Q& value, const Asked& asked) {
        return amount_text(number(value, asked), asked.cell(0), default_unit_text(Slot<Q>::dimension()));
    }

private:
    static double number(const Q& value, const Asked& asked) {
        static const Unit standard = default_unit(Slot<Q>::dimension());
        const Unit unit = asked.read(0, [](const Cell& cell) { return unit_asked(cell, standard); });
        return finite_result(number_in(as_quantity(value), unit));
    }
};

/// A result whose dimension is known only when it is there.
template <>
struct Result<Quantity> {
    static constexpr UnitArgument unit_argument = UnitArgument::unit;
    static ValueType type() { return {.shape = Shape::any_quantity}; }
    static Answer write(const Quantity& value, const Asked& asked);
    static std::string text(const Quantity& value, const Asked& asked);
};

template <>
struct Result<bool> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static ValueType type() { return {.shape = Shape::verdict}; }
    static Answer write(bool value, const Asked&) { return value ? 1.0 : 0.0; }
    static std::string text(bool value, const Asked&) { return value ? "TRUE" : "FALSE"; }
};

template <>
struct Result<std::string> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static ValueType type() { return {.shape = Shape::text}; }
    static Answer write(const std::string& value, const Asked&) { return value; }
    static std::string text(const std::string& value, const Asked&) { return value; }
};

template <>
struct Result<calc::Percent> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static ValueType type() { return {.shape = Shape::percentage}; }
    static Answer write(const calc::Percent& value, const Asked&) { return finite_result(value.value); }
    static std::string text(const calc::Percent& value, const Asked&);
};

/// Rows already made of numbers and words, without a unit row.
template <>
struct Result<ResultRows> {
    static constexpr UnitArgument unit_argument = UnitArgument::none;
    static ValueType type() { return {.shape = Shape::rows}; }
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

/// Numbers of a table in their coherent units, a row after the other; nothing in a blank cell.
using CoherentRows = std::vector<std::optional<double>>;

/// A table under its row of units, as high as it is asked for.
[[nodiscard]] ResultRows table_result(const CoherentRows& numbers, const std::vector<Dimension>& columns,
                                      const Asked& asked);

template <class... C>
struct Result<std::vector<std::tuple<C...>>> {
    using Rows = std::vector<std::tuple<C...>>;
    static constexpr UnitArgument unit_argument = UnitArgument::units;

    static ValueType type() {
        ValueType table{.shape = Shape::table};
        (table.columns.push_back(Slot<C>::type()), ...);
        return table;
    }
    static Answer write(const Rows& rows, const Asked& asked) {
        static const std::vector<Dimension> dimensions = {Slot<typename ColumnOf<C>::type>::dimension()...};
        CoherentRows numbers;
        numbers.reserve(rows.size() * sizeof...(C));
        for (const auto& row : rows)
            std::apply([&numbers](const auto&... item) { (numbers.push_back(coherent(item)), ...); }, row);
        return table_result(numbers, dimensions, asked);
    }
    static std::string text(const Rows& rows, const Asked&) {
        return "table of " + std::to_string(rows.size()) + " rows";
    }

private:
    template <class Q>
    static std::optional<double> coherent(const Q& value) {
        return value.value();
    }
    template <class Q>
    static std::optional<double> coherent(const std::optional<Q>& value) {
        return value ? coherent(*value) : std::nullopt;
    }
};

}  // namespace undercroft::addin
