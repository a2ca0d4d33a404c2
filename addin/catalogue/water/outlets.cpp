#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/slot_water.hpp"
#include "calc/water/emptying.hpp"
#include "calc/water/outlet.hpp"
#include "calc/water/pipe.hpp"
#include "calc/water/rating.hpp"
#include "calc/water/routing.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* orifice_source = "FHWA HEC-22, orifice equation; g = 9.80665 m/s2";
constexpr const char* orifice_caution =
    "Free outfall, and a head of at least half of the diameter; where the outfall is drowned the head is the "
    "difference of levels. Small orifices block: "
    "screen them and keep an overflow";
constexpr const char* weir_caution =
    "Free overfall, no velocity of approach. With end contractions the head is at most a third of the crest "
    "(Francis)";
constexpr const char* manning_source = "Chow, Open-Channel Hydraulics (1959), secs. 5-6 and 6-3";
constexpr const char* storage_says =
    "Two columns: depth and volume held; or the five columns of UC.STAGE.STORAGE as they are";
constexpr const char* rating_says = "Two columns: depth and flow, such as UC.OUTLET.RATING gives";

std::vector<Function> outlet_entries() {
    return {
        function("UC.ORIFICE.FLOW", &calc::orifice_flow)
            .says("Flow of a circular orifice under a head above its centre")
            .equation("Q = C pi/4 D^2 sqrt(2 g h)")
            .source(orifice_source)
            .example("UC.ORIFICE.FLOW(\"1 ft\"; \"1 ft\"; 0.6; \"ft3/s\")", "3.78", "0.005",
                     Origin::from_memory, "FHWA HEC-22, circular orifice Q = K D^2 sqrt(h): K = 3.78 in feet")
            .example("UC.ORIFICE.FLOW(\"1 m\"; \"1 m\"; 0.6; \"m3/s\")", "2.09", "0.005", Origin::from_memory,
                     "FHWA HEC-22, circular orifice: K = 2.09 in metres")
            .example("UC.ORIFICE.FLOW(\"20 mm\"; \"1 m\"; 0.61082886)", "0.85", "0.001", Origin::published,
                     "Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.7: 0.85 L/s, its Cd recomputed")
            .caution(orifice_caution)
            .takes("diameter", "D", "Diameter of the orifice")
            .takes("head", "h", "Head above its centre")
            .takes("coefficient", "C", "Discharge coefficient", 0.6)
            .gives("Q", "Flow"),
        function("UC.ORIFICE.DIAMETER", &calc::orifice_diameter)
            .says("Diameter of the circular orifice that passes a flow under a head above its centre")
            .equation("D = sqrt(4 Q/(pi C sqrt(2 g h)))")
            .source(orifice_source)
            .example("UC.ORIFICE.DIAMETER(\"0.85 L/s\"; \"1 m\"; 0.61082886; \"mm\")", "20", "0.01",
                     Origin::published, "Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.7")
            .caution(orifice_caution)
            .takes("flow", "Q", "Flow to pass")
            .takes("head", "h", "Head above its centre")
            .takes("coefficient", "C", "Discharge coefficient", 0.6)
            .gives("D", "Diameter"),
        function("UC.WEIR.FLOW", &calc::weir_flow)
            .says("Flow of a sharp-crested weir, with or without end contractions")
            .equation("Q = C (L - 0.1 n h) h^1.5")
            .source("Francis formula as in FHWA HEC-22; C = 1.84 m^0.5/s or 3.33 ft^0.5/s")
            .example("UC.WEIR.FLOW(\"5 m\"; \"0.9 m\"; \"2.16303 m^0.5/s\"; 0; \"m3/s\")", "9.24", "0.01",
                     Origin::from_memory,
                     "Cengel and Cimbala, Fluid Mechanics, Example 13-10: suppressed weir, C = 0.73255 x 2/3 "
                     "sqrt(2 g)")
            .example("UC.WEIR.FLOW(\"1 m\"; \"1 m\"; \"1.84 m^0.5/s\"; 0; \"m3/s\")", "1.84", "1e-12 rel",
                     Origin::from_memory, "FHWA HEC-22, Francis formula in metres")
            .example("UC.WEIR.FLOW(\"10 ft\"; \"1 ft\"; \"3.33 ft^0.5/s\"; 2; \"ft3/s\")", "32.634",
                     "1e-9 rel", Origin::from_memory, "FHWA HEC-22, eq. 10.33: 3.33 (L - 0.2 h) h^1.5")
            .example("UC.WEIR.FLOW(\"4.1 ft\"; \"5.7 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "180", "1 %",
                     Origin::from_memory,
                     "USDA TR-55 (1986), Example 6-1: a crest of 4.1 ft passes 180 ft3/s")
            .example("UC.WEIR.FLOW(\"2.3 ft\"; \"5.7 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "100", "0.5",
                     Origin::from_memory,
                     "USDA TR-55 (1986), Example 6-2: the first weir at the second's stage")
            .example("UC.WEIR.FLOW(\"4.133427 ft\"; \"5.7 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "180",
                     "5e-5", Origin::mathematics, "shared checks, water 2d2: Example 6-1 recomputed")
            .example("UC.WEIR.FLOW(\"2.287527 ft\"; \"3.6 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "50",
                     "1e-5", Origin::mathematics, "shared checks, water 2d4: Example 6-2 recomputed")
            .example("UC.WEIR.FLOW(\"8.215066 ft\"; \"2.1 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "80",
                     "1e-5", Origin::mathematics,
                     "shared checks, water 2d4: Example 6-2, the second weir recomputed")
            .caution(weir_caution)
            .takes("crest length", "L", "Length of the crest")
            .takes("head", "h", "Head above the crest, well upstream of it")
            .takes("coefficient", "C", "Weir coefficient", u"1.84 m^0.5/s")
            .takes("end contractions", "n", "Number of ends at which the flow is contracted: 0, 1 or 2", 0.0)
            .gives("Q", "Flow"),
        function("UC.WEIR.NOTCH", &calc::notch_flow)
            .says("Flow of a V-notch weir")
            .equation("Q = C tan(theta/2) h^2.5")
            .source("FHWA HEC-22, V-notch weir equation; C = 1.38 m^0.5/s or 2.5 ft^0.5/s")
            .example("UC.WEIR.NOTCH(\"90 deg\"; \"1 ft\"; \"2.5 ft^0.5/s\"; \"ft3/s\")", "2.49", "0.02",
                     Origin::from_memory, "USBR Water Measurement Manual: 90-degree notch, Q = 2.49 h^2.48")
            .example("UC.WEIR.NOTCH(\"90 deg\"; \"0.5 ft\"; \"2.5 ft^0.5/s\"; \"ft3/s\")", "0.4463186",
                     "1.2 %", Origin::from_memory,
                     "USBR Water Measurement Manual: 90-degree notch at 0.5 ft, whose exponent is 2.48")
            .example("UC.WEIR.NOTCH(\"90 deg\"; \"1 m\"; \"1.38 m^0.5/s\"; \"m3/s\")", "1.38", "1e-12 rel",
                     Origin::from_memory, "FHWA HEC-22, eq. 10.35 in metres")
            .caution(weir_caution)
            .takes("angle", "theta", "Angle of the notch, such as 90 deg")
            .takes("head", "h", "Head above the lowest point of the notch")
            .takes("coefficient", "C", "Weir coefficient", u"1.38 m^0.5/s")
            .gives("Q", "Flow"),
    };
}

std::vector<Function> pipe_entries() {
    return {
        function("UC.PIPE.FLOW", &calc::pipe_flow)
            .says("Uniform flow in a circular pipe, full or part full, by Manning")
            .equation(
                "Q = A R^(2/3) S^(1/2)/n (m, s); theta = 2 acos(1 - 2 y/D), A = D^2/8 (theta - sin theta), "
                "R = A/(theta D/2)")
            .source(manning_source)
            .examples("UC.PIPE.FLOW(\"{} in\"; 0.01; 0.013; ; \"ft3/s\")", "0.05 %", Origin::published,
                      "Q = 0.463/n D^(8/3) S^0.5, textbook coefficient; shared checks, water 7",
                      {{"12", "3.561538"},
                       {"15", "6.457499"},
                       {"18", "10.50061"},
                       {"24", "22.61436"},
                       {"30", "41.00256"},
                       {"36", "66.67469"}})
            .example("UC.PIPE.FLOW(\"0.30 m\"; 0.010; 0.013; \"0.30 m\"; \"m3/s\")", "0.09670075853", "5e-12",
                     Origin::mathematics, "shared checks, water 7")
            .example("UC.PIPE.FLOW(\"0.45 m\"; 0.005; 0.013; \"0.45 m\"; \"m3/s\")", "0.2016004855", "5e-11",
                     Origin::mathematics, "shared checks, water 7")
            .example("UC.PIPE.FLOW(\"0.60 m\"; 0.002; 0.013; \"0.60 m\"; \"m3/s\")", "0.27459431", "5e-9",
                     Origin::mathematics, "shared checks, water 7")
            .examples("UC.QUOTIENT(UC.PIPE.FLOW(\"1 m\"; 0.01; 0.013; \"{} m\"); UC.PIPE.FLOW(\"1 m\"; 0.01; "
                      "0.013); \"1\")",
                      "1e-8 rel", Origin::mathematics, "shared checks, water 7: part-full circle, y/D =",
                      {{"0.1", "0.0208778175"},
                       {"0.2", "0.0875713153"},
                       {"0.3", "0.195831188"},
                       {"0.4", "0.336987766"},
                       {"0.5", "0.5"},
                       {"0.6", "0.671840202"},
                       {"0.7", "0.837237659"},
                       {"0.8", "0.977466883"},
                       {"0.9", "1.06579734"},
                       {"1", "1"}})
            .example("UC.QUOTIENT(UC.PIPE.FLOW(\"1 m\"; 0.01; 0.013; \"0.938181216 m\"); UC.PIPE.FLOW(\"1 "
                     "m\"; 0.01; 0.013); \"1\")",
                     "1.075706129", "1e-9", Origin::mathematics,
                     "shared checks, water 7: the greatest flow of a pipe; handbooks print 1.076 at 0.938")
            .takes("diameter", "D", "Inside diameter")
            .takes("slope", "S", "Slope of the pipe, rise per run, such as 0.005 or 0.5 %")
            .takes("roughness", "n", "Manning's n, such as 0.013; the same at every depth")
            .takes("depth", "y", "Depth of flow; left out, the full pipe")
            .gives("Q", "Flow"),
        function("UC.PIPE.DEPTH", &calc::pipe_depth)
            .says("Depth of uniform flow in a circular pipe: the lower one where two depths carry the flow")
            .equation("y where Q(y) = Q, y <= 0.938 D; root by TOMS 748 (Boost.Math)")
            .source(manning_source)
            .example("UC.PIPE.DEPTH(UC.PIPE.FLOW(\"1 m\"; 0.01; 0.013); \"1 m\"; 0.01; 0.013)",
                     "0.8196294486", "5e-10", Origin::mathematics,
                     "shared checks, water 7: the lower depth that carries the flow of the full pipe")
            .example(
                "UC.PIPE.DEPTH(UC.PIPE.FLOW(\"0.5 m\"; 0.01; 0.013; \"0.15 m\"); \"0.5 m\"; 0.01; 0.013)",
                "0.15", "1e-9 rel", Origin::mathematics, "there and back")
            .takes("flow", "Q", "Flow, at most 1.076 times that of the full pipe")
            .takes("diameter", "D", "Inside diameter")
            .takes("slope", "S", "Slope of the pipe, rise per run")
            .takes("roughness", "n", "Manning's n, such as 0.013")
            .gives("y", "Depth of flow"),
    };
}

Function rating_entry() {
    return function("UC.OUTLET.RATING",
                    [](calc::OutletTable outlets, Length depth, Count steps) {
                        return calc::outlet_rating(outlets, depth, steps);
                    })
        .says(
            "Flow of several outlets together at every depth of the bed, with rows added where an outlet "
            "starts or changes its law")
        .equation(
            "sum over outlets of count x its law of the depth above its level: orifice C A sqrt(2 g h), part "
            "full a weir of its own lower edge; weir; notch; pump steady; soakage q (A + P h)")
        .source(
            "FHWA HEC-22; Bos, Discharge Measurement Structures (1989), sec. 5.4, for the part-full orifice "
            "(from memory); soakage common practice")
        .example("INDEX(UC.OUTLET.RATING({\"orifice\";\"0 m\";\"150 mm\"}; \"1 m\"; 10; \"m;L/s\"); 13; 2)",
                 "45.161655", "1e-6 rel", Origin::mathematics,
                 "0.6 x pi/4 x 0.15^2 x sqrt(2 g 0.925), last row")
        .example("INDEX(UC.OUTLET.RATING({\"weir\";\"0.5 m\";\"1 m\"}; \"1 m\"; 2; \"m;m3/s\"); 4; 2)",
                 "0.650538", "1e-6 rel", Origin::mathematics, "1.84 x 0.5^1.5")
        .example(
            "INDEX(UC.OUTLET.RATING({\"soakage\";\"0 m\";\"100 m2\";\"36 mm/h\";\"1 each\";\"40 m\"}; \"1 "
            "m\"; 1; \"m;L/s\"); 4; 2)",
            "1.4", "1e-12 rel", Origin::mathematics, "36 mm/h over 100 m2 of base and 40 m2 of wall")
        .caution(
            "Free outfall. The rate of soakage is that in design, its safety factor taken off. Pump and "
            "soakage reach their flow over 1 mm above their level, so that a straight "
            "table can hold the step")
        .takes("outlets", "outlets",
               "Rows of kind (orifice, weir, notch, pump, soakage), level, size (diameter, crest, angle, "
               "flow, base "
               "area), [coefficient, soakage rate], [count 1], [sides: end contractions, perimeter]; or 10 "
               "columns: "
               "units beside level, size, coefficient, sides")
        .takes("depth", "d", "Depth up to which to rate")
        .takes("steps", "N", "Number of equal steps")
        .gives_columns("Rating", {{"depth", "d"}, {"flow", "Q"}});
}

/// What goes through a pool, said once for the functions that route it.
Entry& takes_routing(Entry& entry) {
    return entry.takes("inflow", "t, I", "Two columns: time and flow, such as UC.HYDROGRAPH.STORM gives")
        .takes("storage", "d, S", storage_says)
        .takes("rating", "d, Q", rating_says)
        .takes("step", "dt", "Step; left out, halved until the peak changes by less than 0.1 %")
        .takes("initial depth", "d0", "Depth at the start", 0.0);
}

constexpr const char* routing_equation = "(I1 + I2) + (2 S1/dt - Q1) = 2 S2/dt + Q2";
constexpr const char* routing_source =
    "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 8.2: storage indication";
constexpr const char* routing_caution =
    "A step in which the outflow would swing past the mean inflow is halved. Beyond the top of the storage "
    "table "
    "nothing is extrapolated: the sentence says when and by what the bed overflows";

std::vector<Function> routing_entries() {
    auto depth = function(
        "UC.ROUTE.DEPTH", [](calc::Hydrograph inflow, calc::StorageTable storage, calc::RatingTable rating,
                             std::optional<Time> step, Length initial_depth) {
            return calc::greatest_routed_depth(inflow, storage, rating, step, initial_depth);
        });
    depth.says("Greatest depth of the bed in that routing, for trying one duration of rain after the other")
        .equation(routing_equation)
        .source(routing_source)
        .example("UC.ROUTE.DEPTH(pond_inflow; pond_storage; pond_rating; \"10 min\"; 0; \"ft\")", "9.7727",
                 "5e-5", Origin::mathematics, "shared checks, water 5a: greatest stage")
        .caution(routing_caution);
    takes_routing(depth).gives("d", "Greatest depth");

    auto table = function("UC.ROUTE.POOL",
                          [](calc::Hydrograph inflow, calc::StorageTable storage, calc::RatingTable rating,
                             std::optional<Time> step, Length initial_depth) {
                              return calc::route_pool(inflow, storage, rating, step, initial_depth);
                          });
    table
        .says(
            "Level-pool routing of a hydrograph through a bed, until it is empty or 10 times the storm is "
            "over; an error when the bed overflows")
        .equation(routing_equation)
        .source(routing_source)
        .examples(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"10 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); {}; 5)",
            "0.05", Origin::from_memory, "Chow, Maidment and Mays (1988), Table 8.2.2: outflow at",
            {{"3", "2.4"},
             {"4", "17.1"},
             {"5", "61.1"},
             {"6", "123.2"},
             {"7", "182.2"},
             {"8", "230.3"},
             {"9", "259.3"},
             {"10", "270.0"},
             {"11", "267.4"},
             {"12", "254.9"},
             {"13", "235.2"},
             {"14", "206.9"},
             {"15", "168.5"},
             {"16", "124.1"},
             {"17", "79.8"}})
        .example(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"10 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); 10; 3)",
            "9.7727", "5e-5", Origin::mathematics, "shared checks, water 5a: greatest stage, at 80 min")
        .example(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"5 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); 19; 5)",
            "269.5077", "5e-5", Origin::mathematics,
            "shared checks, water 5a: greatest outflow with steps of 5 min, at 85 min")
        .example(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"1 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); 85; 5)",
            "269.6774", "5e-5", Origin::mathematics,
            "shared checks, water 5a: with steps of 1 min, at 83 min")
        .examples(
            "INDEX(UC.ROUTE.POOL({\"h\";\"m3/s\"|0;100|5;100}; {0;0|1;1440000}; {\"m\";\"m3/s\"|0;0|1;200}; "
            "\"1 h\"; 0; \"h;m3/s;m;m3;m3/s\"); {}; 5)",
            "1e-12 rel", Origin::mathematics,
            "shared checks, water 5c: linear reservoir of K = 2 h under constant inflow, after",
            {{"3", "40"}, {"4", "64"}, {"5", "78.4"}, {"6", "87.04"}, {"7", "92.224"}})
        .caution(routing_caution);
    takes_routing(table).gives_columns(
        "Routed hydrograph",
        {{"time", "t"}, {"inflow", "I"}, {"depth", "d"}, {"stored", "S"}, {"outflow", "Q"}});
    return {table, depth};
}

Function drain_entry() {
    return function("UC.DRAIN.TIME",
                    [](calc::StorageTable storage, calc::RatingTable rating, Length from_depth,
                       Length to_depth) { return calc::drain_time(storage, rating, from_depth, to_depth); })
        .says("Time in which a bed drains from one depth to another, without inflow")
        .equation(
            "t = integral of dV/Q, V and Q straight between the rows; down to no flow Q ~ x^m with m at most "
            "1/2")
        .source(
            "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 8.2: dS/dt = -Q; last span common "
            "practice")
        .example("UC.DRAIN.TIME({0;0|1;50|2;100}; {0;0|1;5|2;10}; \"2 m\"; \"1 m\"; \"s\")", "6931.471806",
                 "1e-9 rel", Origin::mathematics, "linear reservoir: K ln 2 with K = 100 m3 / 0.01 m3/s")
        .example("UC.DRAIN.TIME({0;0|2;100}; {0;0|2;37.5851034321}; \"2 m\"; 0; \"s\")", "5321.25714012",
                 "1e-10 rel", Origin::mathematics,
                 "shared checks, water 5c: tank of 50 m2 through an orifice of 0.01 m2, Cd = 0.6, g = 9.81 "
                 "m/s2, from 2 m")
        .caution(
            "The last centimetres above an orifice or a weir take ever longer, in theory for ever: drain to "
            "a depth "
            "that counts as empty, some way above the outlet, from a rating with several rows below it")
        .takes("storage", "d, S", storage_says)
        .takes("rating", "d, Q", rating_says)
        .takes("from depth", "d1", "Depth at the start")
        .takes("to depth", "d2", "Depth at the end", 0.0)
        .gives("t", "Emptying time");
}

}  // namespace

Group outlet_functions() {
    Group group{"Outlets, pipes, routing", outlet_entries()};
    for (const auto& more :
         {pipe_entries(), std::vector{rating_entry()}, routing_entries(), std::vector{drain_entry()}})
        group.functions.insert(group.functions.end(), more.begin(), more.end());
    return group;
}

}  // namespace undercroft::addin
