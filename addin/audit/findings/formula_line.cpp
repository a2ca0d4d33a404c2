#include "addin/audit/findings/formula_line.hpp"

#include <algorithm>
#include <set>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;

namespace {

constexpr std::size_t most_inputs = 14;

std::string unit_of_result(const Workings& workings, const FormulaCell& formula) {
    if (const auto unit = workings.units.of(formula.at)) return unit->text->text;
    if (formula.area.is_single()) return {};
    std::string units;  // a table's row of units
    for (std::int32_t column = formula.area.first_column; column <= formula.area.last_column; ++column) {
        const BookCell* cell = workings.book.find({formula.at.sheet, formula.at.row, column});
        if (cell == nullptr || cell->text() == nullptr || cell->text()->empty()) return {};
        units += (units.empty() ? "" : "; ") + *cell->text();
    }
    return units;
}

std::string shown_area(const Workings& workings, const Area& area) {
    const BookCell* first = workings.book.find(area.first());
    if (area.is_single()) {
        if (first == nullptr) return "blank";
        const auto unit = workings.units.of(area.first());
        return shown_value(*first) + (unit && unit->beside ? " " + unit->text->text : "");
    }
    if (area.is_pair()) {
        const BookCell* unit = workings.book.find({area.sheet, area.first_row, area.last_column});
        return (first == nullptr ? "blank" : shown_value(*first)) + " " +
               (unit == nullptr ? "without unit" : shown_value(*unit));
    }
    return "range of " + std::to_string(area.last_row - area.first_row + 1) + " x " +
           std::to_string(area.last_column - area.first_column + 1) + " cells";
}

std::string inputs_of(const Workings& workings, const FormulaCell& formula) {
    std::string text;
    std::set<Area> told;
    std::size_t more = 0;
    for (const Use& use : workings.uses(formula)) {
        if (use.role == Role::observed || !told.insert(use.area).second) continue;
        if (told.size() > most_inputs) {
            ++more;
            continue;
        }
        const std::string cells = workings.book.text_from(formula.at.sheet, use.area);
        const bool named = use.node != nullptr && use.node->kind == Node::Kind::name;
        text += (text.empty() ? "" : "; ") + (named ? use.node->text : cells) + " = " +
                shown_area(workings, use.area) + (named ? " (" + cells + ")" : "");
    }
    return more > 0 ? text + " and " + std::to_string(more) + " more" : text;
}

void add_equations(const FormulaGroup& group, FormulaLine& line) {
    if (!group.unreadable.empty()) return;
    std::set<const addin::Function*> told;
    walk(group.tree, [&](const Node& node) {
        const addin::Function* function =
            node.kind == Node::Kind::call ? addin::find_function(node.text) : nullptr;
        if (function == nullptr || function->equation == "-" || !told.insert(function).second) return;
        line.equation += (line.equation.empty() ? "" : "; ") + function->equation;
        if (line.source.find(function->source) == std::string::npos)
            line.source += (line.source.empty() ? "" : "; ") + function->source;
    });
}

bool is_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '.';
}

}  // namespace

std::string as_typed(const std::string& formula) {
    std::string typed;
    for (std::size_t i = 0; i < formula.size();) {
        if (formula[i] == '"' || formula[i] == '\'') {
            const std::size_t end = formula.find(formula[i], i + 1);
            const std::size_t next = end == std::string::npos ? formula.size() : end + 1;
            typed += formula.substr(i, next - i);
            i = next;
            continue;
        }
        std::size_t end = i;
        while (end < formula.size() && is_word(formula[end])) ++end;
        if (end == i) {
            typed += formula[i++];
            continue;
        }
        const std::string word = formula.substr(i, end - i);
        const bool call = end < formula.size() && formula[end] == '(';
        const addin::Function* function = call ? addin::find_function(word) : nullptr;
        typed += function != nullptr ? function->name : word;
        i = end;
    }
    return typed;
}

std::string shown_value(const BookCell& cell) {
    if (cell.error != 0) return addin::error_text(cell.error);
    if (const double* number = cell.number()) return rounded_text(*number);
    if (const std::string* text = cell.text()) return text->size() > 60 ? text->substr(0, 60) + "..." : *text;
    return {};
}

FormulaLine line_of(const Workings& workings, const FormulaCell& formula) {
    FormulaLine line;
    line.label = workings.labels.of(formula.at);
    line.formula = as_typed(formula.cell->formula);
    line.unit = unit_of_result(workings, formula);
    line.inputs = inputs_of(workings, formula);
    add_equations(workings.formulas.group_of(formula), line);
    return line;
}

}  // namespace undercroft::audit
