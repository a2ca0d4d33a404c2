#include <algorithm>
#include <set>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

/// Rows of each column that some formula or chart takes a value from.
class Used {
public:
    explicit Used(const Workings& workings) : rows_(workings.book.sheets.size()) {
        for (std::size_t s = 0; s < rows_.size(); ++s)
            rows_[s].resize(static_cast<std::size_t>(workings.book.columns(static_cast<std::int32_t>(s))));
        std::set<Area> seen;
        const auto add_once = [&](const Area& area) {
            if (seen.insert(area).second) add(area);
        };
        for (const FormulaCell& formula : workings.formulas.all())
            for (const Use& use : workings.uses(formula))
                if (use.role != Role::observed) add_once(use.area);
        for (const Area& area : workings.book.charted) add_once(area);
        for (auto& columns : rows_)
            for (auto& rows : columns) merge(rows);
    }

    [[nodiscard]] bool holds(const Spot& spot) const {
        const auto& rows = rows_[static_cast<std::size_t>(spot.sheet)][static_cast<std::size_t>(spot.column)];
        auto after = std::upper_bound(rows.begin(), rows.end(), spot.row,
                                      [](std::int32_t row, const Rows& r) { return row < r.first; });
        return after != rows.begin() && (--after)->last >= spot.row;
    }

private:
    struct Rows {
        std::int32_t first;
        std::int32_t last;
    };

    void add(const Area& area) {
        auto& columns = rows_[static_cast<std::size_t>(area.sheet)];
        const std::int32_t last = std::min(area.last_column, static_cast<std::int32_t>(columns.size()) - 1);
        for (std::int32_t c = area.first_column; c <= last; ++c)
            columns[static_cast<std::size_t>(c)].push_back({area.first_row, area.last_row});
    }
    static void merge(std::vector<Rows>& rows) {
        std::sort(rows.begin(), rows.end(), [](const Rows& a, const Rows& b) { return a.first < b.first; });
        std::vector<Rows> merged;
        for (const Rows& next : rows) {
            if (!merged.empty() && next.first <= merged.back().last + 1)
                merged.back().last = std::max(merged.back().last, next.last);
            else
                merged.push_back(next);
        }
        rows = std::move(merged);
    }

    std::vector<std::vector<std::vector<Rows>>> rows_;
};

std::set<Spot> named_cells(const Workings& workings) {
    std::set<Spot> cells;
    for (const DefinedName& name : workings.book.names) {
        const NameMeaning* meaning = workings.names.find(name.name, name.sheet);
        if (meaning == nullptr || !meaning->readable || meaning->tree.kind != addin::Node::Kind::reference)
            continue;
        const auto area = area_of(workings.book, meaning->tree.reference, name.base, name.base);
        if (area) cells.insert(area->first());
    }
    return cells;
}

}  // namespace

void find_unused(const Workings& workings, Findings& findings) {
    if (workings.formulas.all().empty()) return;  // a list is no calculation
    const Used used(workings);
    const std::set<Spot> named = named_cells(workings);
    for (std::size_t s = 0; s < workings.book.sheets.size(); ++s) {
        const BookSheet& sheet = workings.book.sheets[s];
        for (const BookCell& cell : sheet.cells) {
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            const CellFormat& format = sheet.formats[cell.format];
            const bool number = !cell.is_formula() && cell.number() != nullptr;
            const bool choice = !cell.is_formula() && cell.text() != nullptr && format.has_list &&
                                !format.locked && !workings.units.read(*cell.text()).unit;
            const bool input = (number && ((sheet.is_protected && !format.locked) || workings.units.of(at) ||
                                           named.contains(at))) ||
                               choice;
            if (!input || used.holds(at)) continue;
            const std::string label = workings.labels.of(at);
            findings.add(Kind::unused, Severity::warning, at,
                         "nothing uses this input" + (label.empty() ? "" : " (" + label + ")") +
                             "; delete it, or use it where it belongs.");
        }
    }
}

}  // namespace undercroft::audit
