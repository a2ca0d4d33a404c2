#include <set>

#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr std::int64_t most_looked_at = 5000;  // of one range; what is wrong shows in the first of them

class FormatSearch {
public:
    FormatSearch(const AuditedBook& audited, Findings& findings) : audited_(audited), grouped_(findings) {}

    void look() {
        for (const FormulaCell& formula : audited_.formulas.all())
            for (const Use& use : audited_.uses(formula))
                if (use.role == UseRole::argument && use.function != nullptr &&
                    use.place < use.function->parameters.size())
                    look_at(formula, use);
    }

private:
    /// What a function of ours is given. A number with its unit is held against that, one without against
    /// what the argument, or the column of a table, reads.
    void look_at(const FormulaCell& formula, const Use& use) {
        const addin::ValueType& type = use.function->parameters[use.place].type;
        if (!looked_at_.insert({use.area, &type}).second) return;  // a table is looked up many times
        const auto width = static_cast<std::size_t>(use.area.last_column - use.area.first_column + 1);
        std::int64_t looked = 0;
        audited_.book.each_cell(use.area, [&](const BookCell& cell) {
            if (cell.number() == nullptr || ++looked > most_looked_at) return;
            const Spot at{use.area.sheet, cell.row, cell.column};
            SeenNumber seen{audited_.text(formula.at.sheet, at), *cell.number(), audited_.format(at).number};
            seen.day = day_text(audited_.book, at, *cell.number()).value_or("");
            if (!use.area.is_single()) seen.unit_cell = unit_within(use.area, at);
            if (!seen.unit_cell.empty()) return tell(formula, at, format_against_unit(seen));
            seen.column_head = audited_.labels.of_column(at);
            if (use.area.is_single()) {
                seen.row_label = audited_.labels.of_row(at);
                return tell(formula, at, format_against_type(seen, type));
            }
            const BookCell* head = audited_.book.find({at.sheet, use.area.first_row, at.column});
            if (head != nullptr && head->text() != nullptr) {  // the function reads the unit in it
                seen.unit_cell = unit_in_label(*head->text()).value_or(*head->text());
                return tell(formula, at, format_against_unit(seen));
            }
            const auto place = static_cast<std::size_t>(cell.column - use.area.first_column);
            if (type.shape == addin::Shape::table && type.columns.size() == width)
                tell(formula, at, format_against_type(seen, type.columns[place]));
        });
    }

    /// The unit of a number where the function sees it.
    [[nodiscard]] std::string unit_within(const Area& area, const Spot& at) const {
        const std::optional<UnitCell> unit = audited_.units.of(at);
        return unit && area.holds(unit->at) ? unit->text->text : std::string();
    }

    void tell(const FormulaCell& formula, const Spot& at, const std::optional<std::string>& says) {
        if (!says || !told_.insert(at).second) return;
        grouped_.add(FindingKind::number_format, Severity::error, formula.group,
                     1000 * static_cast<std::size_t>(at.row) + static_cast<std::size_t>(at.column), at,
                     *says + ".");
    }

    const AuditedBook& audited_;
    Grouped grouped_;
    std::set<Spot> told_;
    std::set<std::pair<Area, const addin::ValueType*>> looked_at_;
};

}  // namespace

namespace {

/// A date where a number is meant: it has a unit, or stands in a column of numbers. "3/4" and "2-1" become
/// dates as they are typed.
void find_dates(const AuditedBook& audited, Findings& findings) {
    const auto is_number = [&](const Spot& at) {
        const BookCell* cell = audited.book.find(at);
        return cell != nullptr && !cell->is_formula() && cell->number() != nullptr &&
               audited.format(at).number.shown_as == ShownAs::number;
    };
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        for (const BookCell& cell : audited.book.sheets[s].cells) {
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            if (cell.is_formula() || cell.number() == nullptr ||
                audited.format(at).number.shown_as != ShownAs::date)
                continue;
            const bool in_column =
                is_number({at.sheet, at.row - 1, at.column}) && is_number({at.sheet, at.row + 1, at.column});
            if (!audited.units.of(at) && !in_column) continue;
            if (findings.has(FindingKind::number_format, at)) continue;
            const std::optional<std::string> day = day_text(audited.book, at, *cell.number());
            const std::string shown = day ? "the date " + *day : "a date";
            findings.add(FindingKind::number_format, Severity::error, at,
                         "it is shown as " + shown + ", and is the number " + exact_text(*cell.number()) +
                             " to every formula; type the number that is meant, and give the cell a format "
                             "for numbers.");
        }
}

}  // namespace

void find_number_formats(const AuditedBook& audited, Findings& findings) {
    FormatSearch(audited, findings).look();
    find_dates(audited, findings);
}

}  // namespace undercroft::audit
