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

/// Rows of each column in which an error shows.
class ErrorCells {
public:
    explicit ErrorCells(const Book& book) {
        for (std::size_t s = 0; s < book.sheets.size(); ++s)
            for (const BookCell& cell : book.sheets[s].cells)
                if (cell.error != 0) rows_[{static_cast<std::int32_t>(s), cell.column}].push_back(cell.row);
    }

    /// The first cell with an error that the formula takes a value from.
    [[nodiscard]] std::optional<Spot> below(const Workings& workings, const FormulaCell& formula) const {
        for (const Use& use : workings.uses(formula))
            if (use.role != Role::observed)
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

/// Why a formula shows an error: what a function of ours in it says, or what the error means.
std::string reason_of(const Workings& workings, const FormulaCell& formula, int code) {
    const FormulaGroup& group = workings.formulas.group_of(formula);
    if (!group.unreadable.empty()) return group.unreadable;
    const BookValues values(workings.book, workings.names, group.base, formula.at);
    std::string reason;
    // The innermost call of ours that refuses is the reason.
    walk(group.tree, [&](const Node& node) {
        if (node.kind != Node::Kind::call || addin::find_function(node.text) == nullptr) return;
        try {
            (void)values.value_of(node);
        } catch (const Refused& refused) {
            const std::string why = refused.what();
            const bool cannot = why.find("cannot be computed here") != std::string::npos;
            if (!cannot) reason = addin::find_function(node.text)->name + ": " + why;
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
const BookCell* erring_cell(const Workings& workings, const FormulaCell& formula) {
    if (formula.cell->error != 0) return formula.cell;
    if (formula.area.is_single()) return nullptr;
    const auto& cells = workings.sheet(formula.at.sheet).cells;
    for (std::int32_t c = formula.area.first_column; c <= formula.area.last_column; ++c)
        for (const std::uint32_t i :
             workings.book.column(formula.at.sheet, c, formula.area.first_row, formula.area.last_row))
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

void find_errors(const Workings& workings, Findings& findings) {
    struct Mistake {
        const FormulaCell* formula = nullptr;
        int code = 0;
        std::vector<Spot> cells;
        std::vector<Spot> resting;
    };
    std::map<std::pair<std::uint32_t, int>, Mistake> mistakes;  // like formulas with like errors are one
    std::vector<const FormulaCell*> caused;
    const ErrorCells errors(workings.book);
    Roots roots;
    for (const FormulaCell& formula : workings.formulas.all()) {
        const BookCell* erring = erring_cell(workings, formula);
        if (erring == nullptr || erring->error == addin::circular_error) continue;
        const std::optional<Spot> from = errors.below(workings, formula);
        const FormulaCell* cause = from ? workings.formulas.find(*from) : nullptr;
        if (cause != nullptr) {
            roots.set_below(&formula, cause);
            caused.push_back(&formula);
            continue;
        }
        Mistake& mistake = mistakes[{formula.group, erring->error}];
        if (mistake.formula == nullptr) mistake.formula = &formula;
        mistake.code = erring->error;
        mistake.cells.push_back({formula.at.sheet, erring->row, erring->column});
    }
    for (const FormulaCell* formula : caused) {
        const FormulaCell* root = roots.of(formula);
        const BookCell* erring = erring_cell(workings, *root);
        if (erring == nullptr) continue;
        const auto mistake = mistakes.find({root->group, erring->error});
        if (mistake != mistakes.end()) mistake->second.resting.push_back(formula->at);
    }
    for (auto& [key, mistake] : mistakes) {
        std::string says = "shows " + addin::error_text(mistake.code) + ": " +
                           reason_of(workings, *mistake.formula, mistake.code) + "; " +
                           what_to_do(mistake.code) + ".";
        if (!mistake.resting.empty())
            says += " " + std::to_string(mistake.resting.size()) +
                    " more show an error because of it: " + listed(workings.book, mistake.resting, 3) + ".";
        findings.add(Kind::error, Severity::error, std::move(mistake.cells), says);
    }
}

}  // namespace undercroft::audit
