#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

/// `a, b, c and 40 more`
std::string listed(const std::set<std::string>& names) {
    constexpr std::size_t most = 8;
    std::string text;
    std::size_t shown = 0;
    for (const std::string& name : names) {
        if (shown == most) break;
        text += (shown++ == 0 ? "" : ", ") + name;
    }
    return names.size() <= most ? text : text + " and " + std::to_string(names.size() - most) + " more";
}

}  // namespace

void find_what_comes_along(const AuditedBook& audited, const FileRisks& risks, Findings& findings) {
    if (!risks.links().empty())
        findings.add(
            FindingKind::link, Severity::warning,
            "the file takes in what lies outside of it: " + listed(risks.links()) +
                "; the audit followed none. What is seen there may change, and whoever opens the file may be "
                "seen to do so: put it into the workbook, or take it out.");
    if (!risks.scripts().empty() || audited.book.has_macros)
        findings.add(FindingKind::macros, Severity::warning,
                     "the file holds macros or scripts, or starts them" +
                         (risks.scripts().empty() ? std::string() : ": " + listed(risks.scripts())) +
                         "; the audit ran none. Know what they do before they are let run.");
    if (!risks.controls().empty())
        findings.add(
            FindingKind::macros, Severity::warning,
            "the file holds controls or objects of other programs: " + listed(risks.controls()) +
                "; the audit touched none. A control that is bound to a cell changes it without a trace: "
                "know what each does, or take it out.");
}

}  // namespace undercroft::audit
