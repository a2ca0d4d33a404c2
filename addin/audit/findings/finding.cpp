#include "addin/audit/findings/finding.hpp"

#include <algorithm>
#include <cstdlib>
#include <set>

namespace undercroft::audit {

std::string_view title_of(FindingKind kind) {
    switch (kind) {
        case FindingKind::error:
            return "cell shows an error";
        case FindingKind::circular:
            return "formula goes round in a circle";
        case FindingKind::check_failed:
            return "check fails";
        case FindingKind::typed_over:
            return "number typed over a formula";
        case FindingKind::template_changed:
            return "differs from the template";
        case FindingKind::template_rows:
            return "rows or sheets differ from the template";
        case FindingKind::neighbour:
            return "differs from its neighbours";
        case FindingKind::bare_number:
            return "bare number in a formula";
        case FindingKind::unit_clash:
            return "units do not fit";
        case FindingKind::passed_bare:
            return "number handed over without its unit";
        case FindingKind::unit_left_out:
            return "unit is decoration";
        case FindingKind::unit_text:
            return "unit text is no unit";
        case FindingKind::number_format:
            return "shown otherwise than it is read";
        case FindingKind::cut_table:
            return "table is cut off";
        case FindingKind::blank_reference:
            return "refers to a blank cell";
        case FindingKind::text_reference:
            return "computes with a text";
        case FindingKind::sum_misses:
            return "sum misses a row";
        case FindingKind::unused:
            return "input that nothing uses";
        case FindingKind::link:
            return "link to another file";
        case FindingKind::stale:
            return "stored value is not the computed one";
        case FindingKind::unsteady:
            return "value changes by itself";
        case FindingKind::version:
            return "other version of the functions";
        case FindingKind::hidden:
            return "hidden formulas";
        case FindingKind::file:
            return "file and settings";
        case FindingKind::macros:
            return "macros in the file";
        case FindingKind::weak_check:
            return "check that does not check";
        case FindingKind::counted_twice:
            return "amount counted twice";
        case FindingKind::lookup:
            return "lookup may take the wrong row";
        case FindingKind::ranges:
            return "ranges are not in the same rows";
        case FindingKind::swallowed:
            return "formula hides an error or digits";
        case FindingKind::text_address:
            return "cells named by a text";
        case FindingKind::sliding:
            return "reference slides as it is copied";
        case FindingKind::swapped:
            return "arguments in another order";
        case FindingKind::wrong_row:
            return "link to another row";
        case FindingKind::missing_unit:
            return "number without its unit";
        case FindingKind::comment:
            return "comment doubts the cell";
        case FindingKind::unlocked:
            return "formula can be typed over";
        case FindingKind::names:
            return "name misleads";
        case FindingKind::shown_otherwise:
            return "looks other than it is";
        case FindingKind::outlier:
            return "number unlike those around it";
        case FindingKind::twin:
            return "typed in two places";
        case FindingKind::not_compared:
            return "compared with no template";
        case FindingKind::not_followed:
            return "not understood";
        case FindingKind::signature:
            return "changed since it was signed";
    }
    return "";
}

std::string_view word_of(FindingKind kind) {
    switch (kind) {
        case FindingKind::error:
            return "error";
        case FindingKind::circular:
            return "circular";
        case FindingKind::check_failed:
            return "check_failed";
        case FindingKind::typed_over:
            return "typed_over";
        case FindingKind::template_changed:
            return "template_changed";
        case FindingKind::template_rows:
            return "template_rows";
        case FindingKind::neighbour:
            return "neighbour";
        case FindingKind::bare_number:
            return "bare_number";
        case FindingKind::unit_clash:
            return "unit_clash";
        case FindingKind::passed_bare:
            return "passed_bare";
        case FindingKind::unit_left_out:
            return "unit_left_out";
        case FindingKind::unit_text:
            return "unit_text";
        case FindingKind::number_format:
            return "number_format";
        case FindingKind::cut_table:
            return "cut_table";
        case FindingKind::blank_reference:
            return "blank_reference";
        case FindingKind::text_reference:
            return "text_reference";
        case FindingKind::sum_misses:
            return "sum_misses";
        case FindingKind::unused:
            return "unused";
        case FindingKind::link:
            return "link";
        case FindingKind::stale:
            return "stale";
        case FindingKind::unsteady:
            return "unsteady";
        case FindingKind::version:
            return "version";
        case FindingKind::hidden:
            return "hidden";
        case FindingKind::file:
            return "file";
        case FindingKind::macros:
            return "macros";
        case FindingKind::weak_check:
            return "weak_check";
        case FindingKind::counted_twice:
            return "counted_twice";
        case FindingKind::lookup:
            return "lookup";
        case FindingKind::ranges:
            return "ranges";
        case FindingKind::swallowed:
            return "swallowed";
        case FindingKind::text_address:
            return "text_address";
        case FindingKind::sliding:
            return "sliding";
        case FindingKind::swapped:
            return "swapped";
        case FindingKind::wrong_row:
            return "wrong_row";
        case FindingKind::missing_unit:
            return "missing_unit";
        case FindingKind::comment:
            return "comment";
        case FindingKind::unlocked:
            return "unlocked";
        case FindingKind::names:
            return "names";
        case FindingKind::shown_otherwise:
            return "shown_otherwise";
        case FindingKind::outlier:
            return "outlier";
        case FindingKind::twin:
            return "twin";
        case FindingKind::not_compared:
            return "not_compared";
        case FindingKind::not_followed:
            return "not_followed";
        case FindingKind::signature:
            return "signature";
    }
    return "";
}

std::string_view text_of(Severity severity) {
    switch (severity) {
        case Severity::error:
            return "error";
        case Severity::warning:
            return "warning";
        case Severity::note:
            return "note";
    }
    return "";
}

std::size_t Findings::count(Severity severity) const {
    return static_cast<std::size_t>(std::count_if(
        all_.begin(), all_.end(), [&](const Finding& finding) { return finding.severity == severity; }));
}

std::size_t Findings::count(FindingKind kind) const {
    return static_cast<std::size_t>(std::count_if(
        all_.begin(), all_.end(), [&](const Finding& finding) { return finding.kind == kind; }));
}

bool Findings::has(FindingKind kind, const Spot& cell) const {
    return std::any_of(all_.begin(), all_.end(), [&](const Finding& finding) {
        return finding.kind == kind &&
               std::find(finding.cells.begin(), finding.cells.end(), cell) != finding.cells.end();
    });
}

void Findings::keep_last(FindingKind kind) {
    std::set<Spot> seen;
    std::vector<Finding> kept;
    for (auto finding = all_.rbegin(); finding != all_.rend(); ++finding) {
        const bool about_one = finding->kind == kind && finding->cells.size() == 1;
        if (!about_one || seen.insert(finding->cells.front()).second) kept.push_back(std::move(*finding));
    }
    std::reverse(kept.begin(), kept.end());
    all_ = std::move(kept);
}

namespace {

/// What makes results uncertain wherever they stand comes before what is wrong in one place.
int rank(const Finding& finding) {
    switch (finding.kind) {
        case FindingKind::file:
        case FindingKind::not_compared:
            return 0;
        case FindingKind::circular:
            return 1;
        case FindingKind::link:
        case FindingKind::names:
            return 2;
        default:
            return 3;
    }
}

bool touch(const std::vector<Spot>& cells, const Spot& spot) {
    return std::any_of(cells.begin(), cells.end(), [&](const Spot& cell) {
        const auto rows = std::abs(cell.row - spot.row);
        const auto columns = std::abs(cell.column - spot.column);
        return cell.sheet == spot.sheet && rows + columns <= 1;
    });
}

}  // namespace

void Findings::sort() {
    const auto place = [](const Finding& finding) {
        return finding.cells.empty() ? Spot{-1, -1, -1} : finding.cells.front();
    };
    std::stable_sort(all_.begin(), all_.end(), [&](const Finding& a, const Finding& b) {
        if (rank(a) != rank(b)) return rank(a) < rank(b);
        if (a.severity != b.severity) return a.severity < b.severity;
        return place(a) < place(b);
    });
}

void Findings::fold_pastes(FindingKind kind) {
    std::vector<Finding> kept;
    std::vector<std::size_t> of_kind;  // among those kept
    std::vector<std::size_t> folded(all_.size(), 0);
    for (Finding& finding : all_) {
        const bool may_fold = finding.kind == kind && !finding.cells.empty();
        const auto other =
            !may_fold ? of_kind.end() : std::find_if(of_kind.begin(), of_kind.end(), [&](std::size_t i) {
                return kept[i].severity == finding.severity && touch(kept[i].cells, finding.cells.front());
            });
        if (may_fold && other != of_kind.end()) {
            std::vector<Spot>& cells = kept[*other].cells;
            cells.insert(cells.end(), finding.cells.begin(), finding.cells.end());
            ++folded[*other];
            continue;
        }
        if (may_fold) of_kind.push_back(kept.size());
        kept.push_back(std::move(finding));
    }
    for (const std::size_t i : of_kind)
        if (folded[i] > 0)
            kept[i].says += " The same holds for " + std::to_string(folded[i]) +
                            (folded[i] == 1 ? " more cell beside it." : " more cells beside it.");
    all_ = std::move(kept);
}

void Findings::fold_consequences() {
    const auto cause = std::find_if(all_.begin(), all_.end(), [](const Finding& finding) {
        return finding.kind == FindingKind::file && finding.says.find("AutoCalculate") != std::string::npos;
    });
    if (cause == all_.end()) return;
    std::size_t cells = 0;
    for (const Finding& finding : all_)
        if (finding.kind == FindingKind::stale) cells += finding.cells.size();
    if (cells == 0) return;
    cause->says +=
        " Because of it " + std::to_string(cells) + " stored values are not what the formulas give.";
    for (const Finding& finding : all_)
        if (finding.kind == FindingKind::stale)
            cause->cells.insert(cause->cells.end(), finding.cells.begin(), finding.cells.end());
    std::erase_if(all_, [](const Finding& finding) { return finding.kind == FindingKind::stale; });
}

void Findings::drop(FindingKind kind, const std::vector<Spot>& cells) {
    std::erase_if(all_, [&](const Finding& finding) {
        return finding.kind == kind && finding.cells.size() == 1 &&
               std::find(cells.begin(), cells.end(), finding.cells.front()) != cells.end();
    });
}

}  // namespace undercroft::audit
