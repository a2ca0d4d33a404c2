#include "addin/audit/findings/comparison.hpp"

#include <algorithm>

#include "addin/audit/book/alignment.hpp"
#include "addin/audit/findings/formula_line.hpp"
#include "addin/properties.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;

namespace {

std::string property(const Book& book, std::string_view name) {
    const auto found = book.properties.find(std::string(name));
    return found == book.properties.end() ? std::string() : found->second;
}

class Comparer {
public:
    Comparer(const Workings& workings, const Book& against, Findings& findings)
        : workings_(workings),
          book_(workings.book),
          template_(against),
          template_formulas_(against),
          template_labels_(against),
          findings_(findings) {}

    Drift compare() {
        compare_identity();
        match_sheets();
        for (std::size_t s = 0; s < template_.sheets.size(); ++s)
            if (sheet_of_[s] >= 0) compare_sheet(static_cast<std::int32_t>(s));
        compare_names();
        return std::move(drift_);
    }

private:
    void tell(Kind kind, Severity severity, const Spot& at, const std::string& says) {
        findings_.add(kind, severity, at, says);
    }
    void tell(Kind kind, Severity severity, const std::string& says) {
        findings_.add(kind, severity, std::vector<Spot>{}, says);
    }

    // --- which template
    // ---------------------------------------------------------------------------------------

    void compare_identity() {
        drift_.made_from = identity_of(book_);
        drift_.compared = identity_of(template_);
        const Identity& ours = drift_.made_from;
        const Identity& theirs = drift_.compared;
        if (ours.name.empty() || theirs.name.empty()) return;
        if (ours.name != theirs.name || ours.system != theirs.system)
            tell(Kind::template_changed, Severity::error,
                 "the workbook says that it was made from " + ours.text() + ", and it was compared with " +
                     theirs.text() + "; compare it with its own template.");
        else if (ours.version != theirs.version)
            tell(Kind::template_changed, Severity::warning,
                 "the workbook was made from version " + ours.version +
                     " of the template, and it was compared with " + theirs.version +
                     "; what is told below may have changed in the template.");
    }

    void match_sheets() {
        std::vector<bool> known(book_.sheets.size(), false);
        for (const BookSheet& sheet : template_.sheets) {
            const std::int32_t place = book_.sheet_named(sheet.name);
            sheet_of_.push_back(place);
            if (place >= 0)
                known[static_cast<std::size_t>(place)] = true;
            else if (sheet.name != audit_sheet_name)
                tell(Kind::template_rows, Severity::error,
                     "the sheet " + sheet.name +
                         " of the template is missing; begin again from the template.");
            rows_.push_back(place >= 0 ? align_rows(sheet, book_.sheets[static_cast<std::size_t>(place)])
                                       : Alignment{});
        }
        for (std::size_t s = 0; s < known.size(); ++s)
            if (!known[s] && book_.sheets[s].name != audit_sheet_name)
                tell(Kind::template_rows, Severity::warning,
                     "the sheet " + book_.sheets[s].name + " is not in the template; read all of it.");
    }

    // --- one sheet
    // --------------------------------------------------------------------------------------------

    void compare_sheet(std::int32_t s) {
        const BookSheet& sheet = template_.sheets[static_cast<std::size_t>(s)];
        const std::int32_t place = sheet_of_[static_cast<std::size_t>(s)];
        const BookSheet& other = book_.sheets[static_cast<std::size_t>(place)];
        const Alignment& rows = rows_[static_cast<std::size_t>(s)];
        if (sheet.is_protected && !other.is_protected)
            tell(Kind::template_changed, Severity::warning,
                 "the sheet " + sheet.name +
                     " is not protected any more; protect it (Tools > Protect Sheet).");
        std::vector<std::int32_t> missing;
        for (const BookCell& cell : sheet.cells) {
            if (is_inside_array(sheet, cell)) continue;
            const std::int32_t row = rows.row(cell.row);
            if (row >= 0)
                compare_cell(s, cell, Spot{place, row, cell.column});
            else if (missing.empty() || missing.back() != cell.row)
                missing.push_back(cell.row);
        }
        tell_missing_rows(s, missing);
        look_for_more(s, place, rows);
    }

    /// A result of an array formula that begins in another cell.
    static bool is_inside_array(const BookSheet& sheet, const BookCell& cell) {
        if (cell.array < 0) return false;
        const Area& area = sheet.arrays[static_cast<std::size_t>(cell.array)];
        return area.first_row != cell.row || area.first_column != cell.column;
    }

    /// Rows of the template that are gone, those that follow each other together.
    void tell_missing_rows(std::int32_t s, const std::vector<std::int32_t>& missing) {
        const std::string& sheet = template_.sheets[static_cast<std::size_t>(s)].name;
        drift_.rows_missing += missing.size();
        for (std::size_t i = 0; i < missing.size();) {
            std::size_t end = i + 1;
            while (end < missing.size() && missing[end] == missing[end - 1] + 1) ++end;
            const std::string label = template_labels_.of_row({s, missing[i], template_.columns(s)});
            const std::string rows = end - i == 1 ? "row " + std::to_string(missing[i] + 1)
                                                  : "rows " + std::to_string(missing[i] + 1) + " to " +
                                                        std::to_string(missing[end - 1] + 1);
            tell(Kind::template_rows, Severity::error,
                 rows + " of the template's sheet " + sheet +
                     (label.empty() ? "" : " (" + label.substr(0, 60) + ")") +
                     (end - i == 1
                          ? " is missing; put it back, or say in a note why it is not needed."
                          : " are missing; put them back, or say in a note why they are not needed."));
            i = end;
        }
    }

    /// Rows that the template has not, those that follow each other together.
    void tell_added_rows(std::int32_t place, const std::vector<std::int32_t>& added) {
        for (std::size_t i = 0; i < added.size();) {
            std::vector<Spot> firsts;
            bool has_formula = false;
            const std::int32_t first = added[i];
            do {
                if (const auto spot = first_of_row(place, added[i], has_formula)) firsts.push_back(*spot);
                ++i;
            } while (i < added.size() && added[i] == added[i - 1] + 1);
            if (firsts.empty()) continue;
            drift_.rows_added += firsts.size();
            const std::string label =
                workings_.labels.of_row({place, firsts.front().row, book_.columns(place)});
            const std::string rows = firsts.size() == 1 ? "row " + std::to_string(firsts.front().row + 1)
                                                        : "rows " + std::to_string(first + 1) + " to " +
                                                              std::to_string(firsts.back().row + 1);
            const std::size_t count = firsts.size();
            findings_.add(Kind::template_rows, Severity::warning, std::move(firsts),
                          rows + (label.empty() ? "" : " (" + label.substr(0, 60) + ")") +
                              (count == 1 ? " is not in the template" : " are not in the template") +
                              (has_formula ? "; read the formulas." : "; read what is there."));
        }
    }
    /// The first cell of a row that holds something of its own.
    std::optional<Spot> first_of_row(std::int32_t place, std::int32_t row, bool& has_formula) const {
        std::optional<Spot> first;
        for (std::int32_t column = 0; column < book_.columns(place); ++column) {
            const BookCell* cell = book_.find({place, row, column});
            if (cell == nullptr || is_inside_array(workings_.sheet(place), *cell)) continue;
            if (!first) first = Spot{place, row, column};
            has_formula = has_formula || cell->is_formula();
        }
        return first;
    }

    void look_for_more(std::int32_t s, std::int32_t place, const Alignment& rows) {
        tell_added_rows(place, rows.added);
        std::vector<std::int32_t> from(static_cast<std::size_t>(1), -1);
        for (std::size_t r = 0; r < rows.to_workbook.size(); ++r) {
            const std::int32_t row = rows.to_workbook[r];
            if (row < 0) continue;
            if (static_cast<std::size_t>(row) >= from.size())
                from.resize(static_cast<std::size_t>(row) + 1, -1);
            from[static_cast<std::size_t>(row)] = static_cast<std::int32_t>(r);
        }
        for (const FormulaCell& formula : workings_.formulas.all()) {
            if (formula.at.sheet != place) continue;
            const auto row = static_cast<std::size_t>(formula.at.row);
            if (row >= from.size() || from[row] < 0) continue;
            if (template_.find({s, from[row], formula.at.column}) == nullptr)
                tell(Kind::template_changed, Severity::warning, formula.at,
                     "the template has no formula here; read it, or delete it.");
        }
    }

    // --- one cell
    // ---------------------------------------------------------------------------------------------

    void compare_cell(std::int32_t s, const BookCell& cell, const Spot& at) {
        const BookCell* now = book_.find(at);
        const BookSheet& sheet = template_.sheets[static_cast<std::size_t>(s)];
        if (cell.is_formula()) return compare_formula({s, cell.row, cell.column}, now, at);
        const bool fixed = sheet.is_protected && sheet.formats[cell.format].locked;
        if (fixed)
            compare_fixed(cell, now, at);
        else
            compare_input({s, cell.row, cell.column}, cell, now, at);
    }

    void compare_formula(const Spot& from, const BookCell* now, const Spot& at) {
        const FormulaCell* original = template_formulas_.find(from);
        if (original == nullptr || original->at != from) return;  // inside an array formula
        if (now == nullptr || !now->is_formula()) {
            ++drift_.formulas_changed;
            const std::string what = now == nullptr             ? "nothing"
                                     : now->number() != nullptr ? "the number " + exact_text(*now->number())
                                                                : "a text";
            return tell(Kind::typed_over, Severity::error, at,
                        what + " stands where the template computes " + template_text(*original) +
                            "; put the formula back.");
        }
        const FormulaCell* formula = workings_.formulas.find(at);
        const bool same = formula != nullptr && formula->at == at && same_size(*original, *formula) &&
                          template_key(*original) == workbook_key(*formula);
        if (same) {
            ++drift_.formulas_same;
            return;
        }
        ++drift_.formulas_changed;
        tell(Kind::template_changed, Severity::error, at,
             "the formula is not that of the template, which is " + template_text(*original) +
                 "; put it back, or say in a note why it is different.");
    }

    static bool same_size(const FormulaCell& a, const FormulaCell& b) {
        return a.area.last_column - a.area.first_column == b.area.last_column - b.area.first_column &&
               a.area.last_row - a.area.first_row == b.area.last_row - b.area.first_row;
    }

    void compare_fixed(const BookCell& cell, const BookCell* now, const Spot& at) {
        if (cell.number() != nullptr) {
            const bool same = now != nullptr && !now->is_formula() && now->number() != nullptr &&
                              *now->number() == *cell.number();
            if (!same)
                tell(Kind::template_changed, Severity::error, at,
                     "the template fixes the number " + exact_text(*cell.number()) + " here; put it back.");
            return;
        }
        const bool same = now != nullptr && !now->is_formula() && now->text() != nullptr &&
                          cell.text() != nullptr && *now->text() == *cell.text();
        if (same || cell.text() == nullptr || cell.text()->empty()) return;
        tell(Kind::template_changed, Severity::note, at,
             "the text of the template was \"" + cell.text()->substr(0, 60) + "\"; is the change meant?");
    }

    void compare_input(const Spot& from, const BookCell& cell, const BookCell* now, const Spot& at) {
        if (now != nullptr && now->is_formula())
            return tell(Kind::template_changed, Severity::note, at,
                        "an input is computed by a formula; read it, or type the number.");
        if (const UnitText* was = unit_in_template(from, cell)) return compare_unit(*was, now, at);
        const bool same = now != nullptr && now->value == cell.value;
        ++(same ? drift_.inputs_same : drift_.inputs_filled);
    }

    /// The unit in a cell of the template, where it is there as the unit of the number to its left.
    const UnitText* unit_in_template(const Spot& from, const BookCell& cell) const {
        const std::string* text = cell.text();
        if (text == nullptr || text->empty() || text->size() > 24) return nullptr;
        const BookCell* left = template_.find({from.sheet, from.row, from.column - 1});
        const bool by_style = template_.format_of(from).style.find("Unit") != std::string::npos;
        const bool beside = left != nullptr && left->number() != nullptr;
        if (!by_style && !beside) return nullptr;
        const UnitText& read = workings_.units.read(*text);
        return read.unit ? &read : nullptr;
    }

    void compare_unit(const UnitText& was, const BookCell* now, const Spot& at) {
        const std::string* text = now == nullptr ? nullptr : now->text();
        const bool is_one = now != nullptr && now->number() != nullptr && *now->number() == 1;
        if ((text != nullptr && *text == was.text) || (is_one && was.text == "1")) return;
        const UnitText* is = text == nullptr ? nullptr : &workings_.units.read(*text);
        if (is != nullptr && is->unit && is->unit->dimension.same_kind(was.unit->dimension)) {
            drift_.units_changed.push_back({at, was.text + " to " + is->text});
            return;
        }
        tell(Kind::template_changed, Severity::warning, at,
             "the template's unit here was " + was.text + ", and " +
                 (text == nullptr ? std::string("nothing") : "'" + *text + "'") +
                 " is no unit of the same kind; correct it.");
    }

    // --- formulas in the workbook's cells
    // -----------------------------------------------------------------------

    /// The cells of a template's reference as they are in the workbook; empty when they are gone.
    std::string moved(const addin::CellReference& reference, const Spot& base, const Spot& at) const {
        std::string text;
        for (const Area& area : areas_of(template_, reference, base, at)) {
            const std::int32_t place = sheet_of_[static_cast<std::size_t>(area.sheet)];
            if (place < 0) return "?";
            const Alignment& rows = rows_[static_cast<std::size_t>(area.sheet)];
            const bool whole = reference.whole_columns;
            const std::int32_t first = whole ? area.first_row : rows.row(area.first_row);
            const std::int32_t last = whole ? area.last_row : rows.row(area.last_row);
            if (first < 0 || last < 0) return "?";
            text += book_.text(Area{place, first, area.first_column, last, area.last_column});
        }
        return text.empty() ? "?" + reference.document : text;
    }

    std::string template_key(const FormulaCell& formula) const {
        const FormulaGroup& group = template_formulas_.group_of(formula);
        if (!group.unreadable.empty()) return formula.cell->formula;
        return written(group.tree,
                       [&](const addin::CellReference& r) { return moved(r, group.base, formula.at); });
    }
    std::string workbook_key(const FormulaCell& formula) const {
        const FormulaGroup& group = workings_.formulas.group_of(formula);
        if (!group.unreadable.empty()) return formula.cell->formula;
        return written(group.tree, [&](const addin::CellReference& r) {
            std::string text;
            for (const Area& area : areas_of(book_, r, group.base, formula.at)) text += book_.text(area);
            return text.empty() ? "?" + r.document : text;
        });
    }
    static std::string template_text(const FormulaCell& formula) {
        const std::string text = as_typed(formula.cell->formula);
        return text.size() > 200 ? text.substr(0, 200) + "..." : text;
    }

    // --- names
    // ------------------------------------------------------------------------------------------------

    void compare_names() {
        const Names names(template_);
        for (const DefinedName& name : template_.names) {
            const NameMeaning* was = names.find(name.name, name.sheet);
            const NameMeaning* now = workings_.names.find(name.name, name.sheet);
            if (was == nullptr || !was->readable || was->tree.kind != Node::Kind::reference) continue;
            const std::string should = moved(was->tree.reference, name.base, name.base);
            if (now == nullptr) {
                tell(Kind::template_changed, Severity::error,
                     "the name " + name.name + " of the template is gone; define it again for " + should +
                         ".");
                continue;
            }
            std::string stands = "?";
            if (now->readable && now->tree.kind == Node::Kind::reference)
                if (const auto area =
                        area_of(book_, now->tree.reference, now->defined->base, now->defined->base))
                    stands = book_.text(*area);
            if (stands != should && should != "?")
                tell(Kind::template_changed, Severity::error,
                     "the name " + name.name + " stands for " + (stands == "?" ? "nothing" : stands) +
                         ", in the template for " + should +
                         "; correct it in Sheet > Named Ranges > Manage.");
        }
    }

    const Workings& workings_;
    const Book& book_;
    const Book& template_;
    Formulas template_formulas_;
    Labels template_labels_;
    Findings& findings_;
    Drift drift_;
    std::vector<std::int32_t> sheet_of_;  ///< by sheet of the template
    std::vector<Alignment> rows_;
};

}  // namespace

std::string Identity::text() const {
    if (name.empty()) return "a workbook that does not say its template";
    return name + (system.empty() ? "" : " " + system) + (version.empty() ? "" : " " + version);
}

Identity identity_of(const Book& book) {
    return {property(book, template_property), property(book, system_property),
            property(book, template_version_property)};
}

Drift compare(const Workings& workings, const Book& against, Findings& findings) {
    return Comparer(workings, against, findings).compare();
}

}  // namespace undercroft::audit
