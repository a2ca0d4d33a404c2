#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"

namespace undercroft::audit {

namespace {

Kind kind_of(UnitSlip::Kind slip) {
    switch (slip) {
        case UnitSlip::Kind::clash:
            return Kind::unit_clash;
        case UnitSlip::Kind::passed_bare:
            return Kind::passed_bare;
        case UnitSlip::Kind::left_out:
            return Kind::unit_left_out;
        case UnitSlip::Kind::bare_number:
            return Kind::bare_number;
    }
    return Kind::unit_clash;
}

Severity severity_of(Kind kind) {
    return kind == Kind::unit_clash || kind == Kind::passed_bare ? Severity::error : Severity::warning;
}

std::string sentence(const UnitSlip& slip) {
    switch (slip.kind) {
        case UnitSlip::Kind::clash:
            return slip.says + "; correct the unit, or the formula.";
        case UnitSlip::Kind::bare_number:
            return slip.says + "; put it in a cell of its own, with its unit, and refer to that.";
        default:
            return slip.says + ".";
    }
}

}  // namespace

void find_unit_slips(const Workings& workings, Findings& findings) {
    Grouped grouped(findings);
    for (const FormulaCell& formula : workings.formulas.all()) {
        const UnitReading& reading = workings.reading_of(formula);
        bool told = false;
        for (std::size_t i = 0; i < reading.slips.size(); ++i) {
            const Kind kind = kind_of(reading.slips[i].kind);
            told = told || severity_of(kind) == Severity::error;
            grouped.add(kind, severity_of(kind), formula.group, i, formula.at, sentence(reading.slips[i]));
        }
        // A cell that shows an error is told as such.
        const bool shows_error = formula.cell->error != 0;
        if (reading.answer.verdict == UnitVerdict::inconsistent && !told && !shows_error)
            grouped.add(Kind::unit_clash, Severity::error, formula.group, 1000, formula.at,
                        reading.answer.reason + "; correct the unit, or the formula.");
    }
}

}  // namespace undercroft::audit
