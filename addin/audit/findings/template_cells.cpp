#include "addin/audit/book/as_typed.hpp"
#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/findings/findings.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

class CellComparer {
public:
    CellComparer(const AuditedBook& audited, const TemplateMatch& match, Findings& findings, Drift& drift)
        : audited_(audited),
          match_(match),
          template_(match.from()),
          template_formulas_(match.from()),
          findings_(findings),
          drift_(drift) {}

    void compare_sheet(std::int32_t s) {
        const BookSheet& sheet = template_.sheets[static_cast<std::size_t>(s)];
        for (const BookCell& cell : sheet.cells) {
            const std::int32_t row = match_.rows(s).row(cell.row);
            if (row >= 0 && !is_inside_array(sheet, cell))
                compare_cell({s, cell.row, cell.column}, cell, {match_.sheet(s), row, cell.column});
        }
        find_more_formulas(s);
    }

private:
    void tell(FindingKind kind, Severity severity, const Spot& at, const std::string& says) {
        findings_.add(kind, severity, at, says);
    }

    void compare_cell(const Spot& from, const BookCell& cell, const Spot& at) {
        const BookCell* now = audited_.book.find(at);
        const BookSheet& sheet = template_.sheets[static_cast<std::size_t>(from.sheet)];
        if (cell.is_formula()) return compare_formula(from, now, at);
        if (sheet.is_protected && sheet.formats[cell.format].locked)
            compare_fixed(from, cell, now, at);
        else
            compare_input(from, cell, now, at);
    }

    /// Formulas in rows of the template, in cells that it leaves blank.
    void find_more_formulas(std::int32_t s) {
        const std::int32_t place = match_.sheet(s);
        const std::vector<std::int32_t>& to_workbook = match_.rows(s).to_workbook;
        std::vector<std::int32_t> from(1, -1);  // the template's row for each row of the workbook
        for (std::size_t r = 0; r < to_workbook.size(); ++r) {
            if (to_workbook[r] < 0) continue;
            const auto row = static_cast<std::size_t>(to_workbook[r]);
            if (row >= from.size()) from.resize(row + 1, -1);
            from[row] = static_cast<std::int32_t>(r);
        }
        for (const FormulaCell& formula : audited_.formulas.all()) {
            if (formula.at.sheet != place) continue;
            const auto row = static_cast<std::size_t>(formula.at.row);
            if (row >= from.size() || from[row] < 0) continue;
            if (template_.find({s, from[row], formula.at.column}) == nullptr)
                tell(FindingKind::template_changed, Severity::warning, formula.at,
                     "the template has no formula here; read it, or delete it.");
        }
    }

    void compare_formula(const Spot& from, const BookCell* now, const Spot& at) {
        const FormulaCell* original = template_formulas_.find(from);
        if (original == nullptr || original->at != from) return;  // inside an array formula
        if (now == nullptr || !now->is_formula()) {
            ++drift_.formulas_changed;
            const std::string what = now == nullptr ? "nothing"
                                     : now->number() != nullptr
                                         ? number_words(audited_.book, at, *now->number())
                                         : "a text";
            return tell(FindingKind::typed_over, Severity::error, at,
                        what + " stands where the template computes " + template_text(*original) +
                            "; put the formula back.");
        }
        const FormulaCell* formula = audited_.formulas.find(at);
        const bool same = formula != nullptr && formula->at == at && same_size(*original, *formula) &&
                          template_key(*original) == workbook_key(*formula);
        if (same) {
            ++drift_.formulas_same;
            return;
        }
        ++drift_.formulas_changed;
        tell(FindingKind::template_changed, Severity::error, at,
             "the formula is not that of the template, which is " + template_text(*original) +
                 "; put it back, or say in a note why it is different.");
    }

    static bool same_size(const FormulaCell& a, const FormulaCell& b) {
        return a.area.last_column - a.area.first_column == b.area.last_column - b.area.first_column &&
               a.area.last_row - a.area.first_row == b.area.last_row - b.area.first_row;
    }

    void compare_fixed(const Spot& from, const BookCell& cell, const BookCell* now, const Spot& at) {
        if (cell.number() != nullptr) {
            const bool same = now != nullptr && !now->is_formula() && now->number() != nullptr &&
                              *now->number() == *cell.number();
            if (!same)
                tell(FindingKind::template_changed, Severity::error, at,
                     "the template fixes " + number_words(template_, from, *cell.number()) +
                         " here; put it back.");
            return;
        }
        const bool same = now != nullptr && !now->is_formula() && now->text() != nullptr &&
                          cell.text() != nullptr && *now->text() == *cell.text();
        if (same || cell.text() == nullptr || cell.text()->empty()) return;
        tell(FindingKind::template_changed, Severity::note, at,
             "the text of the template was \"" + cell.text()->substr(0, 60) + "\"; is the change meant?");
    }

    void compare_input(const Spot& from, const BookCell& cell, const BookCell* now, const Spot& at) {
        if (now != nullptr && template_.format_of(from).has_list && !audited_.format(at).has_list)
            tell(FindingKind::template_changed, Severity::warning, at,
                 "in the template this is picked from a list, and here anything can be typed; put the list "
                 "back (Data > Validity).");
        if (now != nullptr && now->is_formula())
            return tell(FindingKind::template_changed, Severity::note, at,
                        "an input is computed by a formula; read it, or type the number.");
        if (const UnitText* was = unit_in_template(from, cell)) return compare_unit(*was, now, at);
        const bool same = now != nullptr && now->value == cell.value;
        ++(same ? drift_.inputs_same : drift_.inputs_filled);
    }

    /// The unit in a cell of the template, where it is there as the unit of the number to its left.
    const UnitText* unit_in_template(const Spot& from, const BookCell& cell) const {
        const std::string* text = cell.text();
        if (text == nullptr || text->empty() || text->size() > longest_unit) return nullptr;
        const BookCell* left = template_.find({from.sheet, from.row, from.column - 1});
        const bool by_style = template_.format_of(from).style.find("Unit") != std::string::npos;
        const bool beside = left != nullptr && left->number() != nullptr;
        if (!by_style && !beside) return nullptr;
        const UnitText& read = audited_.texts.read(*text);
        return read.unit ? &read : nullptr;
    }

    void compare_unit(const UnitText& was, const BookCell* now, const Spot& at) {
        const std::string* text = now == nullptr ? nullptr : now->text();
        const bool is_one = now != nullptr && now->number() != nullptr && *now->number() == 1;
        if ((text != nullptr && *text == was.text) || (is_one && was.text == "1")) return;
        const UnitText* is = text == nullptr ? nullptr : &audited_.texts.read(*text);
        if (is != nullptr && is->unit && is->unit->dimension.same_kind(was.unit->dimension)) {
            drift_.units_changed.push_back({at, was.text + " to " + is->text});
            return;
        }
        tell(FindingKind::template_changed, Severity::warning, at,
             "the template's unit here was " + was.text + ", and " +
                 (text == nullptr ? std::string("nothing") : "'" + *text + "'") +
                 " is no unit of the same kind; correct it.");
    }

    /// A formula of the template with its references as the workbook's formulas would name them.
    std::string template_key(const FormulaCell& formula) const {
        const FormulaGroup& group = template_formulas_.group_of(formula);
        if (!group.unreadable().empty()) return formula.cell->formula;
        return written(group.tree(), [&](const addin::CellReference& reference) {
            return match_.moved(reference, group.base, formula.at);
        });
    }
    std::string workbook_key(const FormulaCell& formula) const {
        const FormulaGroup& group = audited_.formulas.group_of(formula);
        if (!group.unreadable().empty()) return formula.cell->formula;
        return written(group.tree(), [&](const addin::CellReference& reference) {
            std::string text;
            for (const Area& area : areas_of(audited_.book, reference, group.base, formula.at))
                text += audited_.book.text(area);
            return text.empty() ? "?" + reference.document : text;
        });
    }
    static std::string template_text(const FormulaCell& formula) {
        const std::string text = as_typed(formula.cell->formula);
        return text.size() > 200 ? text.substr(0, 200) + "..." : text;
    }

    const AuditedBook& audited_;
    const TemplateMatch& match_;
    const Book& template_;
    Formulas template_formulas_;
    Findings& findings_;
    Drift& drift_;
};

}  // namespace

void find_changed_cells(const AuditedBook& audited, const TemplateMatch& match, Findings& findings,
                        Drift& drift) {
    CellComparer comparer(audited, match, findings, drift);
    for (std::int32_t s = 0; s < static_cast<std::int32_t>(match.from().sheets.size()); ++s)
        if (match.sheet(s) >= 0) comparer.compare_sheet(s);
}

}  // namespace undercroft::audit
