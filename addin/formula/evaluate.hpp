/// \file evaluate.hpp
/// Values of a formula's parts: literals, calls of ours, plain arithmetic. What only a sheet knows - cells,
/// names, functions of Calc - is asked of whoever derives from Evaluator.
#pragma once

#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "addin/catalogue/cell.hpp"
#include "addin/catalogue/function.hpp"
#include "addin/formula/formula.hpp"

namespace undercroft::addin {

/// A value that owns what it shows.
class FormulaValue {
public:
    FormulaValue() = default;
    explicit FormulaValue(double number) : value_(number) {}
    explicit FormulaValue(std::u16string text) : value_(std::move(text)) {}
    explicit FormulaValue(std::vector<std::vector<OwnedGrid::Item>> cells)
        : value_(std::make_shared<OwnedGrid>(std::move(cells))) {}
    explicit FormulaValue(const Answer& answer);

    /// As a function of the catalogue takes it; lives as long as this value.
    [[nodiscard]] Cell cell() const;
    [[nodiscard]] const double* number() const { return std::get_if<double>(&value_); }
    [[nodiscard]] const std::u16string* text() const { return std::get_if<std::u16string>(&value_); }
    [[nodiscard]] bool is_grid() const { return std::holds_alternative<std::shared_ptr<OwnedGrid>>(value_); }

private:
    std::variant<std::monostate, double, std::u16string, std::shared_ptr<OwnedGrid>> value_;
};

/// As the catalogue's functions take them.
[[nodiscard]] std::vector<Cell> cells_of(const std::vector<FormulaValue>& values);

class Evaluator {
public:
    Evaluator() = default;
    Evaluator(const Evaluator&) = delete;
    Evaluator& operator=(const Evaluator&) = delete;
    virtual ~Evaluator() = default;

    /// The value of a part of a formula.
    /// \throws Refused when it cannot be computed here, or a function of ours refuses its arguments.
    [[nodiscard]] FormulaValue value_of(const Node& node) const;

    /// The values of a call's arguments, one for each parameter of the function.
    [[nodiscard]] std::vector<FormulaValue> arguments(const Node& call, const Function& function) const;

protected:
    [[nodiscard]] virtual FormulaValue value_of_reference(const Node& node) const;
    [[nodiscard]] virtual FormulaValue value_of_name(const Node& node) const;
    [[nodiscard]] virtual FormulaValue value_of_foreign_call(const Node& node) const;

private:
    [[nodiscard]] FormulaValue value_of_operation(const Node& node) const;
    [[nodiscard]] FormulaValue value_of_array(const Node& node) const;
    [[nodiscard]] FormulaValue value_of_call(const Node& node) const;
    [[nodiscard]] double number_of(const Node& node) const;
};

}  // namespace undercroft::addin
