#include "calc/works/spot_grid.hpp"

#include <algorithm>

#include "calc/require.hpp"
#include "calc/works/excavation.hpp"

namespace undercroft::calc {

void require_grid(const SpotLevels& levels) {
    if (levels.size() < 2 || levels.front().size() < 2)
        refuse_value("levels must be a grid of at least two rows and two columns");
    for (const auto& row : levels)
        if (row.size() != levels.front().size())
            refuse_value("levels must be a rectangle: all rows equally long");
}

Volume cut_of_triangle(Area plan, std::array<Length, 3> heights) {
    std::sort(heights.begin(), heights.end());
    const auto [low, middle, high] = heights;
    if (high <= zero) return zero;
    if (low >= zero) return plan * (low + middle + high) / 3.0;
    if (middle <= zero) return plan * high * high * high / (3.0 * (high - middle) * (high - low));
    const Volume below = plan * low * low * low / (3.0 * (high - low) * (middle - low));  // negative
    return plan * (low + middle + high) / 3.0 - below;
}

Volume pit_grid_fill(const SpotLevels& levels, Length spacing_x, Length spacing_y, Length formation_level) {
    // Upside down about the formation, fill is cut.
    SpotLevels upside_down = levels;
    for (auto& row : upside_down)
        for (Length& level : row) level = 2.0 * formation_level - level;
    return pit_grid(upside_down, spacing_x, spacing_y, formation_level);
}

Length grid_mean_level(const SpotLevels& levels) {
    require_grid(levels);
    // From the first level, so that the mean of equal levels is that level to the last digit.
    const Length datum = levels.front().front();
    Length sum = zero;
    const auto cells_at = [](std::size_t place, std::size_t places) {
        return place == 0 || place + 1 == places ? 1.0 : 2.0;
    };
    for (std::size_t r = 0; r < levels.size(); ++r)
        for (std::size_t c = 0; c < levels[r].size(); ++c)
            sum += cells_at(r, levels.size()) * cells_at(c, levels[r].size()) * (levels[r][c] - datum);
    const double quarters =
        4.0 * static_cast<double>(levels.size() - 1) * static_cast<double>(levels.front().size() - 1);
    return datum + sum / quarters;
}

namespace {

template <class Before>
Length first_of(const SpotLevels& levels, const Before& before) {
    require_grid(levels);
    Length first = levels.front().front();
    for (const auto& row : levels)
        for (const Length& level : row)
            if (before(level, first)) first = level;
    return first;
}

}  // namespace

Length grid_highest_level(const SpotLevels& levels) {
    return first_of(levels, std::greater<>{});
}

Length grid_lowest_level(const SpotLevels& levels) {
    return first_of(levels, std::less<>{});
}

}  // namespace undercroft::calc
