#include "addin/uno/explain.hpp"

#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/table/CellContentType.hpp>
#include <com/sun/star/table/XCell.hpp>

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cut_table.hpp"
#include "addin/formula/formula.hpp"
#include "addin/uno/format_remarks.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/sheet_values.hpp"
#include "addin/uno/whole_table.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY;

namespace {

using OneCell = Reference<css::table::XCellRange>;

css::table::CellRangeAddress address_of(const Reference<css::table::XCellRange>& range) {
    return Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY)->getRangeAddress();
}

std::string cell_name(const Reference<css::table::XCellRange>& cell) {
    const css::table::CellRangeAddress at = address_of(cell);
    return cell_letters(at.StartColumn, at.StartRow);
}

std::string reading_text(const Reading& reading) {
    if (const double* number = std::get_if<double>(&reading.value)) {
        const bool plain = reading.unit.empty() || reading.unit == "1";
        return rounded_text(*number) + (plain ? "" : " " + reading.unit);
    }
    return std::get<std::string>(reading.value);
}

/// "d = 305 mm = 0.305 m (depth, in D7:E7)"
std::string step_text(const Step& step, const std::string& where) {
    std::string text = (step.symbol.empty() ? step.argument : step.symbol) + " = " + step.given;
    const std::string understood = reading_text(step.reading);
    if (understood != step.given && '"' + understood + '"' != step.given) text += " = " + understood;
    text += " (" + (step.symbol.empty() || step.symbol == step.argument ? std::string() : step.argument);
    if (!where.empty()) text += (text.back() == '(' ? "in " : ", in ") + where;
    if (text.back() == '(') return text.substr(0, text.size() - 2);
    return text + ")";
}

std::string good_text(const Function& function, const Derivation& derivation,
                      const std::vector<std::string>& places) {
    std::string text;
    if (function.equation != "-") text += function.equation + "\n";
    for (std::size_t i = 0; i < derivation.steps.size(); ++i)
        text += step_text(derivation.steps[i], i < places.size() ? places[i] : std::string()) + "\n";
    text += derivation.result;
    text += "\nSource: " + function.source;
    if (!function.caution.empty()) text += "\nCaution: " + function.caution;
    return text;
}

/// The calls of ours inside an expression, outermost first.
std::vector<const Node*> own_calls(const Node& formula) {
    std::vector<const Node*> calls;
    walk(formula, [&calls](const Node& node) {
        if (node.kind != NodeKind::call) return;
        const Function* function = find_function(node.text);
        if (function != nullptr && !function->reads_cell()) calls.push_back(&node);
    });
    return calls;
}

/// Where each argument was read: the reference or name as it stands in the formula.
std::vector<std::string> places_of(const Node& call) {
    std::vector<std::string> places;
    for (const Node& argument : call.children) {
        if (argument.kind == NodeKind::reference)
            places.push_back(argument.reference.text());
        else
            places.push_back(argument.kind == NodeKind::name ? argument.text : std::string());
    }
    return places;
}

Explanation explain_call(const SheetValues& sheet, const Node& call) {
    Explanation explanation;
    explanation.function = find_function(call.text);
    const Function& function = *explanation.function;
    const std::vector<FormulaValue> values = sheet.arguments(call, function);
    try {
        explanation.derivation = function.derive(cells_of(values));
    } catch (const Refused& refused) {
        std::string says = seen_blank(refused, function, call, values).what();
        for (const std::string& remark : format_remarks(sheet, call, function)) says += ". Mind that " + remark;
        throw refused.saying(says);
    }
    if (function.outcome.type.shape == Shape::table) explanation.rows = rows_given(function, values);
    explanation.places = places_of(call);
    explanation.text = good_text(function, explanation.derivation, explanation.places);
    for (const std::string& remark : format_remarks(sheet, call, function))
        explanation.text += "\nMind that " + remark + ".";
    explanation.good = true;
    if (!function.outcome.is_table()) {
        const Answer answer = function.call(cells_of(values));
        if (const double* number = std::get_if<double>(&answer)) explanation.number = *number;
    }
    return explanation;
}

std::string shown(const Scalar& scalar) {
    if (const double* number = std::get_if<double>(&scalar)) return rounded_text(*number);
    const auto* text = std::get_if<std::u16string_view>(&scalar);
    return text == nullptr ? std::string() : to_utf8(*text);
}

/// "in this cell: row 3, storage = 12.5 m3", as the sheet shows it; the first row of a table holds the units.
std::string text_in_table(const Function& function, const Reference<css::table::XCellRange>& cell,
                          const Reference<css::sheet::XSpreadsheet>& sheet,
                          const std::optional<std::size_t>& rows_given) {
    const Reference<css::sheet::XSheetCellCursor> table =
        sheet->createCursorByRange(Reference<css::sheet::XSheetCellRange>(cell, UNO_QUERY));
    table->collapseToCurrentArray();
    const css::table::CellRangeAddress all = address_of(Reference<css::table::XCellRange>(table, UNO_QUERY));
    const css::table::CellRangeAddress own = address_of(cell);
    const std::int32_t row = own.StartRow - all.StartRow;
    const std::int32_t column = own.StartColumn - all.StartColumn;
    const std::string extent =
        rows_given ? extent_text(*rows_given, static_cast<std::size_t>(all.EndRow - all.StartRow)) + ".\n"
                   : "";
    const std::string start = "\n" + extent + "The table fills " +
                              cell_letters(all.StartColumn, all.StartRow) + ":" +
                              cell_letters(all.EndColumn, all.EndRow) + "; ";
    if (!function.outcome.is_table()) return start + "it repeats one result";
    if (table->getCellByPosition(column, row)->getError() != 0)
        return start + "this cell lies outside what the function gives";
    const AnyRows rows = Reference<css::sheet::XCellRangeData>(
                             table->getCellRangeByPosition(column, 0, column, row), UNO_QUERY)
                             ->getDataArray();
    const std::string held = shown(to_scalar(rows[row][0]));
    const std::string at = start + "in this cell: row " + std::to_string(row) + ", ";
    const auto& columns = function.outcome.columns;
    const auto place = static_cast<std::size_t>(column);
    if (place >= columns.size()) return at + "column " + std::to_string(column + 1) + " = " + held;
    const Scalar head = to_scalar(rows[0][0]);
    const std::string unit = std::holds_alternative<double>(head) ? std::string() : shown(head);
    if (row == 0 && !unit.empty())
        return start + "in this cell: " + columns[place].name + ", whose unit is " + unit;
    return at + columns[place].name + " = " + held + (unit.empty() ? "" : " " + unit);
}

/// "IF: its condition holds; UC.LIFTS(A1;"1 m") is taken."
std::string branches_text(const std::string& formula, const std::vector<Branch>& branches) {
    std::string text;
    for (const Branch& choice : branches) {
        const Node& taken = choice.taken;
        std::string what = taken.kind == NodeKind::reference ? taken.reference.text()
                           : taken.kind == NodeKind::name    ? taken.text
                           : taken.end > taken.begin         ? std::string(text_of_node(formula, taken))
                           : taken.kind == NodeKind::number  ? rounded_text(taken.number)
                                                             : taken.text;
        if (taken.kind == NodeKind::missing) what = "nothing";
        const bool is_range = choice.call.kind == NodeKind::operation;  // A1:INDEX(...)
        text += (is_range ? "range" : choice.call.text) + ": " + choice.says + "; " + what + " is taken.\n";
    }
    return text;
}

/// An expression of Calc that shows no error, and none of our functions in what it takes.
std::string plain_text(const std::string& name, const std::string& formula, const Node& taken,
                       const std::vector<Branch>& branches) {
    if (branches.empty()) return name + " is computed by Calc, not by a function of this add-in: " + formula;
    const bool is_cells = taken.kind == NodeKind::reference;
    return branches_text(formula, branches) + name +
           " is computed by Calc, not by a function of this add-in: " +
           (is_cells ? "it shows what " + taken.reference.text() + " shows" : formula);
}

/// Of a call of UC.WHOLE, what it found.
std::optional<Extent> asked_extent(const SheetValues& sheet, const Node& call) {
    const Function* function = call.kind == NodeKind::call ? find_function(call.text) : nullptr;
    const bool asks = function != nullptr && function->reads_cell() &&
                      function->outcome.type.shape == Shape::verdict && call.children.size() == 1;
    if (!asks) return std::nullopt;
    const OneCell range = sheet.range_of(call.children.front());
    if (!range.is()) refuse_value("table: a range of cells is wanted");
    return extent_of(sheet.context(), sheet.document(), range);
}

Explanation explain_formula(const SheetValues& sheet, const std::string& name, const std::string& formula,
                            int error) {
    std::vector<Branch> branches;
    const Node tree = sheet.followed(parse_formula(formula), branches);
    const std::vector<const Node*> calls = own_calls(tree);
    const bool is_one_call = !calls.empty() && calls.front() == &tree;
    Explanation explanation;
    if (is_one_call) {
        explanation = explain_call(sheet, tree);
        explanation.text = branches_text(formula, branches) + explanation.text;
        return explanation;
    }

    if (const auto extent = asked_extent(sheet, tree)) {
        explanation.text = branches_text(formula, branches) + extent->says;
        return explanation;
    }

    // An expression around our functions, or without any: the innermost refusal is the reason.
    for (auto call = calls.rbegin(); call != calls.rend(); ++call) (void)explain_call(sheet, **call);
    if (error != 0) {
        (void)sheet.value_of(
            tree);  // refuses for the cell that holds the error, where the formula rests on one
        explanation.reason = "computed by Calc, not by a function of this add-in: " + formula;
        explanation.text = name + " shows " + error_text(error) + ", " + explanation.reason;
    } else if (calls.empty()) {
        explanation.text = plain_text(name, formula, tree, branches);
    } else {
        explanation = explain_call(sheet, *calls.front());
        explanation.good = false;
        explanation.text = branches_text(formula, branches) + name + " is an expression; in it " +
                           find_function(calls.front()->text)->name + ":\n" + explanation.text;
    }
    return explanation;
}

/// Of a formula that computes here, in a cell that shows an error all the same.
Explanation not_as_shown(const std::string& name, const Explanation& computed, int error) {
    Explanation explanation;
    explanation.reason = "the cell shows " + error_text(error) + ", though its formula gives " +
                         computed.derivation.result +
                         " when it is computed here: compute the sheet anew (Ctrl+Shift+F9)";
    explanation.text = name + ": " + explanation.reason;
    return explanation;
}

bool is_near(double a, double b) {
    constexpr double digits = 1e-9;
    return std::abs(a - b) <= digits * std::max(std::abs(a), std::abs(b));
}

/// Of a formula that gives another number here than its cell shows: whatever way Calc went is not known.
Explanation another_number(const std::string& name, const Explanation& computed, double shown_number) {
    Explanation explanation;
    explanation.text = name + " shows " + rounded_text(shown_number) +
                       ", and its formula followed here gives " + computed.derivation.result +
                       ": Calc takes other cells than are found here, or the sheet is to be computed anew "
                       "(Ctrl+Shift+F9); how it came about cannot be derived";
    return explanation;
}

struct Explained {
    Explanation explanation;
    OneCell blamed;  ///< the cell that it rests on and that holds an error, if that is the reason
};

Explained explain_cell(const Reference<css::uno::XComponentContext>& context,
                       const Reference<css::beans::XPropertySet>& document, const OneCell& range,
                       Effort& effort) {
    const std::string name = cell_name(range);
    const Reference<css::table::XCell> cell = range->getCellByPosition(0, 0);
    Explanation explanation;
    if (cell->getType() == css::table::CellContentType_EMPTY) {
        explanation.text = name + " is blank";
        return {explanation, {}};
    }
    if (cell->getType() != css::table::CellContentType_FORMULA) {
        explanation.text = name + " holds a typed " +
                           (cell->getType() == css::table::CellContentType_TEXT ? "text" : "number") +
                           ", not a formula";
        return {explanation, {}};
    }
    const Reference<css::sheet::XSheetCellRange> on_sheet(range, UNO_QUERY);
    OneCell blamed;
    const css::table::CellRangeAddress at = address_of(range);
    const SheetValues sheet(context, document, on_sheet->getSpreadsheet(), blamed, effort,
                            CellAddress{at.StartColumn, at.StartRow});
    try {
        effort.spend(Effort::of_formula);
        std::string formula = to_string(cell->getFormula());
        const bool is_array = formula.starts_with("{=");
        if (is_array) formula = formula.substr(1, formula.size() - 2);
        explanation = explain_formula(sheet, name, formula, cell->getError());
        if (!explanation.good) return {explanation, {}};
        if (is_array)
            explanation.text +=
                text_in_table(*explanation.function, range, on_sheet->getSpreadsheet(), explanation.rows);
        else if (explanation.rows)
            explanation.text += "\n" + extent_text(*explanation.rows, 0);
        constexpr int outside_table = 32767;  // #N/A
        if (is_array && cell->getError() == outside_table)
            explanation.reason = "it lies outside the table that " + explanation.function->name + " gives";
        else if (cell->getError() != 0)
            explanation = not_as_shown(name, explanation, cell->getError());
        else if (!is_array && explanation.number && !is_near(*explanation.number, cell->getValue()))
            explanation = another_number(name, explanation, cell->getValue());
        return {explanation, {}};
    } catch (const Refused& refused) {
        if (cell->getError() == 0) {  // a branch that is not taken, or what only Calc can follow
            explanation.text =
                name +
                " shows no error; how it came about cannot be derived from its formula: " + refused.what();
            return {explanation, {}};
        }
        explanation.text = explanation.reason = refused.what();
        return {explanation, blamed};
    }
}

/// "Site.D7", or "D7" for a cell on the same sheet.
std::string name_seen_from(const OneCell& from, const OneCell& cell) {
    const bool same_sheet = address_of(from).Sheet == address_of(cell).Sheet;
    return (same_sheet ? std::string() : sheet_prefix_of(cell)) + cell_name(cell);
}

using Address = std::tuple<sal_Int16, sal_Int32, sal_Int32>;

Address key_of(const OneCell& cell) {
    const css::table::CellRangeAddress at = address_of(cell);
    return {at.Sheet, at.StartColumn, at.StartRow};
}

}  // namespace

Explanation explain(const Reference<css::uno::XComponentContext>& context,
                    const Reference<css::beans::XPropertySet>& document,
                    const Reference<css::table::XCellRange>& range) {
    Effort effort;
    const auto [asked, blamed] = explain_cell(context, document, range, effort);
    if (!blamed.is()) return asked;

    // From cell to cell to the one where the error begins, or to one that was passed already.
    std::set<Address> passed = {key_of(range), key_of(blamed)};
    OneCell root = blamed;
    Explained at_root = explain_cell(context, document, root, effort);
    constexpr std::size_t most_cells = 200;  // each cell of a long column of errors would follow all others
    while (at_root.blamed.is() && !effort.is_spent() && passed.size() < most_cells &&
           passed.insert(key_of(at_root.blamed)).second) {
        root = at_root.blamed;
        at_root = explain_cell(context, document, root, effort);
    }
    const bool goes_on =
        effort.is_spent() || (at_root.blamed.is() && !passed.contains(key_of(at_root.blamed)));
    Explanation explanation = asked;
    std::string& text = explanation.text;
    if (goes_on) {
        text += " and so on, " + std::to_string(passed.size()) + " cells so far; UC.WHY(" +
                name_seen_from(range, root) + ") follows it from there";
        return explanation;
    }
    if (key_of(root) != key_of(blamed)) text += " and at last on " + name_seen_from(range, root);
    text += ", which shows " + error_text(root->getCellByPosition(0, 0)->getError()) + ": ";
    if (at_root.blamed.is())
        text += "the formulas go in a circle";
    else
        text += at_root.explanation.reason.empty() ? error_meaning(root->getCellByPosition(0, 0)->getError())
                                                   : at_root.explanation.reason;
    return explanation;
}

ResultRows steps_table(const Explanation& explanation) {
    ResultRows rows = {{std::string("symbol"), std::string("argument"), std::string("as given"),
                        std::string("in SI"), std::string("unit"), std::string("cell")}};
    const auto line = [&rows](const std::string& what, const std::string& text) {
        rows.push_back({std::string(), what, text, std::string(), std::string(), std::string()});
    };
    const auto& steps = explanation.derivation.steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const ResultItem value =
            std::visit([](const auto& held) { return ResultItem(held); }, steps[i].reading.value);
        rows.push_back({steps[i].symbol, steps[i].argument, steps[i].given, value, steps[i].reading.unit,
                        i < explanation.places.size() ? explanation.places[i] : std::string()});
    }
    if (!explanation.good) line("reason", explanation.text);
    if (explanation.function == nullptr) return rows;
    line("result", explanation.derivation.result);
    line("equation", explanation.function->equation);
    line("source", explanation.function->source);
    return rows;
}

}  // namespace undercroft::addin
