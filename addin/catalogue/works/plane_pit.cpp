#include "calc/works/plane_pit.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/planes.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* planes_source =
    "geometry: what lies under the ground and over the highest of formation and four walls; the batter is "
    "the run "
    "square to the edge of the base, per rise";
constexpr const char* planes_caution =
    "Walls are as deep as the ground is high, which decides batter and protection. Trench collapse kills: "
    "local codes "
    "and a licensed engineer govern";

calc::PlanePit pit(Length length, Length width, Batter batter, const calc::CornerLevels& formation,
                   const calc::CornerLevels& ground, Length tolerance) {
    const calc::PlanePit made = {length, width, batter,
                                 plane_over("formation", formation, length, width, tolerance),
                                 plane_over("ground", ground, length, width, tolerance)};
    require_pit("ground", made.ground, made.formation, length, width);
    return made;
}

Entry& takes_plane_pit(Entry& entry) {
    return entry.takes("base length", "L", "Length of the pit's base, along x from 0")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the pit's base, along y from 0")
        .within(usual::plan_width)
        .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0H:1V for vertical walls")
        .within(usual::batter)
        .takes("formation", "x, y, z_f",
               "Three columns: place along x, along y, level of the formation; three rows or more")
        .within({usual::plan_place, usual::plan_place, usual::level})
        .takes("ground", "x, y, z_g", "The same three columns of the existing ground")
        .within({usual::plan_place, usual::plan_place, usual::level});
}
Entry& takes_plane_pit_tolerance(Entry& entry) {
    return entry.takes("tolerance", "tol", "How far the levels may depart from a plane", u"0.05 m")
        .within(usual::plane_tolerance);
}

Function pit_planes_entry() {
    auto volume =
        function("UC.PIT.PLANES", [](Length length, Length width, Batter batter, calc::CornerLevels formation,
                                     calc::CornerLevels ground, Length tolerance) {
            return calc::plane_pit_volume(pit(length, width, batter, formation, ground, tolerance));
        });
    volume.says("Volume of a battered pit between two planes, its formation and the existing ground; exact")
        .related({"UC.PIT.FILLED", "UC.PIT.DEEPEST", "UC.LEVEL.PLANE", "UC.SPOIL.VOLUME"})
        .also_called("excavation on sloping ground, cut between planes, bulk excavation, earthworks volume")
        .equation(
            "polyhedron between ground, formation and walls; vertical walls: L W times the mean depth of the "
            "corners")
        .source(planes_source)
        .example(
            "UC.PIT.PLANES(\"40 m\"; \"12 m\"; \"0H:1V\"; {0;0;100|40;0;100.2|0;12;100}; "
            "{0;0;102.6|40;0;102.6|0;12;102.6})",
            "1200", "1e-9 rel", Origin::mathematics, "480 m2 of 2.5 m mean depth")
        .example(
            "UC.PIT.PLANES(\"100 ft\"; \"40 ft\"; \"1.5H:1V\"; "
            "{\"ft\";\"ft\";\"ft\"|0;0;330|100;0;330|0;40;330}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;338|100;0;338|0;40;338}; ; \"yd3\")",
            "1739.851852", "5e-7", Origin::mathematics,
            "both planes level: the last example of UC.PIT.VOLUME")
        .caution(planes_caution);
    takes_plane_pit(volume);
    return takes_plane_pit_tolerance(volume).gives("V", "Bank volume of the pit");
}

Function filled_entry() {
    auto filled = function(
        "UC.PIT.FILLED", [](Length length, Length width, Batter batter, calc::CornerLevels formation,
                            calc::CornerLevels ground, calc::CornerLevels surface, Length tolerance) {
            const calc::PlanePit made = pit(length, width, batter, formation, ground, tolerance);
            const calc::Plane top = plane_over("surface", surface, length, width, tolerance);
            require_pit("surface", top, made.formation, length, width);
            return calc::plane_pit_filled(made, top);
        });
    filled
        .says(
            "Volume of a pit between two planes that is filled up to a third one: between the walls to the "
            "ground, "
            "straight up above it")
        .related({"UC.PIT.PLANES", "UC.PIT.FILL", "UC.SPOIL.KEPT", "UC.FILL.IMPORT"})
        .also_called("backfill volume, fill to a plane, reinstatement, trench fill")
        .equation("a layer is the difference of two")
        .source(planes_source)
        .example(
            "UC.PIT.FILLED(\"40 m\"; \"12 m\"; \"0H:1V\"; {0;0;100|40;0;100.2|0;12;100}; "
            "{0;0;102.6|40;0;102.6|0;12;102.6}; {0;0;101|40;0;101.2|0;12;101})",
            "480", "1e-9 rel", Origin::mathematics, "a layer of 1 m over 480 m2")
        .example(
            "UC.PIT.FILLED(\"100 ft\"; \"40 ft\"; \"1.5H:1V\"; "
            "{\"ft\";\"ft\";\"ft\"|0;0;330|100;0;330|0;40;330}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;338|100;0;338|0;40;338}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;338|100;0;338|0;40;338}; ; \"yd3\")",
            "1739.851852", "5e-6", Origin::mathematics,
            "filled to the ground: the last example of UC.PIT.VOLUME");
    takes_plane_pit(filled)
        .takes("surface", "x, y, z_s", "The same three columns of the surface of the fill")
        .within({usual::plan_place, usual::plan_place, usual::level});
    return takes_plane_pit_tolerance(filled).gives("V", "Volume filled");
}

Function deepest_entry() {
    auto deepest = function(
        "UC.PIT.DEEPEST", [](Length length, Length width, Batter batter, calc::CornerLevels formation,
                             calc::CornerLevels ground, Length tolerance) {
            return calc::deepest_wall(pit(length, width, batter, formation, ground, tolerance));
        });
    deepest
        .says(
            "Depth of the deepest wall of a pit between two planes, from its foot to the ground at its top: "
            "it "
            "decides batter and protection")
        .related({"UC.PIT.BATTER", "UC.PIT.PLANES", "UC.LEVEL.PLANE"})
        .also_called("maximum depth of excavation, deepest cut, wall height, need for protection")
        .equation(
            "max over the walls at the corners of ground less formation, where each wall meets the ground")
        .source(planes_source)
        .example(
            "UC.PIT.DEEPEST(\"40 m\"; \"12 m\"; \"0H:1V\"; {0;0;100|40;0;99.8|0;12;100}; "
            "{0;0;102|40;0;102.8|0;12;102})",
            "3", "1e-9 rel", Origin::mathematics, "102.8 - 99.8 at the far end")
        .example(
            "UC.PIT.DEEPEST(\"100 ft\"; \"40 ft\"; \"1.5H:1V\"; "
            "{\"ft\";\"ft\";\"ft\"|0;0;330|100;0;330|0;40;330}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;338|100;0;338|0;40;338}; ; \"ft\")",
            "8", "1e-9 rel", Origin::mathematics, "both planes level")
        .caution(planes_caution);
    takes_plane_pit(deepest);
    return takes_plane_pit_tolerance(deepest).gives("d", "Depth of the deepest wall");
}

}  // namespace

std::vector<Function> plane_pit_functions() {
    return {pit_planes_entry(), filled_entry(), deepest_entry()};
}

}  // namespace undercroft::addin
