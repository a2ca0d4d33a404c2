/// \file numbers.hpp
/// Every place in which a function takes a number: its arguments and the columns of its tables, each in the
/// call of the function's first worked example, all of which is written in default units.
#pragma once

#include "addin/catalogue/binding.hpp"
#include "addin/catalogue/entry.hpp"
#include "tests/addin/rewrite.hpp"
#include "tests/addin/sweep.hpp"

namespace undercroft::tests {

/// The type of the number where a word or a number may stand.
inline const addin::ValueType& number_type(const addin::ValueType& type) {
    return type.otherwise.empty() ? type : type.otherwise.front();
}
inline bool is_number(const addin::ValueType& type) {
    using addin::Shape;
    const Shape shape = number_type(type).shape;
    return shape == Shape::quantity || shape == Shape::percentage || shape == Shape::any_quantity ||
           shape == Shape::grid || shape == Shape::figures;
}
inline const std::vector<addin::ValueType>& columns_of(const addin::ValueType& type) {
    return number_type(type).columns;
}

/// A quantity as a text in the default unit of its dimension.
inline std::u16string in_default_unit(const Quantity& quantity) {
    if (quantity.dimension == Dimension::of(Base::batter))
        return to_utf16(exact_text(quantity.value) + "H:1V");
    if (quantity.form == Quantity::Form::percent) return to_utf16(exact_text(100 * quantity.value) + " %");
    const double number = default_unit(quantity.dimension).scale.from_coherent(quantity.value);
    const std::string unit = default_unit_text(quantity.dimension);
    return to_utf16(exact_text(number) + " " + (unit.empty() ? "1" : unit));
}

/// One call, its values owned.
struct OwnedCall {
    Arguments values;

    [[nodiscard]] std::vector<addin::Cell> cells() const { return addin::cells_of(values); }
};

/// An argument, or a column of one.
class NumberPlace {
public:
    NumberPlace(const addin::Function& function, const std::vector<Taken>& base, std::size_t argument,
                std::optional<std::size_t> column)
        : function_(function), base_(base), argument_(argument), column_(column) {}

    [[nodiscard]] const addin::Function& function() const { return function_; }
    [[nodiscard]] const addin::Parameter& parameter() const { return function_.parameters[argument_]; }
    [[nodiscard]] std::string name() const {
        return parameter().name + (column_ ? ", column " + std::to_string(*column_ + 1) : "");
    }
    [[nodiscard]] const addin::ValueType& type() const {
        return number_type(column_ ? columns_of(parameter().type)[*column_] : parameter().type);
    }
    [[nodiscard]] const addin::Limits& limits() const {
        static const addin::Limits none;
        if (!column_) return parameter().limits;
        return *column_ < parameter().limits.columns.size() ? parameter().limits.columns[*column_] : none;
    }

    [[nodiscard]] double coherent(double bare) const {
        return type().shape == addin::Shape::percentage
                   ? bare / 100
                   : default_unit(type().dimension).scale.to_coherent(bare);
    }
    [[nodiscard]] double bare(double coherent) const {
        return type().shape == addin::Shape::percentage
                   ? 100 * coherent
                   : default_unit(type().dimension).scale.from_coherent(coherent);
    }

    /// The example's numbers as bare ones, one a row; the middle of what is usual where it has none.
    [[nodiscard]] std::vector<double> numbers() const {
        std::vector<double> numbers;
        for (const auto& row : base_[argument_].rows) {
            const std::size_t c = column_.value_or(0);
            if (c < row.size() && row[c].quantity) numbers.push_back(bare_of(*row[c].quantity));
        }
        if (numbers.empty() && !limits().usual.empty())
            numbers.push_back(
                std::sqrt(std::max(limits().usual_least, 1e-3 * limits().usual_most) * limits().usual_most));
        return numbers;
    }

    /// The call with bare numbers in that place, one a row.
    [[nodiscard]] OwnedCall with_bare(const std::vector<double>& numbers) const {
        std::vector<CellItem> items;
        for (const double number : numbers) items.emplace_back(number);
        return with(items);
    }
    /// The same in its first row only.
    [[nodiscard]] OwnedCall with_bare(double number) const { return with({CellItem(number)}); }
    /// The call with that number and its default unit, in the first row.
    [[nodiscard]] OwnedCall with_unit(double number) const {
        if (type().shape == addin::Shape::percentage)
            return with({CellItem(to_utf16(exact_text(number) + " %"))});
        return with({CellItem(in_default_unit({coherent(number), type().dimension}))});
    }

private:
    /// A quantity of another dimension than the place's, such as the size of an outlet, in its own default
    /// unit.
    [[nodiscard]] double bare_of(const Quantity& quantity) const {
        if (quantity.form == Quantity::Form::bare) return quantity.value;
        if (type().shape == addin::Shape::quantity || type().shape == addin::Shape::grid ||
            type().shape == addin::Shape::percentage)
            return bare(quantity.value);
        return default_unit(quantity.dimension).scale.from_coherent(quantity.value);
    }

    [[nodiscard]] OwnedCall with(const std::vector<CellItem>& items) const {
        OwnedCall call;
        for (std::size_t i = 0; i < base_.size(); ++i)
            call.values.push_back(i == argument_ ? changed(items) : written(i));
        return call;
    }
    [[nodiscard]] addin::FormulaValue changed(const std::vector<CellItem>& items) const {
        if (!takes_range(parameter())) return single(items.front());
        std::vector<std::vector<CellItem>> cells =
            base_[argument_].is_table ? cells_of_table(base_[argument_]) : usual_row();
        const std::size_t c = column_.value_or(0);
        for (std::size_t r = 0; r < std::min(items.size(), cells.size()); ++r) {
            if (cells[r].size() <= c) cells[r].resize(c + 1);
            cells[r][c] = items[r];
        }
        return addin::FormulaValue(std::move(cells));
    }

    /// Of a table where the example has a word: the middle of what is usual of each column.
    [[nodiscard]] std::vector<std::vector<CellItem>> usual_row() const {
        std::vector<CellItem> row;
        for (std::size_t c = 0; c < columns_of(parameter().type).size(); ++c) {
            const NumberPlace place(function_, base_, argument_, c);
            row.emplace_back(in_default_unit({place.coherent(place.middle()), place.type().dimension}));
        }
        return {row};
    }

    /// The middle of what is usual.
    [[nodiscard]] double middle() const {
        return std::sqrt(std::max(limits().usual_least, 1e-3 * limits().usual_most) * limits().usual_most);
    }

    static addin::FormulaValue single(const CellItem& item) {
        if (const double* number = std::get_if<double>(&item)) return addin::FormulaValue(*number);
        if (const auto* text = std::get_if<std::u16string>(&item)) return addin::FormulaValue(*text);
        return {};
    }
    static CellItem item_of(const Piece& piece) {
        return piece.quantity ? CellItem(in_default_unit(*piece.quantity)) : piece.as_it_is;
    }
    static std::vector<std::vector<CellItem>> cells_of_table(const Taken& taken) {
        std::vector<std::vector<CellItem>> cells;
        for (const auto& row : taken.rows) {
            auto& made = cells.emplace_back();
            for (const Piece& piece : row) made.push_back(item_of(piece));
            if (taken.is_figures) made.resize(1);
        }
        return cells;
    }
    [[nodiscard]] addin::FormulaValue written(std::size_t i) const {
        using addin::Shape;
        const addin::Parameter& parameter = function_.parameters[i];
        const Shape shape = parameter.type.shape;
        if (shape == Shape::units || shape == Shape::height || (shape == Shape::unit && parameter.optional))
            return {};
        if (base_[i].is_table) return addin::FormulaValue(cells_of_table(base_[i]));
        return single(item_of(base_[i].rows.front().front()));
    }

    const addin::Function& function_;
    const std::vector<Taken>& base_;
    std::size_t argument_;
    std::optional<std::size_t> column_;
};

/// Walks every place of a function, in a call with these arguments.
template <class Visit>
void for_each_number_in(const addin::Function& function, const Arguments& good, const Visit& visit) {
    std::vector<Taken> base;
    for (std::size_t i = 0; i < function.parameters.size(); ++i)
        base.push_back(taken_apart(good[i], function.parameters[i]));
    for (std::size_t i = 0; i < function.parameters.size(); ++i) {
        const addin::ValueType& type = function.parameters[i].type;
        if (is_number(type)) visit(NumberPlace(function, base, i, std::nullopt));
        for (std::size_t c = 0; c < columns_of(type).size(); ++c)
            if (is_number(columns_of(type)[c])) visit(NumberPlace(function, base, i, c));
    }
}

/// The same of every function that the catalogue computes, in its first worked example.
template <class Visit>
void for_each_number(const Visit& visit) {
    for (const addin::Function& function : addin::all_functions())
        if (!function.reads_cell())
            for_each_number_in(function, good_arguments().at(function.name).front(), visit);
}

}  // namespace undercroft::tests
