#include "addin/audit/report/revision.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "addin/audit/book/as_typed.hpp"
#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/book/template_match.hpp"
#include "addin/audit/report/book_changes.hpp"
#include "addin/audit/report/comparison.hpp"
#include "addin/audit/report/formula_line.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr double same_value = 1e-9;
constexpr std::size_t longest_formula = 300;

std::string short_formula(const std::string& formula) {
    const std::string text = as_typed(formula);
    return text.size() > longest_formula ? text.substr(0, longest_formula) + "..." : text;
}

std::string percent_text(double was, double is) {
    if (was == 0) return "from 0";
    constexpr double per_cent = 100;
    const double change = (is - was) / std::abs(was) * per_cent;
    const double rounded = std::round(change * per_cent) / per_cent;
    return (rounded > 0 ? "+" : "") + rounded_text(rounded == 0 ? change : rounded) + " %";
}

/// `12 days later`, `1 day earlier`
std::string days_text(double days) {
    const double size = std::abs(days);
    return rounded_text(size) + (size == 1 ? " day " : " days ") + (days > 0 ? "later" : "earlier");
}

/// The results of one formula, down its cells.
struct Results {
    std::vector<Spot> cells;
    RevisionLine greatest;
    double change = -1;
};

class Comparer {
public:
    Comparer(const AuditedBook& now, const SheetHeads& heads, const Book& earlier)
        : now_(now),
          heads_(heads),
          then_(earlier),
          match_(now.book, earlier, SheetsBy::name_or_rows),
          then_formulas_(earlier),
          then_units_(earlier, now.texts) {
        for (const FormulaGroup& group : now.formulas.groups())
            is_check_.push_back(group.unreadable().empty() && !group.is_link() &&
                                comparison_in(group.tree()).has_value());
    }

    Revision made() {
        add_book_changes(now_, match_, revision_.lines);
        for (std::int32_t s = 0; s < static_cast<std::int32_t>(then_.sheets.size()); ++s)
            if (match_.sheet(s) >= 0) compare_sheet(s);
        find_added_cells();
        for (auto& [key, cells] : formulas_) {
            RevisionLine& line = cells.second;
            line.cells = cells_text(now_.book, cells.first);
            revision_.lines.push_back(std::move(line));
        }
        for (auto& [group, results] : results_) {
            results.greatest.cells = cells_text(now_.book, results.cells);
            if (results.cells.size() > 1 && !results.greatest.says.empty())
                results.greatest.says += " at most";
            revision_.lines.push_back(std::move(results.greatest));
        }
        std::stable_sort(revision_.lines.begin(), revision_.lines.end(),
                         [](const RevisionLine& a, const RevisionLine& b) {
                             if (a.change != b.change) return a.change < b.change;
                             const Spot none{-1, -1, -1};
                             return a.first.value_or(none) < b.first.value_or(none);
                         });
        return std::move(revision_);
    }

private:
    RevisionLine line_at(Change change, const Spot& at) const {
        RevisionLine line;
        line.change = change;
        line.first = at;
        line.target = line.cells = now_.book.text(at);
        line.label = now_.labels.of(at);
        return line;
    }
    void tell(Change change, const Spot& at, std::string was, std::string is, std::string says = {}) {
        RevisionLine line = line_at(change, at);
        line.was = std::move(was);
        line.is = std::move(is);
        line.says = std::move(says);
        revision_.lines.push_back(std::move(line));
    }

    void compare_sheet(std::int32_t s) {
        const BookSheet& sheet = then_.sheets[static_cast<std::size_t>(s)];
        if (is_audit_sheet(sheet)) return;
        for (const BookCell& cell : sheet.cells) {
            const std::int32_t row = match_.rows(s).row(cell.row);
            const Spot at{match_.sheet(s), row, cell.column};
            if (row < 0 || is_inside_array(sheet, cell) || heads_.is_helper(at)) continue;
            compare(Spot{s, cell.row, cell.column}, cell, at);
        }
    }

    void compare(const Spot& from, const BookCell& was, const Spot& at) {
        const BookCell* is = now_.book.find(at);
        if (is == nullptr) {
            const Change change =
                was.is_formula() ? Change::formula : typed_change(then_, from, was, then_units_);
            return tell(change, at,
                        was.is_formula() ? short_formula(was.formula) : shown(then_, was, then_units_, from),
                        "nothing");
        }
        compare_locks(from, at);
        if (was.is_formula() && is->is_formula()) {
            compare_formulas(from, was, *is, at);
            return compare_results(from, was, *is, at);
        }
        if (was.is_formula() != is->is_formula())
            return tell(Change::formula, at,
                        was.is_formula() ? short_formula(was.formula) : shown_value(then_, from.sheet, was),
                        is->is_formula() ? short_formula(is->formula) : shown_value(now_.book, at.sheet, *is),
                        is->is_formula() ? "computed now" : "typed over");
        if (was.value == is->value && was.error == is->error) return;
        compare_typed(from, was, *is, at);
    }

    /// A cell of a protected sheet that may be typed over now, or no longer.
    void compare_locks(const Spot& from, const Spot& at) {
        const auto is_open = [](const Book& book, const Spot& spot) {
            return book.sheets[static_cast<std::size_t>(spot.sheet)].is_protected &&
                   !book.format_of(spot).locked;
        };
        const bool both = then_.sheets[static_cast<std::size_t>(from.sheet)].is_protected &&
                          now_.book.sheets[static_cast<std::size_t>(at.sheet)].is_protected;
        const bool was = is_open(then_, from);
        const bool is = is_open(now_.book, at);
        if (both && was != is)
            tell(Change::setting, at, was ? "may be typed over" : "locked",
                 is ? "may be typed over" : "locked");
    }

    [[nodiscard]] Change typed_change(const Book& book, const Spot& at, const BookCell& cell,
                                      const UnitCells& units) const {
        if (is_mark(book, at)) return Change::wording;
        if (cell.number() != nullptr) return Change::input;
        const CellFormat& format = book.format_of(at);
        const auto left = units.of({at.sheet, at.row, at.column - 1});
        if ((left && left->at == at) || format.style.find("Unit") != std::string::npos) return Change::unit;
        const bool entry = book.sheets[static_cast<std::size_t>(at.sheet)].is_protected && !format.locked;
        return entry || format.has_list ? Change::input : Change::wording;
    }
    static bool is_mark(const Book& book, const Spot& at) { return book.format_of(at).style == "Mark"; }

    static std::string with_unit(const std::string& value, const UnitCells& units, const Spot& at) {
        const auto unit = units.of(at);
        return unit ? value + " " + unit->text->text : value;
    }
    static std::string shown(const Book& book, const BookCell& cell, const UnitCells& units, const Spot& at) {
        const double* number = cell.number();
        return number == nullptr ? shown_value(book, at.sheet, cell)
                                 : with_unit(exact_at(book, at, *number), units, at);
    }

    /// How far a number is from the earlier one: days of the calendar by the days between them.
    [[nodiscard]] std::string change_text(double was, double is, const Spot& from, const Spot& at) const {
        const bool was_day = shows_day(then_, from);
        const bool is_day = shows_day(now_.book, at);
        if (!was_day && !is_day) return percent_text(was, is);
        return was_day && is_day && then_.null_date == now_.book.null_date ? days_text(is - was)
                                                                           : std::string();
    }

    void compare_typed(const Spot& from, const BookCell& was, const BookCell& is, const Spot& at) {
        Change change = typed_change(now_.book, at, is, now_.units);
        if (change == Change::wording && was.number() != nullptr) change = Change::input;
        std::string says;
        const bool both = was.number() != nullptr && is.number() != nullptr;
        if (both) says = change_text(in_unit_of_now(*was.number(), from, at), *is.number(), from, at);
        if (change == Change::unit) says = number_beside(from, at);
        if (was.number() != nullptr && is.number() == nullptr)
            return tell(change, at, shown(then_, was, then_units_, from),
                        "the text \"" + shown_value(now_.book, at.sheet, is) + "\"", says);
        if (is.number() != nullptr && was.number() == nullptr)
            return tell(change, at, "the text \"" + shown_value(then_, from.sheet, was) + "\"",
                        shown(now_.book, is, now_.units, at), says);
        if (!both)
            return tell(change, at, shown_value(then_, from.sheet, was), shown_value(now_.book, at.sheet, is),
                        says);
        const auto [before, after] =
            exact_at_both({then_, from, *was.number()}, {now_.book, at, *is.number()});
        tell(change, at, with_unit(before, then_units_, from), with_unit(after, now_.units, at), says);
    }

    /// What became of the number whose unit is another one.
    [[nodiscard]] std::string number_beside(const Spot& from, const Spot& at) const {
        const BookCell* was = then_.find({from.sheet, from.row, from.column - 1});
        const BookCell* is = now_.book.find({at.sheet, at.row, at.column - 1});
        if (was == nullptr || is == nullptr || was->number() == nullptr || is->number() == nullptr) return {};
        if (is->is_formula()) return "of a result";
        return *was->number() == *is->number() ? "the number stayed" : "the number too";
    }

    /// An earlier number in the unit that stands beside it now, where both have one.
    [[nodiscard]] double in_unit_of_now(double was, const Spot& from, const Spot& at) const {
        const auto then = then_units_.of(from);
        const auto now = now_.units.of(at);
        if (!then || !now || !then->text->unit || !now->text->unit) return was;
        const Unit& a = *then->text->unit;
        const Unit& b = *now->text->unit;
        return a.dimension.same_kind(b.dimension) ? b.scale.from_coherent(a.scale.to_coherent(was)) : was;
    }

    void compare_formulas(const Spot& from, const BookCell& was, const BookCell& is, const Spot& at) {
        const FormulaCell* then = then_formulas_.find(from);
        const FormulaCell* now = now_.formulas.find(at);
        if (then == nullptr || now == nullptr || then->at != from || now->at != at) return;
        if (key_then(*then) == key_now(*now)) return;
        auto& [cells, line] = formulas_[{then->group, now->group}];
        if (cells.empty()) {
            line = line_at(Change::formula, at);
            line.was = short_formula(was.formula);
            line.is = short_formula(is.formula);
        }
        cells.push_back(at);
    }

    /// A formula of the earlier workbook with its references as the one of now would name them.
    [[nodiscard]] std::string key_then(const FormulaCell& formula) const {
        const FormulaGroup& group = then_formulas_.group_of(formula);
        if (!group.unreadable().empty()) return formula.cell->formula;
        return written(group.tree(), [&](const addin::CellReference& reference) {
            return match_.moved(reference, group.base, formula.at);
        });
    }
    [[nodiscard]] std::string key_now(const FormulaCell& formula) const {
        const FormulaGroup& group = now_.formulas.group_of(formula);
        if (!group.unreadable().empty()) return formula.cell->formula;
        return written(group.tree(), [&](const addin::CellReference& reference) {
            std::string text;
            for (const Area& area : areas_of(now_.book, reference, group.base, formula.at))
                text += now_.book.text(area);
            return text.empty() ? "?" + reference.document : text;
        });
    }

    void compare_results(const Spot& from, const BookCell& was, const BookCell& is, const Spot& at) {
        const FormulaCell* formula = now_.formulas.find(at);
        if (formula == nullptr || now_.formulas.group_of(*formula).is_link()) return;
        const double* then = was.number();
        const double* now = is.number();
        if (is_check_[formula->group]) {
            const bool turned = was.error != is.error || was.value != is.value;
            if (turned)
                tell(Change::verdict, at, verdict_text(then_, from.sheet, was),
                     verdict_text(now_.book, at.sheet, is));
            return;
        }
        if (was.error != is.error)
            return tell(Change::result, at, shown_value(then_, from.sheet, was),
                        shown_value(now_.book, at.sheet, is));
        if (then == nullptr || now == nullptr) return;
        const double before = in_unit_of_now(*then, from, at);
        const double size = std::max(std::abs(before), std::abs(*now));
        if (std::abs(*now - before) <= same_value * size) return;
        const bool own_row = at.column == heads_.column(at.sheet, {"value"});
        Results& results = results_[{formula->group, own_row ? at.row : -1}];
        results.cells.push_back(at);
        const double change = before == 0 ? HUGE_VAL : std::abs((*now - before) / before);
        if (change <= results.change) return;
        results.change = change;
        results.greatest = line_at(Change::result, at);
        const auto unit = now_.units.of(at);
        const std::string unit_text = unit ? " " + unit->text->text : std::string();
        results.greatest.was = rounded_at(then_, from, before) + unit_text;
        results.greatest.is = rounded_at(now_.book, at, *now) + unit_text;
        results.greatest.says = change_text(before, *now, from, at);
    }

    static std::string verdict_text(const Book& book, std::int32_t sheet, const BookCell& cell) {
        if (const double* number = cell.number(); number != nullptr && (*number == 0 || *number == 1))
            return *number == 1 ? "PASS" : "FAIL";
        return shown_value(book, sheet, cell);
    }

    /// What stands now in cells of rows that were there, where nothing stood.
    void find_added_cells() {
        for (std::size_t s = 0; s < now_.book.sheets.size(); ++s) {
            const BookSheet& sheet = now_.book.sheets[s];
            for (const BookCell& cell : sheet.cells) {
                const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
                if (is_inside_array(sheet, cell) || heads_.is_helper(at) || is_mark(now_.book, at)) continue;
                const auto from = match_.in_template(at);
                if (!from || then_.find(*from) != nullptr) continue;
                const Change change =
                    cell.is_formula() ? Change::formula : typed_change(now_.book, at, cell, now_.units);
                tell(
                    change, at, "nothing",
                    cell.is_formula() ? short_formula(cell.formula) : shown(now_.book, cell, now_.units, at));
            }
        }
    }

    const AuditedBook& now_;
    const SheetHeads& heads_;
    const Book& then_;
    TemplateMatch match_;
    Formulas then_formulas_;
    UnitCells then_units_;
    std::vector<bool> is_check_;  ///< by group
    std::map<std::pair<std::uint32_t, std::uint32_t>, std::pair<std::vector<Spot>, RevisionLine>> formulas_;
    std::map<std::pair<std::uint32_t, std::int32_t>, Results> results_;
    Revision revision_;
};

}  // namespace

std::string_view title_of(Change change) {
    switch (change) {
        case Change::verdict:
            return "Verdicts that turned";
        case Change::input:
            return "Inputs";
        case Change::unit:
            return "Units";
        case Change::formula:
            return "Formulas";
        case Change::name:
            return "Names";
        case Change::setting:
            return "Settings";
        case Change::sheet:
            return "Sheets";
        case Change::row:
            return "Rows";
        case Change::wording:
            return "Wording";
        case Change::result:
            return "Results";
    }
    return "";
}

std::size_t Revision::count(Change change) const {
    return static_cast<std::size_t>(std::count_if(
        lines.begin(), lines.end(), [&](const RevisionLine& line) { return line.change == change; }));
}

std::string Revision::summary() const {
    std::vector<std::string> parts;
    for (const auto& [change, one, several] :
         std::initializer_list<std::tuple<Change, const char*, const char*>>{
             {Change::verdict, "verdict", "verdicts"},
             {Change::input, "input", "inputs"},
             {Change::unit, "unit", "units"},
             {Change::formula, "formula", "formulas"},
             {Change::name, "name", "names"},
             {Change::setting, "setting", "settings"},
             {Change::sheet, "sheet", "sheets"},
             {Change::row, "block of rows", "blocks of rows"},
             {Change::wording, "text", "texts"},
             {Change::result, "result", "results"}})
        if (const std::size_t number = count(change); number > 0)
            parts.push_back(std::to_string(number) + " " + (number == 1 ? one : several));
    if (parts.empty()) return "Nothing is another than in the earlier revision.";
    return "Others than in the earlier revision: " + joined(parts, ", ", " and ") + ".";
}

Revision revision_of(const AuditedBook& now, const SheetHeads& heads, const Book& earlier) {
    return Comparer(now, heads, earlier).made();
}

}  // namespace undercroft::audit
