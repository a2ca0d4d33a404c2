#include <algorithm>
#include <map>
#include <set>
#include <string_view>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Functions of Calc that count a blank cell as 0, or pass over a text, without a word.
constexpr std::string_view numeric[] = {"SUM",   "ABS", "ROUND",   "ROUNDUP", "ROUNDDOWN",  "SQRT", "INT",
                                        "MIN",   "MAX", "AVERAGE", "PRODUCT", "SUMPRODUCT", "EXP",  "LN",
                                        "LOG10", "SIN", "COS",     "TAN",     "MOD",        "N",    "TRUNC"};

bool is_numeric(const Use& use) {
    return use.call != nullptr && calls_one_of(*use.call, numeric);
}

/// "12.5" typed as a text, which no SUM adds.
bool looks_like_number(const std::string& text) {
    std::string_view rest = text;
    while (!rest.empty() && (rest.front() == ' ' || rest.front() == '-' || rest.front() == '+'))
        rest.remove_prefix(1);
    while (!rest.empty() && rest.back() == ' ') rest.remove_suffix(1);
    if (rest.empty() || !is_digit(rest.front())) return false;
    return rest.find_first_not_of("0123456789.,") == std::string_view::npos;
}

class ReferenceSearch {
public:
    ReferenceSearch(const AuditedBook& audited, Grouped& grouped) : audited_(audited), grouped_(grouped) {}

    void look(const FormulaCell& formula) {
        part_ = 0;
        const std::vector<Use> uses = audited_.uses(formula);
        // A cell that the formula also compares with a text is known to hold one at times.
        std::set<Area> compared;
        for (const Use& use : uses)
            if (use.role == UseRole::compared) compared.insert(use.area);
        for (const Use& use : uses) {
            ++part_;
            if (use.guarded || compared.contains(use.area)) continue;
            const bool takes_value = use.role == UseRole::operand || use.role == UseRole::link ||
                                     use.role == UseRole::argument ||
                                     (use.role == UseRole::passed && is_numeric(use));
            if (!takes_value) continue;
            if (is_audit_sheet(audited_.sheet(use.area.sheet))) {
                tell(FindingKind::blank_reference, formula,
                     "the formula refers to " + audited_.book.text_from(formula.at.sheet, use.area) +
                         " on the sheet that every audit writes anew; take the value from elsewhere.");
                continue;
            }
            if (use.area.is_single())
                look_at_cell(formula, use);
            else
                look_at_range(formula, use);
        }
    }

private:
    void tell(FindingKind kind, const FormulaCell& formula, const std::string& says) {
        grouped_.add(kind, Severity::warning, formula.group, part_, formula.at, says);
    }

    /// Whether a number is meant here: it begins with one, its unit stands beside it, or it is a cell to be
    /// filled in.
    [[nodiscard]] bool is_input(const Spot& at, const BookCell& cell) const {
        if (cell.is_formula()) return false;
        const std::string text = trimmed(*cell.text());
        const BookCell* right = audited_.book.find({at.sheet, at.row, at.column + 1});
        const bool unit_beside = right != nullptr && right->text() != nullptr && !right->text()->empty() &&
                                 audited_.units.read(*right->text()).unit.has_value();
        const bool to_fill_in = audited_.sheet(at.sheet).is_protected && !audited_.format(at).locked;
        return is_digit(text[0]) || unit_beside || to_fill_in;
    }

    /// The cell that holds the text is the one to look at, and not the many that compute with it.
    void tell_input(const FormulaCell& formula, const Spot& at, const BookCell& cell) {
        const std::string says =
            audited_.text(formula.at.sheet, at) + " holds the text \"" + cell.text()->substr(0, 40) +
            "\", and a number is computed with; type the number, and its unit beside it.";
        grouped_.add(FindingKind::text_reference, Severity::error, formula.group, part_, at, says);
        grouped_.add(FindingKind::text_reference, Severity::error, formula.group, part_, formula.at, says);
    }

    void look_at_cell(const FormulaCell& formula, const Use& use) {
        const Spot spot = use.area.first();
        const BookCell* cell = audited_.book.find(spot);
        const std::string name = audited_.text(formula.at.sheet, spot);
        if (cell == nullptr || cell->shows_nothing()) {
            const bool shown_blank =
                cell != nullptr && (use.role == UseRole::link || use.role == UseRole::argument);
            if (!shown_blank)
                tell(FindingKind::blank_reference, formula,
                     "the formula refers to " + name +
                         ", which is blank and counts as 0; fill it in, or correct the reference.");
            return;
        }
        const bool computes = use.role == UseRole::operand || use.role == UseRole::passed;
        if (computes && cell->text() != nullptr && !cell->shows_nothing() && is_input(spot, *cell))
            return tell_input(formula, spot, *cell);
        if (computes && cell->text() != nullptr && !cell->shows_nothing())
            tell(FindingKind::text_reference, formula,
                 "the formula computes with " + name + ", which holds the text \"" +
                     cell->text()->substr(0, 40) + "\"; type a number there, or correct the reference.");
    }

    void look_at_range(const FormulaCell& formula, const Use& use) {
        const std::int32_t last = std::min(use.area.last_column, audited_.book.columns(use.area.sheet) - 1);
        bool any = false;
        for (std::int32_t c = use.area.first_column; c <= last && !any; ++c)
            any = !audited_.book.column(use.area.sheet, c, use.area.first_row, use.area.last_row).empty();
        if (!any) {
            tell(FindingKind::blank_reference, formula,
                 "the range " + audited_.book.text_from(formula.at.sheet, use.area) +
                     " is blank; fill it in, or correct the reference.");
            return;
        }
        if (use.area.is_pair() && use.role == UseRole::argument) return look_at_pair(formula, use);
        if (use.role == UseRole::passed) look_for_text_numbers(formula, use, last);
    }

    void look_at_pair(const FormulaCell& formula, const Use& use) {
        const BookCell* number = audited_.book.find(use.area.first());
        if (number == nullptr || number->shows_nothing())
            tell(FindingKind::blank_reference, formula,
                 "the number in " + audited_.text(formula.at.sheet, use.area.first()) +
                     " is blank; fill it in, or correct the reference.");
        else if (number->text() != nullptr && is_input(use.area.first(), *number))
            tell_input(formula, use.area.first(), *number);
    }

    /// Each text is looked at once, however many sums run over it.
    void look_for_text_numbers(const FormulaCell& formula, const Use& use, std::int32_t last) {
        for (std::int32_t column = use.area.first_column; column <= last; ++column) {
            const std::vector<std::int32_t>& rows = text_numbers(use.area.sheet, column);
            const auto row = std::lower_bound(rows.begin(), rows.end(), use.area.first_row);
            if (row == rows.end() || *row > use.area.last_row) continue;
            const Spot spot{use.area.sheet, *row, column};
            grouped_.add(FindingKind::text_reference, Severity::warning, formula.group, part_, spot,
                         says_passed_over(formula, use, spot));
            tell(FindingKind::text_reference, formula, says_passed_over(formula, use, spot));
            return;
        }
    }

    [[nodiscard]] std::string says_passed_over(const FormulaCell& formula, const Use& use,
                                               const Spot& spot) const {
        return audited_.text(formula.at.sheet, spot) + " in the range " +
               audited_.book.text_from(formula.at.sheet, use.area) + " holds the text \"" +
               audited_.book.find(spot)->text()->substr(0, 40) +
               "\", which is passed over; type it as a number.";
    }

    const std::vector<std::int32_t>& text_numbers(std::int32_t sheet, std::int32_t column) {
        const auto [known, is_new] = text_numbers_.try_emplace({sheet, column});
        if (is_new)
            for (const std::uint32_t i : audited_.book.column(sheet, column)) {
                const BookCell& cell = audited_.sheet(sheet).cells[i];
                if (!cell.is_formula() && cell.text() != nullptr && looks_like_number(*cell.text()))
                    known->second.push_back(cell.row);
            }
        return known->second;
    }

    const AuditedBook& audited_;
    Grouped& grouped_;
    std::size_t part_ = 0;
    std::map<std::pair<std::int32_t, std::int32_t>, std::vector<std::int32_t>> text_numbers_;
};

}  // namespace

void find_blank_references(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    ReferenceSearch search(audited, grouped);
    for (const FormulaCell& formula : audited.formulas.all()) search.look(formula);
}

}  // namespace undercroft::audit
