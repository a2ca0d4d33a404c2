#include <algorithm>
#include <map>
#include <set>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

/// The cells that some formula takes a value from, of those that are asked about.
std::set<Spot> used_among(const AuditedBook& audited, const std::set<Spot>& asked) {
    std::set<Spot> used;
    if (asked.empty()) return used;
    for (const FormulaCell& formula : audited.formulas.all())
        for (const Use& use : audited.uses(formula)) {
            if (use.role == UseRole::observed) continue;
            for (auto at = asked.lower_bound(use.area.first());
                 at != asked.end() && at->sheet == use.area.sheet; ++at) {
                if (at->row > use.area.last_row) break;
                if (use.area.holds(*at)) used.insert(*at);
            }
        }
    return used;
}

enum class Cover { none, sheet, row, column, flat, merged, unseen, format };

Cover cover_of(const AuditedBook& audited, const Spot& at) {
    const BookSheet& sheet = audited.sheet(at.sheet);
    if (sheet.hidden) return Cover::sheet;
    if (sheet.hidden_rows.contains(at.row)) return Cover::row;
    if (sheet.hidden_columns.contains(at.column)) return Cover::column;
    if (sheet.flat_rows.contains(at.row)) return Cover::flat;
    for (const Area& area : sheet.merged)
        if (area.holds(at) && at != area.first()) return Cover::merged;
    if (audited.format(at).unseen) return Cover::unseen;
    if (audited.format(at).number.hides) return Cover::format;
    return Cover::none;
}

std::string says_of(Cover cover, const std::string& sheet) {
    switch (cover) {
        case Cover::sheet:
            return "the sheet " + sheet + " is hidden";
        case Cover::row:
            return "a part of the sheet " + sheet + " is in hidden rows";
        case Cover::column:
            return "a part of the sheet " + sheet + " is in hidden columns";
        case Cover::flat:
            return "a part of the sheet " + sheet + " is in rows too low to be read";
        case Cover::merged:
            return "a part of the sheet " + sheet + " lies under merged cells";
        case Cover::unseen:
            return "a part of the sheet " + sheet + " is written in the colour of its background";
        default:
            return "a part of the sheet " + sheet + " has a number format that shows nothing";
    }
}

std::string remedy_of(Cover cover) {
    switch (cover) {
        case Cover::sheet:
            return "Sheet > Show Sheet";
        case Cover::row:
            return "Format > Rows > Show";
        case Cover::column:
            return "Format > Columns > Show";
        case Cover::flat:
            return "Format > Rows > Optimal Height";
        case Cover::merged:
            return "Format > Merge Cells > Split Cells";
        case Cover::unseen:
            return "Format > Cells > Font Effects";
        default:
            return "Format > Cells > Numbers";
    }
}

}  // namespace

void find_hidden(const AuditedBook& audited, Findings& findings) {
    struct Hidden {
        std::vector<Spot> formulas;
        std::vector<Spot> inputs;
    };
    std::map<std::pair<std::int32_t, Cover>, Hidden> found;
    std::set<Spot> typed;
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        for (const BookCell& cell : audited.book.sheets[s].cells) {
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            const bool counts = cell.is_formula() || cell.number() != nullptr;
            const Cover cover = counts ? cover_of(audited, at) : Cover::none;
            if (cover == Cover::none) continue;
            if (cell.is_formula())
                found[{at.sheet, cover}].formulas.push_back(at);
            else if (!(audited.book.sheets[s].is_protected && audited.format(at).locked))
                typed.insert(at);  // what is locked is no input
        }
    for (const Spot& at : used_among(audited, typed))
        found[{at.sheet, cover_of(audited, at)}].inputs.push_back(at);
    for (auto& [where, hidden] : found) {
        const auto& [sheet, cover] = where;
        std::string holds;
        if (!hidden.formulas.empty()) holds = "formulas (" + std::to_string(hidden.formulas.size()) + ")";
        if (!hidden.inputs.empty())
            holds += (holds.empty() ? "" : " and ") + std::string("inputs (") +
                     std::to_string(hidden.inputs.size()) + ")";
        std::vector<Spot> cells = std::move(hidden.formulas);
        cells.insert(cells.end(), hidden.inputs.begin(), hidden.inputs.end());
        std::sort(cells.begin(), cells.end());
        findings.add(FindingKind::hidden, Severity::warning, std::move(cells),
                     says_of(cover, audited.sheet(sheet).name) + " and holds " + holds + "; show it (" +
                         remedy_of(cover) + ") and check it.");
    }
}

}  // namespace undercroft::audit
