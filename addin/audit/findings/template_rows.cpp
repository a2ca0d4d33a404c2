#include <algorithm>
#include <optional>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t longest_label = 60;

/// `row 7`, `rows 7 to 9`; rows from 0.
std::string in_brackets(const std::string& label) {
    return label.empty() ? std::string() : " (" + label.substr(0, longest_label) + ")";
}

/// The end of the rows that follow each other from `i` on.
std::size_t end_of_block(const std::vector<std::int32_t>& rows, std::size_t i) {
    std::size_t end = i + 1;
    while (end < rows.size() && rows[end] == rows[end - 1] + 1) ++end;
    return end;
}

/// Rows of a sheet of the template that are gone, although they held something.
std::vector<std::int32_t> missing_rows(const TemplateMatch& match, std::int32_t s) {
    const BookSheet& sheet = match.from().sheets[static_cast<std::size_t>(s)];
    std::vector<std::int32_t> missing;
    for (const BookCell& cell : sheet.cells) {
        if (is_inside_array(sheet, cell) || match.rows(s).row(cell.row) >= 0) continue;
        if (missing.empty() || missing.back() != cell.row) missing.push_back(cell.row);
    }
    return missing;
}

void find_missing(const TemplateMatch& match, const Labels& template_labels, std::int32_t s,
                  Findings& findings, Drift& drift) {
    const std::vector<std::int32_t> missing = missing_rows(match, s);
    drift.rows_missing += missing.size();
    for (std::size_t i = 0; i < missing.size();) {
        const std::size_t end = end_of_block(missing, i);
        const std::string label = template_labels.of_row({s, missing[i], match.from().columns(s)});
        findings.add(
            FindingKind::template_rows, Severity::error,
            rows_text(missing[i], missing[end - 1]) + " of the template's sheet " +
                match.from().sheets[static_cast<std::size_t>(s)].name + in_brackets(label) +
                (end - i == 1 ? " is missing; put it back, or say in a note why it is not needed."
                              : " are missing; put them back, or say in a note why they are not needed."));
        i = end;
    }
}

/// What a row holds of its own.
struct OwnCells {
    std::optional<Spot> first;
    bool has_formula = false;
};

OwnCells own_cells(const Book& book, std::int32_t sheet, std::int32_t row) {
    OwnCells own;
    for (std::int32_t column = 0; column < book.columns(sheet); ++column) {
        const Spot at{sheet, row, column};
        const BookCell* cell = book.find(at);
        if (cell == nullptr || is_inside_array(book.sheets[static_cast<std::size_t>(sheet)], *cell)) continue;
        if (!own.first) own.first = at;
        own.has_formula = own.has_formula || cell->is_formula();
    }
    return own;
}

constexpr std::string_view grows = "grows to ";

/// What the row of a list keeps beside the page when rows may be added to it, in a cell that is locked.
const BookCell* growth_of(const AuditedBook& audited, std::int32_t sheet, std::int32_t row) {
    for (std::int32_t column = 0; column < audited.book.columns(sheet); ++column) {
        const BookCell* cell = audited.book.find({sheet, row, column});
        if (cell != nullptr && cell->text() != nullptr && cell->text()->starts_with(grows) &&
            audited.format({sheet, row, column}).locked)
            return cell;
    }
    return nullptr;
}

/// Whether a cell is given from elsewhere, where another row may have it typed in: of its own row it takes at
/// most the unit beside it.
bool is_given(const AuditedBook& audited, const FormulaCell& formula) {
    const std::vector<Use>& uses = audited.uses(formula);
    return std::none_of(uses.begin(), uses.end(), [&](const Use& use) {
        return use.area.sheet == formula.at.sheet && use.area.first_row == formula.at.row &&
               use.area.first_column != formula.at.column + 1;
    });
}

/// Whether a row computes what the other one does, and has typed in at most what that one is given.
bool computes_the_same(const AuditedBook& audited, std::int32_t sheet, std::int32_t row, std::int32_t other) {
    for (std::int32_t column = 0; column < audited.book.columns(sheet); ++column) {
        const Spot at{sheet, row, column};
        const FormulaCell* formula = audited.formulas.find(at);
        const FormulaCell* like = audited.formulas.find({sheet, other, column});
        if (formula == nullptr && like == nullptr) continue;
        if (like == nullptr) return false;
        const bool to_type_in = audited.book.find(at) == nullptr || !audited.format(at).locked;
        const bool same =
            formula != nullptr ? formula->group == like->group : to_type_in && is_given(audited, *like);
        if (!same) return false;
    }
    return true;
}

/// Whether an added row is one more of a list of the template that may have more, and computes what its rows
/// do.
bool is_more_of_a_list(const AuditedBook& audited, std::int32_t sheet, std::int32_t row,
                       const std::vector<std::int32_t>& added) {
    if (!audited.sheet(sheet).is_protected) return false;
    const BookCell* growth = growth_of(audited, sheet, row);
    if (growth == nullptr) return false;
    const auto is_like = [&](std::int32_t other) {
        return !std::binary_search(added.begin(), added.end(), other) &&
               computes_the_same(audited, sheet, row, other);
    };
    for (const std::int32_t step : {-1, 1})
        for (std::int32_t other = row + step; other >= 0; other += step) {
            const BookCell* same = audited.book.find({sheet, other, growth->column});
            if (same == nullptr || same->text() == nullptr || *same->text() != *growth->text()) break;
            if (is_like(other)) return true;
        }
    return false;
}

void find_added(const AuditedBook& audited, std::int32_t place, const std::vector<std::int32_t>& added,
                Findings& findings, Drift& drift) {
    for (std::size_t i = 0; i < added.size();) {
        const std::size_t end = end_of_block(added, i);
        const std::int32_t first_row = added[i];
        std::vector<Spot> firsts;
        bool has_formula = false;
        for (; i < end; ++i) {
            if (is_more_of_a_list(audited, place, added[i], added)) {
                ++drift.rows_added;
                continue;
            }
            const OwnCells own = own_cells(audited.book, place, added[i]);
            if (own.first) firsts.push_back(*own.first);
            has_formula = has_formula || own.has_formula;
        }
        if (firsts.empty()) continue;
        drift.rows_added += firsts.size();
        const bool is_one = firsts.size() == 1;
        const std::int32_t last_row = firsts.back().row;
        const std::string label =
            audited.labels.of_row({place, firsts.front().row, audited.book.columns(place)});
        findings.add(FindingKind::template_rows, Severity::warning, std::move(firsts),
                     rows_text(is_one ? last_row : first_row, last_row) + in_brackets(label) +
                         (is_one ? " is not in the template" : " are not in the template") +
                         (has_formula ? "; read the formulas." : "; read what is there."));
    }
}

}  // namespace

void find_changed_rows(const AuditedBook& audited, const TemplateMatch& match, Findings& findings,
                       Drift& drift) {
    const Labels template_labels(match.from(), audited.texts);
    for (std::int32_t s = 0; s < static_cast<std::int32_t>(match.from().sheets.size()); ++s) {
        if (match.sheet(s) < 0) continue;
        find_missing(match, template_labels, s, findings, drift);
        find_added(audited, match.sheet(s), match.rows(s).added, findings, drift);
    }
}

}  // namespace undercroft::audit
