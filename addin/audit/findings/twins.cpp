// One input typed on two sheets, which will not be changed together.
#include <map>

#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/words.hpp"

namespace undercroft::audit {

namespace {

/// The only number of its row, typed, with its unit beside it.
bool is_input(const AuditedBook& audited, const Spot& at) {
    const BookCell* cell = audited.book.find(at);
    if (cell->is_formula() || cell->number() == nullptr || !audited.units.of(at)) return false;
    for (std::int32_t column = 0; column < audited.book.columns(at.sheet); ++column) {
        const BookCell* other = audited.book.find({at.sheet, at.row, column});
        if (column != at.column && other != nullptr && other->number() != nullptr) return false;
    }
    return true;
}

}  // namespace

void find_twins(const AuditedBook& audited, Findings& findings) {
    std::map<Words, Spot> first;
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        for (const BookCell& cell : audited.book.sheets[s].cells) {
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            if (cell.is_formula() || cell.number() == nullptr || !is_input(audited, at)) continue;
            const Words label = words_of(audited.labels.of_row(at));
            if (label.size() < 2) continue;
            const auto [known, is_new] = first.try_emplace(label, at);
            if (is_new || known->second.sheet == at.sheet) continue;
            const double other = *audited.book.find(known->second)->number();
            const bool same = other == *cell.number();
            const auto [there, here] =
                exact_at_both({audited.book, known->second, other}, {audited.book, at, *cell.number()});
            findings.add(FindingKind::twin, Severity::warning, {at, known->second},
                         audited.labels.of_row(at) + " is typed in " + audited.book.text(known->second) +
                             " as well" +
                             (same ? "" : ", with another value (" + there + " there, " + here + " here)") +
                             "; type it once, and refer to that.");
        }
}

}  // namespace undercroft::audit
