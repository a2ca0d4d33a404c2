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
        .source("prismoidal formula in closed form; elementary geometry")
        .example("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"0.5 m\"; \"2H:1V\")", "115.6666666667", "1e-9",
                 Origin::mathematics, "shared checks, water 10f: prismoid, closed form")
        .example("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"3 m\"; \"2H:1V\")", "1284", "1e-12 rel",
                 Origin::mathematics, "shared checks, water 10f")
        .example("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"3 m\"; \"1H:1V\")", "906", "1e-12 rel",
                 Origin::mathematics, "shared checks, EW-6: end areas would give 924")
        .example("UC.PIT.VOLUME(\"30 m\"; \"12 m\"; \"2.4 m\"; \"0.75H:1V\")", "1055.808", "1e-12 rel",
                 Origin::mathematics, "shared checks, EW-7");
    takes_pit(volume, "depth", "d", "Depth of the pit").gives("V", "Bank volume of the pit");

    auto area = function("UC.PIT.AREA", &calc::pit_area);
    area.says("Plan area of a battered pit at a height above its base")
        .equation("A = (L + 2 z h)(W + 2 z h)")
        .source("elementary geometry")
        .example("UC.PIT.AREA(\"20 m\"; \"10 m\"; \"3 m\"; \"1H:1V\")", "416", "1e-12 rel",
                 Origin::mathematics, "26 m by 16 m");
    takes_pit(area, "height", "h", "Height above the base").gives("A", "Plan area");

    auto walls = function("UC.PIT.WALLS", &calc::pit_walls);
    walls.says("Area of the four sloping faces of a battered pit")
        .equation("A = d sqrt(1 + z^2) (2 L + 2 W + 4 z d)")
        .source("elementary geometry")
        .example("UC.PIT.WALLS(\"20 m\"; \"10 m\"; \"3 m\"; \"0H:1V\")", "180", "1e-12 rel",
                 Origin::mathematics, "vertical walls: perimeter times depth")
        .example("UC.PIT.WALLS(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\")", "258.75", "1e-12 rel",
                 Origin::mathematics, "slant 3.75 m (3-4-5) times the mean perimeter 69 m");
    takes_pit(walls, "depth", "d", "Depth of the pit").gives("A", "Area of the faces");

    return {
        "Excavation and spoil",
        {
            volume,
            area,
            walls,
            function("UC.PIT.SIDE", &calc::pit_side)
                .says("Plan side of a battered pit at a height above its base")
                .equation("B(h) = B + 2 z h")
                .source("elementary geometry")
                .example("UC.PIT.SIDE(\"20 m\"; \"3 m\"; \"0.75H:1V\")", "24.5", "1e-12 rel",
                         Origin::mathematics, "20 m + 2 x 2.25 m")
                .takes("base side", "B", "Side of the pit at its base")
                .takes("height", "h", "Height above the base")
                .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0 for vertical walls")
                .gives("B(h)", "Side at that height"),
            function("UC.PIT.SLANT", &calc::pit_slant)
                .says("Length of a wall along its slope")
                .equation("s = d sqrt(1 + z^2)")
                .source("elementary geometry")
                .example("UC.PIT.SLANT(\"3 m\"; \"0.75H:1V\")", "3.75", "1e-12 rel", Origin::mathematics,
                         "3-4-5 triangle")
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
                .example("UC.PIT.GRID({3;3|3;3}; \"10 m\"; \"10 m\"; 1)", "200", "1e-12 rel",
                         Origin::mathematics, "level ground, 2 m of cut over 100 m2")
                .example(
                    "UC.PIT.GRID({2;2|0;0}; \"10 m\"; \"10 m\"; 1)", "25", "1e-12 rel", Origin::mathematics,
                    "a plane through the formation half-way: half of the cell is a wedge of 0.5 m mean depth")
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
                .example("UC.PIT.SECTIONS({\"ft\";\"ft2\"|0;0|50;137.5|100;350|150;637.5|200;0}; \"end "
                         "area\"; \"ft3\")",
                         "56200", "0.1 %", Origin::published,
                         "Vose, Handbook of Railroad Construction (1857), art. 108: rounds its mean areas")
                .example("UC.PIT.SECTIONS({\"ft\";\"ft2\"|0;0|25;59.375|50;137.5|75;234.375|100;350|125;484."
                         "375|150;637.5|175;234.375|200;0}; \"prismoidal\"; \"ft3\")",
                         "52500", "1e-12 rel", Origin::mathematics,
                         "shared checks, EW-3: the same cutting with its exact mid areas")
                .example("UC.PIT.SECTIONS({0;45|50;60})", "2625", "1e-12 rel", Origin::published,
                         "public course page, shared checks EW-8: roadway cut")
                .takes("sections", "x, A", "Two columns: chainage, area")
                .takes("method", "method", "end area or prismoidal", u"end area")
                .gives("V", "Volume"),
            function("UC.PIT.BATTER", &calc::pit_batter)
                .says("Steepest simple slope allowed for a soil type and depth, as run per rise; beyond "
                      "the table a licensed engineer designs it")
                .equation("stable rock 0; A 3/4; A short term 1/2 to 12 ft; B 1; C 1 1/2; to 20 ft")
                .source("US 29 CFR 1926 Subpart P, Appendix B, Table B-1")
                .example("UC.PIT.BATTER(\"C\"; \"10 ft\")", "1.5", "exact", Origin::published,
                         "US 29 CFR 1926 Subpart P, Appendix B, Table B-1")
                .example("UC.PIT.BATTER(\"A short term\"; \"12 ft\")", "0.5", "exact", Origin::published,
                         "US 29 CFR 1926 Subpart P, Appendix B, Table B-1, footnote 2")
                .example("UC.PIT.BATTER(\"stable rock\"; \"20 ft\")", "0", "exact", Origin::published,
                         "US 29 CFR 1926 Subpart P, Appendix B, Table B-1")
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
                .example("UC.SPOIL.VOLUME(\"1000 yd3\"; 1.3; \"loose\"; \"yd3\")", "1300", "1e-12 rel",
                         Origin::published,
                         "estimating textbook, Example 9-2 (public page scan): clay, swell 30 %")
                .example("UC.SPOIL.VOLUME(\"2625 m3\"; 1.15)", "3018.75", "1e-12 rel", Origin::published,
                         "public course page, shared checks EW-8: swell 15 %")
                .example("UC.SPOIL.VOLUME(\"100 yd3\"; \"sand\"; \"loose\"; \"yd3\")", "111", "0.5",
                         Origin::published,
                         "US Navy training manual, Table 10-1: 100 yd3 in place give 111 loose")
                .example("UC.SPOIL.VOLUME(\"100 yd3\"; \"sand\"; \"compacted\"; \"yd3\")", "95", "0.5",
                         Origin::published, "US Navy training manual, Table 10-1: and 95 compacted")
                .example("UC.SPOIL.VOLUME(\"1 m3\"; \"clay\")", "1.43", "0.005", Origin::from_memory,
                         "US Army FM 5-434 (2000), Table 1-1: clay, bank to loose")
                .example("UC.SPOIL.VOLUME(\"1 m3\"; \"rock\"; \"compacted\")", "1.3", "0.005",
                         Origin::from_memory,
                         "US Army FM 5-434 (2000), Table 1-1: blasted rock, bank to compacted")
                .takes("bank volume", "Vb", "Volume in the ground")
                .takes("soil", "k", "sand, loam, clay, rock or coral; or the factor itself, such as 1.25")
                .takes("state", "state", "loose or compacted", u"loose")
                .gives("V", "Volume in that state"),
            function("UC.SPOIL.LOADS", &calc::spoil_loads)
                .says("Truckloads for a loose volume; with density and payload, by volume or mass, "
                      "whichever is more")
                .equation("N = max(ceil(V/Vt), ceil(V rho/M))")
                .source("common practice")
                .example("UC.SPOIL.LOADS(UC.SPOIL.VOLUME(\"1000 yd3\"; 1.3); \"7 yd3\")", "186", "exact",
                         Origin::published, "estimating textbook, Example 9-2: 7 yd3 trucks")
                .takes("loose volume", "V", "Loose volume to carry")
                .takes("truck volume", "Vt", "Volume that one truck carries")
                .takes("density", "rho", "Loose density")
                .takes("payload", "M", "Mass that one truck may carry")
                .gives("N", "Truckloads"),
        }};
}

}  // namespace undercroft::addin
