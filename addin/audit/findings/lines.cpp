#include "addin/audit/findings/lines.hpp"

namespace undercroft::audit {

namespace {

LineCell line_cell(const AuditedBook& audited, std::int32_t sheet, std::uint32_t i) {
    const BookCell& cell = audited.sheet(sheet).cells[i];
    LineCell made{{sheet, cell.row, cell.column}};
    if (cell.is_formula()) {
        const std::int32_t group = audited.formulas.group_at(sheet, i);
        if (group >= 0) made.group = group;
    } else if (cell.number() != nullptr) {
        made.group = LineCell::typed;
    }
    return made;
}

class Gatherer {
public:
    explicit Gatherer(const std::function<void(const Line&)>& visit) : visit_(visit) {}
    void add(const LineCell& cell, bool follows) {
        if (!follows) end();
        line_.push_back(cell);
    }
    void end() {
        if (line_.size() > 2) visit_(line_);
        line_.clear();
    }

private:
    const std::function<void(const Line&)>& visit_;
    Line line_;
};

}  // namespace

void each_line(const AuditedBook& audited, const std::function<void(const Line&)>& visit) {
    Gatherer gatherer(visit);
    for (std::int32_t s = 0; s < static_cast<std::int32_t>(audited.book.sheets.size()); ++s) {
        const auto& cells = audited.sheet(s).cells;
        for (std::int32_t c = 0; c < audited.book.columns(s); ++c) {
            std::int32_t next = -1;
            for (const std::uint32_t i : audited.book.column(s, c)) {
                gatherer.add(line_cell(audited, s, i), cells[i].row == next);
                next = cells[i].row + 1;
            }
            gatherer.end();
        }
        for (std::uint32_t i = 0; i < cells.size(); ++i) {
            const bool follows =
                i > 0 && cells[i - 1].row == cells[i].row && cells[i - 1].column + 1 == cells[i].column;
            gatherer.add(line_cell(audited, s, i), follows);
        }
        gatherer.end();
    }
}

bool has_like_neighbour(const AuditedBook& audited, const LineCell& cell) {
    if (cell.group < 0) return false;
    const std::pair<int, int> around[] = {{-1, 0}, {1, 0}, {0, -1}, {0, 1}};
    for (const auto& [rows, columns] : around) {
        const FormulaCell* other =
            audited.formulas.find({cell.at.sheet, cell.at.row + rows, cell.at.column + columns});
        if (other != nullptr && static_cast<std::int32_t>(other->group) == cell.group) return true;
    }
    return false;
}

}  // namespace undercroft::audit
