#include "addin/audit/results.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "addin/audit/findings/grouped.hpp"
#include "addin/audit/properties.hpp"
#include "addin/audit/unsteady.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;

namespace {

bool calls(const FormulaGroup& group, std::string_view own_name) {
    bool found = false;
    if (!group.unreadable.empty()) return false;
    walk(group.tree, [&](const Node& node) {
        if (node.kind != Node::Kind::call) return;
        const addin::Function* function = addin::find_function(node.text);
        found = found || (function != nullptr ? function->name == own_name : node.text == own_name);
    });
    return found;
}

bool is_unsteady(const FormulaGroup& group) {
    return group.unreadable.empty() && (changes_by_itself(group.tree) || asks_surroundings(group.tree));
}

bool same(double a, double b) {
    return a == b || std::abs(a - b) <= 1e-9 * std::max(std::abs(a), std::abs(b));
}

std::string shown(const CellValue& value) {
    if (const double* number = std::get_if<double>(&value)) return exact_text(*number);
    if (const std::string* text = std::get_if<std::string>(&value)) return '"' + text->substr(0, 60) + '"';
    return "nothing";
}

/// "the file holds 12, and the formula gives 13"; empty when they agree.
std::string difference(const StoredValue& stored, const BookCell& now) {
    const std::string held = stored.is_error ? "an error" : shown(stored.value);
    if (now.error != 0)
        return stored.is_error ? "" : "the file holds " + held + ", and the formula gives an error";
    const double* number = std::get_if<double>(&stored.value);
    const std::string* text = std::get_if<std::string>(&stored.value);
    const bool agree = !stored.is_error &&
                       ((number != nullptr && now.number() != nullptr && same(*number, *now.number())) ||
                        (text != nullptr && now.text() != nullptr && *text == *now.text()) ||
                        (number == nullptr && (text == nullptr || text->empty()) && now.shows_nothing()));
    return agree ? "" : "the file holds " + held + ", and the formula gives " + shown(now.value);
}

/// Formulas that rest on the clock or on chance, or on such a formula.
std::set<Spot> unsteady_cells(const Workings& workings) {
    std::set<Spot> cells;
    for (const FormulaGroup& group : workings.formulas.groups())
        if (is_unsteady(group))
            for (const std::uint32_t member : group.members) cells.insert(workings.formulas.all()[member].at);
    for (std::size_t before = 0; before != cells.size() && !cells.empty() && cells.size() < 10000;) {
        before = cells.size();
        for (const FormulaCell& formula : workings.formulas.all())
            for (const Use& use : workings.uses(formula))
                if (std::any_of(cells.begin(), cells.end(),
                                [&](const Spot& spot) { return use.area.holds(spot); }))
                    cells.insert(formula.at);
    }
    return cells;
}

}  // namespace

void find_stale(const Workings& workings, const StoredValues& stored, Findings& findings) {
    const std::set<Spot> unsteady = unsteady_cells(workings);
    std::vector<bool> tells_version;  // these change with the functions, which is told on its own
    for (const FormulaGroup& group : workings.formulas.groups())
        tells_version.push_back(calls(group, "UC.VERSION") || calls(group, "UC.CATALOGUE"));
    Grouped grouped(findings);
    for (const FormulaCell& formula : workings.formulas.all()) {
        if (unsteady.contains(formula.at) || tells_version[formula.group]) continue;
        const BookSheet& sheet = workings.sheet(formula.at.sheet);
        for (std::int32_t row = formula.area.first_row; row <= formula.area.last_row; ++row)
            for (std::int32_t column = formula.area.first_column; column <= formula.area.last_column;
                 ++column) {
                const StoredValue* value = stored.find(sheet.name, row, column);
                const Spot at{formula.at.sheet, row, column};
                const BookCell* now = workings.book.find(at);
                if (value == nullptr || now == nullptr) continue;
                const std::string says = difference(*value, *now);
                if (says.empty()) continue;
                grouped.add(
                    Kind::stale, Severity::error, formula.group, 0, at,
                    says +
                        " when it is computed anew; save the workbook again, and find out who or what "
                        "changed the value.");
            }
    }
}

void find_other_version(const Workings& workings, const StoredValues& stored, const std::string& installed,
                        Findings& findings) {
    bool told_by_cell = false;
    for (const FormulaCell& formula : workings.formulas.all()) {
        const FormulaGroup& group = workings.formulas.group_of(formula);
        const addin::Function* function = group.unreadable.empty() && group.tree.kind == Node::Kind::call
                                              ? addin::find_function(group.tree.text)
                                              : nullptr;
        if (function == nullptr || function->name != "UC.VERSION") continue;
        const StoredValue* value =
            stored.find(workings.sheet(formula.at.sheet).name, formula.at.row, formula.at.column);
        const std::string* version = value == nullptr ? nullptr : std::get_if<std::string>(&value->value);
        if (version == nullptr || version->empty()) continue;
        told_by_cell = true;
        if (*version != installed)
            findings.add(Kind::version, Severity::warning, formula.at,
                         "the file was computed by version " + *version + " of the functions, and " +
                             installed + " is installed; compare the results, and save the workbook again.");
    }
    const auto property = workings.book.properties.find(std::string(functions_property));
    if (told_by_cell || property == workings.book.properties.end() || property->second == installed) return;
    findings.add(Kind::version, Severity::warning, std::vector<Spot>{},
                 "the workbook was made for version " + property->second + " of the functions, and " +
                     installed + " is installed; compare the results.");
}

}  // namespace undercroft::audit
