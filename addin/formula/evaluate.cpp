#include "addin/formula/evaluate.hpp"

#include <cmath>

#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

FormulaValue::FormulaValue(const Answer& answer) {
    if (const double* number = std::get_if<double>(&answer)) {
        value_ = *number;
        return;
    }
    if (const std::string* text = std::get_if<std::string>(&answer)) {
        value_ = to_utf16(*text);
        return;
    }
    std::vector<std::vector<OwnedGrid::Item>> cells;
    for (const auto& row : std::get<ResultRows>(answer)) {
        auto& made = cells.emplace_back();
        for (const ResultItem& item : row) {
            if (const double* number = std::get_if<double>(&item))
                made.emplace_back(*number);
            else if (const std::string* text = std::get_if<std::string>(&item))
                made.emplace_back(to_utf16(*text));
            else
                made.emplace_back();
        }
    }
    value_ = std::make_shared<OwnedGrid>(std::move(cells));
}

Cell FormulaValue::cell() const {
    if (const double* value = number()) return *value;
    if (const std::u16string* value = text()) return std::u16string_view(*value);
    if (is_grid()) return static_cast<const Grid*>(std::get<std::shared_ptr<OwnedGrid>>(value_).get());
    return std::monostate{};
}

std::vector<Cell> cells_of(const std::vector<FormulaValue>& values) {
    std::vector<Cell> cells;
    cells.reserve(values.size());
    for (const FormulaValue& value : values) cells.push_back(value.cell());
    return cells;
}

namespace {
[[noreturn]] void refuse_here(const std::string& what) {
    refuse_value(what + " cannot be computed here: move the argument to a cell of its own");
}
}  // namespace

FormulaValue Evaluator::value_of_reference(const Node& node) const {
    refuse_here("the cells " + node.text);
}
FormulaValue Evaluator::value_of_name(const Node& node) const {
    refuse_here("the name " + node.text);
}
FormulaValue Evaluator::value_of_foreign_call(const Node& node) const {
    refuse_here("the function " + node.text);
}

FormulaValue Evaluator::value_of(const Node& node) const {
    switch (node.kind) {
        case NodeKind::missing:
            return {};
        case NodeKind::number:
            return FormulaValue(node.number);
        case NodeKind::text:
            return FormulaValue(to_utf16(node.text));
        case NodeKind::error:
            refuse_value("the formula holds " + node.text);
        case NodeKind::reference:
            return value_of_reference(node);
        case NodeKind::name:
            return value_of_name(node);
        case NodeKind::operation:
            return value_of_operation(node);
        case NodeKind::call:
            return value_of_call(node);
        case NodeKind::array:
            return value_of_array(node);
    }
    refuse_value("a part of the formula of an unknown kind");
}

double Evaluator::number_of(const Node& node) const {
    const FormulaValue value = value_of(node);
    if (const double* number = value.number()) return *number;
    refuse_value("a number is wanted in the expression, but there is " + shown_as_given(value.cell()));
}

FormulaValue Evaluator::value_of_operation(const Node& node) const {
    const std::string& symbol = node.text;
    if (node.children.size() == 1) {
        const double operand = number_of(node.children[0]);
        if (symbol == "-") return FormulaValue(-operand);
        if (symbol == "%") return FormulaValue(operand / 100);
        return FormulaValue(operand);
    }
    if (symbol == "&") {
        std::u16string joined;
        for (const Node& child : node.children) {
            const FormulaValue part = value_of(child);
            if (const std::u16string* text = part.text())
                joined += *text;
            else if (const double* number = part.number())
                joined += to_utf16(exact_text(*number));
            else
                refuse_here("a range joined to a text");
        }
        return FormulaValue(std::move(joined));
    }
    const double left = number_of(node.children[0]);
    const double right = number_of(node.children[1]);
    if (symbol == "+") return FormulaValue(left + right);
    if (symbol == "-") return FormulaValue(left - right);
    if (symbol == "*") return FormulaValue(left * right);
    if (symbol == "/") {
        if (right == 0) refuse_value("the expression divides by zero");
        return FormulaValue(left / right);
    }
    if (symbol == "^") return FormulaValue(std::pow(left, right));
    if (symbol == "=") return FormulaValue(left == right ? 1.0 : 0.0);
    if (symbol == "<>") return FormulaValue(left != right ? 1.0 : 0.0);
    if (symbol == "<") return FormulaValue(left < right ? 1.0 : 0.0);
    if (symbol == ">") return FormulaValue(left > right ? 1.0 : 0.0);
    if (symbol == "<=") return FormulaValue(left <= right ? 1.0 : 0.0);
    if (symbol == ">=") return FormulaValue(left >= right ? 1.0 : 0.0);
    refuse_here("the operator " + symbol);
}

FormulaValue Evaluator::value_of_array(const Node& node) const {
    std::vector<std::vector<OwnedGrid::Item>> cells;
    for (const Node& row : node.children) {
        auto& made = cells.emplace_back();
        for (const Node& item : row.children) {
            const FormulaValue value = value_of(item);
            if (const double* number = value.number())
                made.emplace_back(*number);
            else if (const std::u16string* text = value.text())
                made.emplace_back(*text);
            else
                made.emplace_back();
        }
    }
    return FormulaValue(std::move(cells));
}

std::vector<FormulaValue> Evaluator::arguments(const Node& call, const Function& function) const {
    if (call.children.size() > function.parameters.size())
        refuse_value(function.name + " takes at most " + std::to_string(function.parameters.size()) +
                     " arguments, " + std::to_string(call.children.size()) + " are given");
    std::vector<FormulaValue> values(function.parameters.size());
    for (std::size_t i = 0; i < call.children.size(); ++i) {
        values[i] = refused_behind([&] { return function.parameters[i].name + ": "; },
                                   [&] { return value_of(call.children[i]); });
    }
    return values;
}

FormulaValue Evaluator::value_of_call(const Node& node) const {
    const Function* function = find_function(node.text);
    if (function == nullptr) return value_of_foreign_call(node);
    if (function->reads_cell()) refuse_here(function->name + " inside another function");
    const std::vector<FormulaValue> values = arguments(node, *function);
    return refused_behind([&] { return "in " + function->name + ": "; },
                          [&] { return FormulaValue(function->call(cells_of(values))); });
}

}  // namespace undercroft::addin
