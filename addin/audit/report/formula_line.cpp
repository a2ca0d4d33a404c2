#include "addin/audit/report/formula_line.hpp"

#include <algorithm>
#include <set>

#include "addin/audit/book/as_typed.hpp"
#include "addin/audit/book/shown_number.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

constexpr std::size_t most_inputs = 14;

std::string unit_of_result(const AuditedBook& audited, const FormulaCell& formula) {
    if (const auto unit = audited.units.of(formula.at)) return unit->text->text;
    if (formula.area.is_single()) return {};
    std::string units;  // a table's row of units
    for (std::int32_t column = formula.area.first_column; column <= formula.area.last_column; ++column) {
        const BookCell* cell = audited.book.find({formula.at.sheet, formula.at.row, column});
        if (cell == nullptr || cell->text() == nullptr || cell->text()->empty()) return {};
        units += (units.empty() ? "" : "; ") + *cell->text();
    }
    return units;
}

std::string shown_area(const AuditedBook& audited, const Area& area) {
    const BookCell* first = audited.book.find(area.first());
    if (area.is_single()) {
        if (first == nullptr) return "blank";
        const auto unit = audited.units.of(area.first());
        return shown_value(audited.book, area.sheet, *first) +
               (unit && unit->beside ? " " + unit->text->text : "");
    }
    if (area.is_pair()) {
        const BookCell* unit = audited.book.find({area.sheet, area.first_row, area.last_column});
        return (first == nullptr ? "blank" : shown_value(audited.book, area.sheet, *first)) + " " +
               (unit == nullptr ? "without unit" : shown_value(audited.book, area.sheet, *unit));
    }
    return "range of " + std::to_string(area.last_row - area.first_row + 1) + " x " +
           std::to_string(area.last_column - area.first_column + 1) + " cells";
}

std::string inputs_of(const AuditedBook& audited, const FormulaCell& formula) {
    std::string text;
    std::set<Area> seen;
    std::size_t more = 0;
    for (const Use& use : audited.uses(formula)) {
        if (use.role == UseRole::observed || !seen.insert(use.area).second) continue;
        if (seen.size() > most_inputs) {
            ++more;
            continue;
        }
        const std::string cells = audited.book.text_from(formula.at.sheet, use.area);
        const bool named = use.node != nullptr && use.node->kind == NodeKind::name;
        text += (text.empty() ? "" : "; ") + (named ? use.node->text : cells) + " = " +
                shown_area(audited, use.area) + (named ? " (" + cells + ")" : "");
    }
    return more > 0 ? text + " and " + std::to_string(more) + " more" : text;
}

void add_equations(const FormulaGroup& group, FormulaLine& line) {
    if (!group.unreadable().empty()) return;
    std::set<const addin::Function*> seen;
    walk(group.tree(), [&](const Node& node) {
        const addin::Function* function =
            node.kind == NodeKind::call ? addin::find_function(node.text) : nullptr;
        if (function == nullptr || function->equation == "-" || !seen.insert(function).second) return;
        line.equation += (line.equation.empty() ? "" : "; ") + function->equation;
        if (line.source.find(function->source) == std::string::npos)
            line.source += (line.source.empty() ? "" : "; ") + function->source;
    });
}

}  // namespace

std::string shown_value(const Book& book, std::int32_t sheet, const BookCell& cell) {
    if (cell.error != 0) return addin::error_text(cell.error);
    if (const double* number = cell.number())
        return rounded_at(book, {sheet, cell.row, cell.column}, *number);
    if (const std::string* text = cell.text()) return text->size() > 60 ? text->substr(0, 60) + "..." : *text;
    return {};
}

FormulaLine line_of(const AuditedBook& audited, const FormulaCell& formula) {
    FormulaLine line;
    line.label = audited.labels.of(formula.at);
    line.formula = as_typed(formula.cell->formula);
    line.unit = unit_of_result(audited, formula);
    line.inputs = inputs_of(audited, formula);
    add_equations(audited.formulas.group_of(formula), line);
    return line;
}

}  // namespace undercroft::audit
