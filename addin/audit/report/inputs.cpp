#include "addin/audit/report/inputs.hpp"

#include <algorithm>
#include <set>

#include "addin/audit/findings/used_cells.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t fewest_of_table = 3;

bool is_mark(const CellFormat& format) {
    return format.style == "Mark";
}

}  // namespace

/// The inputs of one sheet.
class Inputs::Sheet {
public:
    Sheet(const AuditedBook& audited, const SheetHeads& heads, const UsedCells& used,
          const std::map<Spot, ArgumentUse>& arguments, std::int32_t place)
        : audited_(audited), heads_(heads), used_(used), arguments_(arguments), place_(place) {
        const BookSheet& sheet = audited.sheet(place);
        marks_ = heads.column(place, {"ok"});
        has_entries_ = sheet.is_protected &&
                       std::any_of(sheet.cells.begin(), sheet.cells.end(), [&](const BookCell& cell) {
                           const CellFormat& format = sheet.formats[cell.format];
                           return !cell.is_formula() && !format.locked && !is_mark(format);
                       });
    }

    void add_to(std::vector<std::vector<Spot>>& runs, std::set<Spot>& own_lines) {
        const BookSheet& sheet = audited_.sheet(place_);
        for (const BookCell& cell : sheet.cells)
            if (is_input(cell)) {
                inputs_.insert({cell.row, cell.column});
                ++inputs_in_row_[cell.row];
                if (cell.number() != nullptr) ++numbers_in_row_[cell.row];
            }
        for (const auto& [row, column] : inputs_)
            if (is_own_line(row, column)) own_lines.insert({place_, row, column});
        const std::size_t runs_before = runs.size();
        std::set<std::pair<std::int32_t, std::int32_t>> taken;
        for (const auto& [row, column] : inputs_) {
            if (taken.contains({row, column})) continue;
            const std::vector<Spot> run = run_down(row, column);
            for (const Spot& spot : run) taken.insert({spot.row, spot.column});
            if (is_column_of_table(run))
                runs.push_back(run);
            else
                for (const Spot& spot : run) runs.push_back({spot});
        }
        std::sort(runs.begin() + static_cast<std::ptrdiff_t>(runs_before), runs.end(),
                  [](const auto& a, const auto& b) { return a.front() < b.front(); });
    }

private:
    [[nodiscard]] bool is_input(const BookCell& cell) const {
        const Spot at{place_, cell.row, cell.column};
        const CellFormat& format = audited_.sheet(place_).formats[cell.format];
        if (cell.is_formula() || cell.shows_nothing() || heads_.is_helper(at) || is_mark(format) ||
            cell.row == heads_.row(place_) || (marks_ >= 0 && cell.column == marks_))
            return false;
        if (has_entries_ && format.locked) return false;
        if (cell.number() != nullptr) return !is_unit_cell(format) && (has_entries_ || used_.holds(at));
        if (cell.text() == nullptr || is_unit(at, cell)) return false;
        return used_.holds(at) && (format.has_list || arguments_.contains(at));
    }

    static bool is_unit_cell(const CellFormat& format) {
        return format.style.find("Unit") != std::string::npos;
    }
    [[nodiscard]] bool is_own_line(std::int32_t row, std::int32_t column) const {
        return column == heads_.column(place_, {"value"}) && inputs_in_row_.at(row) == 1;
    }

    /// The unit of the number to its left, or of the numbers below it.
    [[nodiscard]] bool is_unit(const Spot& at, const BookCell& cell) const {
        if (is_unit_cell(audited_.format(at))) return true;
        return cell.text()->size() <= longest_unit && audited_.texts.read(*cell.text()).unit.has_value();
    }

    /// The input and the numbers that follow it without a gap; alone where the row has a line of its own.
    [[nodiscard]] std::vector<Spot> run_down(std::int32_t row, std::int32_t column) const {
        std::vector<Spot> run = {{place_, row, column}};
        if (!is_number(run.front()) || is_own_line(row, column)) return run;
        for (Spot next{place_, row + 1, column};
             inputs_.contains({next.row, column}) && is_number(next) && !is_own_line(next.row, column);
             ++next.row)
            run.push_back(next);
        return run;
    }

    /// Whether it is a list of dates, or other typed numbers stand beside most of them.
    [[nodiscard]] bool is_column_of_table(const std::vector<Spot>& run) const {
        if (run.size() < fewest_of_table) return false;
        if (std::all_of(run.begin(), run.end(), [&](const Spot& spot) { return is_date(spot); })) return true;
        const auto beside = std::count_if(run.begin(), run.end(),
                                          [&](const Spot& spot) { return numbers_in_row_.at(spot.row) > 1; });
        return static_cast<std::size_t>(beside) * 5 >= run.size() * 4;
    }

    [[nodiscard]] bool is_date(const Spot& spot) const {
        return audited_.format(spot).number.shown_as == ShownAs::date;
    }

    [[nodiscard]] bool is_number(const Spot& spot) const {
        const BookCell* cell = audited_.book.find(spot);
        return cell != nullptr && cell->number() != nullptr;
    }

    const AuditedBook& audited_;
    const SheetHeads& heads_;
    const UsedCells& used_;
    const std::map<Spot, ArgumentUse>& arguments_;
    std::int32_t place_;
    std::int32_t marks_ = -1;
    bool has_entries_ = false;  ///< the sheet says by its protection what is filled in
    std::set<std::pair<std::int32_t, std::int32_t>> inputs_;
    std::map<std::int32_t, int> inputs_in_row_;
    std::map<std::int32_t, int> numbers_in_row_;
};

Inputs::Inputs(const AuditedBook& audited, const SheetHeads& heads) : audited_(audited), heads_(heads) {
    find_uses();
    const UsedCells used(audited, false);
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        if (!audited.book.sheets[s].was_audit)
            Sheet(audited, heads, used, arguments_, static_cast<std::int32_t>(s)).add_to(runs_, own_lines_);
}

bool Inputs::is_entry(const Spot& spot) const {
    return audited_.sheet(spot.sheet).is_protected && !audited_.format(spot).locked;
}

void Inputs::find_uses() {
    for (const FormulaCell& formula : audited_.formulas.all()) {
        if (!calls_own(audited_.formulas.group_of(formula)) || heads_.is_helper(formula.at)) continue;
        for (const Use& use : audited_.uses(formula)) {
            const bool one = use.area.is_single() || use.area.is_pair();
            if (use.role == UseRole::argument && use.function != nullptr && one)
                arguments_.try_emplace(use.area.first(), ArgumentUse{use.function, use.place});
        }
    }
}

std::optional<ArgumentUse> Inputs::argument(const Spot& spot) const {
    const auto found = arguments_.find(spot);
    if (found == arguments_.end()) return std::nullopt;
    return found->second;
}

}  // namespace undercroft::audit
