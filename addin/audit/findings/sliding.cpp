// References that slide off as a formula is copied down or across, and references that stay where they should
// go along.
#include <algorithm>
#include <set>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

constexpr std::string_view tables[] = {"VLOOKUP", "HLOOKUP", "LOOKUP", "MATCH", "INDEX"};

/// Formulas of one group below or beside each other.
struct CopiedRun {
    std::vector<const FormulaCell*> cells;
    bool down = true;
    [[nodiscard]] std::int32_t place(std::size_t i) const {
        return down ? cells[i]->at.row : cells[i]->at.column;
    }
};

class SlideSearch {
public:
    SlideSearch(const AuditedBook& audited, Findings& findings) : audited_(audited), findings_(findings) {}

    void look(std::uint32_t g) {
        const FormulaGroup& group = audited_.formulas.groups()[g];
        if (!group.unreadable().empty() || group.is_link() || group.members.size() < 3) return;
        for (const bool down : {true, false})
            for (const CopiedRun& run : runs(group, down)) look_at(group, run);
    }

private:
    [[nodiscard]] std::vector<CopiedRun> runs(const FormulaGroup& group, bool down) const {
        std::vector<const FormulaCell*> cells;
        for (const std::uint32_t member : group.members) cells.push_back(&audited_.formulas.all()[member]);
        const auto key = [&](const FormulaCell* c) {
            return down ? std::tuple(c->at.sheet, c->at.column, c->at.row)
                        : std::tuple(c->at.sheet, c->at.row, c->at.column);
        };
        std::sort(cells.begin(), cells.end(), [&](auto* a, auto* b) { return key(a) < key(b); });
        std::vector<CopiedRun> found;
        CopiedRun run{{}, down};
        const auto end = [&] {
            if (run.cells.size() >= 3) found.push_back(run);
            run.cells.clear();
        };
        for (const FormulaCell* cell : cells) {
            if (!run.cells.empty()) {
                const auto [sheet, line, place] = key(run.cells.back());
                if (key(cell) != std::tuple(sheet, line, place + 1)) end();
            }
            run.cells.push_back(cell);
        }
        end();
        return found;
    }

    void look_at(const FormulaGroup& group, const CopiedRun& run) {
        std::string says;
        bool in_table = false;
        const auto visit = [&](auto&& self, const Node& node) -> void {
            if (!says.empty()) return;
            if (node.kind == NodeKind::reference)
                says = node.reference.is_range ? (in_table ? sliding_table(group, node, run) : std::string())
                                               : sliding_cell(group, node, run);
            for (std::size_t i = 0; i < node.children.size(); ++i) {
                const bool was = in_table;
                if (node.kind == NodeKind::call)
                    in_table = calls_one_of(node, tables) && (i == 1 || node.text == "INDEX");
                self(self, node.children[i]);
                in_table = was;
            }
        };
        visit(visit, group.tree());
        if (says.empty()) return;
        std::vector<Spot> cells;
        for (const FormulaCell* cell : run.cells) cells.push_back(cell->at);
        findings_.add(FindingKind::sliding, Severity::error, std::move(cells), says);
    }

    [[nodiscard]] std::optional<Spot> seen(const FormulaGroup& group, const Node& node,
                                           const FormulaCell& from) const {
        const std::optional<Area> area = area_of(audited_.book, node.reference, group.base, from.at);
        return area ? std::optional(area->first()) : std::nullopt;
    }
    [[nodiscard]] std::string text(const CopiedRun& run, const Spot& spot) const {
        return audited_.text(run.cells.front()->at.sheet, spot);
    }

    /// A table that is looked up moves on from row to row.
    [[nodiscard]] std::string sliding_table(const FormulaGroup& group, const Node& node,
                                            const CopiedRun& run) const {
        const bool fixed = run.down ? node.reference.first.row_fixed && node.reference.last.row_fixed
                                    : node.reference.first.column_fixed && node.reference.last.column_fixed;
        if (fixed || node.reference.whole_columns || node.reference.whole_rows) return {};
        const std::optional<Area> first =
            area_of(audited_.book, node.reference, group.base, run.cells.front()->at);
        if (!first) return {};
        // A row of its own for each formula is no table that all share.
        if (run.down ? first->first_row == first->last_row : first->first_column == first->last_column)
            return {};
        return "the table " + audited_.book.text_from(run.cells.front()->at.sheet, *first) +
               " that is looked up moves on with each copy, and loses its first rows; fix it with $.";
    }

    [[nodiscard]] std::string sliding_cell(const FormulaGroup& group, const Node& node,
                                           const CopiedRun& run) const {
        const addin::CellAddress& address = node.reference.first;
        const bool fixed = run.down ? address.row_fixed : address.column_fixed;
        const std::optional<Spot> first = seen(group, node, *run.cells.front());
        if (!first) return {};
        if (fixed) return staying_cell(group, node, run, *first);
        const std::int32_t own = run.down ? first->row : first->column;
        if (own == run.place(0) && first->sheet == run.cells.front()->at.sheet) return {};
        const BookCell* input = audited_.book.find(*first);
        if (input == nullptr || input->number() == nullptr || input->is_formula()) return {};
        const auto unit = audited_.units.of(*first);
        for (std::size_t i = 1; i < run.cells.size(); ++i) {
            const std::optional<Spot> next = seen(group, node, *run.cells[i]);
            if (!next) continue;
            const BookCell* cell = audited_.book.find(*next);
            const bool no_number = cell == nullptr || (cell->error == 0 && cell->number() == nullptr);
            const auto other = audited_.units.of(*next);
            const bool other_kind =
                unit && other && !(unit->text->unit->dimension == other->text->unit->dimension);
            if (no_number || other_kind)
                return "copied on, the reference to " + text(run, *first) + called(*first) + " has slid to " +
                       text(run, *next) + called(*next) + "; fix it with $.";
        }
        return {};
    }

    /// A fixed reference into the rows of the run itself, beside numbers that nothing takes.
    [[nodiscard]] std::string staying_cell(const FormulaGroup& group, const Node& node, const CopiedRun& run,
                                           const Spot& at) const {
        const std::int32_t own = run.down ? at.row : at.column;
        if (at.sheet != run.cells.front()->at.sheet || own < run.place(0) ||
            own > run.place(run.cells.size() - 1))
            return {};
        bool taken_along = false;
        walk(group.tree(), [&](const Node& other) {
            const addin::CellAddress& address = other.reference.first;
            const bool moves = run.down ? !address.row_fixed : !address.column_fixed;
            if (other.kind != NodeKind::reference || &other == &node || !moves) return;
            const std::optional<Spot> seen_too = seen(group, other, *run.cells.front());
            taken_along = taken_along || !seen_too ||
                          (run.down ? seen_too->column == at.column : seen_too->row == at.row);
        });
        if (taken_along) return {};
        for (std::size_t i = 0; i < run.cells.size(); ++i) {
            const Spot beside =
                run.down ? Spot{at.sheet, run.place(i), at.column} : Spot{at.sheet, at.row, run.place(i)};
            const BookCell* cell = audited_.book.find(beside);
            if (cell == nullptr || cell->number() == nullptr) return {};
        }
        return "every copy takes " + text(run, at) + ", although each has a number of its own in that " +
               (run.down ? "column" : "row") + "; take the $ away.";
    }

    [[nodiscard]] std::string called(const Spot& spot) const {
        const std::string label = audited_.labels.of(spot);
        return label.empty() ? std::string() : " (" + label.substr(0, 40) + ")";
    }

    const AuditedBook& audited_;
    Findings& findings_;
};

}  // namespace

void find_sliding(const AuditedBook& audited, Findings& findings) {
    SlideSearch search(audited, findings);
    for (std::uint32_t g = 0; g < audited.formulas.groups().size(); ++g) search.look(g);
}

}  // namespace undercroft::audit
