#include "addin/audit/findings/finding.hpp"

#include <algorithm>
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

void Findings::sort() {
    const auto place = [](const Finding& finding) {
        return finding.cells.empty() ? Spot{-1, -1, -1} : finding.cells.front();
    };
    std::stable_sort(all_.begin(), all_.end(), [&](const Finding& a, const Finding& b) {
        if (a.severity != b.severity) return a.severity < b.severity;
        return place(a) < place(b);
    });
}

}  // namespace undercroft::audit
