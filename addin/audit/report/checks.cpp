#include "addin/audit/report/checks.hpp"

#include <algorithm>
#include <cmath>

#include "addin/audit/book/book_values.hpp"
#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/findings/verdicts.hpp"
#include "addin/audit/report/comparison.hpp"
#include "addin/audit/report/formula_line.hpp"
#include "addin/audit/report/reaches_inputs.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;
using addin::NodeKind;

/// A number of a check with its unit, where it has one.
struct Side {
    std::optional<double> number;
    const UnitText* unit = nullptr;
    std::optional<Spot> day;   ///< the cell that shows it as a day
    bool is_computed = false;  ///< neither a cell nor a number typed in the formula
};

class CheckComposer {
public:
    CheckComposer(const AuditedBook& audited, const SheetHeads& heads)
        : audited_(audited), heads_(heads), reaches_(audited) {}

    std::vector<CheckLine> lines() {
        std::vector<CheckLine> made;
        for (const FormulaGroup& group : audited_.formulas.groups()) {
            if (!group.unreadable().empty() || group.is_link()) continue;
            const auto comparison = comparison_in(group.tree());
            if (!comparison) continue;
            add(group, *comparison, made);
        }
        std::stable_sort(made.begin(), made.end(), [](const CheckLine& a, const CheckLine& b) {
            const bool a_fails = a.verdict <= CheckVerdict::error;
            const bool b_fails = b.verdict <= CheckVerdict::error;
            return a_fails != b_fails ? a_fails : a.first < b.first;
        });
        return made;
    }

private:
    /// Rows with a description of their own have a line each; the members of a table's column have one.
    void add(const FormulaGroup& group, const DecidingComparison& comparison, std::vector<CheckLine>& made) {
        std::vector<Spot> column;
        std::optional<CheckLine> worst;
        for (const std::uint32_t member : group.members) {
            const FormulaCell& formula = audited_.formulas.all()[member];
            if (heads_.is_helper(formula.at) || is_switch(formula.at)) continue;
            const auto verdict = verdict_of(*formula.cell);
            if (!verdict) continue;
            CheckLine line = line_of(group, comparison, formula, *verdict);
            const bool own_row =
                formula.at.column == heads_.column(formula.at.sheet, {"value"}) || group.members.size() <= 2;
            if (own_row) {
                made.push_back(std::move(line));
                continue;
            }
            if (!column.empty() && column.back().sheet != formula.at.sheet) {
                finish(column, *worst, made);
                worst.reset();
            }
            column.push_back(formula.at);
            if (!worst || is_worse(line, *worst)) worst = std::move(line);
        }
        if (worst) finish(column, *worst, made);
    }

    /// A 1 or 0 by which a sheet made by us goes on computing: its verdicts have a style of their own.
    [[nodiscard]] bool is_switch(const Spot& at) const {
        return heads_.column(at.sheet, {"demand/capacity"}) >= 0 && audited_.format(at).style != "Verdict";
    }

    void finish(std::vector<Spot>& column, CheckLine& worst, std::vector<CheckLine>& made) const {
        worst.count = column.size();
        worst.cells = cells_text(audited_.book, column);
        made.push_back(std::move(worst));
        column.clear();
    }

    static bool is_worse(const CheckLine& a, const CheckLine& b) {
        if (a.verdict != b.verdict) return a.verdict < b.verdict;
        if (a.of_days && b.of_days && a.demand && a.capacity && b.demand && b.capacity)
            return *a.demand - *a.capacity > *b.demand - *b.capacity;
        return a.ratio && (!b.ratio || *a.ratio > *b.ratio);
    }

    static std::optional<CheckVerdict> verdict_of(const BookCell& cell) {
        if (cell.error != 0) return CheckVerdict::error;
        if (const double* number = cell.number()) {
            if (*number != 0 && *number != 1) return std::nullopt;
            return *number == 1 ? CheckVerdict::passes : CheckVerdict::fails;
        }
        const std::string* text = cell.text();
        if (text == nullptr || text->empty()) return std::nullopt;
        if (const auto passes = verdict_in_words(*text))
            return *passes ? CheckVerdict::passes : CheckVerdict::fails;
        return text->starts_with("open") ? CheckVerdict::open : CheckVerdict::not_counted;
    }

    CheckLine line_of(const FormulaGroup& group, const DecidingComparison& comparison,
                      const FormulaCell& formula, CheckVerdict verdict) {
        CheckLine line;
        line.first = formula.at;
        line.target = line.cells = audited_.book.text(formula.at);
        line.label = audited_.labels.of_row(formula.at);
        if (line.label.empty()) line.label = audited_.labels.of_column(formula.at);
        if (const BookCell* reference = heads_.cell(formula.at, {"ref", "reference", "no", "no.", "item"}))
            line.reference = shown_value(audited_.book, formula.at.sheet, *reference);
        line.verdict = verdict;
        line.shown = formula.cell->number() != nullptr
                         ? std::string()
                         : shown_value(audited_.book, formula.at.sheet, *formula.cell);
        if (!add_kept_numbers(line)) add_numbers(group, comparison, line);
        if (line.demand && line.demand_text.empty()) line.demand_text = rounded_text(*line.demand);
        if (line.capacity && line.capacity_text.empty()) line.capacity_text = rounded_text(*line.capacity);
        add_source(group, comparison, line);
        line.rests = rests_on(group, comparison, formula);
        return line;
    }

    /// What the row of a sheet made by us keeps of its check.
    bool add_kept_numbers(CheckLine& line) const {
        if (line.first.column != heads_.column(line.first.sheet, {"value"})) return false;
        const auto number = [&](std::string_view head) -> std::optional<double> {
            const BookCell* cell = heads_.cell(line.first, {head});
            if (cell == nullptr || cell->number() == nullptr) return std::nullopt;
            return *cell->number();
        };
        line.demand = number("demand");
        line.capacity = number("capacity");
        line.ratio = number("demand/capacity");
        if (const BookCell* unit = heads_.cell(line.first, {"unit of both"});
            unit != nullptr && unit->text() != nullptr)
            line.unit = trimmed(*unit->text());
        if (line.unit == "1") line.unit.clear();
        return line.demand && line.capacity;
    }

    void add_numbers(const FormulaGroup& group, const DecidingComparison& comparison, CheckLine& line) const {
        if (comparison.demand == nullptr) return;
        const Side demand = side_of(group, *comparison.demand, line.first);
        const Side capacity = side_of(group, *comparison.capacity, line.first);
        line.demand = demand.number;
        line.capacity = capacity.number;
        const UnitText* unit = demand.unit != nullptr ? demand.unit : capacity.unit;
        if (unit != nullptr && unit->text != "1") line.unit = unit->text;
        if (demand.unit != nullptr && capacity.unit != nullptr && line.capacity) {
            const Unit& to = *demand.unit->unit;
            const Unit& from = *capacity.unit->unit;
            if (!to.dimension.same_kind(from.dimension)) return;
            line.capacity = to.scale.from_coherent(from.scale.to_coherent(*line.capacity));
        }
        if (add_days(demand, capacity, line)) return;
        if (line.demand && line.capacity && *line.capacity != 0) line.ratio = *line.demand / *line.capacity;
    }

    /// Whether one is a day; what is computed to be held against a day is one too.
    bool add_days(const Side& demand, const Side& capacity, CheckLine& line) const {
        if (!demand.day && !capacity.day) return false;
        const auto text_of_side = [&](const Side& side, const Side& other) {
            if (!side.number) return std::string();
            const std::optional<Spot> shows = side.is_computed ? other.day : side.day;
            return shows ? rounded_at(audited_.book, *shows, *side.number) : rounded_text(*side.number);
        };
        line.demand_text = text_of_side(demand, capacity);
        line.capacity_text = text_of_side(capacity, demand);
        return line.of_days = true;
    }

    /// The cells that a part of a formula is, where it is nothing but cells.
    [[nodiscard]] std::optional<Area> area_in(const FormulaGroup& group, const Node& node,
                                              const Spot& at) const {
        if (node.kind == NodeKind::reference) return area_of(audited_.book, node.reference, group.base, at);
        if (node.kind != NodeKind::name) return std::nullopt;
        const NameMeaning* meaning = audited_.names.find(node.text, at.sheet);
        if (meaning == nullptr || !meaning->readable || meaning->tree.kind != NodeKind::reference)
            return std::nullopt;
        return area_of(audited_.book, meaning->tree.reference, meaning->defined->base, at);
    }

    [[nodiscard]] Side side_of(const FormulaGroup& group, const Node& node, const Spot& at) const {
        Side side;
        if (const auto area = area_in(group, node, at)) {
            if (!area->is_single() && !area->is_pair()) return side;
            const BookCell* cell = audited_.book.find(area->first());
            if (cell == nullptr || cell->number() == nullptr) return side;
            side.number = *cell->number();
            if (shows_day(audited_.book, area->first())) side.day = area->first();
            if (const auto unit = audited_.units.of(area->first()); unit && unit->text->unit)
                side.unit = unit->text;
            return side;
        }
        side.is_computed = node.kind != NodeKind::number;
        try {
            const BookValues values(audited_.book, audited_.names, group.base, at);
            const addin::FormulaValue value = values.value_of(node);
            if (value.number() != nullptr && std::isfinite(*value.number())) side.number = *value.number();
        } catch (const Refused&) {  // only Calc can tell
        }
        return side;
    }

    void add_source(const FormulaGroup& group, const DecidingComparison& comparison, CheckLine& line) const {
        if (const BookCell* note = heads_.cell(line.first, {"note or source", "note", "notes", "source"}))
            if (note->text() != nullptr && !audited_.texts.read(*note->text()).unit)
                line.source = *note->text();
        const bool says_numbers = note_says_numbers(line);
        if (says_numbers) {
            const std::size_t end = line.source.find("; ");
            line.source = end == std::string::npos ? std::string() : line.source.substr(end + 2);
        }
        if (!line.source.empty() || comparison.demand == nullptr) return;
        const auto area = area_in(group, *comparison.demand, line.first);
        const FormulaCell* demand = area ? audited_.formulas.find(area->first()) : nullptr;
        if (demand != nullptr) line.source = line_of_source(*demand);
    }

    [[nodiscard]] bool note_says_numbers(const CheckLine& line) const {
        const BookCell* state = heads_.cell(line.first, {"state"});
        return state != nullptr && state->text() != nullptr && !state->text()->empty() &&
               line.source.starts_with(*state->text());
    }

    [[nodiscard]] std::string line_of_source(const FormulaCell& formula) const {
        return audit::line_of(audited_, formula).source;
    }

    [[nodiscard]] RestsOn rests_on(const FormulaGroup& group, const DecidingComparison& comparison,
                                   const FormulaCell& formula) {
        if (comparison.demand == nullptr) return reaches_(formula) ? RestsOn::inputs : RestsOn::nothing;
        const bool demand =
            is_no_limit(*comparison.demand) || side_reaches(group, *comparison.demand, formula.at);
        const bool capacity =
            is_no_limit(*comparison.capacity) || side_reaches(group, *comparison.capacity, formula.at);
        if (demand && capacity) return RestsOn::inputs;
        return demand || capacity ? RestsOn::one_side : RestsOn::nothing;
    }

    /// Whether there is something, or one, is asked by a number that is no limit.
    static bool is_no_limit(const Node& node) {
        return node.kind == NodeKind::number && (node.number == 0 || node.number == 1);
    }

    [[nodiscard]] bool side_reaches(const FormulaGroup& group, const Node& node, const Spot& at) {
        if (const auto area = area_in(group, node, at))
            if (reaches_(*area)) return true;
        return std::any_of(node.children.begin(), node.children.end(),
                           [&](const Node& child) { return side_reaches(group, child, at); });
    }

    const AuditedBook& audited_;
    const SheetHeads& heads_;
    ReachesInputs reaches_;
};

}  // namespace

std::string_view text_of(CheckVerdict verdict) {
    switch (verdict) {
        case CheckVerdict::fails:
            return "FAIL";
        case CheckVerdict::error:
            return "error";
        case CheckVerdict::open:
            return "open";
        case CheckVerdict::passes:
            return "PASS";
        case CheckVerdict::not_counted:
            return "not counted";
    }
    return "";
}

std::string_view text_of(RestsOn rests) {
    switch (rests) {
        case RestsOn::inputs:
            return "inputs";
        case RestsOn::one_side:
            return "inputs on one side only";
        case RestsOn::nothing:
            return "no input at all";
    }
    return "";
}

std::vector<CheckLine> checks_of(const AuditedBook& audited, const SheetHeads& heads) {
    return CheckComposer(audited, heads).lines();
}

}  // namespace undercroft::audit
