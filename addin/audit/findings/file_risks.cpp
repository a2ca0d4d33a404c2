#include <algorithm>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_file_risks(const AuditedBook& audited, Findings& findings) {
    const Book& book = audited.book;
    const auto tell = [&](FindingKind kind, Severity severity, const std::string& says) {
        findings.add(kind, severity, says);
    };
    if (book.kind == FileKind::excel_97)
        tell(FindingKind::file, Severity::error,
             "an .xls file loses the functions of this add-in for good; keep the workbook as .ods.");
    const auto& groups = audited.formulas.groups();
    if (book.kind == FileKind::excel_2007 && std::any_of(groups.begin(), groups.end(), calls_own))
        tell(FindingKind::file, Severity::warning,
             "an .xlsx file keeps old values when it is opened, until a hard recalculation (Ctrl+Shift+F9); "
             "keep the workbook as .ods. This audit computed every cell anew.");
    if (book.rounds_to_shown)
        tell(FindingKind::file, Severity::warning,
             "results are cut to the digits shown (Tools > Options > Calc > Calculate: precision as shown); "
             "switch that off.");
    if (book.iterates)
        tell(FindingKind::file, Severity::warning,
             "circular references are computed by repetition (Tools > Options > Calc > Calculate: "
             "iterations), which hides circles; switch that off.");
    if (!book.computes_by_itself)
        tell(FindingKind::file, Severity::warning,
             "the workbook does not compute by itself (Data > Calculate > AutoCalculate); switch that on.");
}

}  // namespace undercroft::audit
