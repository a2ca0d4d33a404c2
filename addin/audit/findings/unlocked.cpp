// Formulas that anybody can type over on a sheet that is protected.
#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_unlocked(const AuditedBook& audited, Findings& findings) {
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s) {
        const BookSheet& sheet = audited.book.sheets[s];
        if (!sheet.is_protected) continue;
        std::size_t locked = 0;
        std::vector<Spot> open;
        for (const BookCell& cell : sheet.cells) {
            if (!cell.is_formula()) continue;
            if (sheet.formats[cell.format].locked)
                ++locked;
            else
                open.push_back({static_cast<std::int32_t>(s), cell.row, cell.column});
        }
        if (open.empty() || locked == 0) continue;
        findings.add(FindingKind::unlocked, Severity::warning, std::move(open),
                     "the sheet is protected, and this formula is not; protect the cell (Format > Cells > "
                     "Cell Protection).");
    }
}

}  // namespace undercroft::audit
