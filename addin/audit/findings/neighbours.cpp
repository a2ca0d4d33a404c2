#include <algorithm>
#include <set>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/lines.hpp"

namespace undercroft::audit {

namespace {

/// Whether two formulas differ in their cells and numbers only, and are no mere links.
bool same_kind(const AuditedBook& audited, std::int32_t a, std::int32_t b) {
    if (a < 0 || b < 0) return false;
    const FormulaGroup& one = audited.formulas.groups()[static_cast<std::size_t>(a)];
    const FormulaGroup& other = audited.formulas.groups()[static_cast<std::size_t>(b)];
    return !one.is_link() && !one.skeleton.empty() && one.skeleton == other.skeleton;
}

/// The formula on both sides of a cell, where it is the same. It stands at least three times, or is of the
/// same kind as the cell's own.
std::int32_t around(const AuditedBook& audited, const Line& line, std::size_t i) {
    if (i == 0 || i + 1 >= line.size()) return LineCell::none;
    const std::int32_t like = line[i - 1].group;
    if (like < 0 || line[i + 1].group != like || line[i].group == like) return LineCell::none;
    const bool before = i >= 2 && line[i - 2].group == like;
    const bool after = i + 2 < line.size() && line[i + 2].group == like;
    // Links that happen to lie alike are no run of formulas; four of them are.
    if (audited.formulas.groups()[static_cast<std::size_t>(like)].is_link())
        return before && after ? like : LineCell::none;
    return before || after || same_kind(audited, like, line[i].group) ? like : LineCell::none;
}

/// The formula of the three cells before the last of a run, where the last is of the same kind.
std::int32_t before_the_end(const AuditedBook& audited, const Line& line, std::size_t i, int step) {
    const auto at = [&](int n) -> std::int32_t {
        const auto place = static_cast<std::int64_t>(i) + static_cast<std::int64_t>(n) * step;
        const bool inside = place >= 0 && place < static_cast<std::int64_t>(line.size());
        return inside ? line[static_cast<std::size_t>(place)].group : LineCell::none;
    };
    const std::int32_t like = at(-1);
    if (line[i].group < 0 || like < 0 || line[i].group == like || at(1) == like) return LineCell::none;
    if (at(-2) != like || at(-3) != like) return LineCell::none;
    return same_kind(audited, like, line[i].group) ? like : LineCell::none;
}

/// A total of the cells before it in the line, as it ends each part of a bill.
bool is_total_of_line(const AuditedBook& audited, const Line& line, std::size_t i) {
    const FormulaCell* formula = audited.formulas.find(line[i].at);
    if (formula == nullptr || i == 0) return false;
    const std::vector<Use> uses = audited.uses(*formula);
    return std::any_of(uses.begin(), uses.end(), [&](const Use& use) {
        return use.call != nullptr && !use.area.is_single() && use.area.holds(line[i - 1].at) &&
               !use.area.holds(line[i].at);
    });
}

}  // namespace

void find_neighbours(const AuditedBook& audited, Findings& findings) {
    std::set<Spot> found;
    each_line(audited, [&](const Line& line) {
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (line[i].group < 0) continue;
            std::int32_t like = around(audited, line, i);
            if (like < 0) like = before_the_end(audited, line, i, 1);
            if (like < 0) like = before_the_end(audited, line, i, -1);
            if (like < 0 || has_like_neighbour(audited, line[i]) || is_total_of_line(audited, line, i) ||
                !found.insert(line[i].at).second)
                continue;
            const Spot& other = i > 0 && line[i - 1].group == like ? line[i - 1].at : line[i + 1].at;
            findings.add(FindingKind::neighbour, Severity::warning, line[i].at,
                         "the formula differs from those around it, such as the one in " +
                             audited.text(line[i].at.sheet, other) +
                             "; copy that one here, or say in a note why this one is different.");
        }
    });
}

}  // namespace undercroft::audit
