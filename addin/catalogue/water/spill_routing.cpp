#include "calc/water/spill_routing.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/outlets_slot.hpp"
#include "addin/catalogue/water/pool_tables.hpp"
#include "calc/water/inflow.hpp"
#include "calc/water/tailwater_routing.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* balance_source =
    "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 8.2: dS/dt = I - Q, solved in closed form "
    "between the rows "
    "of all tables";
constexpr const char* triangle =
    "0 to 0.3 m3/s at 20 min to 0 at 60 min, 0.05 m3/s out, 300 m3 of room: closed form of the balance";
constexpr const char* surface_says =
    "Two columns: depth above the base of the bed, the first row at the surface and 0 m3, and volume that "
    "ponds there; "
    "left out, what finds no room in the bed spills";

Entry& takes_surface(Entry& entry) {
    return entry.takes("surface", "d, S", surface_says).within({usual::table_depth, usual::table_volume});
}
Entry& takes_inflow(Entry& entry) {
    return entry
        .takes("inflow", "t, I",
               "Two columns: time and flow, such as UC.HYDROGRAPH.AREA gives; to the end, where it is below "
               "5 % of its peak")
        .within({usual::elapsed_time, usual::inflow});
}
Entry& takes_spill_routing_step(Entry& entry) {
    return entry.takes("step", "dt", "Step of the table; left out, a hundredth of the time of inflow")
        .within(usual::time_step);
}
Entry& takes_initial(Entry& entry) {
    return entry.takes("initial depth", "d_0", "Depth at the start", 0.0).within(usual::rest_depth);
}
Entry& spill_columns(Entry& entry) {
    return entry.gives_columns("Routed hydrograph", {{"time", "t"},
                                                     {"inflow", "I"},
                                                     {"depth", "d"},
                                                     {"stored", "S"},
                                                     {"outflow", "Q"},
                                                     {"spilled so far", "V_s"}});
}

Function spill_entry() {
    auto spill =
        function("UC.ROUTE.SPILL", [](calc::Hydrograph inflow, calc::StorageTable storage,
                                      calc::RatingTable rating, std::optional<Time> step,
                                      Length initial_depth, std::optional<calc::StorageTable> surface) {
            calc::require_whole_inflow(inflow);
            return calc::route_spill(inflow, storage, rating, surface, step, initial_depth);
        });
    spill
        .says(
            "Level-pool routing that goes on when the bed is full: what stands on the surface above it, and "
            "what spills, "
            "is told instead of an error")
        .related(
            {"UC.ROUTE.MARKS", "UC.ROUTE.POOL", "UC.STAGE.STORAGE", "UC.OUTLET.RATING", "UC.HYDROGRAPH.AREA"})
        .also_called(
            "flood routing, overflow, exceedance flow, flooding volume, surcharge, reservoir routing")
        .equation(
            "dS/dt = I - Q, exact between the rows of inflow, storage, surface and rating; full, it spills I "
            "- Q")
        .source(balance_source)
        .caution(
            "Where the spilled water goes is to be designed: away from buildings and people. What stands "
            "between the "
            "top of the bed and the surface, in shafts, does not count");
    takes_surface(takes_initial(takes_spill_routing_step(takes_pool(takes_inflow(spill)))));
    return spill_columns(spill)
        .example(
            "INDEX(UC.ROUTE.SPILL(pond_inflow; pond_storage; pond_rating; \"10 min\"; \"0 ft\"); 8; "
            "5)/INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"1 min\"; \"0 ft\"); 62; 5)",
            "1", "0.002", Origin::mathematics,
            "the pond of Chow, Maidment and Mays (1988), Example 8.2.2, after an hour: the limit of short "
            "steps")
        .example("INDEX(UC.ROUTE.SPILL({0;0|20;300|60;0}; {0;0|1;300}; {0;50|1;50}; 10; \"0 m\"); 8; 6)",
                 "72.5", "1e-6", Origin::mathematics, "the same at 50 min: 75 m3 less 2.5 m3 that follow")
        .example(
            "INDEX(UC.ROUTE.SPILL({\"min\";\"m3/s\"|0;0|20;0.3|60;0}; {\"m\";\"m3\"|0;0|1;300}; "
            "{\"m\";\"m3/s\"|0;0.05|1;0.05}; \"60 min\"; ; ; \"min;m3/s;m;m3;m3/s;m3\"); 4; 1)",
            "35.075915", "1e-6", Origin::mathematics, triangle);
}

Function marks_entry() {
    auto marks = function(
        "UC.ROUTE.MARKS", [](calc::Hydrograph inflow, calc::StorageTable storage, calc::RatingTable rating,
                             Length initial_depth, std::optional<calc::StorageTable> surface) {
            calc::require_whole_inflow(inflow);
            const calc::FloodMarks m = calc::flood_marks(inflow, storage, rating, surface, initial_depth);
            return calc::Table<Length, Time, Volume, Flow, Flow, Volume, Time, Time>{
                {m.depth, m.time, m.stored, m.inflow, m.outflow, m.spilled, m.spills_from, m.spills_until}};
        });
    marks
        .says(
            "How far a flood goes in that routing: greatest depth and when, greatest volume held, peak "
            "flows, volume "
            "spilled and when; one row")
        .related({"UC.ROUTE.SPILL", "UC.ROUTE.DEPTH", "UC.ROUTE.GOVERNING", "UC.LARGEST.AT"})
        .also_called(
            "peak water level, maximum storage, peak discharge, overflow volume, time to peak, exceedance")
        .equation("the greatest of UC.ROUTE.SPILL, found between its rows")
        .source(balance_source)
        .caution("0 for both times of spill is none");
    takes_surface(takes_initial(takes_pool(takes_inflow(marks))));
    return marks
        .gives_columns("Flood marks", {{"depth", "d"},
                                       {"time", "t"},
                                       {"stored", "S"},
                                       {"peak inflow", "I"},
                                       {"peak outflow", "Q"},
                                       {"spilled", "V_s"},
                                       {"spills from", "t_1"},
                                       {"spills until", "t_2"}})
        .example(
            "INDEX(UC.ROUTE.MARKS(pond_inflow; pond_storage; pond_rating; \"0 ft\"; ; "
            "\"ft;min;ft3;ft3/s;ft3/s;ft3;min;min\"); 2; 5)",
            "269.68", "0.05", Origin::mathematics,
            "the pond of Chow, Maidment and Mays (1988), Example 8.2.2: 269.6774 in steps of 1 min")
        .examples(
            "INDEX(UC.ROUTE.MARKS({\"min\";\"m3/s\"|0;0|20;0.3|60;0}; {\"m\";\"m3\"|0;0|1;300}; "
            "{\"m\";\"m3/s\"|0;0.05|1;0.05}; ; ; \"m;min;m3;m3/s;m3/s;m3;min;min\"); 2; {})",
            "1e-6", Origin::mathematics, triangle,
            {{"3", "300"}, {"4", "0.3"}, {"6", "75"}, {"7", "35.075915"}, {"8", "53.333333"}})
        .example("INDEX(UC.ROUTE.MARKS({0;0|20;300|60;0}; {0;0|2;600}; {0;50|2;50}); 2; 3)", "375",
                 "1e-9 rel", Origin::mathematics, "the same flood in a bed large enough");
}

Function tailwater_entry() {
    auto tailwater = function("UC.ROUTE.TAILWATER", [](calc::Hydrograph inflow, calc::StorageTable storage,
                                                       Outlets outlets, calc::TailwaterTable levels,
                                                       std::optional<Time> step, Length initial_depth) {
        calc::require_whole_inflow(inflow);
        return calc::route_tailwater(inflow, storage, outlets.rows, levels, step, initial_depth);
    });
    tailwater.says("The same routing against water outside that rises and falls: a river, a sewer, a tide")
        .related({"UC.ROUTE.POOL", "UC.OUTLET.RATING", "UC.ORIFICE.DROWNED", "UC.WEIR.DROWNED"})
        .also_called("tidal outfall, tide-locked, surcharged sewer, river level, backwater, flap valve")
        .equation("dS/dt = I - Q(d, d_t(t)), the rating of each step that of the tailwater in its middle")
        .source(balance_source)
        .caution(
            "Nothing flows back into the bed: a flap is taken to keep it out. The flood outside need not "
            "come with the "
            "storm on the site: try both orders");
    takes_inflow(tailwater)
        .takes("storage", "d, S",
               "Two columns: depth and volume held; or the five columns of UC.STAGE.STORAGE as they are")
        .within({usual::table_depth, usual::table_volume})
        .takes("outlets", "outlets", "Rows of outlets as UC.OUTLET.RATING takes them")
        .within({any_number("a word"), usual::table_depth, any_number("by the kind of the outlet"),
                 any_number("by the kind of the outlet"), usual::equal_outlets,
                 any_number("by the kind of the outlet")})
        .takes("tailwater", "t, d_t",
               "Two columns: time and level above the base of the bed, straight between its rows; one row is "
               "steady")
        .within({usual::elapsed_time, usual::tailwater});
    // The tail of a flood dies away as a power of e: its last drops make more of a last digit than others.
    return spill_columns(takes_initial(takes_spill_routing_step(tailwater)))
        .found_to(half_of_the_digits)
        .rows_carry_on()
        .example(
            "INDEX(UC.ROUTE.TAILWATER({\"min\";\"L/s\"|0;20|600;20|601;0}; {\"m\";\"m3\"|0;0|2;100}; "
            "{\"orifice\";\"0 m\";\"100 mm\"}; {\"min\";\"m\"|0;0.5}; \"10 min\"; \"0 m\"; "
            "\"min;L/s;m;m3;L/s;m3\"); "
            "62; 3)",
            "1.420", "0.01", Origin::mathematics,
            "steady: 20 L/s through 0.6 pi/4 0.1^2 sqrt(2 g (d - 0.5)) needs 0.9197 m of fall")
        .example(
            "INDEX(UC.ROUTE.TAILWATER({0;20|60;20|61;0}; {0;0|2;100}; {\"orifice\";\"0 m\";\"100 mm\"}; "
            "{0;3|60;3}; 10); 8; 4)",
            "72", "1e-9 rel", Origin::mathematics, "shut off by the tailwater for an hour: 20 L/s x 3600 s");
}

}  // namespace

std::vector<Function> spill_routing_functions() {
    return {spill_entry(), marks_entry(), tailwater_entry()};
}

}  // namespace undercroft::addin
