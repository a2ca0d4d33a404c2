// Links that take a number from another row than the one they are called after.
#include <algorithm>
#include <map>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/words.hpp"

namespace undercroft::audit {

namespace {

/// Rows of each sheet by their labels.
class LabelledRows {
public:
    explicit LabelledRows(const AuditedBook& audited) : audited_(audited) {}

    /// A row of that label, on that sheet, with a number in that column.
    [[nodiscard]] std::optional<Spot> find(std::int32_t sheet, std::int32_t column, const Words& label) {
        auto [known, is_new] = rows_.try_emplace({sheet, column});
        if (is_new)
            for (const std::uint32_t i : audited_.book.column(sheet, column)) {
                const BookCell& cell = audited_.sheet(sheet).cells[i];
                if (cell.number() == nullptr && cell.error == 0) continue;
                const Spot at{sheet, cell.row, column};
                known->second.emplace(words_of(audited_.labels.of_row(at)), at);
            }
        const auto row = known->second.find(label);
        return row == known->second.end() ? std::nullopt : std::optional(row->second);
    }

private:
    const AuditedBook& audited_;
    std::map<std::pair<std::int32_t, std::int32_t>, std::map<Words, Spot>> rows_;
};

bool holds(const Words& all, const Words& some) {
    return std::includes(all.begin(), all.end(), some.begin(), some.end());
}

}  // namespace

void find_wrong_rows(const AuditedBook& audited, Findings& findings) {
    LabelledRows rows(audited);
    for (const FormulaCell& formula : audited.formulas.all()) {
        const FormulaGroup& group = audited.formulas.group_of(formula);
        if (!group.unreadable().empty() || !group.is_link() || formula.cell->number() == nullptr) continue;
        const std::vector<Use> uses = audited.uses(formula);
        if (uses.size() != 1 || !(uses[0].area.is_single() || uses[0].area.is_pair())) continue;
        const Spot source = uses[0].area.first();
        const Words wanted = words_of(audited.labels.of_row(formula.at));
        const Words taken = words_of(audited.labels.of_row(source));
        // A table calls a thing by fewer words than the row that computes it.
        if (source.sheet == formula.at.sheet || wanted.empty() || taken.empty() || holds(wanted, taken) ||
            holds(taken, wanted))
            continue;
        const std::optional<Spot> right = rows.find(source.sheet, source.column, wanted);
        if (!right || *right == source || *right == formula.at) continue;
        findings.add(FindingKind::wrong_row, Severity::error, formula.at,
                     "it is called " + audited.labels.of_row(formula.at) + ", and takes " +
                         audited.text(formula.at.sheet, source) + " (" + audited.labels.of_row(source) +
                         "); should it be " + audited.text(formula.at.sheet, *right) + "?");
    }
}

}  // namespace undercroft::audit
