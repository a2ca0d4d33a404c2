#include <map>
#include <set>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/lines.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// How many formulas and typed numbers have a style.
struct StyleUse {
    std::size_t formulas = 0;
    std::size_t typed = 0;
    [[nodiscard]] bool is_for_results() const { return formulas >= 3 && formulas >= 4 * typed; }
};

std::map<std::string, StyleUse> style_uses(const AuditedBook& audited) {
    std::map<std::string, StyleUse> uses;
    for (const BookSheet& sheet : audited.book.sheets) {
        std::vector<StyleUse> of_format(sheet.formats.size());
        for (const BookCell& cell : sheet.cells) {
            if (cell.is_formula())
                ++of_format[cell.format].formulas;
            else if (cell.number() != nullptr)
                ++of_format[cell.format].typed;
        }
        for (std::size_t f = 0; f < of_format.size(); ++f) {
            StyleUse& use = uses[sheet.formats[f].style];
            use.formulas += of_format[f].formulas;
            use.typed += of_format[f].typed;
        }
    }
    uses.erase("");
    uses.erase("Default");
    return uses;
}

void find_by_style(const AuditedBook& audited, std::set<Spot>& found, Findings& findings) {
    const std::map<std::string, StyleUse> uses = style_uses(audited);
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s) {
        const BookSheet& sheet = audited.book.sheets[s];
        for (const BookCell& cell : sheet.cells) {
            if (cell.is_formula() || cell.number() == nullptr) continue;
            const CellFormat& format = sheet.formats[cell.format];
            const auto use = uses.find(format.style);
            if (!format.locked || use == uses.end() || !use->second.is_for_results()) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            found.insert(at);
            findings.add(FindingKind::typed_over, Severity::error, at,
                         "the number " + exact_text(*cell.number()) +
                             " is typed in a cell for a computed result (its style is " + format.style +
                             "); put the formula back.");
        }
    }
}

}  // namespace

void find_typed_over(const AuditedBook& audited, Findings& findings) {
    std::set<Spot> found;
    find_by_style(audited, found, findings);
    each_line(audited, [&](const Line& line) {
        for (std::size_t i = 1; i + 1 < line.size(); ++i) {
            const std::int32_t like = line[i - 1].group;
            if (line[i].group != LineCell::typed || like < 0 || line[i + 1].group != like) continue;
            const bool three =
                (i >= 2 && line[i - 2].group == like) || (i + 2 < line.size() && line[i + 2].group == like);
            if (!three || !found.insert(line[i].at).second) continue;
            findings.add(FindingKind::typed_over, Severity::error, line[i].at,
                         "a number is typed between like formulas; copy the formula of " +
                             audited.text(line[i].at.sheet, line[i - 1].at) +
                             " here, or say in a note why it is typed.");
        }
    });
}

}  // namespace undercroft::audit
