// Comments in which somebody doubts what stands in the cell.
#include "addin/audit/findings/findings.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

void find_doubts(const AuditedBook& audited, Findings& findings) {
    static constexpr std::string_view doubts[] = {
        "guess",       "assum",       "tbc",      "tbd",    "to be confirmed", "to be checked",
        "todo",        "to do",       "?",        "verify", "confirm",         "missing",
        "placeholder", "provisional", "not sure", "unsure", "preliminary",     "estimate"};
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        for (const CellComment& comment : audited.book.sheets[s].comments) {
            const std::string text = lower_case(comment.text);
            const bool doubtful =
                std::any_of(std::begin(doubts), std::end(doubts),
                            [&](std::string_view doubt) { return text.find(doubt) != std::string::npos; });
            if (!doubtful) continue;
            findings.add(FindingKind::comment, Severity::warning,
                         Spot{static_cast<std::int32_t>(s), comment.row, comment.column},
                         "its comment says: \"" + comment.text.substr(0, 120) +
                             "\"; settle it, and take the comment away.");
        }
}

}  // namespace undercroft::audit
