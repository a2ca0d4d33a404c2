#include <algorithm>
#include <map>
#include <unordered_map>

#include "addin/audit/book/book_values.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/refused.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;
using addin::NodeKind;

/// Rows of each column in which an error shows.
class ErrorCells {
public:
    explicit ErrorCells(const Book& book) {
        for (std::size_t s = 0; s < book.sheets.size(); ++s)
            for (const BookCell& cell : book.sheets[s].cells)
                if (cell.error != 0) rows_[{static_cast<std::int32_t>(s), cell.column}].push_back(cell.row);
    }

    /// The first cell with an error that the formula takes a value from.
    [[nodiscard]] std::optional<Spot> below(const AuditedBook& audited, const FormulaCell& formula) const {
        for (const Use& use : audited.uses(formula))
            if (use.role != UseRole::observed)
                if (const auto found = first_in(use.area, formula.area)) return found;
        return std::nullopt;
    }

private:
    [[nodiscard]] std::optional<Spot> first_in(const Area& area, const Area& but_not) const {
        for (auto column = rows_.lower_bound({area.sheet, area.first_column});
             column != rows_.end() && column->first <= std::pair(area.sheet, area.last_column); ++column) {
            const std::vector<std::int32_t>& rows = column->second;
            for (auto row = std::lower_bound(rows.begin(), rows.end(), area.first_row);
                 row != rows.end() && *row <= area.last_row; ++row) {
                const Spot spot{area.sheet, *row, column->first.second};
                if (!but_not.holds(spot)) return spot;
            }
        }
        return std::nullopt;
    }

    std::map<std::pair<std::int32_t, std::int32_t>, std::vector<std::int32_t>>
        rows_;  ///< by sheet and column
};

/// The formula without what IF and its like leave out; the whole of it where that cannot be told.
Node taken_by(const BookValues& values, const Node& tree) {
    try {
        std::vector<addin::Branch> branches;
        return values.followed(tree, branches);
    } catch (const Refused&) {
        return tree;
    }
}

/// Why a formula shows an error: what a function of ours in it says, or what the error means.
std::string reason_of(const AuditedBook& audited, const FormulaCell& formula, int code) {
    const FormulaGroup& group = audited.formulas.group_of(formula);
    if (!group.unreadable().empty()) return group.unreadable();
    const BookValues values(audited.book, audited.names, group.base, formula.at);
    std::string reason;
    // The innermost call of ours that refuses is the reason, of those that are computed at all.
    walk(taken_by(values, group.tree()), [&](const Node& node) {
        if (node.kind != NodeKind::call || addin::find_function(node.text) == nullptr) return;
        try {
            (void)values.value_of(node);
        } catch (const Refused& refused) {
            if (refused.refusal() != Refusal::not_followed)
                reason = addin::find_function(node.text)->name + ": " + refused.what();
        }
    });
    if (!reason.empty()) return reason;
    return addin::error_meaning(code);
}

std::string what_to_do(int code) {
    if (code == 524) return "put the right cell in its place";
    if (code == 525) return "correct the name, or install the extension that brings the function";
    return "correct the cells it rests on, or the formula";
}

/// The first cell of a formula's result that shows an error; an array formula may show it inside.
const BookCell* erring_cell(const AuditedBook& audited, const FormulaCell& formula) {
    if (formula.cell->error != 0) return formula.cell;
    if (formula.area.is_single()) return nullptr;
    const auto& cells = audited.sheet(formula.at.sheet).cells;
    for (std::int32_t c = formula.area.first_column; c <= formula.area.last_column; ++c)
        for (const std::uint32_t i :
             audited.book.column(formula.at.sheet, c, formula.area.first_row, formula.area.last_row))
            if (cells[i].error != 0) return &cells[i];
    return nullptr;
}

/// From each formula with an error the formula that the error comes from in the end.
class Roots {
public:
    void set_below(const FormulaCell* formula, const FormulaCell* below) { below_[formula] = below; }

    [[nodiscard]] const FormulaCell* of(const FormulaCell* formula) {
        const FormulaCell* root = formula;
        for (std::size_t steps = 0; steps <= below_.size(); ++steps) {
            const auto next = below_.find(root);
            if (next == below_.end()) break;
            root = next->second;
        }
        while (formula != root) {  // so that the next one finds it at once
            const FormulaCell* next = below_[formula];
            below_[formula] = root;
            if (next == root || next == formula) break;
            formula = next;
        }
        return root;
    }

private:
    std::unordered_map<const FormulaCell*, const FormulaCell*> below_;
};

}  // namespace

void find_errors(const AuditedBook& audited, Findings& findings) {
    struct ErrorOrigin {
        const FormulaCell* formula = nullptr;
        int code = 0;
        std::vector<Spot> cells;
        std::vector<Spot> resting;
    };
    std::map<std::pair<std::uint32_t, int>, ErrorOrigin> origins;  // like formulas with like errors are one
    std::vector<const FormulaCell*> caused;
    const ErrorCells errors(audited.book);
    Roots roots;
    for (const FormulaCell& formula : audited.formulas.all()) {
        const BookCell* erring = erring_cell(audited, formula);
        if (erring == nullptr || erring->error == addin::circular_error) continue;
        const std::optional<Spot> from = errors.below(audited, formula);
        const FormulaCell* cause = from ? audited.formulas.find(*from) : nullptr;
        if (cause != nullptr) {
            roots.set_below(&formula, cause);
            caused.push_back(&formula);
            continue;
        }
        ErrorOrigin& origin = origins[{formula.group, erring->error}];
        if (origin.formula == nullptr) origin.formula = &formula;
        origin.code = erring->error;
        origin.cells.push_back({formula.at.sheet, erring->row, erring->column});
    }
    for (const FormulaCell* formula : caused) {
        const FormulaCell* root = roots.of(formula);
        const BookCell* erring = erring_cell(audited, *root);
        if (erring == nullptr) continue;
        const auto origin = origins.find({root->group, erring->error});
        if (origin != origins.end()) origin->second.resting.push_back(formula->at);
    }
    for (auto& [key, origin] : origins) {
        std::string says = "shows " + addin::error_text(origin.code) + ": " +
                           reason_of(audited, *origin.formula, origin.code) + "; " + what_to_do(origin.code) +
                           ".";
        if (!origin.resting.empty())
            says += " " + std::to_string(origin.resting.size()) +
                    " more show an error because of it: " + cells_text(audited.book, origin.resting, 3) + ".";
        findings.add(FindingKind::error, Severity::error, std::move(origin.cells), says);
    }
}

}  // namespace undercroft::audit
