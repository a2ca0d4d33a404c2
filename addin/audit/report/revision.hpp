/// \file revision.hpp
/// A workbook held against an earlier one of the same job: what a revision note says.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/report/sheet_heads.hpp"

namespace undercroft::audit {

/// In the order in which a checker reads them.
enum class Change { verdict, input, unit, formula, name, setting, sheet, row, wording, result };
[[nodiscard]] std::string_view title_of(Change change);  ///< `Verdicts that turned`

struct RevisionLine {
    Change change = Change::input;
    std::optional<Spot> first;  ///< where it stands now; nothing for what is gone or concerns no cell
    std::string target;         ///< `Site.G7`
    std::string cells;          ///< now or, of what is gone, in the earlier one
    std::string label;
    std::string was;
    std::string is;
    std::string says;  ///< `+12.4 %`, `the number stayed`
};

struct Revision {
    std::vector<RevisionLine> lines;
    [[nodiscard]] std::size_t count(Change change) const;
    /// `1 verdict turned; 3 inputs, 1 unit and 12 results are others.`
    [[nodiscard]] std::string summary() const;
};

[[nodiscard]] Revision revision_of(const AuditedBook& now, const SheetHeads& heads, const Book& earlier);

}  // namespace undercroft::audit
