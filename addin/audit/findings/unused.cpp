#include <map>
#include <set>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/used_cells.hpp"

namespace undercroft::audit {

namespace {

std::set<Spot> named_cells(const AuditedBook& audited) {
    std::set<Spot> cells;
    for (const DefinedName& name : audited.book.names) {
        const NameMeaning* meaning = audited.names.find(name.name, name.sheet);
        if (meaning == nullptr || !meaning->readable || meaning->tree.kind != addin::NodeKind::reference)
            continue;
        const auto area = area_of(audited.book, meaning->tree.reference, name.base, name.base);
        if (area) cells.insert(area->first());
    }
    return cells;
}

/// Columns of tables that no formula looks at at all: kept for the record, such as the date of a test. A
/// table's column is a run of typed cells under a head, with another column of the table beside it.
class RecordColumns {
public:
    RecordColumns(const AuditedBook& audited, const UsedCells& used) : audited_(audited), used_(used) {}

    [[nodiscard]] bool holds(const Spot& spot) {
        const auto known = last_.find({spot.sheet, spot.column});
        if (known != last_.end() && spot.row <= known->second.last_row) return known->second.is_record;
        const std::int32_t head = end_of_run(spot, -1);
        const std::int32_t last = end_of_run(spot, 1) - 1;
        const bool is_record = is_table_head({spot.sheet, head, spot.column}) &&
                               !used_.any({spot.sheet, head + 1, spot.column}, last);
        last_[{spot.sheet, spot.column}] = {last, is_record};
        return is_record;
    }

private:
    struct TypedRun {
        std::int32_t last_row;
        bool is_record;
    };

    /// The row in which the typed cells of a column end, upwards or downwards.
    [[nodiscard]] std::int32_t end_of_run(Spot spot, std::int32_t step) const {
        std::int32_t blanks = 0;
        while (spot.row >= 0 && blanks <= most_blanks) {
            const BookCell* cell = audited_.book.find(spot);
            if (cell != nullptr && (cell->is_formula() || is_head(spot))) break;
            blanks = cell == nullptr ? blanks + 1 : 0;
            spot.row += step;
        }
        return spot.row;
    }
    /// A text that is no entry.
    [[nodiscard]] bool is_head(const Spot& spot) const {
        const BookCell* cell = audited_.book.find(spot);
        if (cell == nullptr || cell->is_formula() || cell->text() == nullptr || cell->text()->empty())
            return false;
        const CellFormat& format = audited_.format(spot);
        const bool entry = audited_.sheet(spot.sheet).is_protected && !format.locked;
        return !entry && !format.has_list;
    }
    /// In a row of heads and of nothing else.
    [[nodiscard]] bool is_table_head(const Spot& spot) const {
        if (spot.row < 0 || !is_head(spot)) return false;
        int heads = 0;
        for (std::int32_t column = 0; column < audited_.book.columns(spot.sheet); ++column) {
            const Spot beside{spot.sheet, spot.row, column};
            if (audited_.book.find(beside) == nullptr) continue;
            if (!is_head(beside)) return false;
            ++heads;
        }
        return heads >= 3;
    }

    static constexpr std::int32_t most_blanks = 30;
    const AuditedBook& audited_;
    const UsedCells& used_;
    std::map<std::pair<std::int32_t, std::int32_t>, TypedRun> last_;
};

/// Whether a unit stands beside a number or over it by itself, as beside what is computed with.
bool has_unit_cell(const AuditedBook& audited, const Spot& at) {
    const std::optional<UnitCell> unit = audited.units.of(at);
    return unit && !unit->in_label && (unit->beside || unit->at.row != at.row);
}

/// The first of a column of numbers, the next two of which are used: where a table begins there is nothing
/// before to reckon with.
bool begins_used_column(const AuditedBook& audited, const UsedCells& used, const Spot& at) {
    const auto is_typed = [&](std::int32_t row) {
        const BookCell* cell = audited.book.find({at.sheet, row, at.column});
        return cell != nullptr && !cell->is_formula() && cell->number() != nullptr;
    };
    const std::optional<UnitCell> unit = audited.units.of(at);
    if (unit && unit->beside) return false;  // a list of different things
    return !is_typed(at.row - 1) && is_typed(at.row + 1) && is_typed(at.row + 2) &&
           used.holds({at.sheet, at.row + 1, at.column}) && used.holds({at.sheet, at.row + 2, at.column});
}

}  // namespace

void find_unused(const AuditedBook& audited, Findings& findings) {
    if (audited.formulas.all().empty()) return;  // a list is no calculation
    const UsedCells used(audited, true);
    const UsedCells computed_with(audited, false);
    const std::set<Spot> named = named_cells(audited);
    RecordColumns records(audited, used);
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s) {
        const BookSheet& sheet = audited.book.sheets[s];
        for (const BookCell& cell : sheet.cells) {
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            const CellFormat& format = sheet.formats[cell.format];
            const bool number = !cell.is_formula() && cell.number() != nullptr;
            const bool choice = !cell.is_formula() && cell.text() != nullptr && format.has_list &&
                                !format.locked && !audited.units.read(*cell.text()).unit;
            const bool input = (number && ((sheet.is_protected && !format.locked) ||
                                           has_unit_cell(audited, at) || named.contains(at))) ||
                               choice;
            // A quantity that is only shown in a sentence computes nothing.
            const UsedCells& looked_at = number && has_unit_cell(audited, at) ? computed_with : used;
            if (!input || looked_at.holds(at) || records.holds(at) ||
                begins_used_column(audited, looked_at, at))
                continue;
            const std::string label = audited.labels.of(at);
            findings.add(FindingKind::unused, Severity::warning, at,
                         "nothing uses this input" + (label.empty() ? "" : " (" + label + ")") +
                             "; delete it, or use it where it belongs.");
        }
    }
}

}  // namespace undercroft::audit
