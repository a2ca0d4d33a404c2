#include "addin/audit/findings/finding.hpp"

#include <algorithm>
#include <set>

namespace undercroft::audit {

std::string_view title_of(Kind kind) {
    switch (kind) {
        case Kind::error:
            return "cell shows an error";
        case Kind::circular:
            return "formula goes round in a circle";
        case Kind::check_failed:
            return "check fails";
        case Kind::typed_over:
            return "number typed over a formula";
        case Kind::template_changed:
            return "differs from the template";
        case Kind::template_rows:
            return "rows or sheets differ from the template";
        case Kind::neighbour:
            return "differs from its neighbours";
        case Kind::bare_number:
            return "bare number in a formula";
        case Kind::unit_clash:
            return "units do not fit";
        case Kind::passed_bare:
            return "number handed over without its unit";
        case Kind::unit_left_out:
            return "unit is decoration";
        case Kind::unit_text:
            return "unit text is no unit";
        case Kind::blank_reference:
            return "refers to a blank cell";
        case Kind::text_reference:
            return "computes with a text";
        case Kind::sum_misses:
            return "sum misses a row";
        case Kind::unused:
            return "input that nothing uses";
        case Kind::link:
            return "link to another file";
        case Kind::stale:
            return "stored value is not the computed one";
        case Kind::unsteady:
            return "value changes by itself";
        case Kind::version:
            return "other version of the functions";
        case Kind::hidden:
            return "hidden formulas";
        case Kind::file:
            return "file and settings";
        case Kind::macros:
            return "macros in the file";
        case Kind::signature:
            return "changed since it was signed";
    }
    return "";
}

std::string_view word_of(Kind kind) {
    switch (kind) {
        case Kind::error:
            return "error";
        case Kind::circular:
            return "circular";
        case Kind::check_failed:
            return "check_failed";
        case Kind::typed_over:
            return "typed_over";
        case Kind::template_changed:
            return "template_changed";
        case Kind::template_rows:
            return "template_rows";
        case Kind::neighbour:
            return "neighbour";
        case Kind::bare_number:
            return "bare_number";
        case Kind::unit_clash:
            return "unit_clash";
        case Kind::passed_bare:
            return "passed_bare";
        case Kind::unit_left_out:
            return "unit_left_out";
        case Kind::unit_text:
            return "unit_text";
        case Kind::blank_reference:
            return "blank_reference";
        case Kind::text_reference:
            return "text_reference";
        case Kind::sum_misses:
            return "sum_misses";
        case Kind::unused:
            return "unused";
        case Kind::link:
            return "link";
        case Kind::stale:
            return "stale";
        case Kind::unsteady:
            return "unsteady";
        case Kind::version:
            return "version";
        case Kind::hidden:
            return "hidden";
        case Kind::file:
            return "file";
        case Kind::macros:
            return "macros";
        case Kind::signature:
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

std::size_t Findings::count(Kind kind) const {
    return static_cast<std::size_t>(std::count_if(
        all_.begin(), all_.end(), [&](const Finding& finding) { return finding.kind == kind; }));
}

bool Findings::has(Kind kind, const Spot& cell) const {
    return std::any_of(all_.begin(), all_.end(), [&](const Finding& finding) {
        return finding.kind == kind &&
               std::find(finding.cells.begin(), finding.cells.end(), cell) != finding.cells.end();
    });
}

void Findings::keep_last(Kind kind) {
    std::set<Spot> told;
    std::vector<Finding> kept;
    for (auto finding = all_.rbegin(); finding != all_.rend(); ++finding) {
        const bool about_one = finding->kind == kind && finding->cells.size() == 1;
        if (!about_one || told.insert(finding->cells.front()).second) kept.push_back(std::move(*finding));
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
