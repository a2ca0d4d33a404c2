#include "calc/ground/vehicle_load.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/ground/load_class.hpp"
#include "addin/catalogue/ground/surfacing.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

namespace {

Function vehicle_entry() {
    return function("UC.LOAD.VEHICLE", &calc::vehicle_load)
        .says(
            "Live load of a bridge code's vehicle on the top of a buried structure, with its own tyres, "
            "wheels "
            "and axles, spread through at least 2 ft of fill")
        .related({"UC.LOAD.WHEEL", "UC.LOAD.PRESENCE", "UC.LOAD.FILL", "UC.COVER.DEPTH"})
        .also_called(
            "design truck, design tandem, HL-93, live load distribution, highway loading, wheel load")
        .equation(
            "p = m n P (1 + IM)/(l w), as UC.LOAD.WHEEL; tyres 10 in x 20 in, wheels 6 ft apart; truck 16 "
            "kip "
            "on axles 14 ft apart, tandem 12.5 kip on axles 4 ft apart; HL-93 the larger of the two; W80 one "
            "wheel of 80 kN on 0.25 m x 0.40 m")
        .source(
            "AASHTO LRFD Bridge Design Specifications, 3.6.1.2.2, 3.6.1.2.3, 3.6.1.2.5, 3.6.1.2.6, 3.6.1.3.1 "
            "and Table 3.6.1.1.2-1; AS 5100.2, W80 (from memory), spread by the same rule")
        .example("UC.LOAD.VEHICLE(\"AASHTO HL-93\"; \"0.6 m\")", "94.308633", "5e-7", Origin::mathematics,
                 "AASHTO LRFD 3.6.1.2.6 recomputed: 1.2 x 16 kip x 1.2488 on 0.944 m x 1.198 m")
        .example("UC.LOAD.VEHICLE(\"AASHTO HL-93\"; \"2 m\")", "16.159988", "5e-7", Origin::mathematics,
                 "the same: the tandem's four wheels govern, the truck gives 15.2795 kPa")
        .example("UC.LOAD.VEHICLE(\"AASHTO truck\"; \"2 ft\"; ; 1; ; \"ksf\")", "1.605936", "5e-7",
                 Origin::mathematics, "one wheel as in the first example of UC.LOAD.WHEEL")
        .example("UC.LOAD.VEHICLE(\"AS 5100.2 W80\"; \"0.75 m\"; ; 1; \"no\")", "56.958505", "5e-6",
                 Origin::mathematics, "80 kN on 1.1125 m x 1.2625 m, at rest")
        .caution(
            "Without lane load and load factors. Two vehicles side by side are not counted: each lane counts "
            "less, and they govern by less than a tenth from 1.95 m of fill on. Refused under 2 ft of cover, "
            "where the standard does not spread wheels through fill. Local codes and a licensed engineer "
            "govern")
        .takes("vehicle", "class", "AASHTO HL-93, AASHTO truck, AASHTO tandem or AS 5100.2 W80")
        .takes("cover", "H", "Depth of fill over the structure, as UC.COVER.DEPTH counts it")
        .within(usual::cover)
        .takes("distribution factor", "f", "Widening per depth of fill, by edition and fill", 1.15)
        .within(usual::distribution_factor)
        .takes("presence", "m", "Multiple presence factor, of one lane 1.2; 1 where it is not counted", 1.2)
        .within(usual::presence)
        .takes("impact", "IM", "TRUE with dynamic allowance", u"TRUE")
        .gives("p", "Pressure on the structure");
}

Function presence_entry() {
    return function("UC.LOAD.PRESENCE", &calc::multiple_presence)
        .says("Multiple presence factor for the number of lanes that are loaded at once")
        .related({"UC.LOAD.VEHICLE", "UC.LOAD.WHEEL"})
        .also_called("multiple presence, lane factor, loaded lanes, m factor")
        .equation("m = 1.20, 1.00, 0.85 for one, two, three lanes; 0.65 for more")
        .source("AASHTO LRFD Bridge Design Specifications, Table 3.6.1.1.2-1")
        .example("UC.LOAD.PRESENCE(1)", "1.2", "1e-12 rel", Origin::from_memory,
                 "AASHTO LRFD Table 3.6.1.1.2-1: a structure under fill takes one lane (3.6.1.2.6)")
        .example("UC.LOAD.PRESENCE(3)", "0.85", "1e-12 rel", Origin::from_memory,
                 "AASHTO LRFD Table 3.6.1.1.2-1")
        .caution(engineer_governs)
        .takes("lanes", "n", "Lanes loaded at once")
        .within(usual::lanes)
        .gives("m", "Multiple presence factor");
}

Function cover_depth_entry() {
    return function("UC.COVER.DEPTH", &calc::counted_cover)
        .says(
            "Cover that counts for the least cover of a buried structure: a flexible pavement does not "
            "count, "
            "a rigid one does")
        .related({"UC.LOAD.VEHICLE", "UC.LOAD.WHEEL", "UC.COVER.LEAST", "UC.LAYERS.DEPTH"})
        .also_called("minimum cover, cover under pavement, flexible and rigid pavement, depth of fill")
        .equation("H = H_f under none or a flexible pavement, H_f + t_p under a rigid one")
        .source("AASHTO LRFD Bridge Design Specifications, 12.6.6.3 (from memory)")
        .example("UC.COVER.DEPTH(\"600 mm\"; \"100 mm\"; \"flexible\"; \"mm\")", "600", "1e-12 rel",
                 Origin::from_memory, "AASHTO LRFD 12.6.6.3: to the underside of a flexible pavement")
        .example("UC.COVER.DEPTH(\"24 in\"; \"8 in\"; \"rigid\"; \"in\")", "32", "1e-12 rel",
                 Origin::from_memory, "AASHTO LRFD 12.6.6.3: to the top of a rigid pavement")
        .caution(
            "Rutting and later resurfacing take cover away: count what is there when it is least. Local "
            "codes and a licensed engineer govern")
        .takes("fill depth", "H_f", "Fill over the crown, without the pavement")
        .within(usual::fill_depth)
        .takes("pavement", "t_p", "Thickness of the pavement; 0 where there is none", 0.0)
        .within(usual::pavement)
        .takes("surfacing", "kind", "none, flexible or rigid", u"none")
        .gives("H", "Cover that counts");
}

}  // namespace

std::vector<Function> vehicle_load_functions() {
    return {vehicle_entry(), presence_entry(), cover_depth_entry()};
}

}  // namespace undercroft::addin
