#include "calc/works/pit_zones.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

namespace {

Function shored_entry() {
    return function("UC.PIT.SHORED", &calc::shored_pit_volume)
        .says(
            "Volume of a pit with vertical walls behind shoring, and a working space on all four sides of "
            "the bed")
        .related({"UC.PIT.VOLUME", "UC.PIT.BATTER", "UC.EARTH.THRUST"})
        .also_called("sheet piling, trench box, sheeted excavation, shoring, working space, vertical sides")
        .equation("V = (L + 2 w)(W + 2 w) d")
        .source("elementary geometry")
        .example("UC.PIT.SHORED(\"30 m\"; \"12 m\"; \"2.4 m\"; \"0.6 m\")", "988.416", "1e-12 rel",
                 Origin::mathematics, "31.2 m x 13.2 m x 2.4 m")
        .example("UC.PIT.SHORED(\"100 ft\"; \"40 ft\"; \"9 ft\"; \"2 ft\"; \"yd3\")", "1525.333333", "5e-7",
                 Origin::mathematics, "104 ft x 44 ft x 9 ft")
        .caution(
            "The shoring's own thickness comes to the working space. Trench collapse kills: a licensed "
            "engineer "
            "designs the shoring, local codes govern")
        .takes("base length", "L", "Length of the bed at its base")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the bed at its base")
        .within(usual::plan_width)
        .takes("depth", "d", "Depth of the pit")
        .within(usual::pit_part)
        .takes("working space", "w", "Between bed and shoring, on each side")
        .within(usual::working_space)
        .gives("V", "Bank volume of the pit");
}

Function zone_entry() {
    return function("UC.PIT.ZONE", &calc::pit_zone)
        .says(
            "Volume of a layer in a battered pit between two heights: from wall to wall up to the ground, "
            "straight "
            "up above it")
        .related({"UC.PIT.VOLUME", "UC.SPOIL.KEPT", "UC.FILL.MASS", "UC.BED.VOLUME"})
        .also_called("volume of a layer, backfill zone, haunch, bedding, fill by layer")
        .equation("V = V(h_2) - V(h_1), V as UC.PIT.VOLUME up to d, and A(d)(h - d) more above it")
        .source("elementary geometry")
        .example("UC.PIT.ZONE(\"20 m\"; \"10 m\"; \"3 m\"; \"1H:1V\"; \"2 m\"; \"3 m\")", "375.333333333",
                 "1e-9 rel", Origin::mathematics, "pits of 906 m3 and of 530.6667 m3")
        .example("UC.PIT.ZONE(\"100 ft\"; \"40 ft\"; \"8 ft\"; \"0H:1V\"; \"7 ft\"; \"9 ft\"; \"ft3\")",
                 "8000", "1e-9 rel", Origin::mathematics,
                 "100 ft x 40 ft x 2 ft, half of it above the ground")
        .takes("base length", "L", "Length of the pit at its base")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the pit at its base")
        .within(usual::plan_width)
        .takes("depth", "d", "Depth of the pit below the ground")
        .within(usual::pit_part)
        .takes("batter", "z", "Slope of the walls; 0H:1V for vertical walls")
        .within(usual::batter)
        .takes("from height", "h_1", "Lower side of the layer above the base")
        .within(usual::pit_part)
        .takes("to height", "h_2", "Upper side of the layer above the base")
        .within(usual::pit_part)
        .gives("V", "Volume of the layer");
}

}  // namespace

std::vector<Function> pit_zone_functions() {
    return {shored_entry(), zone_entry()};
}

}  // namespace undercroft::addin
