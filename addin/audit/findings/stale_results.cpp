#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/book/unsteady.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

bool asks_version(const FormulaGroup& group) {
    bool found = false;
    if (!group.unreadable().empty()) return false;
    walk(group.tree(), [&](const Node& node) { found = found || tells_version(node); });
    return found;
}

bool is_unsteady(const FormulaGroup& group) {
    if (!group.unreadable().empty()) return false;
    const Node& tree = group.tree();
    return changes_by_itself(tree) || asks_surroundings(tree) || changes_with_country(tree);
}

/// Files hold fewer digits than Calc computes with, and a search amplifies what is lost; an edit shows.
bool same(double a, double b) {
    return std::abs(a - b) <= std::max(1e-7 * std::max(std::abs(a), std::abs(b)), 1e-15);
}

/// The mark, at this place in a text, that sets off the decimals or groups the digits of a number; 0 bytes
/// for none.
std::size_t mark_at(std::string_view text, std::size_t at) {
    static constexpr std::string_view marks[] = {
        ".", ",", "'", " ", "\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x99", "\xD9\xAB", "\xD9\xAC"};
    if (at == 0 || !is_digit(text[at - 1])) return 0;
    for (const std::string_view mark : marks)
        if (text.substr(at).starts_with(mark) && at + mark.size() < text.size() &&
            is_digit(text[at + mark.size()]))
            return mark.size();
    return 0;
}

/// Whether two texts say the same where each country writes the numbers in its own way: 1,234.5 and 1.234,5.
bool same_words(std::string_view a, std::string_view b) {
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < a.size() && j < b.size()) {
        const std::size_t mark_of_a = mark_at(a, i);
        const std::size_t mark_of_b = mark_at(b, j);
        if (mark_of_a > 0 && mark_of_b > 0) {
            i += mark_of_a;
            j += mark_of_b;
        } else if (a[i++] != b[j++]) {
            return false;
        }
    }
    return i == a.size() && j == b.size();
}

std::string shown(const Book& book, const Spot& at, const CellValue& value) {
    if (const double* number = std::get_if<double>(&value)) return exact_at(book, at, *number);
    if (const std::string* text = std::get_if<std::string>(&value)) return '"' + text->substr(0, 60) + '"';
    return "nothing";
}

/// "the file holds 12, and the formula gives 13"; empty when they agree.
std::string difference(const Book& book, const Spot& at, const StoredValue& stored, const BookCell& now) {
    const std::string held = stored.is_error ? "an error" : shown(book, at, stored.value);
    if (now.error != 0)
        return stored.is_error ? "" : "the file holds " + held + ", and the formula gives an error";
    const double* number = std::get_if<double>(&stored.value);
    const std::string* text = std::get_if<std::string>(&stored.value);
    const bool agree = !stored.is_error &&
                       ((number != nullptr && now.number() != nullptr && same(*number, *now.number())) ||
                        (text != nullptr && now.text() != nullptr && same_words(*text, *now.text())) ||
                        (number == nullptr && (text == nullptr || text->empty()) && now.shows_nothing()));
    if (agree) return {};
    if (!stored.is_error && number != nullptr && now.number() != nullptr) {
        const auto [was, is] = exact_at_both({book, at, *number}, {book, at, *now.number()});
        return "the file holds " + was + ", and the formula gives " + is;
    }
    return "the file holds " + held + ", and the formula gives " + shown(book, at, now.value);
}

/// An array formula's area as it lies on the formula's sheet.
Area on_sheet(const FormulaCell& formula) {
    Area area = formula.area;
    area.sheet = formula.at.sheet;
    return area;
}

/// Formulas that rest on the clock, on chance or on the country, or on such a formula.
class Unsteady {
public:
    explicit Unsteady(const AuditedBook& audited) : audited_(audited) {
        for (const FormulaGroup& group : audited.formulas.groups())
            if (is_unsteady(group))
                for (const std::uint32_t member : group.members) add(audited.formulas.all()[member]);
        if (rows_.empty()) return;
        // Formulas mostly rest on those before them, or on those after them: a sweep each way, until no more
        // come.
        const auto& all = audited.formulas.all();
        for (int sweep = 0; sweep < most_sweeps; sweep += 2) {
            bool more = false;
            for (auto formula = all.begin(); formula != all.end(); ++formula) more = look(*formula) || more;
            for (auto formula = all.rbegin(); formula != all.rend(); ++formula) more = look(*formula) || more;
            if (!more) return;
        }
    }
    [[nodiscard]] bool holds(const Spot& spot) const {
        const auto rows = rows_.find({spot.sheet, spot.column});
        return rows != rows_.end() && rows->second.contains(spot.row);
    }

private:
    static constexpr int most_sweeps = 100;

    void add(const FormulaCell& formula) {
        audited_.book.each_cell(on_sheet(formula), [&](const BookCell& cell) {
            rows_[{formula.at.sheet, cell.column}].insert(cell.row);
        });
    }
    [[nodiscard]] bool touches(const Area& area) const {
        for (auto rows = rows_.lower_bound({area.sheet, area.first_column});
             rows != rows_.end() && rows->first <= std::pair(area.sheet, area.last_column); ++rows) {
            const auto row = rows->second.lower_bound(area.first_row);
            if (row != rows->second.end() && *row <= area.last_row) return true;
        }
        return false;
    }
    bool look(const FormulaCell& formula) {
        if (holds(formula.at)) return false;
        const std::vector<Use> uses = audited_.uses(formula);
        if (std::none_of(uses.begin(), uses.end(), [&](const Use& use) { return touches(use.area); }))
            return false;
        add(formula);
        return true;
    }

    const AuditedBook& audited_;
    std::map<std::pair<std::int32_t, std::int32_t>, std::set<std::int32_t>> rows_;  ///< by sheet and column
};

}  // namespace

void find_stale_results(const AuditedBook& audited, const StoredValues& stored, Findings& findings) {
    const Unsteady unsteady(audited);
    std::vector<bool> of_version;  // these change with the functions, which is told on its own
    for (const FormulaGroup& group : audited.formulas.groups()) of_version.push_back(asks_version(group));
    Grouped grouped(findings);
    for (const FormulaCell& formula : audited.formulas.all()) {
        if (unsteady.holds(formula.at) || of_version[formula.group]) continue;
        const BookSheet& sheet = audited.sheet(formula.at.sheet);
        audited.book.each_cell(on_sheet(formula), [&](const BookCell& now) {
            const StoredValue* value = stored.find(sheet.name, now.row, now.column);
            const Spot at{formula.at.sheet, now.row, now.column};
            const std::string says = value == nullptr ? "" : difference(audited.book, at, *value, now);
            if (says.empty()) return;
            grouped.add(FindingKind::stale, Severity::error, formula.group, 0, at,
                        says +
                            " when it is computed anew; save the workbook again, and find out who or what "
                            "changed the value.");
        });
    }
}

}  // namespace undercroft::audit
