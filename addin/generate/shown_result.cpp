// What a formula of the reference gives, as a reader sees it.
#include <cmath>
#include <cstdio>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/example_desk.hpp"
#include "addin/generate/guide.hpp"
#include "units/text.hpp"
#include "units/unit.hpp"

namespace undercroft::addin {

namespace {

constexpr std::size_t rows_shown = 5;

/// Six digits, as a person compares them.
std::string six_digits(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.6g", value);
    return text;
}

std::string item_text(const Scalar& item) {
    if (const double* number = std::get_if<double>(&item)) return six_digits(*number);
    if (const auto* text = std::get_if<std::u16string_view>(&item)) return to_utf8(*text);
    return {};
}

/// The unit that the call asks for, or the default unit of the result.
std::string unit_of(const Node& call, const Function& function) {
    const std::vector<Parameter>& parameters = function.parameters;
    for (std::size_t i = 0; i < parameters.size() && i < call.children.size(); ++i)
        if (parameters[i].type.shape == Shape::unit && call.children[i].kind == NodeKind::text &&
            function.outcome.has_unit())
            return call.children[i].text;
    const std::string unit = function.outcome.unit();
    return unit == "1" ? std::string() : unit;
}

}  // namespace

ShownResult shown_result(const std::string& formula) {
    ShownResult shown;
    shown.formula = "=" + formula;
    const Node call = parse_formula(formula);
    const FormulaValue value = ExampleDesk().value_of(call);
    const Function* function = call.kind == NodeKind::call ? find_function(call.text) : nullptr;
    if (value.is_grid()) {
        const Cell cell = value.cell();
        const Grid& grid = *std::get<const Grid*>(cell);
        shown.rows = grid.rows();
        for (std::size_t r = 0; r < grid.rows() && r <= rows_shown; ++r) {
            auto& row = shown.table.emplace_back();
            for (std::size_t c = 0; c < grid.columns(); ++c) row.push_back(item_text(grid.at(r, c)));
        }
        return shown;
    }
    const Cell cell = value.cell();
    if (const double* number = std::get_if<double>(&cell)) {
        shown.result = six_digits(*number);
        if (function != nullptr && function->outcome.type.shape == Shape::verdict)
            shown.result = *number == 0 ? "FALSE" : "TRUE";
        else if (function != nullptr && !unit_of(call, *function).empty())
            shown.result += " " + unit_of(call, *function);
    } else if (const auto* text = std::get_if<std::u16string_view>(&cell)) {
        shown.result = to_utf8(*text);
    }
    return shown;
}

std::vector<std::string> formulas_to_try(const Function& function) {
    if (!function.guidance.to_try.empty()) return function.guidance.to_try;
    std::vector<std::string> formulas;
    for (const Example& example : function.examples) {
        const Node call = parse_formula(example.formula);
        const bool plain = call.kind == NodeKind::call && find_function(call.text) != nullptr;
        // INDEX(table; row; column): the table itself teaches more.
        const bool of_table = call.kind == NodeKind::call && call.text == "INDEX" && !call.children.empty() &&
                              call.children[0].kind == NodeKind::call;
        if (plain) formulas.push_back(example.formula);
        if (of_table) formulas.emplace_back(text_of_node(example.formula, call.children[0]));
        if (formulas.size() == 2) break;
    }
    return formulas;
}

}  // namespace undercroft::addin
