/// \file audited.hpp
/// A made-up workbook audited, and what was found asked for by cell.
#pragma once

#include <algorithm>
#include <string>

#include "addin/audit/book/stored_values.hpp"
#include "addin/audit/report/report.hpp"
#include "tests/support/book_maker.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/mistakes.hpp"

namespace undercroft::audit {

/// What the formulas of a workbook show, as a file would hold it.
[[nodiscard]] inline StoredValues results_of(const Book& book) {
    StoredValues results;
    for (const BookSheet& sheet : book.sheets)
        for (const BookCell& cell : sheet.cells)
            if (cell.is_formula())
                results.add(sheet.name, cell.row, cell.column, {cell.value, cell.error != 0});
    return results;
}

}  // namespace undercroft::audit

namespace undercroft::tests {

using audit::FindingKind;
using audit::Report;
using audit::UnitVerdict;

inline Report audited(const BookMaker& maker) {
    const audit::Book book = maker.made();
    return audit::audit_workbook({.book = book});
}

/// The finding of that kind that names the cell (on the first sheet), or nullptr.
inline const audit::ReportFinding* found(const Report& report, FindingKind kind, const std::string& cell,
                                         std::int32_t sheet = 0) {
    for (const audit::ReportFinding& finding : report.findings) {
        if (finding.kind != kind) continue;
        const audit::Spot at = spot_of(cell, sheet);
        if (std::find(finding.all.begin(), finding.all.end(), at) != finding.all.end()) return &finding;
    }
    return nullptr;
}

inline std::size_t count_of(const Report& report, FindingKind kind) {
    return static_cast<std::size_t>(
        std::count_if(report.findings.begin(), report.findings.end(),
                      [&](const audit::ReportFinding& finding) { return finding.kind == kind; }));
}

/// The line of the map that a cell stands first in.
inline const audit::MapLine* line_at(const Report& report, const std::string& cell, std::int32_t sheet = 0) {
    for (const audit::SheetMap& on : report.map)
        for (const audit::MapLine& line : on.lines)
            if (line.first == spot_of(cell, sheet)) return &line;
    return nullptr;
}

/// A calc sheet with a length, a width, a depth in mm and a volume, all with units.
inline BookMaker pit() {
    BookMaker maker;
    maker.sheet("Pit").put("A1", "Description").put("B1", "Symbol").put("C1", "Value").put("D1", "Unit");
    maker.row(2, "Length of the base", 40, "m").row(3, "Width of the base", 12, "m");
    maker.row(4, "Depth of stone", 305, "mm").row(5, "Volume of stone", 146.4, "m3");
    return maker;
}

}  // namespace undercroft::tests
