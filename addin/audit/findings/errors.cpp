#include <map>
#include <unordered_map>

#include "addin/audit/book_values.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/refused.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;

constexpr std::size_t most_cells_looked_at = 100000;

/// The first cell with an error that the formula takes a value from.
std::optional<Spot> error_below(const Workings& workings, const FormulaCell& formula) {
    const Book& book = workings.book;
    for (const Use& use : workings.uses(formula)) {
        if (use.role == Role::observed) continue;
        const auto& cells = workings.sheet(use.area.sheet).cells;
        std::size_t looked_at = 0;
        const std::int32_t last = std::min(use.area.last_column, book.columns(use.area.sheet) - 1);
        for (std::int32_t c = use.area.first_column; c <= last; ++c) {
            for (const std::uint32_t i :
                 book.column(use.area.sheet, c, use.area.first_row, use.area.last_row)) {
                const Spot spot{use.area.sheet, cells[i].row, c};
                if (cells[i].error != 0 && !formula.area.holds(spot)) return spot;
                if (++looked_at > most_cells_looked_at) return std::nullopt;
            }
        }
    }
    return std::nullopt;
}

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
    Roots roots;
    for (const FormulaCell& formula : workings.formulas.all()) {
        const BookCell* erring = erring_cell(workings, formula);
        if (erring == nullptr || erring->error == addin::circular_error) continue;
        const std::optional<Spot> from = error_below(workings, formula);
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
