#include "calc/water/governing_storm.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"
#include "addin/catalogue/water/pool_tables.hpp"
#include "addin/catalogue/water/storm_slot.hpp"

namespace undercroft::addin {

namespace {

Function governing_entry() {
    auto governing = function(
        "UC.ROUTE.GOVERNING",
        [](calc::RainTable rain, Share coefficient, Area area, Time time_of_concentration,
           calc::StorageTable storage, calc::RatingTable rating, calc::StormCourse pattern,
           Length initial_depth, std::optional<calc::StorageTable> surface, std::optional<Time> step) {
            const auto [duration, m] =
                calc::governing_storm(rain, {coefficient, area, time_of_concentration}, storage, rating,
                                      pattern, initial_depth, surface, step);
            return calc::Table<Time, Flow, Length, Volume, Flow, Volume, Time, Time, Time>{
                {duration, m.inflow, m.depth, m.stored, m.outflow, m.spilled, m.time, m.spills_from,
                 m.spills_until}};
        });
    governing
        .says(
            "The storm that fills a bed most, of all durations of a rain table, also between its rows, and "
            "the marks that "
            "it leaves; one row")
        .related(
            {"UC.ROUTE.POOL", "UC.ROUTE.DEPTH", "UC.STAGE.STORAGE", "UC.OUTLET.RATING", "UC.RAIN.REACHES"})
        .also_called("critical storm, critical duration, worst storm, design storm search")
        .equation(
            "max over t_d of S + V_s, storms of C, A, t_c by the time-area method, routed exactly: "
            "UC.ROUTE.MARKS")
        .source(
            "Chow, Maidment and Mays, Applied Hydrology (1988), secs. 8.2 and 15.4; every duration tried by "
            "a search "
            "around each summit (common practice)")
        .caution(
            "No longer rain than the table holds is tried: where UC.RAIN.REACHES says no, the table is too "
            "short. Rain "
            "of the place and frequency that the local authority asks for; its method governs")
        .takes("rain", "t_d, i", "Two columns: duration and mean intensity of one frequency")
        .within({usual::table_duration, usual::table_intensity})
        .takes("coefficient", "C", "Runoff coefficient")
        .within(usual::runoff_coefficient)
        .takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("time of concentration", "t_c", "Time of concentration")
        .within(usual::concentration_time);
    takes_pattern(takes_pool(governing))
        .takes("initial depth", "d_0", "Depth at the start, such as what an earlier storm left", 0.0)
        .within(usual::rest_depth)
        .takes("surface", "d, S", "Depth and volume that ponds above the bed, as UC.ROUTE.SPILL takes it")
        .within({usual::table_depth, usual::table_volume})
        .takes("step", "dt", "Step of alternating blocks; left out, the shortest duration of the rain table")
        .within(usual::time_step);
    return governing
        .gives_columns("Governing storm", {{"duration", "t_d"},
                                           {"peak inflow", "I"},
                                           {"depth", "d"},
                                           {"stored", "S"},
                                           {"peak outflow", "Q"},
                                           {"spilled", "V_s"},
                                           {"time", "t"},
                                           {"spills from", "t_1"},
                                           {"spills until", "t_2"}})
        .found_to(half_of_the_digits, {"duration", "peak inflow", "depth", "peak outflow", "spilled", "time",
                                       "spills from", "spills until"})
        .example(
            "INDEX(UC.ROUTE.GOVERNING({\"min\";\"mm/h\"|10;100|1000;4}; 0.8; \"2 ha\"; \"10 min\"; "
            "{\"m\";\"m3\"|0;0|2;400}; {\"m\";\"L/s\"|0;50|2;50}; \"block\"; \"0 m\"; ; ; "
            "\"min;L/s;m;m3;L/s;m3;min;min;min\"); 2; 4)",
            "264.0568108", "1e-7 rel", Origin::mathematics,
            "block rain on a steady outflow Q: (q - Q)(t_d - t_c) + t_c (q - Q)^2/q, greatest by a search of "
            "its own")
        .example("INDEX(UC.ROUTE.GOVERNING({10;100|1000;4}; 0.8; 20000; 10; {0;0|2;400}; {0;50|2;50}); 2; 1)",
                 "44.019", "0.01", Origin::mathematics, "its duration");
}

Function reaches_entry() {
    return function(
               "UC.RAIN.REACHES",
               [](calc::RainTable rain, Time duration) { return calc::rain_reaches_beyond(rain, duration); })
        .says(
            "TRUE when a rain table goes on beyond the duration that governs; FALSE when it ends there, and "
            "a longer rain "
            "may govern")
        .related({"UC.ROUTE.GOVERNING", "UC.RAIN.PICK", "UC.DRAIN.TIME"})
        .also_called("critical duration at the end of the table, longer storms, table too short")
        .equation("t_d < longest duration of the table")
        .source("common practice")
        .caution(local_rain)
        .takes("rain", "t_d, i", "Two columns: duration and mean intensity")
        .within({usual::table_duration, usual::table_intensity})
        .takes("duration", "t_d",
               "Duration that governs, such as UC.SOAK.DURATION or UC.ROUTE.GOVERNING gives")
        .within(usual::rain_duration.or_in("h"))
        .gives("reaches", "Whether the table is long enough")
        .example("UC.RAIN.REACHES({\"min\";\"mm/h\"|10;100|360;9}; \"240 min\")", "1", "exact",
                 Origin::mathematics, "240 min lies within 10 to 360 min")
        .example("UC.RAIN.REACHES({10;100|360;9}; \"6 h\")", "0", "exact", Origin::mathematics,
                 "the table's own end");
}

}  // namespace

std::vector<Function> governing_storm_functions() {
    return {governing_entry(), reaches_entry()};
}

}  // namespace undercroft::addin
