#include "calc/water/routing.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/pool_tables.hpp"
#include "calc/water/inflow.hpp"

namespace undercroft::addin {

namespace {

calc::RoutedTable routed(const calc::Hydrograph& inflow, const calc::StorageTable& storage,
                         const calc::RatingTable& rating, std::optional<Time> step, Length initial_depth) {
    calc::require_whole_inflow(inflow);
    calc::RoutedTable rows = calc::route_pool(inflow, storage, rating, step, initial_depth);
    calc::require_peak_kept(rows, inflow, storage, rating, initial_depth);
    return rows;
}

/// What goes through a pool, said once for the functions that route it.
Entry& takes_routing(Entry& entry) {
    entry.equation("(I1 + I2) + (2 S1/dt - Q1) = 2 S2/dt + Q2")
        .source("Chow, Maidment and Mays, Applied Hydrology (1988), sec. 8.2: storage indication")
        .caution(
            "A step in which the outflow would swing past the mean inflow is halved; one so long that the "
            "greatest depth is more than 0.2 % away from that of exact routing is refused. Beyond the top of "
            "the "
            "storage table nothing is extrapolated: the sentence says when and by what the bed overflows")
        .takes("inflow", "t, I",
               "Two columns: time and flow, such as UC.HYDROGRAPH.STORM gives; to the end, where it is below "
               "5 % of "
               "its peak")
        .within({usual::elapsed_time, usual::inflow});
    return takes_pool(entry)
        .takes("step", "dt",
               "Step; left out, halved until the peak changes by less than 0.1 %. UC.ROUTE.POOL refuses one "
               "that "
               "leaves the greatest depth more than 0.2 % off, UC.ROUTE.DEPTH takes a shorter one then")
        .within(usual::time_step)
        .takes("initial depth", "d_0", "Depth at the start", 0.0)
        .within(usual::rest_depth);
}

Function route_pool_entry() {
    auto table = function("UC.ROUTE.POOL",
                          [](calc::Hydrograph inflow, calc::StorageTable storage, calc::RatingTable rating,
                             std::optional<Time> step, Length initial_depth) {
                              return routed(inflow, storage, rating, step, initial_depth);
                          });
    table
        .says(
            "Level-pool routing of a hydrograph through a bed, until it is empty or 10 times the storm is "
            "over; an error when the bed overflows")
        .also_called(
            "level-pool routing, reservoir routing, modified Puls, storage indication, detention routing")
        .related({"UC.ROUTE.DEPTH", "UC.HYDROGRAPH.RATIONAL", "UC.OUTLET.RATING", "UC.STAGE.STORAGE"})
        .to_try(
            "UC.ROUTE.POOL({\"min\";\"L/s\"|0;0|10;60|20;120|30;80|40;40|60;0}; "
            "{\"m\";\"m3\"|0;0|0.5;120|1;260|1.5;380}; {\"m\";\"L/s\"|0;0|0.5;20|1;30|1.5;38}; \"10 min\")");
    constexpr const char* pond =
        "Chow, Maidment and Mays (1988), Examples 8.2.1 and 8.2.2, routed anew by the same recursion";
    return takes_routing(table)
        .gives_columns("Routed hydrograph",
                       {{"time", "t"}, {"inflow", "I"}, {"depth", "d"}, {"stored", "S"}, {"outflow", "Q"}})
        .examples(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"10 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); {}; 5)",
            "0.05", Origin::from_memory, "Chow, Maidment and Mays (1988), Table 8.2.2: outflow every 10 min",
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
            "9.7727", "5e-5", Origin::mathematics, pond)
        .example(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"5 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); 19; 5)",
            "269.5077", "5e-5", Origin::mathematics, pond)
        .example(
            "INDEX(UC.ROUTE.POOL(pond_inflow; pond_storage; pond_rating; \"1 min\"; 0; "
            "\"min;ft3/s;ft;ft3;ft3/s\"); 85; 5)",
            "269.6774", "5e-5", Origin::mathematics, pond)
        .examples(
            "INDEX(UC.ROUTE.POOL({\"h\";\"m3/s\"|0;100|10;100|11;0}; {\"m\";\"m3\"|0;0|1;1440000}; "
            "{\"m\";\"m3/s\"|0;0|1;200}; \"1 h\"; 0; \"h;m3/s;m;m3;m3/s\"); {}; 5)",
            "1e-12 rel", Origin::mathematics,
            "linear reservoir of K = 2 h under a constant inflow of 100 m3/s, hour by hour",
            {{"3", "40"}, {"4", "64"}, {"5", "78.4"}, {"6", "87.04"}, {"7", "92.224"}});
}

Function route_depth_entry() {
    auto depth = function(
        "UC.ROUTE.DEPTH", [](calc::Hydrograph inflow, calc::StorageTable storage, calc::RatingTable rating,
                             std::optional<Time> step, Length initial_depth) {
            calc::require_whole_inflow(inflow);
            return calc::greatest_routed_depth(inflow, storage, rating, step, initial_depth);
        });
    depth.says("Greatest depth of the bed in that routing, for trying one duration of rain after the other")
        .also_called("maximum water level, peak depth, top water level, freeboard")
        .related({"UC.ROUTE.POOL", "UC.DRAIN.TIME"})
        .to_try(
            "UC.ROUTE.DEPTH({\"min\";\"L/s\"|0;0|10;60|20;120|30;80|40;40|60;0}; "
            "{\"m\";\"m3\"|0;0|0.5;120|1;260|1.5;380}; {\"m\";\"L/s\"|0;0|0.5;20|1;30|1.5;38}; \"5 min\")")
        .to_try(
            "UC.ROUTE.DEPTH({\"min\";\"cfs\"|0;0|10;2|20;4|30;3|40;1.5|60;0}; "
            "{\"ft\";\"ft3\"|0;0|1.5;4000|3;9000|5;14000}; {\"ft\";\"cfs\"|0;0|1.5;0.7|3;1|5;1.3}; \"5 "
            "min\"; ; \"ft\")");
    return takes_routing(depth)
        .gives("d", "Greatest depth")
        .example(
            "UC.ROUTE.DEPTH(pond_inflow; pond_storage; pond_rating; \"10 min\"; 0; \"ft\")", "9.7727", "5e-5",
            Origin::mathematics,
            "Chow, Maidment and Mays (1988), Examples 8.2.1 and 8.2.2, routed anew by the same recursion");
}

}  // namespace

std::vector<Function> routing_functions() {
    return {route_pool_entry(), route_depth_entry()};
}

}  // namespace undercroft::addin
