#include "calc/water/opening.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* blocking =
    "Small openings block: screen them and keep an overflow. Water that stands higher below flows back: keep "
    "it "
    "out";

Entry& takes_orifice_coefficient(Entry& entry) {
    return entry.takes("coefficient", "C_d", "Discharge coefficient", 0.6).within(usual::orifice_coefficient);
}

Entry& takes_tailwater(Entry& entry, const char* says) {
    return entry.takes("tailwater", "h_2", says, 0.0).within(usual::tailwater);
}

Function orifice_rectangle_entry() {
    auto rectangle = function("UC.ORIFICE.RECTANGLE", &calc::rectangular_orifice_flow);
    rectangle
        .says("Flow of a vertical rectangular opening, part full, full, and with its tailwater at any level")
        .related({"UC.ORIFICE.FLOW", "UC.ORIFICE.DROWNED", "UC.OUTLET.RATING"})
        .also_called("slot, gate opening, rectangular port, submerged orifice, low-flow opening")
        .equation(
            "(2/3) C_d B sqrt(2 g) (h_b^1.5 - h_t^1.5) above the tailwater, h_b and h_t down to the lower "
            "and upper "
            "end of that part; C_d B D sqrt(2 g (h_1 - h_2)) below it")
        .source(
            "textbook hydraulics, such as Choudhary and Om Prakash, Fluid Mechanics, ch. 6 (large and partly "
            "drowned "
            "orifices, read in its companion code)")
        .caution(blocking)
        .takes("width", "B", "Width of the opening")
        .within(usual::opening_side)
        .takes("height", "D", "Height of the opening")
        .within(usual::opening_side)
        .takes("depth", "h_1", "Depth of the water above the lower edge; 0 m for none")
        .within(usual::water_above);
    takes_orifice_coefficient(rectangle);
    return takes_tailwater(rectangle, "Water below above the lower edge; 0 m or less is free")
        .gives("Q", "Flow")
        .example("UC.ORIFICE.RECTANGLE(0.3; 0.2; 0.9; 0.6)", "142.50797", "1e-4", Origin::mathematics,
                 "0.6 x 2/3 x 0.3 sqrt(2 g) (0.9^1.5 - 0.7^1.5)")
        .example("UC.ORIFICE.RECTANGLE(\"2 m\"; \"1.5 m\"; \"4.5 m\"; 0.62; \"0 m\"; \"m3/s\")",
                 "15.92751896", "0.02 %", Origin::mathematics,
                 "Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.12: edges 3.0 m and 4.5 m deep (inputs "
                 "and formula "
                 "read), recomputed with g = 9.81 m/s2")
        .example(
            "UC.ORIFICE.RECTANGLE(\"1.6 m\"; \"1.25 m\"; \"3.25 m\"; 0.6; \"2.05 m\"; \"m3/s\")",
            "5.822659186", "0.02 %", Origin::mathematics,
            "a wholly drowned opening of a textbook (inputs read), levels 2.0 m and 0.8 m above its top, "
            "recomputed with g = 9.81 m/s2");
}

Function orifice_drowned_entry() {
    auto drowned = function("UC.ORIFICE.DROWNED", &calc::drowned_orifice_flow);
    drowned.says("Flow of a circular opening, part full, full, and with its tailwater at any level")
        .related({"UC.ORIFICE.FLOW", "UC.ORIFICE.RECTANGLE", "UC.OUTFALL.FLOW"})
        .also_called("submerged orifice, orifice against tailwater, flooded outlet, circular port")
        .equation(
            "the lesser of the free flow (C_d A sqrt(2 g h) above the crown, part full a weir of its own "
            "lower "
            "edge) "
            "and C_d A_w sqrt(2 g (h_1 - h_2)), A_w what is wet")
        .source(
            "FHWA HEC-22, 3rd ed. (2009), sec. 8.4.4: the head of a drowned opening is the difference of "
            "levels")
        .caution(blocking)
        .takes("diameter", "D", "Diameter of the opening")
        .within(usual::orifice_diameter)
        .takes("depth", "h_1", "Depth of the water above the lowest point; 0 m for none")
        .within(usual::water_above);
    takes_orifice_coefficient(drowned);
    return takes_tailwater(drowned, "Water below above the lowest point; 0 m or less is free")
        .gives("Q", "Flow")
        .example(
            "UC.ORIFICE.DROWNED(\"1 m\"; \"2.5 m\"; 0.6; \"1.5 m\"; \"m3/s\")", "2.09", "0.005",
            Origin::published,
            "FHWA HEC-22, 3rd ed. (2009), sec. 8.4.4.1: K_or = 2.09 in metres, head the difference of levels")
        .example("UC.ORIFICE.DROWNED(\"1 ft\"; \"3 ft\"; 0.6; \"2 ft\"; \"ft3/s\")", "3.78", "0.005",
                 Origin::published, "FHWA HEC-22, 3rd ed. (2009), sec. 8.4.4.1: K_or = 3.78 in feet")
        .example("UC.ORIFICE.DROWNED(0.15; 1)-UC.ORIFICE.FLOW(0.15; 0.925)", "0", "1e-9", Origin::mathematics,
                 "free and full it is UC.ORIFICE.FLOW under the head above its centre");
}

Function riser_entry() {
    auto riser = function("UC.RISER.FLOW", &calc::riser_flow);
    riser
        .says(
            "Flow into a vertical open pipe or a round grating: the lesser of the weir over its rim and the "
            "orifice "
            "through its opening")
        .related({"UC.WEIR.FLOW", "UC.ORIFICE.FLOW", "UC.OUTLET.RATING", "UC.OUTFALL.FLOW"})
        .also_called("standpipe, drop inlet, overflow riser, grate inlet, outlet structure, morning glory")
        .equation("min(C_w pi D h^1.5, C_o pi/4 D^2 sqrt(2 g h)); they meet at h = C_o D sqrt(2 g)/(4 C_w)")
        .source(
            "FHWA HEC-22, 3rd ed. (2009), sec. 8.4.4; drowned by Villemonte (1947) and the difference of "
            "levels")
        .caution(
            "The pipe below must carry it: where it backs up above the rim, give that as the tailwater. "
            "Screen the "
            "opening; a person or a child can be drawn in")
        .takes("diameter", "D", "Inside diameter of the pipe at its rim")
        .within(usual::riser_diameter)
        .takes("head", "h", "Head above the rim; 0 m for none")
        .within(usual::weir_head)
        .takes("weir coefficient", "C_w", "Coefficient of the rim as a weir", u"1.84 m^0.5/s")
        .within(usual::weir_coefficient)
        .takes("orifice coefficient", "C_o", "Coefficient of the opening as an orifice", 0.6)
        .within(usual::orifice_coefficient);
    return takes_tailwater(riser, "Water in the pipe above the rim; 0 m or less is free")
        .gives("Q", "Flow")
        .examples("UC.RISER.FLOW(\"0.6 m\"; \"{} m\"; \"1.84 m^0.5/s\"; 0.6; \"0 m\"; \"m3/s\")", "0.02 %",
                  Origin::mathematics,
                  "weir 1.84 pi D h^1.5, orifice 0.6 pi/4 D^2 sqrt(2 g h), g = 9.81 m/s2",
                  {{"0.1", "0.109677854"}, {"0.2", "0.310215819"}, {"0.5", "0.531346882"}})
        .example("UC.RISER.FLOW(0.6; 0.216657730; ; ; ; \"m3/s\")", "0.349768", "0.02 %", Origin::mathematics,
                 "where both laws meet, 1.84 pi D h^1.5 with h = C_o D sqrt(2 g)/(4 C_w)");
}

}  // namespace

std::vector<Function> opening_functions() {
    return {orifice_rectangle_entry(), orifice_drowned_entry(), riser_entry()};
}

}  // namespace undercroft::addin
