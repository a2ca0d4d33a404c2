#include "addin/audit/findings/limit_words.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

LimitWords::Bound LimitWords::bound_of(const Words& words) {
    const bool upper = any_of(words, {"allowable", "allowed", "permitted", "permissible", "capacity",
                                      "available", "provided", "resistance", "limit", "maximum", "max"});
    const bool lower =
        any_of(words, {"required", "needed", "demand", "demanded", "minimum", "min", "least", "wanted"});
    if (upper == lower) return Bound::none;
    return upper ? Bound::upper : Bound::lower;
}

std::optional<Spot> LimitWords::cell_of(const Node& node, const Spot& base, const Spot& at) const {
    if (node.kind == NodeKind::reference) {
        const std::optional<Area> area = area_of(audited_.book, node.reference, base, at);
        if (area && (area->is_single() || area->is_pair())) return area->first();
    } else if (node.kind == NodeKind::name) {
        const NameMeaning* meaning = audited_.names.find(node.text, at.sheet);
        if (meaning != nullptr && meaning->readable && meaning->tree.kind == NodeKind::reference)
            return cell_of(meaning->tree, meaning->defined->base, at);
    }
    return std::nullopt;
}

LimitWords::Side LimitWords::side_of(const Node& node) const {
    Side side;
    side.cell = cell_of(node, group_.base, at_);
    if (!side.cell) return side;
    side.words = words_of_cell(audited_, *side.cell, node);
    side.bound = bound_of(side.words);
    return side;
}

/// What the cell is as a ratio, by the formula in it: of a demand to a limit it is to stay below 1, `upper`
/// then stands below the line.
LimitWords::Bound LimitWords::ratio_of(const Node& node) const {
    const std::optional<Spot> cell = cell_of(node, group_.base, at_);
    const FormulaCell* formula = cell ? audited_.formulas.find(*cell) : nullptr;
    if (formula == nullptr) return Bound::none;
    const FormulaGroup& group = audited_.formulas.group_of(*formula);
    if (!group.unreadable().empty() || group.tree().text != "/" || group.tree().children.size() != 2)
        return Bound::none;
    const auto bound = [&](const Node& part) {
        const std::optional<Spot> at = cell_of(part, group.base, formula->at);
        if (!at) return Bound::none;
        Words words = words_of(audited_.labels.of_row(*at));
        words.merge(words_of(audited_.labels.of_column(*at)));
        return bound_of(words);
    };
    const Bound below = bound(group.tree().children[1]);
    const Bound above = bound(group.tree().children[0]);
    if (below == Bound::upper && above != Bound::upper) return Bound::upper;
    if (above == Bound::upper && below != Bound::upper) return Bound::lower;
    return Bound::none;
}

std::string LimitWords::turned(const Node& small, const Node& large) const {
    const auto is_one = [](const Node& node) { return node.kind == NodeKind::number && node.number == 1; };
    if (is_one(small) && ratio_of(large) == Bound::upper)
        return "it passes where the ratio to the limit is above 1";
    if (is_one(large) && ratio_of(small) == Bound::lower)
        return "it passes where the ratio of the limit is below 1";
    Side below = side_of(small);
    Side above = side_of(large);
    if (!below.cell || !above.cell) return {};
    if (below.cell->sheet == above.cell->sheet && below.cell->row == above.cell->row) {
        // In one row the heads tell the sides apart; whether a "limit" is the least or the most they do not
        // tell.
        below.bound = bound_of(words_of(audited_.labels.of_column(*below.cell)));
        above.bound = bound_of(words_of(audited_.labels.of_column(*above.cell)));
        const auto limit = [&](const Side& side) {
            return any_of(words_of(audited_.labels.of_column(*side.cell)), {"limit"});
        };
        if (limit(below) || limit(above)) return {};
    }
    // The flatter a slope, the larger its run.
    for (const Side* side : {&below, &above})
        if (any_of(side->words, {"slope", "batter", "steepest", "steep"})) return {};
    const bool wrong = (below.bound == Bound::upper && above.bound != Bound::upper) ||
                       (above.bound == Bound::lower && below.bound != Bound::lower);
    if (!wrong) return {};
    return "it passes where " + audited_.text(at_.sheet, *below.cell) + " (" +
           audited_.labels.of_row(*below.cell) + ") is not above " + audited_.text(at_.sheet, *above.cell) +
           " (" + audited_.labels.of_row(*above.cell) + ")";
}

}  // namespace undercroft::audit
