#include <set>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/lines.hpp"

namespace undercroft::audit {

namespace {

/// The formula on both sides of a cell, where it is the same and stands at least three times.
std::int32_t around(const Workings& workings, const Line& line, std::size_t i) {
    if (i == 0 || i + 1 >= line.size()) return LineCell::none;
    const std::int32_t like = line[i - 1].group;
    if (like < 0 || line[i + 1].group != like || line[i].group == like) return LineCell::none;
    const bool before = i >= 2 && line[i - 2].group == like;
    const bool after = i + 2 < line.size() && line[i + 2].group == like;
    // Links that happen to lie alike are no run of formulas; four of them are.
    const bool is_link = workings.formulas.groups()[static_cast<std::size_t>(like)].is_link();
    const bool enough = is_link ? before && after : before || after;
    return enough ? like : LineCell::none;
}

/// The formula of the three cells before the last of a run, where the last is of the same kind.
std::int32_t before_the_end(const Workings& workings, const Line& line, std::size_t i, int step) {
    const auto at = [&](int n) -> std::int32_t {
        const auto place = static_cast<std::int64_t>(i) + static_cast<std::int64_t>(n) * step;
        const bool inside = place >= 0 && place < static_cast<std::int64_t>(line.size());
        return inside ? line[static_cast<std::size_t>(place)].group : LineCell::none;
    };
    const std::int32_t like = at(-1);
    if (line[i].group < 0 || like < 0 || line[i].group == like || at(1) == like) return LineCell::none;
    if (at(-2) != like || at(-3) != like) return LineCell::none;
    const FormulaGroup& run = workings.formulas.groups()[static_cast<std::size_t>(like)];
    const FormulaGroup& odd = workings.formulas.groups()[static_cast<std::size_t>(line[i].group)];
    const bool same_kind = !run.is_link() && !run.skeleton.empty() && run.skeleton == odd.skeleton;
    return same_kind ? like : LineCell::none;
}

}  // namespace

void find_neighbours(const Workings& workings, Findings& findings) {
    std::set<Spot> told;
    each_line(workings, [&](const Line& line) {
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (line[i].group < 0) continue;
            std::int32_t like = around(workings, line, i);
            if (like < 0) like = before_the_end(workings, line, i, 1);
            if (like < 0) like = before_the_end(workings, line, i, -1);
            if (like < 0 || has_like_neighbour(workings, line[i]) || !told.insert(line[i].at).second)
                continue;
            const Spot& other = i > 0 && line[i - 1].group == like ? line[i - 1].at : line[i + 1].at;
            findings.add(Kind::neighbour, Severity::warning, line[i].at,
                         "the formula differs from those around it, such as the one in " +
                             workings.text(line[i].at.sheet, other) +
                             "; copy that one here, or say in a note why this one is different.");
        }
    });
}

}  // namespace undercroft::audit
