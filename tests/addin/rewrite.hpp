/// \file rewrite.hpp
/// The arguments of a call taken apart into quantities, changed at random, and written again in other units
/// and in the other spellings of a quantity: text, pair, bare number, unit row.
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "addin/formula/evaluate.hpp"
#include "tests/addin/unit_systems.hpp"
#include "tests/support/near.hpp"
#include "units/quantity.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using CellItem = addin::OwnedGrid::Item;

/// One cell: a quantity, or what is no quantity and stays as it is.
struct Piece {
    CellItem as_it_is;
    std::optional<Quantity> quantity;  ///< in coherent SI
    std::string bare_unit;             ///< of a bare number; empty where a bare number is another thing

    [[nodiscard]] bool is_count() const { return quantity->dimension == Dimension::of(Base::count); }
};

/// An argument: one piece, or a table of them.
struct Taken {
    std::vector<std::vector<Piece>> rows;
    bool is_table = false;
    bool is_figures = false;                ///< one column, or rows of number and unit
    const addin::Limits* limits = nullptr;  ///< of the argument
};

inline std::optional<Unit> unit_in(const std::string& text) {
    try {
        return parse_unit(text);
    } catch (const Refused&) {
        return std::nullopt;
    }
}

/// A bare number as a quantity of the argument's default unit.
inline std::optional<Quantity> quantity_in(double number, const std::string& unit) {
    if (unit == run_per_rise) return Quantity{number, Dimension::of(Base::batter), Quantity::Form::with_unit};
    if (unit.empty() || unit == "-") return std::nullopt;
    const auto read = unit_in(unit);
    if (!read) return std::nullopt;
    return Quantity::of(number, *read);
}

inline Piece piece_of(const addin::Scalar& scalar, const std::string& bare_unit) {
    Piece piece;
    piece.bare_unit = bare_unit;
    if (const double* number = std::get_if<double>(&scalar)) {
        piece.as_it_is = *number;
        piece.quantity = quantity_in(*number, bare_unit);
    }
    if (const auto* text = std::get_if<std::u16string_view>(&scalar)) {
        piece.as_it_is = std::u16string(*text);
        try {
            piece.quantity = parse_quantity(to_utf8(*text));
        } catch (const Refused&) {
            piece.quantity.reset();  // a word
        }
    }
    return piece;
}

/// The default units of a table's columns; one for all of a grid.
inline std::string column_unit(const std::string& units, std::size_t column) {
    if (units.find(';') == std::string::npos) return units;
    std::size_t start = 0;
    for (std::size_t i = 0; i < column; ++i) {
        start = units.find(';', start);
        if (start == std::string::npos) return {};
        ++start;
    }
    const std::string part = units.substr(start, units.find(';', start) - start);
    return fold_spelling(part);
}

inline std::string text_at(const addin::Grid& grid, std::size_t row, std::size_t column) {
    if (column >= grid.columns()) return {};
    const addin::Scalar scalar = grid.at(row, column);
    const auto* text = std::get_if<std::u16string_view>(&scalar);
    return text == nullptr ? std::string() : to_utf8(*text);
}

inline bool is_unit_row(const addin::Grid& grid) {
    for (std::size_t c = 0; c < grid.columns(); ++c)
        if (!unit_in(text_at(grid, 0, c))) return false;
    return true;
}

inline Taken taken_table(const addin::Grid& grid, const addin::Parameter& parameter) {
    Taken taken;
    taken.limits = &parameter.limits;
    taken.is_table = true;
    taken.is_figures = parameter.type.shape == addin::Shape::figures;
    const bool headed = is_unit_row(grid);
    for (std::size_t r = headed ? 1 : 0; r < grid.rows(); ++r) {
        auto& row = taken.rows.emplace_back();
        for (std::size_t c = 0; c < grid.columns(); ++c) {
            const std::string beside = text_at(grid, r, c + 1);
            const std::string standard = column_unit(parameter.unit(), c);
            const std::string unit = headed                               ? text_at(grid, 0, c)
                                     : !beside.empty() && unit_in(beside) ? beside
                                                                          : standard;
            Piece piece = piece_of(grid.at(r, c), unit);
            if (parameter.type.shape == addin::Shape::pasted) piece.quantity.reset();  // it is read as it is
            const bool pair = !headed && piece.quantity && unit == beside && unit != standard;
            if (pair) ++c;
            piece.bare_unit = standard;
            row.push_back(std::move(piece));
        }
    }
    return taken;
}

inline Taken taken_apart(const addin::FormulaValue& value, const addin::Parameter& parameter) {
    const addin::Cell cell = value.cell();
    if (const addin::Grid* const* grid = std::get_if<const addin::Grid*>(&cell))
        return taken_table(**grid, parameter);
    Taken taken;
    taken.limits = &parameter.limits;
    addin::Scalar scalar;
    if (const double* number = std::get_if<double>(&cell)) scalar = *number;
    if (const auto* text = std::get_if<std::u16string_view>(&cell)) scalar = *text;
    taken.rows = {{piece_of(scalar, parameter.unit())}};
    return taken;
}

/// A share stays one; a whole count stays whole; all else is multiplied.
inline void change(Quantity& quantity, double factor, int more) {
    const bool share = quantity.is_pure_number() && quantity.value > 0 && quantity.value < 1;
    if (quantity.dimension == Dimension::of(Base::count) && quantity.value == std::round(quantity.value))
        quantity.value += quantity.value > 0 ? more : 0;
    else
        quantity.value = share ? std::pow(quantity.value, factor) : quantity.value * factor;
}

inline void change(Taken& taken, Random& random, double reach) {
    std::vector<double> factors;
    for (auto& row : taken.rows)
        for (std::size_t c = 0; c < row.size(); ++c) {
            if (factors.size() <= c) factors.push_back(std::exp(random.between(-reach, reach)));
            if (row[c].quantity)
                change(*row[c].quantity, factors[c], taken.is_table ? 0 : random.whole(0, 2));
        }
}

/// Writes one call. A mixed one has either bare numbers where they are usual, or customary units among the
/// others: together they are refused.
class Writer {
public:
    Writer(UnitSystem system, Random& random)
        : system_(system), random_(random), bare_(system == UnitSystem::mixed && random.whole(0, 1) == 0) {}

    addin::FormulaValue written(const Taken& taken) {
        if (!taken.is_table) return single(taken.rows.front().front(), *taken.limits);
        const bool as_pairs = taken.is_figures && random_.whole(0, 1) == 0;
        if (as_pairs || (taken.is_figures && !is_alike(taken))) return pairs(taken);
        if (bare_ && random_.whole(0, 2) == 0)
            if (auto table = bare_table(taken)) return *std::move(table);
        return system_ == UnitSystem::mixed && random_.whole(0, 1) == 0 ? texts(taken) : under_units(taken);
    }

    /// A unit of the dimension for the result, and what it is a unit of.
    std::string unit(const Dimension& dimension) {
        return pick(bare_ ? without_customary(units_of(dimension, system_), dimension)
                          : units_of(dimension, system_));
    }

private:
    /// Factors may differ in kind; they have no unit for all of their column.
    static bool is_alike(const Taken& taken) {
        const auto& rows = taken.rows;
        return std::all_of(rows.begin(), rows.end(), [&](const auto& row) {
            return !row.front().quantity || !rows.front().front().quantity ||
                   row.front().quantity->dimension == rows.front().front().quantity->dimension;
        });
    }
    template <class T>
    T pick(const std::vector<T>& from) {
        return from[static_cast<std::size_t>(random_.whole(0, static_cast<int>(from.size()) - 1))];
    }

    static std::string spaced(double number, const std::string& unit) {
        return exact_text(number) + " " + unit;
    }

    std::string unit_for(const Quantity& quantity) {
        if (quantity.form == Quantity::Form::percent) return pick<std::string>({"%", "‰"});
        return unit(quantity.dimension);
    }

    std::string slope(double run) {
        if (system_ == UnitSystem::si) return exact_text(run) + "H:1V";
        if (system_ == UnitSystem::us) return "1V:" + exact_text(run) + "H";
        return spaced(std::atan2(1.0, run), "rad");
    }

    /// A quantity as one text.
    std::string text(const Piece& piece) {
        const Quantity& q = *piece.quantity;
        if (q.dimension == Dimension::of(Base::batter)) return slope(q.value);
        const std::string unit = unit_for(q);
        return spaced(number_in(q, parse_unit(unit)), unit);
    }
    std::optional<double> bare(const Piece& piece) {
        if (piece.quantity->dimension == Dimension::of(Base::batter)) return std::nullopt;
        const auto standard = unit_in(piece.bare_unit);
        if (!standard || !(standard->dimension == piece.quantity->dimension)) return std::nullopt;
        return number_in(*piece.quantity, *standard);
    }

    static bool is_usual(double number, const addin::Limits& limits) {
        return number == 0 ? limits.bare_none : number >= limits.bare_least && number <= limits.bare_most;
    }

    /// So far below what is usual that beside `%` it is refused.
    static bool looks_like_percent_cell(const Quantity& quantity, const addin::Limits& limits) {
        if (quantity.form != Quantity::Form::percent) return false;
        try {
            limits.check_percent_pair(quantity.value);
            return false;
        } catch (const Refused&) {
            return true;
        }
    }

    addin::FormulaValue single(const Piece& piece, const addin::Limits& limits) {
        if (!piece.quantity) {
            if (const double* number = std::get_if<double>(&piece.as_it_is))
                return addin::FormulaValue(*number);
            if (const auto* word = std::get_if<std::u16string>(&piece.as_it_is))
                return addin::FormulaValue(*word);
            return {};
        }
        const bool slope = piece.quantity->dimension == Dimension::of(Base::batter);
        const int way = system_ == UnitSystem::mixed ? random_.whole(0, 2) : 0;
        const bool is_pair = way == 2 && !slope && !looks_like_percent_cell(*piece.quantity, limits);
        if (const auto number = bare(piece); bare_ && way == 1 && number && is_usual(*number, limits))
            return addin::FormulaValue(*number);
        if (is_pair) {
            const std::string unit = unit_for(*piece.quantity);
            const double number = number_in(*piece.quantity, parse_unit(unit));
            return addin::FormulaValue(
                std::vector<std::vector<CellItem>>{{CellItem(number), CellItem(to_utf16(unit))}});
        }
        return addin::FormulaValue(to_utf16(text(piece)));
    }

    /// Bare numbers in default units, without a row of units; nothing where one of them is not usual.
    std::optional<addin::FormulaValue> bare_table(const Taken& taken) {
        const std::vector<addin::Limits>& limits = taken.limits->columns;
        std::vector<std::vector<CellItem>> cells;
        for (const auto& row : taken.rows) {
            auto& made = cells.emplace_back();
            for (std::size_t c = 0; c < row.size(); ++c) {
                if (!row[c].quantity) {
                    made.push_back(row[c].as_it_is);
                    continue;
                }
                const auto number = bare(row[c]);
                if (!number || c >= limits.size() || limits[c].usual.empty() || !is_usual(*number, limits[c]))
                    return std::nullopt;
                made.emplace_back(*number);
            }
        }
        return addin::FormulaValue(std::move(cells));
    }

    addin::FormulaValue texts(const Taken& taken) {
        std::vector<std::vector<CellItem>> cells;
        for (const auto& row : taken.rows) {
            auto& made = cells.emplace_back();
            for (const Piece& piece : row)
                made.push_back(piece.quantity ? CellItem(to_utf16(text(piece))) : piece.as_it_is);
        }
        return addin::FormulaValue(std::move(cells));
    }

    addin::FormulaValue pairs(const Taken& taken) {
        std::vector<std::vector<CellItem>> cells;
        for (const auto& row : taken.rows) {
            const Piece& piece = row.front();
            if (!piece.quantity) {
                cells.push_back({CellItem(), CellItem()});
                continue;
            }
            const std::string unit = unit_for(*piece.quantity);
            cells.push_back({number_in(*piece.quantity, parse_unit(unit)), CellItem(to_utf16(unit))});
        }
        return addin::FormulaValue(std::move(cells));
    }

    /// Numbers under a row of units.
    addin::FormulaValue under_units(const Taken& taken) {
        std::vector<std::vector<CellItem>> cells;
        std::vector<CellItem> head;
        std::vector<std::string> units(taken.rows.front().size());
        for (std::size_t c = 0; c < units.size(); ++c) {
            for (const auto& row : taken.rows)
                if (row[c].quantity && units[c].empty() && !row[c].is_count() &&
                    row[c].quantity->dimension != Dimension::of(Base::batter))
                    units[c] = unit_for(*row[c].quantity);
            head.push_back(units[c].empty() ? CellItem() : CellItem(to_utf16(units[c])));
        }
        cells.push_back(head);
        for (const auto& row : taken.rows) {
            auto& made = cells.emplace_back();
            for (std::size_t c = 0; c < row.size(); ++c) {
                if (!row[c].quantity)
                    made.push_back(row[c].as_it_is);
                else if (units[c].empty())
                    made.push_back(row[c].is_count() ? CellItem(row[c].quantity->value)
                                                     : CellItem(to_utf16(text(row[c]))));
                else
                    made.emplace_back(number_in(*row[c].quantity, parse_unit(units[c])));
            }
        }
        const bool any =
            std::any_of(units.begin(), units.end(), [](const auto& unit) { return !unit.empty(); });
        if (!any) cells.erase(cells.begin());
        return addin::FormulaValue(std::move(cells));
    }

    UnitSystem system_;
    Random& random_;
    bool bare_;  ///< bare numbers may stand
};

}  // namespace undercroft::tests
