#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"

namespace undercroft::audit {

namespace {

FindingKind kind_of(SlipKind slip) {
    switch (slip) {
        case SlipKind::clash:
            return FindingKind::unit_clash;
        case SlipKind::passed_bare:
            return FindingKind::passed_bare;
        case SlipKind::left_out:
            return FindingKind::unit_left_out;
        case SlipKind::bare_number:
            return FindingKind::bare_number;
    }
    return FindingKind::unit_clash;
}

Severity severity_of(FindingKind kind) {
    return kind == FindingKind::unit_clash || kind == FindingKind::passed_bare ? Severity::error
                                                                               : Severity::warning;
}

std::string sentence(const UnitSlip& slip) {
    switch (slip.kind) {
        case SlipKind::clash:
            return slip.says + "; correct the unit, or the formula.";
        case SlipKind::bare_number:
            return slip.says + "; put it in a cell of its own, with its unit, and refer to that.";
        default:
            return slip.says + ".";
    }
}

}  // namespace

void find_unit_slips(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    for (const FormulaCell& formula : audited.formulas.all()) {
        const UnitReading& reading = audited.reading_of(formula);
        bool has_error = false;
        for (std::size_t i = 0; i < reading.slips.size(); ++i) {
            const FindingKind kind = kind_of(reading.slips[i].kind);
            has_error = has_error || severity_of(kind) == Severity::error;
            grouped.add(kind, reading.slips[i].is_minor ? Severity::note : severity_of(kind), formula.group, i, formula.at,
                        sentence(reading.slips[i]));
        }
        // A cell that shows an error is told as such.
        const bool shows_error = formula.cell->error != 0;
        if (reading.answer.verdict == UnitVerdict::inconsistent && !has_error && !shows_error)
            grouped.add(FindingKind::unit_clash, Severity::error, formula.group, 1000, formula.at,
                        reading.answer.reason + "; correct the unit, or the formula.");
    }
}

}  // namespace undercroft::audit
