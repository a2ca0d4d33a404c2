#include "calc/works/excavation.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/works/spoil.hpp"

namespace undercroft::addin {

namespace {

Entry& takes_pit(Entry& entry, const char* depth_name, const char* depth_symbol, const char* depth_says) {
    return entry.takes("base length", "L", "Length of the pit at its base")
        .takes("base width", "W", "Width of the pit at its base")
        .takes(depth_name, depth_symbol, depth_says)
        .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0 for vertical walls");
}

}  // namespace

Group excavation_functions() {
    auto volume = function("UC.PIT.VOLUME", &calc::pit_volume);
    volume
        .says(
            "Volume of a pit with a rectangular base and one batter on all sides; exact, also for unequal "
            "sides")
        .equation("V = L W d + (L + W) z d^2 + 4/3 z^2 d^3")
        .source("prismoidal formula in closed form; elementary geometry");
    takes_pit(volume, "depth", "d", "Depth of the pit").gives("V", "Bank volume of the pit");

    auto area = function("UC.PIT.AREA", &calc::pit_area);
    area.says("Plan area of a battered pit at a height above its base")
        .equation("A = (L + 2 z h)(W + 2 z h)")
        .source("elementary geometry");
    takes_pit(area, "height", "h", "Height above the base").gives("A", "Plan area");

    auto walls = function("UC.PIT.WALLS", &calc::pit_walls);
    walls.says("Area of the four sloping faces of a battered pit")
        .equation("A = d sqrt(1 + z^2) (2 L + 2 W + 4 z d)")
        .source("elementary geometry");
    takes_pit(walls, "depth", "d", "Depth of the pit").gives("A", "Area of the faces");

    return {"Excavation and spoil",
            {
                volume,
                area,
                walls,
                function("UC.PIT.SIDE", &calc::pit_side)
                    .says("Plan side of a battered pit at a height above its base")
                    .equation("B(h) = B + 2 z h")
                    .source("elementary geometry")
                    .takes("base side", "B", "Side of the pit at its base")
                    .takes("height", "h", "Height above the base")
                    .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0 for vertical walls")
                    .gives("B(h)", "Side at that height"),
                function("UC.PIT.SLANT", &calc::pit_slant)
                    .says("Length of a wall along its slope")
                    .equation("s = d sqrt(1 + z^2)")
                    .source("elementary geometry")
                    .takes("depth", "d", "Depth of the pit")
                    .takes("batter", "z", "Slope of the wall, such as 1.5H:1V; 0 for a vertical wall")
                    .gives("s", "Length along the slope"),
                function("UC.PIT.GRID",
                         [](std::vector<std::vector<Length>> levels, Length spacing_x, Length spacing_y,
                            Length formation_level) {
                             return calc::pit_grid(levels, spacing_x, spacing_y, formation_level);
                         })
                    .says("Cut above a formation level from a grid of spot levels; fill is not counted, "
                          "cells partly in cut are cut exactly")
                    .equation("V = sum over cells of four plane triangles that meet at the mean of the "
                              "corners, the part above the formation")
                    .source("common practice (grid method); whole cells as in US Army FM 5-434 (2000), "
                            "chapter on earthwork estimation (from memory)")
                    .takes("levels", "z", "Grid of spot levels: rows along y, columns along x")
                    .takes("spacing x", "dx", "Distance from column to column")
                    .takes("spacing y", "dy", "Distance from row to row")
                    .takes("formation level", "z0", "Level of the pit's base")
                    .gives("V", "Bank volume of the cut"),
                function("UC.PIT.SECTIONS",
                         [](std::vector<std::tuple<Length, Area>> sections, calc::SectionMethod method) {
                             return calc::pit_sections(sections, method);
                         })
                    .says("Volume from cross-sections at chainages; prismoidal takes sections in threes, the "
                          "middle one half-way")
                    .equation("end area V = sum d (A1 + A2)/2; prismoidal V = sum d (A1 + 4 Am + A2)/6")
                    .source("Vose, Handbook of Railroad Construction (1857), art. 108")
                    .takes("sections", "x, A", "Two columns: chainage, area")
                    .takes("method", "method", "end area or prismoidal", u"end area")
                    .gives("V", "Volume"),
                function("UC.PIT.BATTER", &calc::pit_batter)
                    .says("Steepest simple slope allowed for a soil type and depth, as run per rise; beyond "
                          "the table a licensed engineer designs it")
                    .equation("stable rock 0; A 3/4; A short term 1/2 to 12 ft; B 1; C 1 1/2; to 20 ft")
                    .source("US 29 CFR 1926 Subpart P, Appendix B, Table B-1")
                    .caution("Trench collapse kills. The soil type is for a competent person on site; local "
                             "codes and a licensed engineer govern")
                    .takes("soil type", "soil", "stable rock, A, A short term, B or C")
                    .takes("depth", "d", "Depth of the excavation")
                    .gives("z", "Run per rise"),
                function("UC.SPOIL.VOLUME",
                         [](Volume bank_volume, std::variant<calc::SpoilSoil, Share> soil,
                            calc::SpoilState state) { return calc::spoil_volume(bank_volume, soil, state); })
                    .says("Loose or compacted volume of what was dug from the bank")
                    .equation("V = k Vb")
                    .source("US Army FM 5-434 (2000), Table 1-1")
                    .takes("bank volume", "Vb", "Volume in the ground")
                    .takes("soil", "k", "sand, loam, clay, rock or coral; or the factor itself, such as 1.25")
                    .takes("state", "state", "loose or compacted", u"loose")
                    .gives("V", "Volume in that state"),
                function("UC.SPOIL.LOADS", &calc::spoil_loads)
                    .says("Truckloads for a loose volume; with density and payload, by volume or mass, "
                          "whichever is more")
                    .equation("N = max(ceil(V/Vt), ceil(V rho/M))")
                    .source("common practice")
                    .takes("loose volume", "V", "Loose volume to carry")
                    .takes("truck volume", "Vt", "Volume that one truck carries")
                    .takes("density", "rho", "Loose density")
                    .takes("payload", "M", "Mass that one truck may carry")
                    .gives("N", "Truckloads"),
            }};
}

}  // namespace undercroft::addin
