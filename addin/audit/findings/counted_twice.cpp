// Sums that count an amount twice: over a range with its own subtotals in it, or over cells that another term
// holds already.
#include <map>
#include <optional>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

bool is_sum(const Node& call) {
    if (call.kind != NodeKind::call) return false;
    if (call.text == "SUM") return true;
    const addin::Function* function = addin::find_function(call.text);
    return function != nullptr && (function->name == "UC.SUM" || function->name == "UC.TOTAL");
}

/// A sum of ours takes numbers with their units beside them.
Area numbers_of(const Area& area, const Node& call) {
    Area numbers = area;
    if (call.text != "SUM" && area.last_column == area.first_column + 1)
        numbers.last_column = area.first_column;
    return numbers;
}

class TwiceSearch {
public:
    TwiceSearch(const AuditedBook& audited, Grouped& grouped) : audited_(audited), grouped_(grouped) {
        gather_sums();
    }

    void look(const FormulaCell& formula) {
        formula_ = &formula;
        terms_.clear();
        const FormulaGroup& group = audited_.formulas.group_of(formula);
        collect(group.tree(), group.base, false);
        for (std::size_t i = 0; i < terms_.size(); ++i) {
            for (std::size_t j = i + 1; j < terms_.size(); ++j)
                if (terms_[i].overlaps(terms_[j]) && !(terms_[i].is_single() && terms_[j].is_single()))
                    return tell("the sum takes " + audited_.book.text_from(formula.at.sheet, terms_[j]) +
                                " twice, since " + audited_.book.text_from(formula.at.sheet, terms_[i]) +
                                " holds it already");
            if (const std::optional<Spot> subtotal = subtotal_in(terms_[i]))
                return tell("the range " + audited_.book.text_from(formula.at.sheet, terms_[i]) +
                            " holds the subtotal " + audited_.text(formula.at.sheet, *subtotal) +
                            " as well as what that adds up");
        }
    }

private:
    void tell(const std::string& says) {
        grouped_.add(FindingKind::counted_twice, Severity::error, formula_->group, 0, formula_->at,
                     says + "; count each amount once.");
    }

    /// What is added up: the arguments of sums, and single cells beside them.
    void collect(const Node& node, const Spot& base, bool in_sum) {
        if (node.kind == NodeKind::operation && node.text == "+" && node.children.size() == 2) {
            for (const Node& child : node.children) collect(child, base, in_sum);
        } else if (is_sum(node)) {
            for (const Node& child : node.children) {
                if (child.kind == NodeKind::reference)
                    if (const auto area = area_of(audited_.book, child.reference, base, formula_->at))
                        terms_.push_back(numbers_of(*area, node));
                if (child.kind == NodeKind::operation || child.kind == NodeKind::call)
                    collect(child, base, true);
            }
        } else if (node.kind == NodeKind::reference && !node.reference.is_range) {
            if (const auto area = area_of(audited_.book, node.reference, base, formula_->at))
                terms_.push_back(*area);
        }
    }

    /// A cell of the range that adds up others of it.
    [[nodiscard]] std::optional<Spot> subtotal_in(const Area& range) const {
        if (range.is_single()) return std::nullopt;
        for (std::int32_t column = range.first_column; column <= range.last_column; ++column) {
            const auto sums = sums_.find({range.sheet, column});
            if (sums == sums_.end()) {
                if (column - range.first_column > audited_.book.columns(range.sheet)) break;
                continue;
            }
            for (auto sum = sums->second.lower_bound(range.first_row);
                 sum != sums->second.end() && sum->first <= range.last_row; ++sum)
                if (Spot{range.sheet, sum->first, column} != formula_->at && sum->second.overlaps(range))
                    return Spot{range.sheet, sum->first, column};
        }
        return std::nullopt;
    }

    /// Every cell that sums a range, with the range.
    void gather_sums() {
        for (const FormulaCell& formula : audited_.formulas.all())
            for (const Use& use : audited_.uses(formula))
                if (use.call != nullptr && is_sum(*use.call) && !use.area.is_single())
                    sums_[{formula.at.sheet, formula.at.column}].emplace(formula.at.row,
                                                                         numbers_of(use.area, *use.call));
    }

    std::map<std::pair<std::int32_t, std::int32_t>, std::multimap<std::int32_t, Area>>
        sums_;  ///< by sheet and column, row
    const AuditedBook& audited_;
    Grouped& grouped_;
    const FormulaCell* formula_ = nullptr;
    std::vector<Area> terms_;
};

}  // namespace

void find_counted_twice(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    TwiceSearch search(audited, grouped);
    for (const FormulaCell& formula : audited.formulas.all()) {
        const FormulaGroup& group = audited.formulas.group_of(formula);
        bool sums = false;
        if (group.unreadable().empty())
            walk(group.tree(), [&](const Node& node) { sums = sums || is_sum(node); });
        if (sums) search.look(formula);
    }
}

}  // namespace undercroft::audit
