#include "calc/works/excavation.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "calc/works/plane_pit.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::SectionMethod> {
    static constexpr std::string_view kind = "a method";
    static constexpr Choice<calc::SectionMethod> list[] = {
        {"end area", calc::SectionMethod::end_area},
        {"prismoidal", calc::SectionMethod::prismoidal},
    };
};

namespace {

calc::PlanePit falling_pit(Length base_length, Length base_width, Length depth, Batter batter,
                           Gradient fall) {
    const Length rise = vertical_rise(fall, base_length);
    calc::require(rise < depth, calc::shown("fall", fall), " lifts the far end of the base by ",
                  calc::amount(rise), ", which must be less than the depth (", calc::amount(depth), ")");
    return calc::falling_pit(base_length, base_width, depth, batter, fall);
}

Entry& takes_excavation_pit(Entry& entry, const char* depth_name, const char* depth_symbol,
                            const char* depth_says) {
    return entry.takes("base length", "L", "Length of the pit at its base")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the pit at its base")
        .within(usual::plan_width)
        .takes(depth_name, depth_symbol, depth_says)
        .within(usual::pit_part)
        .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0 for vertical walls")
        .within(usual::batter)
        .takes("fall", "s",
               "Fall of the base along its length, the depth being that at the low end; 0 is level", 0.0)
        .within(usual::bed_fall)
        .added_later();
}

std::vector<Function> pit_functions() {
    auto volume = function("UC.PIT.VOLUME", [](Length base_length, Length base_width, Length depth,
                                               Batter batter, Gradient fall) {
        if (fall == zero) return calc::pit_volume(base_length, base_width, depth, batter);
        return calc::plane_pit_volume(falling_pit(base_length, base_width, depth, batter, fall));
    });
    volume
        .says(
            "Volume of a pit with a rectangular base and one batter on all sides; exact, also for unequal "
            "sides")
        .also_called("excavation volume, frustum, prismoid, truncated pyramid, earthworks, cut, dig, basin")
        .related({"UC.PIT.AREA", "UC.PIT.WALLS", "UC.PIT.BATTER", "UC.SPOIL.VOLUME"})
        .to_try("UC.PIT.VOLUME(\"45 m\"; \"14 m\"; \"2.2 m\"; \"1H:1V\")")
        .to_try("UC.PIT.VOLUME(\"150 ft\"; \"46 ft\"; \"7 ft\"; \"1H:1V\"; \"yd3\")")
        .refuses("UC.PIT.VOLUME(\"45 m\"; \"14 m\"; \"2.2 kg\"; \"1H:1V\")")
        .refuses("UC.PIT.VOLUME(\"45 m\"; \"14 m\"; \"2.2 m\"; 45)")
        .sketch(Sketch::pit)
        .equation("V = L W d + (L + W) z d^2 + 4/3 z^2 d^3")
        .source("prismoidal formula in closed form; elementary geometry")
        .example("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"3 m\"; \"2H:1V\")", "1284", "1e-12 rel",
                 Origin::mathematics, "prismoid: 3/6 (200 + 4 x 416 + 704)")
        .example("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"0.5 m\"; \"2H:1V\")", "115.6666666667", "1e-9",
                 Origin::mathematics, "prismoid: 0.5/6 (200 + 4 x 231 + 264)")
        .example("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"3 m\"; \"1H:1V\")", "906", "1e-12 rel",
                 Origin::mathematics, "prismoid: 3/6 (200 + 4 x 299 + 416); end areas would give 924")
        .example("UC.PIT.VOLUME(\"30 m\"; \"12 m\"; \"2.4 m\"; \"0.75H:1V\")", "1055.808", "1e-12 rel",
                 Origin::mathematics, "prismoid: 2.4/6 (360 + 4 x 438.84 + 524.16)")
        .example("UC.PIT.VOLUME(\"100 ft\"; \"40 ft\"; \"8 ft\"; \"1.5H:1V\"; \"yd3\")", "1739.851852",
                 "5e-7", Origin::mathematics, "(32000 + 13440 + 1536)/27")
        .example("UC.PIT.VOLUME(\"40 m\"; \"12 m\"; \"2.6 m\"; \"0H:1V\"; ; \"0.5 %\")", "1200", "1e-12 rel",
                 Origin::mathematics, "480 m2 of 2.6 m at one end and 2.4 m at the other");
    takes_excavation_pit(volume, "depth", "d", "Depth of the pit").gives("V", "Bank volume of the pit");

    auto area = function(
        "UC.PIT.AREA", [](Length base_length, Length base_width, Length depth, Batter batter, Gradient fall) {
            if (fall == zero) return calc::pit_area(base_length, base_width, depth, batter);
            return calc::plane_pit_area(falling_pit(base_length, base_width, depth, batter, fall));
        });
    area.says("Plan area of a battered pit at a height above its base")
        .also_called("area at the top, footprint at ground level, cut area")
        .related({"UC.PIT.VOLUME", "UC.PIT.SIDE"})
        .to_try("UC.PIT.AREA(\"45 m\"; \"14 m\"; \"2.2 m\"; \"1H:1V\")")
        .to_try("UC.PIT.AREA(\"150 ft\"; \"46 ft\"; \"7 ft\"; \"1H:1V\"; \"ft2\")")
        .sketch(Sketch::pit)
        .equation("A = (L + 2 z h)(W + 2 z h)")
        .source("elementary geometry")
        .example("UC.PIT.AREA(\"20 m\"; \"10 m\"; \"3 m\"; \"1H:1V\")", "416", "1e-12 rel",
                 Origin::mathematics, "26 m by 16 m")
        .example("UC.PIT.AREA(\"100 ft\"; \"40 ft\"; \"8 ft\"; \"1.5H:1V\"; \"ft2\")", "7936", "1e-9 rel",
                 Origin::mathematics, "124 ft by 64 ft")
        .example("UC.PIT.AREA(\"40 m\"; \"12 m\"; \"2.6 m\"; \"0H:1V\"; ; \"0.5 %\")", "480", "1e-12 rel",
                 Origin::mathematics, "vertical walls: the base");
    takes_excavation_pit(area, "height", "h", "Height above the base").gives("A", "Plan area");

    auto walls = function("UC.PIT.WALLS", [](Length base_length, Length base_width, Length depth,
                                             Batter batter, Gradient fall) {
        if (fall == zero) return calc::pit_walls(base_length, base_width, depth, batter);
        return calc::plane_pit_walls(falling_pit(base_length, base_width, depth, batter, fall));
    });
    walls.says("Area of the four sloping faces of a battered pit")
        .also_called("sloping area, wall area, batter area, side area")
        .related({"UC.PIT.SLANT", "UC.WRAP.AREA"})
        .to_try("UC.PIT.WALLS(\"45 m\"; \"14 m\"; \"2.2 m\"; \"1H:1V\")")
        .to_try("UC.PIT.WALLS(\"150 ft\"; \"46 ft\"; \"7 ft\"; \"1H:1V\"; \"ft2\")")
        .sketch(Sketch::pit)
        .equation("A = d sqrt(1 + z^2) (2 L + 2 W + 4 z d)")
        .source("elementary geometry")
        .example("UC.PIT.WALLS(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\")", "258.75", "1e-12 rel",
                 Origin::mathematics, "slant 3.75 m (3-4-5) times the mean perimeter 69 m")
        .example("UC.PIT.WALLS(\"20 m\"; \"10 m\"; \"3 m\"; \"0H:1V\")", "180", "1e-12 rel",
                 Origin::mathematics, "vertical walls: perimeter times depth")
        .example("UC.PIT.WALLS(\"40 m\"; \"12 m\"; \"2.6 m\"; \"0H:1V\"; ; \"0.5 %\")", "260", "1e-12 rel",
                 Origin::mathematics, "12 (2.4 + 2.6) + 2 x 40 x 2.5");
    takes_excavation_pit(walls, "depth", "d", "Depth of the pit").gives("A", "Area of the faces");

    return {volume, area, walls};
}

std::vector<Function> side_functions() {
    return {
        function("UC.PIT.SIDE", &calc::pit_side)
            .says("Plan side of a battered pit at a height above its base")
            .also_called("top length, top width, width at a height")
            .related({"UC.PIT.AREA", "UC.PIT.SLANT"})
            .to_try("UC.PIT.SIDE(\"14 m\"; \"2.2 m\"; \"1H:1V\")")
            .to_try("UC.PIT.SIDE(\"46 ft\"; \"7 ft\"; \"1H:1V\"; \"ft\")")
            .sketch(Sketch::pit)
            .equation("L_h = L + 2 z h")
            .source("elementary geometry")
            .example("UC.PIT.SIDE(\"20 m\"; \"3 m\"; \"0.75H:1V\")", "24.5", "1e-12 rel", Origin::mathematics,
                     "20 m + 2 x 2.25 m")
            .takes("base side", "L", "Side of the pit at its base")
            .within(usual::plan_length)
            .takes("height", "h", "Height above the base")
            .within(usual::pit_part)
            .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0 for vertical walls")
            .within(usual::batter)
            .gives("L_h", "Side at that height"),
        function("UC.PIT.SLANT", &calc::pit_slant)
            .says("Length of a wall along its slope")
            .also_called("slope length, slant height, batter length")
            .related({"UC.PIT.WALLS", "UC.PIT.SIDE"})
            .to_try("UC.PIT.SLANT(\"2.2 m\"; \"1H:1V\")")
            .to_try("UC.PIT.SLANT(\"7 ft\"; \"1.5H:1V\"; \"ft\")")
            .sketch(Sketch::pit)
            .equation("s = d sqrt(1 + z^2)")
            .source("elementary geometry")
            .example("UC.PIT.SLANT(\"3 m\"; \"0.75H:1V\")", "3.75", "1e-12 rel", Origin::mathematics,
                     "3-4-5 triangle")
            .takes("depth", "d", "Depth of the pit")
            .within(usual::pit_part)
            .takes("batter", "z", "Slope of the wall, such as 1.5H:1V; 0 for a vertical wall")
            .within(usual::batter)
            .gives("s", "Length along the slope"),
    };
}

std::vector<Function> survey_functions() {
    return {
        function("UC.PIT.GRID",
                 [](std::vector<std::vector<Length>> levels, Length spacing_x, Length spacing_y,
                    Length formation_level) {
                     return calc::pit_grid(levels, spacing_x, spacing_y, formation_level);
                 })
            .says("Cut above a formation level from a grid of spot levels; fill is not counted, "
                  "cells partly in cut are cut exactly")
            .also_called("cut and fill, spot heights, borrow pit, grid method, levels")
            .related({"UC.PIT.SECTIONS", "UC.PIT.VOLUME"})
            .to_try("UC.PIT.GRID({100.2;100.4;100.3|100.1;100.3;100.2}; \"10 m\"; \"10 m\"; 98)")
            .to_try(
                "UC.PIT.GRID({\"ft\";\"ft\"|328.5;329|328;328.5}; \"30 ft\"; \"30 ft\"; \"321 ft\"; \"yd3\")")
            .equation("V = sum over cells of four plane triangles that meet at the mean of the "
                      "corners, the part above the formation")
            .source("common practice (grid method); whole cells as in US Army FM 5-434 (2000), "
                    "chapter on earthwork estimation (from memory)")
            .example("UC.PIT.GRID({102;102|102;102}; \"10 m\"; \"10 m\"; 100)", "200", "1e-12 rel",
                     Origin::mathematics, "level ground, 2 m of cut over 100 m2")
            .example(
                "UC.PIT.GRID({101;101|99;99}; \"10 m\"; \"10 m\"; 100)", "25", "1e-12 rel",
                Origin::mathematics,
                "a plane through the formation half-way: half of the cell is a wedge of 0.5 m mean depth")
            .takes("levels", "GL", "Grid of spot levels: rows along y, columns along x")
            .within(usual::level)
            .takes("spacing x", "dx", "Distance from column to column")
            .within(usual::grid_spacing)
            .takes("spacing y", "dy", "Distance from row to row")
            .within(usual::grid_spacing)
            .takes("formation level", "FoL", "Level of the pit's base")
            .within(usual::level)
            .gives("V", "Bank volume of the cut"),
        function("UC.PIT.SECTIONS",
                 [](std::vector<std::tuple<Length, Area>> sections, calc::SectionMethod method) {
                     return calc::pit_sections(sections, method);
                 })
            .says("Volume from cross-sections at chainages; prismoidal takes sections in threes, the "
                  "middle one half-way")
            .also_called("average end area, prismoidal formula, chainage, station, cross-sections")
            .related({"UC.PIT.GRID", "UC.PIT.VOLUME"})
            .to_try("UC.PIT.SECTIONS({\"m\";\"m2\"|0;12|20;18|40;15})")
            .to_try("UC.PIT.SECTIONS({\"ft\";\"ft2\"|0;120|50;180|100;150}; \"prismoidal\"; \"yd3\")")
            .equation("end area V = sum d (A1 + A2)/2; prismoidal V = sum d (A1 + 4 Am + A2)/6")
            .source("Vose, Handbook of Railroad Construction (1857), art. 108")
            .example("UC.PIT.SECTIONS({\"ft\";\"ft2\"|0;0|50;137.5|100;350|150;637.5|200;0}; \"end "
                     "area\"; \"ft3\")",
                     "56200", "0.1 %", Origin::published,
                     "Vose, Handbook of Railroad Construction (1857), art. 108, who rounds mean areas")
            .example("UC.PIT.SECTIONS({\"ft\";\"ft2\"|0;0|25;59.375|50;137.5|75;234.375|100;350|125;484."
                     "375|150;637.5|175;234.375|200;0}; \"prismoidal\"; \"ft3\")",
                     "52500", "1e-12 rel", Origin::mathematics, "the same cutting with its exact mid areas")
            .example("UC.PIT.SECTIONS({0;45|50;60})", "2625", "1e-12 rel", Origin::mathematics,
                     "inputs of a public course page, a roadway in cut: 50 (45 + 60)/2")
            .takes("sections", "x, A", "Two columns: chainage, area")
            .within({usual::chainage, usual::section_area})
            .takes("method", "method", "end area or prismoidal", u"end area")
            .gives("V", "Volume"),
    };
}

}  // namespace

std::vector<Function> excavation_functions() {
    std::vector<Function> all = pit_functions();
    for (const auto& entries : {side_functions(), survey_functions()})
        all.insert(all.end(), entries.begin(), entries.end());
    return all;
}

}  // namespace undercroft::addin
