#include "addin/audit/book/book_values.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/formula/cut_table.hpp"
#include "units/refused.hpp"

namespace undercroft::audit {

namespace {

/// Rows of values of the table that the formula gives; nothing for another formula, or where it cannot be
/// computed here.
std::optional<std::size_t> rows_of(const AuditedBook& audited, const FormulaCell& formula) {
    const FormulaGroup& group = audited.formulas.group_of(formula);
    if (!group.unreadable().empty() || group.tree().kind != addin::NodeKind::call || !calls_own(group))
        return std::nullopt;
    try {
        return addin::rows_of_table(BookValues(audited.book, audited.names, group.base, formula.at),
                                    group.tree());
    } catch (const Refused&) {
        return std::nullopt;  // an error is told as such
    }
}

}  // namespace

void find_cut_tables(const AuditedBook& audited, Findings& findings) {
    for (const FormulaCell& formula : audited.formulas.all()) {
        if (formula.cell->error != 0) continue;
        const std::optional<std::size_t> rows = rows_of(audited, formula);
        const auto shown = static_cast<std::size_t>(formula.area.last_row - formula.area.first_row);
        if (rows && shown < *rows)
            findings.add(FindingKind::cut_table, Severity::error, formula.at,
                         addin::extent_text(*rows, shown) + ".");
    }
}

}  // namespace undercroft::audit
