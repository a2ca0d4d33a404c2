#include "calc/water/mound.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "calc/water/ponding.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* report =
    "USGS SIR 2010-5102, its verification example (p. 23, table 5, spreadsheet), as read in an open package "
    "that follows "
    "it: half sides 33.63 ft, w 1.333 ft/d, K 4 ft/d, h_i 10 ft, S_y 0.085, 1.5 d";
constexpr const char* rawls_loam =
    "closed form with the soil of Rawls, Brakensiek and Miller (1983): K 1.09 cm/h, psi 11.01 cm, dtheta "
    "0.2472, rain 3 "
    "cm/h";

Function mound_entry() {
    auto mound =
        function("UC.SOAK.MOUND", [](Length x, Length y, Length length, Length width, Speed recharge,
                                     Speed permeability, Share specific_yield, Length saturated_depth,
                                     Time time, std::optional<Time> recharge_time) {
            return calc::mound_rise(x, y, {length, width, recharge},
                                    {permeability, specific_yield, saturated_depth}, time, recharge_time);
        });
    mound.says("Rise of the groundwater under and beside a rectangle that soaks away, after a time")
        .related({"UC.SOAK.FLOW", "UC.SOAK.TIME", "UC.PIT.INFLUENCE"})
        .also_called("groundwater mounding, Hantush, water table rise, recharge mound")
        .equation(
            "h^2 - h_i^2 = (w b t/(2 S_y)) (sum of S*((l +- x)/sqrt(4 v t), (a +- y)/sqrt(4 v t))), l and a "
            "half sides, v "
            "= K b/S_y, b = (h_i + h)/2")
        .source("Hantush, Water Resources Research 3 (1967), as in USGS SIR 2010-5102, p. 22")
        .caution(
            "An unconfined aquifer on a level base without end. Against a groundwater model it is good to "
            "about 10 % (the "
            "same report). A mound that reaches the base of the bed stops the soakage: keep the unsaturated "
            "depth")
        .takes("x", "x", "From the centre of the rectangle along its length; 0 m for the centre")
        .within(usual::mound_place)
        .takes("y", "y", "From the centre along its width; 0 m for the centre")
        .within(usual::mound_place)
        .takes("length", "2 l", "Length of the rectangle")
        .within(usual::plan_length)
        .takes("width", "2 a", "Width of the rectangle")
        .within(usual::plan_width)
        .takes("recharge", "w", "Depth of water a time that soaks into it")
        .within(usual::recharge)
        .takes("permeability", "K", "Horizontal permeability of the aquifer")
        .within(usual::aquifer_permeability)
        .takes("specific yield", "S_y", "Water that the aquifer takes up per volume, such as 0.2 in sand")
        .within(usual::specific_yield)
        .takes("saturated depth", "h_i", "Depth of the groundwater before, above the base of the aquifer")
        .within(usual::saturated_depth)
        .takes("time", "t", "Time since the recharge began")
        .within(usual::mound_time)
        .takes("recharge time", "t_0", "How long it soaks, where that is shorter; left out, all the time")
        .within(usual::mound_time);
    return mound.gives("h - h_i", "Rise of the groundwater")
        .examples(
            "UC.SOAK.MOUND(\"{} ft\"; \"0 ft\"; \"67.26 ft\"; \"67.26 ft\"; \"1.333 ft/d\"; \"4 ft/d\"; "
            "0.085; \"10 ft\"; "
            "\"1.5 d\"; ; \"ft\")",
            "0.011", Origin::published, report,
            {{"0", "12.63"}, {"6.6", "12.50"}, {"20", "11.31"}, {"40", "6.63"}, {"75", "1.07"}})
        .example(
            "UC.SOAK.MOUND(\"15 m\"; \"5 m\"; \"30 m\"; \"10 m\"; \"0.1 m/d\"; \"1 m/d\"; 0.2; \"4 m\"; \"10 "
            "d\")",
            "0.677526689", "1e-7 rel", Origin::mathematics, "at a corner, the integrals computed apart")
        .example("UC.SOAK.MOUND(\"0 m\"; \"0 m\"; 30; 10; 4.16666666667; 41.6666666667; 0.2; 4; \"240 h\")",
                 "1.257009959", "1e-7 rel", Origin::mathematics,
                 "0.1 m/d into 1 m/d for 10 d, in default units");
}

Entry& takes_mound_soil(Entry& entry) {
    return entry
        .source(
            "Mein and Larson (1973), as in Chow, Maidment and Mays, Applied Hydrology (1988), sec. 4.4 (from "
            "memory)")
        .caution("For steady rain on one soil, level and bare; a surface that silts up takes less")
        .takes("conductivity", "K", "Conductivity of the wetted soil")
        .within(usual::wetted_conductivity)
        .takes("suction", "psi", "Suction head at the wetting front; 0 m for none")
        .within(usual::suction)
        .takes("moisture deficit", "dtheta", "Porosity less moisture at the start; 0 % for none")
        .within(usual::moisture_deficit)
        .takes("rain", "i", "Intensity of the steady rain")
        .within(usual::rain_intensity);
}

Function ponding_entry() {
    auto ponding = function("UC.SOAK.PONDING", &calc::ponding_time);
    ponding.says("Time from which steady rain stands on the ground")
        .related({"UC.SOAK.RAIN", "UC.SOAK.GREENAMPT", "UC.SOAK.RATE"})
        .also_called("time to ponding, Green-Ampt, infiltration excess, surface ponding")
        .equation("t_p = K N/(i (i - K)), N = psi dtheta");
    return takes_mound_soil(ponding)
        .gives("t_p", "Time to ponding")
        .example("UC.SOAK.PONDING(\"1.09 cm/h\"; \"11.01 cm\"; 0.2472; \"3 cm/h\"; \"h\")", "0.517735162",
                 "1e-8 rel", Origin::mathematics, rawls_loam)
        .example("UC.SOAK.PONDING(10.9; 0.1101; 0.2472; 30)", "31.0641097", "1e-8 rel", Origin::mathematics,
                 rawls_loam);
}

Function rain_entry() {
    auto rain = function("UC.SOAK.RAIN", &calc::rain_infiltration);
    rain.says(
            "Water that has soaked in after a time of steady rain: all of it until it ponds, then by Green "
            "and Ampt")
        .related({"UC.SOAK.PONDING", "UC.SOAK.GREENAMPT", "UC.RUNOFF.DEPTH"})
        .also_called("cumulative infiltration, Green-Ampt, infiltrated depth, losses")
        .equation("F - F_p - N ln((N + F)/(N + F_p)) = K (t - t_p), F_p = i t_p, N = psi dtheta");
    return takes_mound_soil(rain)
        .takes("time", "t", "Time since the rain began; 0 min for none")
        .within(usual::ponding_time)
        .gives("F", "Cumulative infiltration")
        .example("UC.SOAK.RAIN(\"1.09 cm/h\"; \"11.01 cm\"; 0.2472; \"3 cm/h\"; \"2 h\"; \"cm\")",
                 "4.652985685", "1e-8 rel", Origin::mathematics, rawls_loam)
        .example("UC.SOAK.RAIN(6.5; \"0.1668 m\"; 0.34; 25; 180; \"cm\")", "5.624425464", "1e-8 rel",
                 Origin::mathematics, "closed form, silt loam of the same source under 2.5 cm/h");
}

}  // namespace

std::vector<Function> mound_functions() {
    return {mound_entry(), ponding_entry(), rain_entry()};
}

}  // namespace undercroft::addin
