#include "calc/works/spot_grid.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

namespace {

Entry& takes_levels(Entry& entry) {
    return entry.takes("levels", "GL", "Grid of spot levels: rows along y, columns along x")
        .within(usual::level);
}

Function fill_entry() {
    auto fill = function("UC.PIT.FILL", [](calc::SpotLevels levels, Length spacing_x, Length spacing_y,
                                           Length formation_level) {
        return calc::pit_grid_fill(levels, spacing_x, spacing_y, formation_level);
    });
    fill.says(
            "Fill up to a formation level from a grid of spot levels, the counterpart of UC.PIT.GRID: cut is "
            "not "
            "counted, cells partly in fill are filled exactly")
        .related({"UC.PIT.GRID", "UC.PIT.FILLED", "UC.FILL.IMPORT", "UC.SPOIL.KEPT"})
        .also_called("fill from spot heights, embankment, borrow, cut and fill, grid method")
        .equation(
            "V = sum over cells of four plane triangles that meet at the mean of the corners, the part below "
            "the "
            "formation")
        .source("common practice (grid method)")
        .example("UC.PIT.FILL({98;98|98;98}; \"10 m\"; \"10 m\"; \"100 m\")", "200", "1e-9 rel",
                 Origin::mathematics, "level ground, 2 m of fill over 100 m2")
        .example(
            "UC.PIT.FILL({\"101 ft\";\"101 ft\"|\"99 ft\";\"99 ft\"}; \"30 ft\"; \"30 ft\"; \"100 ft\"; "
            "\"ft3\")",
            "225", "1e-9 rel", Origin::mathematics, "half of the cell is a wedge of 0.5 ft mean depth");
    return takes_levels(fill)
        .takes("spacing x", "dx", "Distance from column to column")
        .within(usual::grid_spacing)
        .takes("spacing y", "dy", "Distance from row to row")
        .within(usual::grid_spacing)
        .takes("formation level", "FoL", "Level to be filled to")
        .within(usual::level)
        .gives("V", "Volume of fill");
}

Function mean_entry() {
    auto mean =
        function("UC.LEVEL.MEAN", [](calc::SpotLevels levels) { return calc::grid_mean_level(levels); });
    mean.says(
            "Mean level of the ground over a grid of spot levels: each counts as many quarters of a cell as "
            "meet in "
            "it")
        .related({"UC.LEVEL.HIGHEST", "UC.LEVEL.LOWEST", "UC.PIT.GRID"})
        .also_called("average ground level, mean elevation, weighted spot heights")
        .equation("GL_m = sum n GL/sum n, n = 1 at the grid's corners, 2 at its sides, 4 within")
        .source("US Army FM 5-434 (2000), grid method (from memory)")
        .example("UC.LEVEL.MEAN({100;101;102|100;102;102})", "101.25", "1e-12 rel", Origin::mathematics,
                 "(100 + 102 + 100 + 102 + 2 (101 + 102))/8")
        .example("UC.LEVEL.MEAN({\"330 ft\";\"331 ft\"|\"332 ft\";\"333 ft\"}; \"ft\")", "331.5", "1e-9 rel",
                 Origin::mathematics, "one cell");
    return takes_levels(mean).gives("GL_m", "Mean level");
}

Function highest_entry() {
    auto highest = function("UC.LEVEL.HIGHEST",
                            [](calc::SpotLevels levels) { return calc::grid_highest_level(levels); });
    highest.says("Highest spot level of a grid: with the formation the deepest wall of the pit")
        .related({"UC.LEVEL.LOWEST", "UC.LEVEL.MEAN", "UC.PIT.BATTER"})
        .also_called("highest elevation, maximum spot height, high point")
        .equation("max GL")
        .source("definition")
        .example("UC.LEVEL.HIGHEST({100;101;102|100;102.5;102})", "102.5", "exact", Origin::mathematics,
                 "the highest of six")
        .example("UC.LEVEL.HIGHEST({\"330 ft\";\"331 ft\"|\"332 ft\";\"333 ft\"}; \"ft\")", "333", "1e-9 rel",
                 Origin::mathematics, "the highest of four");
    return takes_levels(highest).gives("GL", "Highest level");
}

Function lowest_entry() {
    auto lowest =
        function("UC.LEVEL.LOWEST", [](calc::SpotLevels levels) { return calc::grid_lowest_level(levels); });
    lowest.says("Lowest spot level of a grid: with the crown the least cover over a bed")
        .related({"UC.LEVEL.HIGHEST", "UC.LEVEL.MEAN", "UC.COVER.LEAST"})
        .also_called("lowest elevation, minimum spot height, low point")
        .equation("min GL")
        .source("definition")
        .example("UC.LEVEL.LOWEST({100;101;102|99.5;102.5;102})", "99.5", "exact", Origin::mathematics,
                 "the lowest of six")
        .example("UC.LEVEL.LOWEST({\"330 ft\";\"331 ft\"|\"332 ft\";\"333 ft\"}; \"ft\")", "330", "1e-9 rel",
                 Origin::mathematics, "the lowest of four");
    return takes_levels(lowest).gives("GL", "Lowest level");
}

}  // namespace

std::vector<Function> spot_grid_functions() {
    return {fill_entry(), mean_entry(), highest_entry(), lowest_entry()};
}

}  // namespace undercroft::addin
