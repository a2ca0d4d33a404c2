// Numbers without a unit, where what is computed of them has one that only fits if they have theirs.
#include <algorithm>
#include <set>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/audit/findings/words.hpp"
#include "addin/audit/units/unit_reader.hpp"

namespace undercroft::audit {

namespace {

/// The cells that a formula takes numbers without a unit from.
struct BareCells {
    std::set<Spot> cells;
    bool any_unit = false;  ///< of the others
};

BareCells bare_cells(const AuditedBook& audited, const FormulaCell& formula) {
    BareCells bare;
    for (const Use& use : audited.uses(formula)) {
        if (use.role != UseRole::operand || !use.area.is_single()) continue;
        const Spot at = use.area.first();
        const BookCell* cell = audited.book.find(at);
        if (cell == nullptr || cell->number() == nullptr) continue;
        if (audited.units.of(at))
            bare.any_unit = true;
        else
            bare.cells.insert(at);
    }
    return bare;
}

/// A dash stands where its unit would: it needs none.
bool has_dash(const AuditedBook& audited, const Spot& at) {
    for (const std::int32_t column : {at.column - 1, at.column + 1}) {
        const BookCell* cell = audited.book.find({at.sheet, at.row, column});
        if (cell != nullptr && cell->text() != nullptr && *cell->text() == "-") return true;
    }
    return false;
}

/// Whether units stand right of most numbers in the cell's column, and nothing in that of the cell itself.
bool is_gap_in_units(const AuditedBook& audited, const Spot& at) {
    if (audited.book.find({at.sheet, at.row, at.column + 1}) != nullptr) return false;
    std::size_t with = 0;
    std::size_t without = 0;
    for (const std::uint32_t i : audited.book.column(at.sheet, at.column)) {
        const BookCell& cell = audited.sheet(at.sheet).cells[i];
        if (cell.number() == nullptr) continue;
        const auto unit = audited.units.of({at.sheet, cell.row, at.column});
        ++(unit && unit->beside ? with : without);
    }
    return with >= 3 && with >= 2 * without;
}

/// What is a plain number by what it is called.
bool is_called_plain(const AuditedBook& audited, const Spot& at) {
    return any_of(words_of(audited.labels.of_row(at)),
                  {"coefficient", "factor", "ratio", "number", "count", "roughness", "share", "porosity",
                   "efficiency", "safety", "bulking", "swell", "coeff", "friction"});
}

/// Whether the clash is with the very number that may lack its unit.
bool says_plain(const UnitReading& reading) {
    return reading.answer.reason.find("the plain number in ") != std::string::npos;
}

/// Numbers handed to functions of ours with the cell for their unit, in which nothing stands.
void find_empty_unit_cells(const AuditedBook& audited, std::set<Spot>& told, Findings& findings) {
    for (const FormulaCell& formula : audited.formulas.all())
        for (const Use& use : audited.uses(formula)) {
            if (use.role != UseRole::argument || !use.area.is_pair() || use.function == nullptr) continue;
            if (use.place >= use.function->parameters.size()) continue;
            const addin::ValueType& type = use.function->parameters[use.place].type;
            if (type.shape != addin::Shape::quantity || type.is_plain()) continue;
            const Spot at = use.area.first();
            const BookCell* number = audited.book.find(at);
            const BookCell* unit = audited.book.find({at.sheet, at.row, at.column + 1});
            if (number == nullptr || number->is_formula() || number->number() == nullptr ||
                *number->number() == 0)
                continue;
            if ((unit != nullptr && !unit->shows_nothing()) || !told.insert(at).second) continue;
            findings.add(FindingKind::missing_unit, Severity::warning, {at, formula.at},
                         "no unit stands beside it, so that " + use.function->name + " in " +
                             audited.text(at.sheet, formula.at) + " reads it in " +
                             addin::bare_unit_text(type) + "; write its unit beside it.");
        }
}

}  // namespace

void find_missing_units(const AuditedBook& audited, Findings& findings) {
    const UnitSources as_plain{audited.book, audited.names, audited.formulas, audited.units, true};
    std::set<Spot> told;
    find_empty_unit_cells(audited, told, findings);
    Grouped grouped(findings);
    for (const FormulaCell& formula : audited.formulas.all()) {
        if (audited.reading_of(formula).answer.verdict != UnitVerdict::not_given ||
            !audited.units.of(formula.at))
            continue;
        const BareCells bare = bare_cells(audited, formula);
        if (bare.cells.empty() || !bare.any_unit) continue;
        ErrorsToExplain none{0};
        const UnitReading reading =
            read_units(as_plain, audited.formulas.group_of(formula), formula.at, none);
        if (reading.answer.verdict != UnitVerdict::inconsistent) continue;
        const Spot& first = *bare.cells.begin();
        const bool may_lack =
            bare.cells.size() == 1 && is_gap_in_units(audited, first) && !is_called_plain(audited, first);
        const bool all_plain = std::all_of(bare.cells.begin(), bare.cells.end(), [&](const Spot& at) {
            return is_called_plain(audited, at) || has_dash(audited, at);
        });
        const bool whatever_it_is =
            reading.answer.of_size || (!reading.slips.empty() && !says_plain(reading));
        if (whatever_it_is || all_plain) {
            grouped.add(FindingKind::unit_clash, Severity::error, formula.group, 2000, formula.at,
                        reading.answer.reason + "; correct the unit, or the formula.");
        } else if (may_lack && told.insert(first).second) {
            findings.add(FindingKind::missing_unit, Severity::warning, {first, formula.at},
                         "no unit stands beside it, while as a plain number it does not fit in " +
                             audited.text(first.sheet, formula.at) + ": " + reading.answer.reason +
                             "; write its unit beside it.");
        }
    }
}

}  // namespace undercroft::audit
