#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_hidden(const AuditedBook& audited, Findings& findings) {
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s) {
        const BookSheet& sheet = audited.book.sheets[s];
        std::vector<Spot> on_sheet;
        std::vector<Spot> in_rows;
        std::vector<Spot> in_columns;
        for (const BookCell& cell : sheet.cells) {
            if (!cell.is_formula()) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            if (sheet.hidden)
                on_sheet.push_back(at);
            else if (sheet.hidden_rows.contains(cell.row))
                in_rows.push_back(at);
            else if (sheet.hidden_columns.contains(cell.column))
                in_columns.push_back(at);
        }
        const auto tell = [&](std::vector<Spot> cells, const std::string& where, const std::string& show) {
            if (cells.empty()) return;
            const std::string count = std::to_string(cells.size());
            findings.add(FindingKind::hidden, Severity::warning, std::move(cells),
                         where + " and holds formulas (" + count + "); show it (" + show + ") and check it.");
        };
        tell(std::move(on_sheet), "the sheet " + sheet.name + " is hidden", "Sheet > Show Sheet");
        tell(std::move(in_rows), "a part of the sheet " + sheet.name + " is in hidden rows",
             "Format > Rows > Show");
        tell(std::move(in_columns), "a part of the sheet " + sheet.name + " is in hidden columns",
             "Format > Columns > Show");
    }
}

}  // namespace undercroft::audit
