#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"
#include "addin/catalogue/water/storm_slot.hpp"
#include "calc/water/hyetograph.hpp"
#include "calc/water/time_area.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* shapes =
    "block: the mean intensity all the time; alternating: depths of 1, 2, 3 ... steps, their differences "
    "sorted, the "
    "greatest in the middle (of an even number the first of both), then right, left; a pattern stretched to "
    "the duration";
constexpr const char* shapes_source =
    "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 14.4 (alternating blocks, from memory); USDA "
    "TR-55 (1986), "
    "app. B, and NEH Part 630, ch. 4 (types I to III, ratios as in two public transcriptions)";
constexpr const char* type_ii =
    "NRCS type II as in two public transcriptions that agree digit for digit, checked against the ratios of "
    "NEH Part 630, "
    "ch. 4";

Entry& takes_storm_rain(Entry& entry) {
    return entry.takes("rain", "t_d, i", "Two columns: duration and mean intensity of one frequency")
        .within({usual::table_duration, usual::table_intensity});
}
Entry& takes_duration(Entry& entry) {
    return entry.takes("duration", "t_d", "Duration of the rain").within(usual::rain_duration);
}
Entry& takes_storm_step(Entry& entry) {
    return entry.takes("step", "dt", "Step of the table; alternating blocks last one each")
        .within(usual::time_step);
}
Entry& storm_columns(Entry& entry) {
    return entry.gives_columns("Storm", {{"time", "t"}, {"cumulative rain", "P"}});
}

Function rain_depth_entry() {
    auto depth = function("UC.RAIN.DEPTH", [](calc::RainTable rain, Time duration) {
        return calc::rain_depth(rain, duration);
    });
    depth.says("Depth of rain of a duration, by the same interpolation as UC.RAIN.INTENSITY")
        .related({"UC.RAIN.INTENSITY", "UC.RAIN.STORM", "UC.RAIN.PATTERN", "UC.RUNOFF.DEPTH"})
        .also_called("rainfall depth, depth-duration-frequency, DDF, precipitation depth")
        .equation("P = i(t_d) t_d, log i straight against log t_d between two rows")
        .source("common practice (intensity-duration-frequency curves are plotted on two logarithmic axes)")
        .caution(local_rain);
    return takes_duration(takes_storm_rain(depth))
        .gives("P", "Depth of rain")
        .example("UC.RAIN.DEPTH({\"min\";\"in/h\"|30;6.62|60;4.38}; \"45 min\"; \"in\")", "3.899297851",
                 "1e-8 rel", Origin::mathematics,
                 "NOAA Atlas 14 depths of 3.31 in and 4.38 in (read), log-log between them")
        .example("UC.RAIN.DEPTH({10;100|60;25}; 60)", "0.025", "1e-9 rel", Origin::mathematics,
                 "25 mm/h for an hour");
}

Function rain_storm_entry() {
    auto storm = function("UC.RAIN.STORM",
                          [](calc::RainTable rain, Time duration, Time step, calc::StormCourse pattern) {
                              return calc::storm_of(rain, duration, step, pattern);
                          });
    storm
        .says(
            "A storm with a shape: cumulative rain by time, its depth that of the rain table to the last "
            "digit")
        .related({"UC.HYDROGRAPH.AREA", "UC.HYDROGRAPH.STORM", "UC.RAIN.PATTERN", "UC.RAIN.PICK"})
        .also_called(
            "design storm, hyetograph, temporal pattern, mass curve, alternating blocks, rainfall "
            "distribution")
        .equation(shapes)
        .source(shapes_source)
        .caution(nrcs_storms);
    return storm_columns(takes_pattern(takes_storm_step(takes_duration(takes_storm_rain(storm)))))
        .examples(
            "INDEX(UC.RAIN.STORM(UC.RAIN.PICK(atlas_14; \"100 years\"; \"in\"; 1; \"min;in/h\"); \"120 "
            "min\"; \"10 min\"; "
            "\"alternating\"; \"min;in\"); {}; 2)",
            "1e-6", Origin::mathematics,
            "differences of the depths of NOAA Atlas 14 (read), log-log between rows, sorted and placed "
            "apart",
            {{"3", "0.158540"}, {"8", "3.401588"}, {"14", "5.46"}})
        .example("INDEX(UC.RAIN.STORM({10;60|1440;5}; 1440; 30; \"type II\"); 26; 2)", "0.07956", "1e-9 rel",
                 Origin::mathematics, "0.6630 of 120 mm at noon");
}

Function pattern_entry() {
    auto pattern =
        function("UC.RAIN.PATTERN", [](Length depth, Time duration, Time step, calc::StormCourse course) {
            return calc::storm_of_depth(depth, duration, step, course);
        });
    pattern.says("The same from a depth that is known, by a block or a pattern")
        .related({"UC.RAIN.STORM", "UC.HYDROGRAPH.AREA", "UC.HYDROGRAPH.STORM", "UC.RAIN.DEPTH"})
        .also_called(
            "temporal pattern, dimensionless storm, rainfall profile, mass curve, 24-hour distribution")
        .equation("P(t) = P s(t)")
        .source(shapes_source)
        .caution(nrcs_storms)
        .takes("depth", "P", "Depth of rain of the storm")
        .within(usual::day_rain);
    return storm_columns(takes_pattern(takes_storm_step(takes_duration(pattern))))
        .examples("INDEX(UC.RAIN.PATTERN(\"100 mm\"; \"24 h\"; \"60 min\"; \"{}\"; \"h;mm\"); {}; 2)",
                  "1e-9 rel", Origin::published, type_ii,
                  {{"type II", "13", "23.5"},
                   {"type II", "14", "66.3"},
                   {"type I", "12", "51.5"},
                   {"type II", "26", "100"}})
        .example(
            "INDEX(UC.RAIN.PATTERN(\"7.32 in\"; \"4 h\"; \"30 min\"; {\"h\";\"%\"|0;0|1;23.5|2;66|4;100}; "
            "\"h;in\"); 6; 2)",
            "4.83", "0.005", Origin::published,
            "Bedient, Huber and Vieux, Hydrology and Floodplain Analysis, 5th ed., Example 6-4: 66.0 % of "
            "7.32 in")
        .example("INDEX(UC.RAIN.PATTERN(0.05; 60; 10); 5; 2)", "0.025", "1e-9 rel", Origin::mathematics,
                 "half of a block after half of its time");
}

Function formula_entry() {
    return function("UC.RAIN.FORMULA", &calc::rain_formula)
        .says("Mean intensity of a duration by an intensity-duration formula")
        .related({"UC.RAIN.INTENSITY", "UC.RAIN.PICK", "UC.RUNOFF.PEAK"})
        .also_called("IDF equation, intensity formula, Sherman, Talbot, Bernard, rain constants a b n")
        .equation("i = a/(t_d + b)^c, times in minutes")
        .source("common form, Chow, Maidment and Mays, Applied Hydrology (1988), sec. 14.2")
        .caution(local_rain)
        .takes("a", "a", "Its numerator: the intensity where t_d + b is one minute")
        .within(usual::formula_intensity)
        .takes("b", "b", "Time that is added; 0 min for none")
        .within(usual::formula_time)
        .takes("c", "c", "Exponent")
        .within(usual::formula_exponent)
        .takes("duration", "t_d", "Duration of the rain")
        .within(usual::rain_duration)
        .gives("i", "Mean intensity")
        .example("UC.RAIN.FORMULA(\"3000 mm/h\"; \"20 min\"; 1; \"10 min\")", "100", "1e-9 rel",
                 Origin::mathematics, "3000/(10 + 20)")
        .example("UC.RAIN.FORMULA(1200; 12; 0.85; 60)", "31.6554597", "1e-8 rel", Origin::mathematics,
                 "1200/72^0.85");
}

Function hydrograph_area_entry() {
    constexpr const char* steps =
        "0.8 x 1.5 ha under 12, 30, 60, 24, 6 mm/h in 10-min steps, t_c 20 min: C A/t_c times what fell in "
        "the last t_c, by "
        "hand";
    auto area =
        function("UC.HYDROGRAPH.AREA", [](Share coefficient, Area drained, calc::Hyetograph storm,
                                          Time time_of_concentration, Length initial, Speed continuing) {
            return calc::time_area_hydrograph(coefficient, drained, storm, time_of_concentration,
                                              {initial, continuing});
        });
    return area.says("Runoff of a storm of any shape by the linear time-area method; its volume is exact")
        .related({"UC.ROUTE.POOL", "UC.ROUTE.SPILL", "UC.RAIN.STORM", "UC.HYDROGRAPH.RATIONAL"})
        .also_called("time-area diagram, runoff hydrograph, isochrones, storm inflow, linear time-area")
        .equation("Q(t) = C A (E(t) - E(t - t_c))/t_c, E the rain so far less its losses")
        .source(
            "Chow, Maidment and Mays, Applied Hydrology (1988), secs. 7.5 and 15.1; losses common practice")
        .caution(local_rain)
        .takes("coefficient", "C", "Runoff coefficient")
        .within(usual::runoff_coefficient)
        .takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("storm", "t, P", "Two columns: time and cumulative rain from 0, such as UC.RAIN.STORM gives")
        .within({usual::elapsed_time, usual::cumulative_rain})
        .takes("time of concentration", "t_c", "Time of concentration")
        .within(usual::concentration_time)
        .takes("initial loss", "I_a", "Rain that the ground keeps before any runs off", 0.0)
        .within(usual::initial_loss)
        .takes("continuing loss", "f", "Rain that it keeps from then on", 0.0)
        .within(usual::continuing_loss)
        .gives_columns("Hydrograph", {{"time", "t"}, {"flow", "Q"}})
        .examples(
            "INDEX(UC.HYDROGRAPH.AREA(0.8; \"1.5 ha\"; {\"min\";\"mm\"|0;0|10;2|20;7|30;17|40;21|50;22}; "
            "\"20 min\"; \"0 mm\"; "
            "\"0 mm/h\"; \"min;m3/s\"); {}; 2)",
            "1e-9", Origin::mathematics, steps,
            {{"3", "0.02"}, {"4", "0.07"}, {"5", "0.15"}, {"6", "0.14"}, {"7", "0.05"}, {"8", "0.01"}})
        .example(
            "INDEX(UC.HYDROGRAPH.AREA(0.8; \"4 acre\"; "
            "{\"min\";\"in\"|0;0|10;0.2|20;0.7|30;1.7|40;2.1|50;2.2}; \"20 min\"; ; ; "
            "\"min;ft3/s\"); 5; 2)",
            "14.52", "1e-9 rel", Origin::mathematics, "1.5 in in 20 min on 4 acres, 0.8 of it")
        .example("INDEX(UC.HYDROGRAPH.AREA(0.7; 20000; UC.RAIN.PATTERN(0.02; 30; 10); 15); 4; 2)",
                 "155.5555556", "1e-8 rel", Origin::mathematics, "C i A of a block of 40 mm/h");
}

}  // namespace

std::vector<Function> storm_functions() {
    return {rain_depth_entry(), rain_storm_entry(), pattern_entry(), formula_entry(),
            hydrograph_area_entry()};
}

}  // namespace undercroft::addin
