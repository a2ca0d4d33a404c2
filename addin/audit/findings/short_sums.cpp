#include <algorithm>
#include <map>
#include <string_view>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"

namespace undercroft::audit {

namespace {

constexpr std::string_view gathering[] = {"SUM", "AVERAGE", "MIN", "MAX", "MEDIAN", "PRODUCT", "AND", "OR"};

/// Whether the range is gathered as a whole: by a sum, or by a function of ours that adds amounts.
bool is_gathered(const Use& use) {
    if (use.role == UseRole::observed) return use.call != nullptr && use.call->text == "COUNT";
    if (use.role != UseRole::passed && use.role != UseRole::argument) return false;
    if (use.function != nullptr) return use.function->role == addin::Role::gathers;
    return calls_one_of(*use.call, gathering);
}

class MissedNumber {
public:
    MissedNumber(const AuditedBook& audited, const FormulaCell& formula)
        : audited_(audited), formula_(formula) {}

    /// The number just beyond the range that it leaves out, or nothing.
    std::optional<Spot> beside(const Area& area) const {
        const bool upright =
            area.first_column == area.last_column || area.last_column - area.first_column == 1;
        if (upright && area.last_row > area.first_row) {
            for (const std::int32_t row : {area.last_row + 1, area.first_row - 1}) {
                const Spot beyond{area.sheet, row, area.first_column};
                const Spot inside{area.sheet, row > area.last_row ? area.last_row : area.first_row,
                                  area.first_column};
                if (belongs(beyond, inside, area)) return beyond;
            }
        }
        if (area.first_row == area.last_row && area.last_column - area.first_column > 1) {
            for (const std::int32_t column : {area.last_column + 1, area.first_column - 1}) {
                const Spot beyond{area.sheet, area.first_row, column};
                const Spot inside{area.sheet, area.first_row,
                                  column > area.last_column ? area.last_column : area.first_column};
                if (belongs(beyond, inside, area)) return beyond;
            }
        }
        return std::nullopt;
    }

private:
    /// A number of the same unit, that is no total itself.
    [[nodiscard]] bool belongs(const Spot& beyond, const Spot& inside, const Area& area) const {
        if (beyond.row < 0 || beyond.column < 0 || formula_.area.holds(beyond)) return false;
        const BookCell* cell = audited_.book.find(beyond);
        const BookCell* last = audited_.book.find(inside);
        if (cell == nullptr || cell->number() == nullptr) return false;
        if (last == nullptr || last->number() == nullptr)
            return false;  // the range ends with a gap on purpose
        const std::optional<UnitCell> unit = audited_.units.of(beyond);
        const std::optional<UnitCell> unit_inside = audited_.units.of(inside);
        if (unit.has_value() != unit_inside.has_value()) return false;
        if (unit && !(unit->text->unit->dimension == unit_inside->text->unit->dimension)) return false;
        if (!cell->is_formula()) return true;
        const FormulaCell* other = audited_.formulas.find(beyond);
        if (other == nullptr) return false;
        const std::vector<Use> uses = audited_.uses(*other);
        return std::none_of(uses.begin(), uses.end(), [&](const Use& use) {
            const bool is_total =
                use.call != nullptr && is_gathered(use) && !use.area.is_single() && !use.area.is_pair();
            if (is_total) return true;
            return use.area.sheet == area.sheet && use.area.first_row <= area.last_row &&
                   use.area.last_row >= area.first_row && use.area.first_column <= area.last_column &&
                   use.area.last_column >= area.first_column && !use.area.is_single();
        });
    }

    const AuditedBook& audited_;
    const FormulaCell& formula_;
};

/// A running total or a moving window: its range ends inside a column on purpose.
bool moves_along(const AuditedBook& audited, const FormulaCell& formula, const Use& use) {
    if (use.node->kind == addin::NodeKind::reference) {
        const addin::CellReference& reference = use.node->reference;
        if (reference.first.row_fixed != reference.last.row_fixed ||
            reference.first.column_fixed != reference.last.column_fixed)
            return true;
    }
    const bool one_of_many = audited.formulas.group_of(formula).members.size() > 1;
    const bool alongside =
        (formula.at.row >= use.area.first_row && formula.at.row <= use.area.last_row) ||
        (formula.at.column >= use.area.first_column && formula.at.column <= use.area.last_column &&
         use.area.first_row == use.area.last_row);
    return one_of_many && alongside;
}

/// Where all ranges end that are gathered: a number at the end of another one belongs to that, unless the two
/// overlap, when one of them is wrong about where the list ends.
class Ends {
public:
    void add(const Area& area) {
        ends_.emplace(area.first(), area);
        ends_.emplace(Spot{area.sheet, area.last_row, area.first_column}, area);
        ends_.emplace(Spot{area.sheet, area.first_row, area.last_column}, area);
    }
    [[nodiscard]] bool is_end(const Spot& spot, const Area& of_another_than) const {
        const auto [first, last] = ends_.equal_range(spot);
        return std::any_of(first, last,
                           [&](const auto& end) { return !end.second.overlaps(of_another_than); });
    }

private:
    std::multimap<Spot, Area> ends_;
};

}  // namespace

void find_short_sums(const AuditedBook& audited, Findings& findings) {
    struct Gathered {
        const FormulaCell* formula;
        std::size_t part;
        Area area;
    };
    std::vector<Gathered> all;
    Ends ends;
    for (const FormulaCell& formula : audited.formulas.all()) {
        std::size_t part = 0;
        for (const Use& use : audited.uses(formula)) {
            ++part;
            if (!is_gathered(use)) continue;
            if (use.role != UseRole::observed) ends.add(use.area);  // a COUNT stands beside what it counts
            if (!moves_along(audited, formula, use)) all.push_back({&formula, part, use.area});
        }
    }
    Grouped grouped(findings);
    for (const auto& [formula, part, area] : all) {
        const std::optional<Spot> missed = MissedNumber(audited, *formula).beside(area);
        if (!missed || ends.is_end(*missed, area)) continue;
        grouped.add(FindingKind::sum_misses, Severity::warning, formula->group, part, formula->at,
                    "the range " + audited.book.text_from(formula->at.sheet, area) + " ends beside " +
                        audited.text(formula->at.sheet, *missed) +
                        ", a number of the same kind that it leaves out; include it, or leave a blank row "
                        "between.");
    }
}

}  // namespace undercroft::audit
