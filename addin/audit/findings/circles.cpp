#include <unordered_map>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t most_steps =
    5000000;  // a workbook that needs more is answered as far as it was followed

/// Goes from formula to formula until it comes round; each formula is left for good once it is done.
class CircleSearch {
public:
    explicit CircleSearch(const AuditedBook& audited) : audited_(audited) {}

    /// A circle that can be reached from here and was not seen before, or nothing.
    std::vector<const FormulaCell*> circle_from(const FormulaCell* start) {
        struct Stop {
            const FormulaCell* formula;
            std::vector<const FormulaCell*> next;
            std::size_t at = 0;
        };
        std::vector<Stop> path;
        const auto enter = [&](const FormulaCell* formula) {
            state_[formula] = Visited::open;
            path.push_back({formula, formulas_below(*formula), 0});
        };
        if (state_[start] == Visited::unseen) enter(start);
        std::vector<const FormulaCell*> circle;
        while (!path.empty() && steps_ < most_steps) {
            Stop& stop = path.back();
            if (stop.at == stop.next.size()) {
                state_[stop.formula] = Visited::done;
                path.pop_back();
                continue;
            }
            const FormulaCell* next = stop.next[stop.at++];
            const Visited state = state_[next];
            if (state == Visited::unseen) {
                enter(next);
            } else if (state == Visited::open && circle.empty()) {
                for (const Stop& part : path)
                    if (part.formula == next || !circle.empty()) circle.push_back(part.formula);
            }
        }
        for (const Stop& stop : path) state_[stop.formula] = Visited::done;
        return circle;
    }

    /// Whether the search was given up before all was followed.
    [[nodiscard]] bool gave_up() const { return steps_ >= most_steps; }

    /// Calc shows an error in all that goes round, unless it is told to compute circles by repetition. Which
    /// error, and in which of them the one for circles, depends on where it began to compute.
    [[nodiscard]] bool can_circle(const BookCell& cell) const {
        return audited_.book.iterates || cell.error != 0;
    }

private:
    enum class Visited { unseen, open, done };

    std::vector<const FormulaCell*> formulas_below(const FormulaCell& formula) {
        std::vector<const FormulaCell*> below;
        for (const Use& use : audited_.uses(formula)) {
            const auto& cells = audited_.sheet(use.area.sheet).cells;
            const std::int32_t last =
                std::min(use.area.last_column, audited_.book.columns(use.area.sheet) - 1);
            for (std::int32_t c = use.area.first_column; c <= last; ++c)
                for (const std::uint32_t i :
                     audited_.book.column(use.area.sheet, c, use.area.first_row, use.area.last_row)) {
                    if (++steps_ > most_steps) return below;
                    if (!cells[i].is_formula() || !can_circle(cells[i])) continue;
                    if (const FormulaCell* found = audited_.formulas.find({use.area.sheet, cells[i].row, c}))
                        below.push_back(found);
                }
        }
        return below;
    }

    const AuditedBook& audited_;
    std::unordered_map<const FormulaCell*, Visited> state_;
    std::size_t steps_ = 0;
};

}  // namespace

void find_circles(const AuditedBook& audited, Findings& findings) {
    CircleSearch search(audited);
    for (const FormulaCell& formula : audited.formulas.all()) {
        if (!search.can_circle(*formula.cell)) continue;
        const std::vector<const FormulaCell*> circle = search.circle_from(&formula);
        if (circle.empty()) continue;
        std::vector<Spot> cells;
        std::string path;
        for (const FormulaCell* part : circle) {
            cells.push_back(part->at);
            if (cells.size() <= 6) path += audited.text(formula.at.sheet, part->at) + " rests on ";
        }
        if (cells.size() > 6) path += "... ";
        path += audited.text(formula.at.sheet, circle.front()->at);
        findings.add(FindingKind::circular, Severity::error, std::move(cells),
                     "rests on its own result: " + path + "; break the circle with an input that is typed.");
    }
    if (search.gave_up())
        findings.add(FindingKind::not_followed, Severity::warning,
                     "there are too many references to be followed for circles; those after the first five "
                     "million were not.");
}

}  // namespace undercroft::audit
