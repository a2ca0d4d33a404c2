#include "addin/audit/findings/used_cells.hpp"

#include <algorithm>
#include <set>

namespace undercroft::audit {

UsedCells::UsedCells(const AuditedBook& audited, bool texts_count) : rows_(audited.book.sheets.size()) {
    for (std::size_t s = 0; s < rows_.size(); ++s)
        rows_[s].resize(static_cast<std::size_t>(audited.book.columns(static_cast<std::int32_t>(s))));
    std::set<Area> seen;
    const auto add_once = [&](const Area& area) {
        if (seen.insert(area).second) add(area);
    };
    for (const FormulaCell& formula : audited.formulas.all())
        for (const Use& use : audited.uses(formula))
            if (use.role != UseRole::observed && (texts_count || use.role != UseRole::text))
                add_once(use.area);
    for (const Area& area : audited.book.charted) add_once(area);
    for (auto& columns : rows_)
        for (auto& rows : columns) merge(rows);
}

bool UsedCells::holds(const Spot& spot) const {
    const auto& rows = rows_[static_cast<std::size_t>(spot.sheet)][static_cast<std::size_t>(spot.column)];
    auto after = std::upper_bound(rows.begin(), rows.end(), spot.row,
                                  [](std::int32_t row, const RowSpan& r) { return row < r.first; });
    return after != rows.begin() && (--after)->last >= spot.row;
}

bool UsedCells::any(const Spot& first, std::int32_t last_row) const {
    for (Spot spot = first; spot.row <= last_row; ++spot.row)
        if (holds(spot)) return true;
    return false;
}

void UsedCells::add(const Area& area) {
    auto& columns = rows_[static_cast<std::size_t>(area.sheet)];
    const std::int32_t last = std::min(area.last_column, static_cast<std::int32_t>(columns.size()) - 1);
    for (std::int32_t c = area.first_column; c <= last; ++c)
        columns[static_cast<std::size_t>(c)].push_back({area.first_row, area.last_row});
}

void UsedCells::merge(std::vector<RowSpan>& rows) {
    std::sort(rows.begin(), rows.end(), [](const RowSpan& a, const RowSpan& b) { return a.first < b.first; });
    std::vector<RowSpan> merged;
    for (const RowSpan& next : rows) {
        if (!merged.empty() && next.first <= merged.back().last + 1)
            merged.back().last = std::max(merged.back().last, next.last);
        else
            merged.push_back(next);
    }
    rows = std::move(merged);
}

}  // namespace undercroft::audit
