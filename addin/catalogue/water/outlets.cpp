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
            .caution(orifice_caution)
            .takes("diameter", "D", "Diameter of the orifice")
            .takes("head", "h", "Head above its centre")
            .takes("coefficient", "C", "Discharge coefficient", 0.6)
            .gives("Q", "Flow"),
        function("UC.ORIFICE.DIAMETER", &calc::orifice_diameter)
            .says("Diameter of the circular orifice that passes a flow under a head above its centre")
            .equation("D = sqrt(4 Q/(pi C sqrt(2 g h)))")
            .source(orifice_source)
            .caution(orifice_caution)
            .takes("flow", "Q", "Flow to pass")
            .takes("head", "h", "Head above its centre")
            .takes("coefficient", "C", "Discharge coefficient", 0.6)
            .gives("D", "Diameter"),
        function("UC.WEIR.FLOW", &calc::weir_flow)
            .says("Flow of a sharp-crested weir, with or without end contractions")
            .equation("Q = C (L - 0.1 n h) h^1.5")
            .source("Francis formula as in FHWA HEC-22; C = 1.84 m^0.5/s or 3.33 ft^0.5/s")
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
            .takes("diameter", "D", "Inside diameter")
            .takes("slope", "S", "Slope of the pipe, rise per run, such as 0.005 or 0.5 %")
            .takes("roughness", "n", "Manning's n, such as 0.013; the same at every depth")
            .takes("depth", "y", "Depth of flow; left out, the full pipe")
            .gives("Q", "Flow"),
        function("UC.PIPE.DEPTH", &calc::pipe_depth)
            .says("Depth of uniform flow in a circular pipe: the lower one where two depths carry the flow")
            .equation("y where Q(y) = Q, y <= 0.938 D; root by TOMS 748 (Boost.Math)")
            .source(manning_source)
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
