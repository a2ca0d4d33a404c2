#include "addin/formula/evaluate.hpp"

#include <algorithm>
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

FormulaValue::FormulaValue(const Scalar& scalar) : value_(std::u16string()) {
    if (const double* number = std::get_if<double>(&scalar)) value_ = *number;
    if (const auto* text = std::get_if<std::u16string_view>(&scalar)) value_ = std::u16string(*text);
}

FormulaValue FormulaValue::blank_cell() {
    FormulaValue value(0.0);
    value.blank_ = true;
    return value;
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

Refused seen_blank(const Refused& refused, const Function& function, const Node& call,
                   const std::vector<FormulaValue>& values) {
    if (refused.refusal() != Refusal::blank) return refused;
    const std::string_view says = refused.what();
    for (std::size_t i = 0; i < values.size() && i < call.children.size(); ++i) {
        const Parameter& parameter = function.parameters[i];
        if (!values[i].is_blank_cell() || !says.starts_with(parameter.name + ": ")) continue;
        const Node& given = call.children[i];
        const bool is_cell = given.kind == NodeKind::reference && !given.reference.is_range;
        std::string sentence = parameter.name + ": the cell is blank";
        if (is_cell) sentence += " (" + given.reference.text() + ")";
        if (parameter.optional && is_cell)
            sentence += ", which Calc hands over as 0: leave the argument out for its default" +
                        (parameter.fallback.empty() ? std::string() : ", " + parameter.fallback) +
                        ", or write " + given.reference.text() + ":" + given.reference.text();
        return refused.saying(sentence);
    }
    return refused;
}

namespace {
[[noreturn]] void refuse_here(const std::string& what) {
    throw Refused(Cause::value, what + " cannot be computed here: move the argument to a cell of its own",
                  Refusal::not_followed);
}
}  // namespace

std::optional<CellReference> Evaluator::cells_of_name(const Node&) const {
    return std::nullopt;
}
std::u16string Evaluator::joined_text(double number) const {
    return to_utf16(exact_text(number));
}

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
    if (const std::u16string* text =
            value.text()) {  // of texts Calc takes whole numbers, whatever the locale
        const std::string digits = to_utf8(*text);
        const bool is_whole =
            !digits.empty() && digits.size() < 16 && std::all_of(digits.begin(), digits.end(), is_digit);
        if (is_whole) return std::stod(digits);
    }
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
                joined += part.is_blank_cell() ? std::u16string() : joined_text(*number);
            else
                refuse_here("a range joined to a text");
        }
        return FormulaValue(std::move(joined));
    }
    if (is_comparison(node)) {
        const int order = compare(value_of(node.children[0]), value_of(node.children[1]));
        const bool held = (order == 0 && symbol != "<" && symbol != ">" && symbol != "<>") ||
                          (order < 0 && symbol.starts_with("<")) || (order > 0 && symbol.ends_with(">")) ||
                          (order > 0 && symbol == ">=");
        return FormulaValue(held ? 1.0 : 0.0);
    }
    if (symbol == ":") {
        if (const std::optional<Chosen> cells = chosen(node)) return value_of(cells->node);
        refuse_here("the range " + symbol);
    }
    if (symbol == "~" || symbol == "!") refuse_here("the operator " + symbol + " between ranges");
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
    refuse_here("the operator " + symbol);
}

int Evaluator::compare(const FormulaValue& left, const FormulaValue& right) const {
    // A blank cell is equal to 0 and to an empty text; any number is below any text.
    const auto text_beside = [](const FormulaValue& value, const FormulaValue& other) {
        const std::u16string* text = value.text();
        if (text != nullptr) return std::optional(to_utf8(*text));
        if (value.is_blank_cell() && other.text() != nullptr) return std::optional(std::string());
        return std::optional<std::string>();
    };
    std::optional<std::string> a = text_beside(left, right);
    std::optional<std::string> b = text_beside(right, left);
    if (a && b) {
        const bool same = ignores_case() ? lower_case(*a) == lower_case(*b) : *a == *b;
        return same ? 0 : *a < *b ? -1 : 1;
    }
    if ((!a && left.number() == nullptr) || (!b && right.number() == nullptr)) refuse_here("a comparison");
    if (a || b) return a ? 1 : -1;
    return *left.number() == *right.number() ? 0 : *left.number() < *right.number() ? -1 : 1;
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
    before_call();
    return values;
}

FormulaValue Evaluator::value_of_call(const Node& node) const {
    const Function* function = find_function(node.text);
    if (function == nullptr) {
        constexpr std::string_view choosing[] = {"IF",   "IFS",   "SWITCH", "CHOOSE",  "IFERROR",
                                                 "IFNA", "INDEX", "OFFSET", "INDIRECT"};
        if (calls_one_of(node, choosing)) return value_of_choice(node);
        if (node.children.empty() && (node.text == "TRUE" || node.text == "FALSE"))
            return FormulaValue(node.text == "TRUE" ? 1.0 : 0.0);
        return value_of_foreign_call(node);
    }
    if (function->reads_cell()) refuse_here(function->name + " inside another function");
    const std::vector<FormulaValue> values = arguments(node, *function);
    return refused_behind([&] { return "in " + function->name + ": "; },
                          [&] {
                              try {
                                  return FormulaValue(function->call(cells_of(values)));
                              } catch (const Refused& refused) {
                                  throw seen_blank(refused, *function, node, values);
                              }
                          });
}

}  // namespace undercroft::addin
