#include "calc/water/soakage.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* manual = "CIRIA C753, The SuDS Manual (2015), ch. 25";
constexpr const char* soakage_caution =
    "Keep clear of foundations and of the highest groundwater. The safety factor goes by the area drained "
    "and the "
    "harm of a failure. Local codes and a licensed engineer govern";

Entry& takes_safety_factor(Entry& entry) {
    return entry
        .takes("safety factor", "F",
               "What the tested rate is divided by; 1.5 to 10 in CIRIA C753, 1 for a rate already in design",
               1.0)
        .within(usual::safety_factor);
}

Function rate_entry() {
    return function("UC.SOAK.RATE", &calc::soakage_rate)
        .says("Soakage rate from a test in a pit")
        .also_called("infiltration test, percolation test, soakaway test, trial pit")
        .related({"UC.SOAK.FLOW", "UC.SOAK.DEPTH"})
        .to_try("UC.SOAK.RATE(\"0.9 m3\"; \"5.2 m2\"; \"95 min\")")
        .to_try("UC.SOAK.RATE(\"32 ft3\"; \"56 ft2\"; \"95 min\"; \"in/h\")")
        .sketch(Sketch::soakage)
        .equation("q = V/(a t)")
        .source("BRE Digest 365, Soakaway design")
        .caution(
            "Fill the pit three times in quick succession and use the lowest rate (BRE Digest 365). "
            "A trial pit is an excavation: nobody enters it unsupported")
        .takes("volume", "V", "Volume of the pit from 75 % to 25 % of the effective depth")
        .within(usual::test_volume)
        .takes("area", "a", "Inside area of the pit up to 50 % of the depth, base included")
        .within(usual::test_area)
        .takes("time", "t", "Time in which the water falls from 75 % to 25 %")
        .within(usual::test_time)
        .gives("q", "Soakage rate")
        .example("UC.SOAK.RATE(\"0.375 m3\"; \"2.5 m2\"; \"56 min\"; \"m/s\")", "4.4642857e-5", "1e-7 rel",
                 Origin::mathematics,
                 "V/(a t) of BRE Digest 365 for a pit of 1.00 m x 0.75 m with 1.00 m of effective depth");
}

Function soak_flow_entry() {
    auto flow = function("UC.SOAK.FLOW", &calc::soakage_flow);
    flow.says("Flow into the ground through base and walls")
        .also_called("infiltration flow, exfiltration, percolation, design infiltration")
        .related({"UC.SOAK.RATE", "UC.SOAK.DEPTH", "UC.SOAK.TIME"})
        .to_try("UC.SOAK.FLOW(\"600 m2\"; \"60 m2\"; \"36 mm/h\"; 2)")
        .to_try("UC.SOAK.FLOW(\"6500 ft2\"; \"650 ft2\"; \"1.4 in/h\"; 2; \"cfs\")")
        .refuses("UC.SOAK.FLOW(\"600 m2\"; \"60 m2\"; \"1E-5\"; 2)")
        .sketch(Sketch::soakage)
        .equation("Q = q (A_b + A_w)/F")
        .source(manual)
        .caution(soakage_caution)
        .takes("base area", "A_b", "Area of the base; 0 m2 where silt is expected to seal it")
        .within(usual::soakage_area)
        .takes("wall area", "A_w", "Wetted area of the walls; 0 m2 for the base alone")
        .within(usual::soakage_area)
        .takes("rate", "q", "Soakage rate from the test; 0 mm/h for none")
        .within(usual::soakage_rate.or_zero());
    return takes_safety_factor(flow)
        .gives("Q", "Flow")
        .example("UC.SOAK.FLOW(\"0 m2\"; \"5.25 m2\"; \"2e-5 m/s\"; 1; \"m3/h\")", "0.378", "1e-9 rel",
                 Origin::mathematics,
                 "outflow as BRE Digest 365 has it: side area up to 50 % of the depth, 0.378 m3 in 60 min");
}

/// The bed that soaks away, and its rain.
Entry& takes_soaking_bed(Entry& entry) {
    entry.equation("d = a (exp(-b t_d) - 1); a = A_b/P - i A_d F/(P q), b = P q/(n A_b F); largest over t_d")
        .source(manual)
        .takes("rain", "t_d, i", "Two columns: duration and mean intensity")
        .within({usual::table_duration, usual::table_intensity})
        .takes("drained area", "A_d", "Area that drains to the bed, times its runoff coefficient")
        .within(usual::drained_area)
        .takes("length", "L", "Length of the bed")
        .within(usual::plan_length.or_in("ft"))
        .takes("width", "W", "Width of the bed")
        .within(usual::plan_width.or_in("ft"))
        .takes("porosity", "n", "Water held over the bed's volume, such as 60 % for chambers in stone")
        .within(usual::voids)
        .takes("rate", "q", "Soakage rate from the test; 0 mm/h for none")
        .within(usual::soakage_rate.or_zero());
    return takes_safety_factor(entry);
}

Function soak_depth_entry() {
    auto depth = function("UC.SOAK.DEPTH", [](calc::RainTable rain, Area drained_area, Length length,
                                              Length width, Share porosity, Speed rate, Share safety_factor) {
        return calc::soakage_depth(rain, drained_area, length, width, porosity, rate, safety_factor);
    });
    depth.says("Deepest water in a bed that soaks through base and walls, over all durations of rain")
        .also_called("infiltration bed, soakaway depth, plane infiltration, soakwell")
        .related({"UC.SOAK.TIME", "UC.SOAK.RATE", "UC.STORAGE.REQUIRED"})
        .to_try(
            "UC.SOAK.DEPTH({\"min\";\"mm/h\"|10;120|30;70|60;45|120;28}; \"1200 m2\"; \"30 m\"; \"12 m\"; "
            "\"40 %\"; \"36 mm/h\"; 2)")
        .to_try(
            "UC.SOAK.DEPTH({\"min\";\"in/h\"|10;4.7|30;2.8|60;1.8|120;1.1}; \"13000 ft2\"; \"100 ft\"; \"40 "
            "ft\"; \"40 %\"; \"1.4 in/h\"; 2; \"ft\")")
        .sketch(Sketch::soakage)
        .caution(soakage_caution);
    return takes_soaking_bed(depth)
        .gives("d", "Greatest depth")
        .example(
            "UC.SOAK.DEPTH({\"h\";\"mm/h\"|2;30|2.0000001;30}; \"1000 m2\"; \"12 m\"; \"5 m\"; \"40 "
            "%\"; \"36 mm/h\")",
            "2.2056023542", "1e-6 rel", Origin::mathematics,
            "CIRIA C753 (2015), ch. 25: one storm of 2 h, checked by integrating the balance of water");
}

Function duration_entry() {
    auto duration =
        function("UC.SOAK.DURATION", [](calc::RainTable rain, Area drained_area, Length length, Length width,
                                        Share porosity, Speed rate, Share safety_factor) {
            return calc::soakage_duration(rain, drained_area, length, width, porosity, rate, safety_factor);
        });
    duration
        .says(
            "The duration of rain that gives the depth of UC.SOAK.DEPTH, also between the rows of the table")
        .related({"UC.SOAK.DEPTH", "UC.SOAK.TIME", "UC.RAIN.PICK"})
        .also_called("critical duration of infiltration, governing storm, design storm of a soakaway")
        .caution(
            "Where it is the longest of the table a longer rain may give more: check with UC.RAIN.REACHES, "
            "and give a "
            "longer table");
    return takes_soaking_bed(duration)
        .gives("t_d", "Governing duration")
        .example(
            "UC.SOAK.DURATION({\"min\";\"mm/h\"|10;100|100;10}; \"1000 m2\"; \"12 m\"; \"5 m\"; \"40 %\"; "
            "\"36 mm/h\"; 1)",
            "10", "1e-9 rel", Origin::mathematics,
            "all durations bring the same rain, and the shortest leaves the least time to soak away");
}

Function time_entry() {
    auto time = function("UC.SOAK.TIME", &calc::soakage_time);
    time.says("Time until a fraction of the depth is left in a bed that soaks away, without inflow")
        .also_called("half-emptying time, drawdown of a soakaway, drain-down by infiltration")
        .related({"UC.SOAK.DEPTH", "UC.DRAIN.TIME"})
        .to_try("UC.SOAK.TIME(\"1 m\"; \"40 %\"; \"360 m2\"; \"84 m\"; \"36 mm/h\"; 2)")
        .to_try("UC.SOAK.TIME(\"3 ft\"; \"40 %\"; \"4000 ft2\"; \"280 ft\"; \"1.4 in/h\"; 2; 0.5; \"h\")")
        .sketch(Sketch::soakage)
        .equation("t = n A_b F/(q P) ln((d + A_b/P)/(f d + A_b/P)); without walls n d (1 - f) F/q")
        .source(manual)
        .caution(soakage_caution)
        .takes("depth", "d", "Depth at the start")
        .within(usual::soakage_depth)
        .takes("porosity", "n", "Water held over the bed's volume")
        .within(usual::voids)
        .takes("base area", "A_b", "Area of the base")
        .within(usual::soakage_base)
        .takes("perimeter", "P", "Perimeter of the soaking walls; 0 m for the base alone")
        .within(usual::soakage_perimeter)
        .takes("rate", "q", "Soakage rate from the test")
        .within(usual::soakage_rate);
    return takes_safety_factor(time)
        .takes("fraction", "f", "Fraction of the depth that is left; 0 % for empty", 0.5)
        .within(usual::fraction_left)
        .gives("t", "Time")
        .example(
            "UC.SOAK.TIME(\"2.2056023542 m\"; \"40 %\"; \"60 m2\"; \"34 m\"; \"36 mm/h\"; 1; 0.5; \"h\")",
            "6.3804059065", "1e-9 rel", Origin::mathematics,
            "CIRIA C753 (2015), ch. 25, recomputed: half empty")
        .example(
            "UC.SOAK.TIME(\"2.2056023542 m\"; \"40 %\"; \"60 m2\"; \"34 m\"; \"36 mm/h\"; 1; \"0 %\"; \"h\")",
            "15.8992097162", "1e-9 rel", Origin::mathematics, "CIRIA C753 (2015), ch. 25, recomputed: empty")
        .example("UC.SOAK.TIME(\"2 m\"; \"40 %\"; \"60 m2\"; \"0 m\"; \"36 mm/h\"; 1; 0.5; \"h\")",
                 "11.1111111111", "1e-10 rel", Origin::mathematics, "through the base alone: n d/(2 q)");
}

}  // namespace

std::vector<Function> soakage_functions() {
    return {rate_entry(), soak_flow_entry(), soak_depth_entry(), duration_entry(), time_entry()};
}

}  // namespace undercroft::addin
