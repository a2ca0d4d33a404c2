/// \file cell.hpp
/// What Calc hands over for one argument, and what a function gives back, without any UNO.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace undercroft::addin {

/// One cell of a range: blank, a number, or text.
using Scalar = std::variant<std::monostate, double, std::u16string_view>;

/// A range of cells, seen without copying it.
class Grid {
public:
    Grid() = default;
    Grid(const Grid&) = delete;
    Grid& operator=(const Grid&) = delete;
    virtual ~Grid() = default;

    [[nodiscard]] virtual std::size_t rows() const = 0;
    [[nodiscard]] virtual std::size_t columns() const = 0;
    /// The cell at that row and column, from 0; blank beyond the end of a ragged row.
    [[nodiscard]] virtual Scalar at(std::size_t row, std::size_t column) const = 0;
};

/// One argument: left out, a number, text, or a range.
using Cell = std::variant<std::monostate, double, std::u16string_view, const Grid*>;

/// A range that holds its own cells: for the tests, and for arguments that are read from the sheet.
class OwnedGrid final : public Grid {
public:
    using Item = std::variant<std::monostate, double, std::u16string>;

    explicit OwnedGrid(std::vector<std::vector<Item>> cells) : cells_(std::move(cells)) {}

    [[nodiscard]] std::size_t rows() const override { return cells_.size(); }
    [[nodiscard]] std::size_t columns() const override { return cells_.empty() ? 0 : cells_.front().size(); }
    [[nodiscard]] Scalar at(std::size_t row, std::size_t column) const override;

private:
    std::vector<std::vector<Item>> cells_;
};

/// A cell of a result: blank, a number or text.
using ResultItem = std::variant<std::monostate, double, std::string>;
using ResultRows = std::vector<std::vector<ResultItem>>;

/// What a function gives back to its cell.
using Answer = std::variant<double, std::string, ResultRows>;

/// An argument as a person reads it: `305 mm`, `"ellipse"`, `table of 12 rows`, `left out`.
[[nodiscard]] std::string shown_as_given(const Cell& cell);
[[nodiscard]] std::string shown_as_given(const Scalar& scalar);

}  // namespace undercroft::addin
