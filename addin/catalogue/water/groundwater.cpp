#include "calc/water/groundwater.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* dewatering_caution =
    "Water under pressure below the pit can burst or wash out its floor: a check of its own. Lowering "
    "groundwater settles the ground and what stands on it. Local codes and a licensed engineer govern";

Function green_ampt_entry() {
    return function("UC.SOAK.GREENAMPT", &calc::green_ampt_infiltration)
        .says("Water that has soaked into ponded ground after a time")
        .also_called("Green and Ampt, cumulative infiltration, wetting front, suction head")
        .related({"UC.SOAK.RATE"})
        .to_try("UC.SOAK.GREENAMPT(\"6.5 mm/h\"; \"167 mm\"; 0.34; \"1 h\"; \"mm\")")
        .to_try("UC.SOAK.GREENAMPT(\"0.26 in/h\"; \"6.6 in\"; 0.34; \"1 h\"; \"in\")")
        .equation("F - N ln(1 + F/N) = K t, N = psi dtheta")
        .source("Green and Ampt (1911), as in Chow, Maidment and Mays, Applied Hydrology (1988), eq. 4.3.8")
        .caution("Ponded from the start; one uniform soil. Local codes and a licensed engineer govern")
        .takes("conductivity", "K", "Hydraulic conductivity behind the wetting front")
        .within(usual::wetted_conductivity)
        .takes("suction", "psi", "Suction at the wetting front; 0 m for none")
        .within(usual::suction)
        .takes("moisture deficit", "dtheta", "Porosity less moisture at the start, 0 % to 100 %")
        .within(usual::moisture_deficit)
        .takes("time", "t", "Time since ponding began")
        .within(usual::ponding_time)
        .gives("F", "Cumulative infiltration")
        .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.3402; \"1 h\"; \"cm\")", "3.17", "0.005",
                 Origin::from_memory,
                 "Chow, Maidment and Mays (1988), Example 4.3.1: silt loam, ponded for 1 h")
        .examples(
            "UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.34; \"{}\"; \"cm\")", "1e-9 rel",
            Origin::mathematics,
            "root of the equation, recomputed for the soil of Chow, Maidment and Mays (1988), Example 4.3.1",
            {{"15 min", "1.468861979"},
             {"30 min", "2.143625795"},
             {"2 h", "4.753578369"},
             {"3 h", "6.086213586"},
             {"5 h", "8.409558845"}})
        .example(
            "UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"19.5 cm\"; 0.34; \"6.190414 h\"; \"cm\")", "10.2", "1e-6",
            Origin::mathematics,
            "Rain or Shine (Oklahoma State University), sec. 6.5: 2.5 cm ponded on 17 cm of suction, front "
            "at 30 cm, F = 10.2 cm; time recomputed");
}

Function falling_head_entry() {
    return function("UC.PERMEABILITY.FALLING", &calc::falling_head_permeability)
        .says("Permeability from a falling-head test")
        .also_called("falling head test, hydraulic conductivity, permeameter, k value")
        .related({"UC.PIT.SEEPAGE", "UC.SOAK.RATE"})
        .equation("k = a L/(A t) ln(h_1/h_2)")
        .source("Das, Principles of Geotechnical Engineering, falling-head test (from memory)")
        .takes("tube area", "a", "Inside area of the tube")
        .within(usual::tube_area)
        .takes("sample length", "L", "Length of the sample")
        .within(usual::sample_length)
        .takes("sample area", "A", "Area of the sample")
        .within(usual::sample_area)
        .takes("time", "t", "Time of the fall")
        .within(usual::fall_time)
        .takes("head start", "h_1", "Head at the start")
        .within(usual::test_head)
        .takes("head end", "h_2", "Head at the end")
        .within(usual::test_head)
        .gives("k", "Permeability")
        .example(
            "UC.PERMEABILITY.FALLING(\"0.06 in2\"; \"8 in\"; \"1.6 in2\"; \"180 s\"; \"20 in\"; "
            "\"12 in\"; \"in/s\")",
            "8.52e-4", "1e-6", Origin::from_memory,
            "Das, Principles of Geotechnical Engineering, falling-head example (2.303 log10 there)");
}

Function seepage_entry() {
    return function("UC.PIT.SEEPAGE", &calc::pit_seepage)
        .says("Steady seepage into an open pit in an unconfined aquifer, for dewatering")
        .also_called("dewatering, groundwater inflow, Dupuit, pumping rate")
        .related({"UC.PIT.RADIUS", "UC.PIT.INFLUENCE", "UC.PUMP.TIME"})
        .sketch(Sketch::soakage)
        .equation("Q = pi k (H^2 - h^2)/ln(R/r)")
        .source("Dupuit and Thiem, as in UFC 3-220-05, Dewatering and Groundwater Control, ch. 4")
        .caution(dewatering_caution)
        .takes("permeability", "k", "Permeability of the aquifer")
        .within(usual::permeability)
        .takes("water depth outside", "H", "Groundwater above the aquifer's base, far from the pit")
        .within(usual::groundwater_depth)
        .takes("water depth inside", "h",
               "Lowered water above the aquifer's base, at the pit; 0 m where it is dry")
        .within(usual::groundwater_depth)
        .takes("influence radius", "R", "Radius of influence, from the centre of the pit")
        .within(usual::influence_radius)
        .takes("equivalent radius", "r", "Radius of a circle as large as the pit: sqrt(L W/pi)")
        .within(usual::pit_radius)
        .gives("Q", "Seepage")
        .example("UC.PIT.SEEPAGE(\"0.01 m/s\"; \"50 m\"; \"49.454806279 m\"; \"500 m\"; \"0.1 m\"; \"m3/s\")",
                 "0.2", "1e-9 rel", Origin::mathematics,
                 "exercise of a university's geotechnical course (inputs read); level recomputed");
}

Function radius_entry() {
    return function("UC.PIT.RADIUS", &calc::equivalent_radius)
        .says("Radius of the circle as large as a rectangular pit, for UC.PIT.SEEPAGE")
        .also_called("equivalent radius, equivalent well, dewatering")
        .related({"UC.PIT.SEEPAGE", "UC.PIT.INFLUENCE"})
        .to_try("UC.PIT.RADIUS(\"45 m\"; \"14 m\")")
        .to_try("UC.PIT.RADIUS(\"150 ft\"; \"46 ft\"; \"ft\")")
        .equation("r = sqrt(L W/pi)")
        .source("common practice")
        .takes("length", "L", "Length of the pit")
        .within(usual::plan_length)
        .takes("width", "W", "Width of the pit")
        .within(usual::plan_width)
        .gives("r", "Equivalent radius")
        .example("UC.PIT.RADIUS(\"31.4159265358979 m\"; \"4 m\")", "6.32455532033676", "1e-12 rel",
                 Origin::mathematics, "sqrt(40) m");
}

Function influence_entry() {
    return function("UC.PIT.INFLUENCE", &calc::influence_distance)
        .says("How far from the edge of a pit groundwater is lowered, by Sichardt")
        .also_called("radius of influence, Sichardt, drawdown cone")
        .related({"UC.PIT.SEEPAGE", "UC.PIT.RADIUS"})
        .equation("R_0 = 3000 s sqrt(k), m and m/s; from the centre R = R_0 + r")
        .source(
            "Sichardt (in Powers, 1992), as in Broward County, Florida, Environmental Engineering and "
            "Permitting "
            "Division, Exhibit III, Radius of influence; added to the radius of the pit there")
        .caution(dewatering_caution)
        .takes("permeability", "k", "Permeability of the aquifer")
        .within(usual::permeability)
        .takes("drawdown", "s", "How far the groundwater is lowered at the pit; 0 m for not at all")
        .within(usual::drawdown)
        .gives("R_0", "Distance of influence")
        .example(
            "UC.PIT.INFLUENCE(\"36 m/d\"; \"4 m\")", "244.948974", "5e-7", Origin::mathematics,
            "3000 x 4 x sqrt(36/86400), inputs of Punmia et al., Irrigation and Water Power Engineering, "
            "Ex. 5.6 (read in its companion code)");
}

Function pump_entry() {
    return function("UC.PUMP.TIME", &calc::pump_time)
        .says("Time to pump standing water out while more flows in")
        .also_called("dewatering time, pumping out, time to empty")
        .related({"UC.DRAIN.TIME", "UC.PIT.SEEPAGE"})
        .to_try("UC.PUMP.TIME(\"400 m3\"; \"15 L/s\"; \"3 L/s\"; \"h\")")
        .to_try("UC.PUMP.TIME(\"14000 ft3\"; \"250 US gpm\"; ; \"h\")")
        .refuses("UC.PUMP.TIME(\"400 m3\"; \"15 L/s\"; \"20 L/s\")")
        .equation("t = V/(Q_m - Q_w)")
        .source("common practice")
        .caution(dewatering_caution)
        .takes("volume", "V", "Water that stands")
        .within(usual::standing_water)
        .takes("pumping", "Q_m", "Flow pumped out")
        .within(usual::pumped_flow)
        .takes("inflow", "Q_w", "Flow that comes in meanwhile", 0.0)
        .within(usual::seepage)
        .gives("t", "Time")
        .example("UC.PUMP.TIME(\"360 m3\"; \"25 L/s\"; \"10 L/s\"; \"h\")", "6.66666666667", "1e-11 rel",
                 Origin::mathematics, "24000 s, 6 h 40 min");
}

}  // namespace

std::vector<Function> groundwater_functions() {
    return {green_ampt_entry(), falling_head_entry(), seepage_entry(),
            radius_entry(),     influence_entry(),    pump_entry()};
}

}  // namespace undercroft::addin
