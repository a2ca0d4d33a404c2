#include <algorithm>

#include "addin/audit/findings/findings.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

namespace {

bool has_own_functions(const Workings& workings) {
    const auto& groups = workings.formulas.groups();
    return std::any_of(groups.begin(), groups.end(), [](const FormulaGroup& group) {
        bool own = false;
        if (group.unreadable.empty())
            walk(group.tree, [&](const addin::Node& node) {
                own = own ||
                      (node.kind == addin::Node::Kind::call && addin::find_function(node.text) != nullptr);
            });
        return own;
    });
}

}  // namespace

void find_file_risks(const Workings& workings, Findings& findings) {
    const Book& book = workings.book;
    const auto tell = [&](Kind kind, Severity severity, const std::string& says) {
        findings.add(kind, severity, std::vector<Spot>{}, says);
    };
    if (book.kind == FileKind::excel_97)
        tell(Kind::file, Severity::error,
             "an .xls file loses the functions of this add-in for good; keep the workbook as .ods.");
    if (book.kind == FileKind::excel_2007 && has_own_functions(workings))
        tell(Kind::file, Severity::warning,
             "an .xlsx file keeps old values when it is opened, until a hard recalculation (Ctrl+Shift+F9); "
             "keep the "
             "workbook as .ods. This audit computed every cell anew.");
    if (book.rounds_to_shown)
        tell(Kind::file, Severity::warning,
             "results are cut to the digits shown (Tools > Options > Calc > Calculate: precision as shown); "
             "switch that off.");
    if (book.iterates)
        tell(Kind::file, Severity::warning,
             "circular references are computed by repetition (Tools > Options > Calc > Calculate: "
             "iterations), which hides "
             "circles; switch that off.");
    if (!book.computes_by_itself)
        tell(Kind::file, Severity::warning,
             "the workbook does not compute by itself (Data > Calculate > AutoCalculate); switch that on.");
    if (book.has_macros)
        tell(Kind::macros, Severity::warning,
             "the file holds macros; the audit ran none. Know what they do before they are let run.");
}

}  // namespace undercroft::audit
