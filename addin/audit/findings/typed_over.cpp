#include <cmath>
#include <map>
#include <set>

#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/lines.hpp"
#include "addin/audit/findings/verdicts.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// How many formulas and typed numbers have a style.
struct StyleUse {
    std::size_t formulas = 0;
    std::size_t typed = 0;
    [[nodiscard]] bool is_for_results() const { return formulas >= 3 && formulas >= 4 * typed; }
};

std::map<std::string, StyleUse> style_uses(const AuditedBook& audited) {
    std::map<std::string, StyleUse> uses;
    for (const BookSheet& sheet : audited.book.sheets) {
        std::vector<StyleUse> of_format(sheet.formats.size());
        for (const BookCell& cell : sheet.cells) {
            if (cell.is_formula())
                ++of_format[cell.format].formulas;
            else if (cell.number() != nullptr)
                ++of_format[cell.format].typed;
        }
        for (std::size_t f = 0; f < of_format.size(); ++f) {
            StyleUse& use = uses[sheet.formats[f].style];
            use.formulas += of_format[f].formulas;
            use.typed += of_format[f].typed;
        }
    }
    uses.erase("");
    uses.erase("Default");
    return uses;
}

void find_by_style(const AuditedBook& audited, std::set<Spot>& found, Findings& findings) {
    const std::map<std::string, StyleUse> uses = style_uses(audited);
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s) {
        const BookSheet& sheet = audited.book.sheets[s];
        for (const BookCell& cell : sheet.cells) {
            if (cell.is_formula() || cell.number() == nullptr) continue;
            const CellFormat& format = sheet.formats[cell.format];
            const auto use = uses.find(format.style);
            if (!format.locked || use == uses.end() || !use->second.is_for_results()) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            found.insert(at);
            findings.add(FindingKind::typed_over, Severity::error, at,
                         number_words(audited.book, at, *cell.number()) +
                             " is typed in a cell for a computed result (its style is " + format.style +
                             "); put the formula back.");
        }
    }
}

/// A typed number, or a text typed where the formula beside it shows a text.
bool is_typed(const AuditedBook& audited, const LineCell& cell) {
    if (cell.group == LineCell::typed) return true;
    const BookCell* found = audited.book.find(cell.at);
    return cell.group == LineCell::none && found != nullptr && !found->is_formula() &&
           found->text() != nullptr && verdict_in_words(*found->text()).has_value();
}

/// Typed numbers, and verdicts in words, with the same formula on both sides, of which three stand around.
void find_in_runs(const AuditedBook& audited, const Line& line, std::set<Spot>& found, Findings& findings) {
    for (std::size_t i = 1; i + 1 < line.size(); ++i) {
        const std::int32_t before = line[i - 1].group;
        if (before < 0 || !is_typed(audited, line[i])) continue;
        std::size_t end = i;  // of what is typed, side by side: one paste
        while (end + 1 < line.size() && is_typed(audited, line[end])) ++end;
        if (line[end].group != before) continue;
        // Three of the kind, wherever they stand.
        if (audited.formulas.groups()[static_cast<std::size_t>(before)].members.size() < 3) continue;
        for (std::size_t at = i; at < end; ++at) {
            if (!found.insert(line[at].at).second) continue;
            findings.add(FindingKind::typed_over, Severity::error, line[at].at,
                         "a number is typed between like formulas; copy the formula of " +
                             audited.text(line[at].at.sheet, line[i - 1].at) +
                             " here, or say in a note why it is typed.");
        }
    }
}

constexpr std::size_t pasted_digits = 10;  // nobody types so many

std::size_t significant_digits(double number) {
    std::string digits;
    for (const char c : exact_text(number)) {
        if (c == 'e' || c == 'E') break;
        if (is_digit(c) && !(digits.empty() && c == '0')) digits += c;
    }
    while (!digits.empty() && digits.back() == '0') digits.pop_back();
    return digits.size();
}

/// A time to the second, which a person types in few digits and a workbook keeps in many; the clock gives
/// parts of a second.
bool is_typed_time(const NumberFormat& format, double number) {
    constexpr double seconds_of_day = 86400;
    constexpr double nearly = 1e-4;
    const double seconds = number * seconds_of_day;
    return (format.shown_as == ShownAs::time || format.shows_time) &&
           std::abs(seconds - std::round(seconds)) < nearly;
}

/// A number that a computation gave, among numbers that were typed.
void find_by_digits(const AuditedBook& audited, std::set<Spot>& found, Findings& findings) {
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s) {
        std::vector<const BookCell*> pasted;
        std::size_t typed = 0;
        const BookSheet& sheet = audited.book.sheets[s];
        for (const BookCell& cell : sheet.cells) {
            if (cell.is_formula() || cell.number() == nullptr) continue;
            ++typed;
            const bool is_time = is_typed_time(sheet.formats[cell.format].number, *cell.number());
            if (!is_time && significant_digits(*cell.number()) >= pasted_digits) pasted.push_back(&cell);
        }
        if (pasted.size() > 2 && 3 * pasted.size() > typed)
            continue;  // a table of measured or computed values
        for (const BookCell* cell : pasted) {
            const Spot at{static_cast<std::int32_t>(s), cell->row, cell->column};
            if (!found.insert(at).second) continue;
            findings.add(FindingKind::typed_over, Severity::warning, at,
                         number_words(audited.book, at, *cell->number()) +
                             " has more digits than anybody types: it was computed and pasted here; put the "
                             "formula back, or say where "
                             "it comes from.");
        }
    }
}

/// The formula of at least three cells that end before a typed cell; none where they do not, or go on behind
/// it.
std::int32_t run_before(const Line& line, std::size_t i, int step) {
    const auto at = [&](int n) -> std::int32_t {
        const auto place = static_cast<std::int64_t>(i) + static_cast<std::int64_t>(n) * step;
        return place >= 0 && place < static_cast<std::int64_t>(line.size())
                   ? line[static_cast<std::size_t>(place)].group
                   : LineCell::none;
    };
    const std::int32_t like = at(-1);
    return like >= 0 && at(-2) == like && at(-3) == like ? like : LineCell::none;
}

/// The cells that the formula beside takes a value from, moved to the typed cell: all of them hold something,
/// as they would for a formula.
bool has_inputs(const AuditedBook& audited, const Spot& formula_at, const Spot& typed_at) {
    const FormulaCell* formula = audited.formulas.find(formula_at);
    if (formula == nullptr) return false;
    const FormulaGroup& group = audited.formulas.group_of(*formula);
    bool all = true;
    bool any = false;
    walk(group.tree(), [&](const addin::Node& node) {
        if (node.kind != addin::NodeKind::reference || node.reference.is_range) return;
        const std::optional<Area> area = area_of(audited.book, node.reference, group.base, typed_at);
        const BookCell* cell = area ? audited.book.find(area->first()) : nullptr;
        any = true;
        all = all && cell != nullptr && (cell->number() != nullptr || cell->error != 0) &&
              area->first() != typed_at;
    });
    return any && all;
}

/// The 0 that a running sum or a table of steps begins with.
bool begins_at_zero(const AuditedBook& audited, const LineCell& cell, int step) {
    return step < 0 && *audited.book.find(cell.at)->number() == 0;
}

/// A number where the formulas of a run end, beside inputs as each of them has.
void find_at_ends(const AuditedBook& audited, const Line& line, std::set<Spot>& found, Findings& findings) {
    for (std::size_t i = 0; i < line.size(); ++i)
        for (const int step : {1, -1}) {
            if (line[i].group != LineCell::typed || begins_at_zero(audited, line[i], step)) continue;
            const std::int32_t like = run_before(line, i, step);
            if (like < 0 || audited.formulas.groups()[static_cast<std::size_t>(like)].is_link()) continue;
            const Spot beside = line[step > 0 ? i - 1 : i + 1].at;
            if (!has_inputs(audited, beside, line[i].at) || !found.insert(line[i].at).second) continue;
            findings.add(FindingKind::typed_over, Severity::warning, line[i].at,
                         "a number is typed where the formulas beside it end, although it has what they "
                         "compute with; copy the "
                         "formula of " +
                             audited.text(line[i].at.sheet, beside) +
                             " here, or say in a note why it is typed.");
        }
}

}  // namespace

void find_typed_over(const AuditedBook& audited, Findings& findings) {
    std::set<Spot> found;
    find_by_style(audited, found, findings);
    each_line(audited, [&](const Line& line) { find_in_runs(audited, line, found, findings); });
    each_line(audited, [&](const Line& line) { find_at_ends(audited, line, found, findings); });
    find_by_digits(audited, found, findings);
}

}  // namespace undercroft::audit
