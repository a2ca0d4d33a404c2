// Lookups that take the wrong row: the nearest below in a column that is not sorted, a table cut short,
// ranges of different rows.
#include <algorithm>
#include <optional>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

constexpr std::string_view lookups[] = {"VLOOKUP", "HLOOKUP", "LOOKUP", "MATCH"};
constexpr std::string_view pairing[] = {"SUMPRODUCT", "SUMIF",  "SUMIFS", "AVERAGEIF", "COUNTIFS", "LOOKUP",
                                        "SUMXMY2",    "CORREL", "SLOPE",  "INTERCEPT", "FORECAST", "INDEX"};

class LookupSearch {
public:
    LookupSearch(const AuditedBook& audited, Grouped& grouped) : audited_(audited), grouped_(grouped) {}

    void look(const FormulaCell& formula) {
        formula_ = &formula;
        base_ = audited_.formulas.group_of(formula).base;
        walk(audited_.formulas.group_of(formula).tree(), [&](const Node& node) {
            if (calls_one_of(node, lookups) && node.children.size() >= 2) look_at_lookup(node);
            if (calls_one_of(node, pairing)) look_at_pairs(node);
        });
    }

private:
    void tell(FindingKind kind, Severity severity, const std::string& says) {
        grouped_.add(kind, severity, formula_->group, 0, formula_->at, says);
    }
    [[nodiscard]] std::optional<Area> area(const Node& node) const {
        if (node.kind == NodeKind::reference)
            return area_of(audited_.book, node.reference, base_, formula_->at);
        const NameMeaning* meaning =
            node.kind == NodeKind::name ? audited_.names.find(node.text, formula_->at.sheet) : nullptr;
        if (meaning == nullptr || !meaning->readable || meaning->tree.kind != NodeKind::reference)
            return std::nullopt;
        return area_of(audited_.book, meaning->tree.reference, meaning->defined->base, formula_->at);
    }
    [[nodiscard]] std::string text(const Area& of) const {
        return audited_.book.text_from(formula_->at.sheet, of);
    }

    void look_at_lookup(const Node& call) {
        const std::optional<Area> table = area(call.children[1]);
        if (!table || table->is_single()) return;
        const std::size_t how = call.text == "MATCH" ? 2 : 3;
        const bool exact =
            call.text != "LOOKUP" && call.children.size() > how &&
            (call.children[how].kind == NodeKind::missing || call.children[how].text == "FALSE" ||
             (call.children[how].kind == NodeKind::number && call.children[how].number == 0));
        const bool downwards =
            call.text == "MATCH" && call.children.size() > how && call.children[how].text == "-";
        const bool across = call.text == "HLOOKUP" || table->first_row == table->last_row;
        if (!exact && !downwards)
            if (const auto fall = first_fall(*table, across))
                return tell(FindingKind::lookup, Severity::error,
                            call.text + " takes the nearest below, and " + text(Area::of(*fall)) +
                                " is not above the one before: sort " + text(*table) +
                                ", or look for the same value only (" +
                                (call.text == "MATCH" ? "third" : "fourth") + " argument 0).");
        if (!across) look_beyond(*table, call.text);
    }

    /// The first key that is below the one before it.
    [[nodiscard]] std::optional<Spot> first_fall(const Area& table, bool across) const {
        const BookCell* before = nullptr;
        Spot at = table.first();
        while (table.holds(at)) {
            const BookCell* cell = audited_.book.find(at);
            if (cell != nullptr && before != nullptr) {
                const bool numbers = cell->number() != nullptr && before->number() != nullptr;
                const bool texts = cell->text() != nullptr && before->text() != nullptr;
                if ((numbers && *cell->number() < *before->number()) ||
                    (texts && lower_case(*cell->text()) < lower_case(*before->text())))
                    return at;
            }
            if (cell != nullptr) before = cell;
            ++(across ? at.column : at.row);
        }
        return std::nullopt;
    }

    /// A row just beyond the table that holds what its rows hold.
    void look_beyond(const Area& table, const std::string& function) {
        for (const auto& [beyond, inside] : {std::pair(table.last_row + 1, table.last_row),
                                             std::pair(table.first_row - 1, table.first_row)}) {
            bool alike = beyond >= 0;
            bool any_number = false;
            for (std::int32_t c = table.first_column; c <= table.last_column && alike; ++c) {
                const BookCell* out = audited_.book.find({table.sheet, beyond, c});
                const BookCell* in = audited_.book.find({table.sheet, inside, c});
                alike = out != nullptr && in != nullptr && out->value.index() == in->value.index() &&
                        out->is_formula() == in->is_formula();
                any_number = any_number || (alike && in->number() != nullptr);
            }
            if (!alike || !any_number) continue;
            return tell(FindingKind::lookup, Severity::warning,
                        function + " looks in " + text(table) + ", and row " + std::to_string(beyond + 1) +
                            " beside it holds what its rows hold; include it, or leave a blank row between.");
        }
    }

    /// Ranges that are taken row by row must begin and end in the same rows.
    void look_at_pairs(const Node& call) {
        std::vector<Area> areas;
        for (const Node& argument : call.children) {
            const Node* part = &argument;
            if (call.text == "INDEX" && argument.kind == NodeKind::call && argument.text == "MATCH" &&
                argument.children.size() > 1)
                part = &argument.children[1];
            if (part->kind != NodeKind::reference && part->kind != NodeKind::name) continue;
            const std::optional<Area> found = area(*part);
            if (found && found->last_row > found->first_row) areas.push_back(*found);
        }
        for (std::size_t i = 1; i < areas.size(); ++i) {
            const Area& a = areas[0];
            const Area& b = areas[i];
            const bool same = a.first_row == b.first_row && a.last_row == b.last_row;
            const bool near = a.sheet == b.sheet && std::abs(a.first_row - b.first_row) <= 3 &&
                              std::abs(a.last_row - b.last_row) <= 3;
            if (same || !near) continue;
            return tell(
                FindingKind::ranges, Severity::error,
                "the ranges " + text(a) + " and " + text(b) + " of " + call.text +
                    " are not in the same rows, so that each row meets another; correct one of them.");
        }
    }

    const AuditedBook& audited_;
    Grouped& grouped_;
    const FormulaCell* formula_ = nullptr;
    Spot base_;
};

}  // namespace

void find_wrong_lookups(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    LookupSearch search(audited, grouped);
    for (const FormulaCell& formula : audited.formulas.all())
        if (audited.formulas.group_of(formula).unreadable().empty()) search.look(formula);
}

}  // namespace undercroft::audit
