#include "calc/works/excavation.hpp"

#include <array>
#include <cmath>

#include "calc/works/spot_grid.hpp"

namespace undercroft::calc {

namespace {

void require_pit(Length base_length, Length base_width, Batter batter) {
    require_positive("base length", base_length);
    require_positive("base width", base_width);
    require_not_negative("batter", batter);
}

Length slant(Length depth, Length run) {
    return sqrt(depth * depth + run * run);
}

}  // namespace

Volume pit_volume(Length base_length, Length base_width, Length depth, Batter batter) {
    require_pit(base_length, base_width, batter);
    require_not_negative("depth", depth);
    const Length run = horizontal_run(batter, depth);
    return depth * (base_length * base_width + (base_length + base_width) * run + 4.0 / 3.0 * run * run);
}

Area pit_area(Length base_length, Length base_width, Length height, Batter batter) {
    require_pit(base_length, base_width, batter);
    require_not_negative("height", height);
    const Length run = horizontal_run(batter, height);
    return (base_length + 2.0 * run) * (base_width + 2.0 * run);
}

Area pit_walls(Length base_length, Length base_width, Length depth, Batter batter) {
    require_pit(base_length, base_width, batter);
    require_not_negative("depth", depth);
    const Length run = horizontal_run(batter, depth);
    return slant(depth, run) * (2.0 * base_length + 2.0 * base_width + 4.0 * run);
}

Length pit_side(Length base_side, Length height, Batter batter) {
    require_positive("base side", base_side);
    require_not_negative("height", height);
    require_not_negative("batter", batter);
    return base_side + 2.0 * horizontal_run(batter, height);
}

Length pit_slant(Length depth, Batter batter) {
    require_not_negative("depth", depth);
    require_not_negative("batter", batter);
    return slant(depth, horizontal_run(batter, depth));
}

Volume pit_grid(const std::vector<std::vector<Length>>& levels, Length spacing_x, Length spacing_y,
                Length formation_level) {
    require_positive("spacing x", spacing_x);
    require_positive("spacing y", spacing_y);
    require_grid(levels);

    const Area triangle = spacing_x * spacing_y / 4.0;
    Volume cut = zero;
    for (std::size_t r = 0; r + 1 < levels.size(); ++r) {
        for (std::size_t c = 0; c + 1 < levels[r].size(); ++c) {
            const std::array<Length, 4> corners = {
                levels[r][c] - formation_level, levels[r][c + 1] - formation_level,
                levels[r + 1][c + 1] - formation_level, levels[r + 1][c] - formation_level};
            const Length centre = (corners[0] + corners[1] + corners[2] + corners[3]) / 4.0;
            for (std::size_t i = 0; i < 4; ++i)
                cut += cut_of_triangle(triangle, {corners[i], corners[(i + 1) % 4], centre});
        }
    }
    return cut;
}

Volume pit_sections(const Table<Length, Area>& sections, SectionMethod method) {
    require(sections.size() >= 2, "at least two sections are needed");
    for (std::size_t i = 0; i < sections.size(); ++i) {
        require_not_negative("area", std::get<1>(sections[i]));
        require(i == 0 || is_above(std::get<0>(sections[i]), std::get<0>(sections[i - 1])),
                "chainages must rise from row to row");
    }
    Volume total = zero;
    if (method == SectionMethod::end_area) {
        for (std::size_t i = 1; i < sections.size(); ++i) {
            const auto& [chainage_1, area_1] = sections[i - 1];
            const auto& [chainage_2, area_2] = sections[i];
            total += (chainage_2 - chainage_1) * (area_1 + area_2) / 2.0;
        }
        return total;
    }
    require(sections.size() % 2 == 1,
            "the prismoidal formula needs an odd number of sections: ends and mid-sections in turn");
    for (std::size_t i = 2; i < sections.size(); i += 2) {
        const auto& [chainage_1, area_1] = sections[i - 2];
        const auto& [chainage_m, area_m] = sections[i - 1];
        const auto& [chainage_2, area_2] = sections[i];
        const double skew = (chainage_m - chainage_1) / (chainage_2 - chainage_1) - 0.5;
        require(std::abs(skew) < 1e-6, shown("chainage", chainage_m),
                " must be half-way between its neighbours for the prismoidal formula");
        total += (chainage_2 - chainage_1) * (area_1 + 4.0 * area_m + area_2) / 6.0;
    }
    return total;
}

Batter pit_batter(TrenchSoil soil, Length depth) {
    require_positive("depth", depth);
    struct Allowed {
        Batter steepest;
        Length greatest_depth;
    };
    // 29 CFR 1926 Subpart P, Appendix B, Table B-1 and its footnote 2: "20 feet (6.1 m)", "12 feet (3.67 m)".
    // Both spellings of a limit are within it.
    constexpr Length deep = 6.1 * metre;
    constexpr Length short_term = 3.67 * metre;
    const auto allowed = [&]() -> Allowed {
        switch (soil) {
            case TrenchSoil::stable_rock:
                return {batter(0), deep};
            case TrenchSoil::type_a:
                return {batter(0.75), deep};
            case TrenchSoil::type_a_short_term:
                return {batter(0.5), short_term};
            case TrenchSoil::type_b:
                return {batter(1), deep};
            case TrenchSoil::type_c:
                return {batter(1.5), deep};
        }
        refuse_value("unknown soil type");
    }();
    if (!is_at_most(depth, allowed.greatest_depth))
        no_answer(shown("depth", depth) + " is beyond the " + in_words(allowed.greatest_depth) +
                  " of the table: the slope must be designed by a licensed engineer");
    return allowed.steepest;
}

}  // namespace undercroft::calc
