#include "calc/water/soakage.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/water/groundwater.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* manual = "CIRIA C753, The SuDS Manual (2015), ch. 25";
constexpr const char* soakage_caution =
    "Keep clear of foundations and of the highest groundwater. The safety factor goes by the area drained "
    "and the harm of a failure. Local codes and a licensed "
    "engineer "
    "govern";
constexpr const char* safety_says =
    "What the tested rate is divided by; 1.5 to 10 in CIRIA C753, 1 for a rate already in design";
constexpr const char* dewatering_caution =
    "Water under pressure below the pit can burst or wash out its floor: a check of its own. Lowering "
    "groundwater settles the ground and what stands on it. Local codes and a licensed engineer "
    "govern";

std::vector<Function> soakage_entries() {
    return {
        function("UC.SOAK.RATE", &calc::soakage_rate)
            .says("Soakage rate from a test in a pit")
            .equation("q = V/(a t)")
            .source("BRE Digest 365, Soakaway design")
            .example("UC.SOAK.RATE(\"0.375 m3\"; \"2.5 m2\"; \"56 min\"; \"m/s\")", "4.4642857e-5",
                     "1e-7 rel", Origin::mathematics,
                     "shared checks, water 8a1, after BRE Digest 365: pit of 1.00 m x 0.75 m, 1.00 m "
                     "effective depth")
            .caution("Fill the pit three times in quick succession and use the lowest rate (BRE Digest 365). "
                     "A trial pit is an excavation: nobody enters it unsupported")
            .takes("volume", "V", "Volume of the pit from 75 % to 25 % of the effective depth")
            .takes("area", "a", "Inside area of the pit up to 50 % of the depth, base included")
            .takes("time", "t", "Time in which the water falls from 75 % to 25 %")
            .gives("q", "Soakage rate"),
        function("UC.SOAK.FLOW", &calc::soakage_flow)
            .says("Flow into the ground through base and walls")
            .equation("Q = q (Ab + Aw)/F")
            .source(manual)
            .example(
                "UC.SOAK.FLOW(\"0 m2\"; \"5.25 m2\"; \"2e-5 m/s\"; 1; \"m3/h\")", "0.378", "1e-9 rel",
                Origin::mathematics,
                "shared checks, water 8a3, after BRE Digest 365: side area to 50 % depth, 0.378 m3 in 60 min")
            .caution(soakage_caution)
            .takes("base area", "Ab", "Area of the base; 0 where silt is expected to seal it")
            .takes("wall area", "Aw", "Wetted area of the walls; 0 for the base alone")
            .takes("rate", "q", "Soakage rate from the test")
            .takes("safety factor", "F", safety_says, 1.0)
            .gives("Q", "Flow"),
        function("UC.SOAK.DEPTH",
                 [](calc::RainTable rain, Area drained_area, Length length, Length width, Share porosity,
                    Speed rate, Share safety_factor) {
                     return calc::soakage_depth(rain, drained_area, length, width, porosity, rate,
                                                safety_factor);
                 })
            .says("Deepest water in a bed that soaks through base and walls, over all durations of rain")
            .equation("h = a (exp(-b D) - 1); a = A/P - i Ad F/(P q), b = P q/(n A F); largest over D")
            .source(manual)
            .example("UC.SOAK.DEPTH({\"h\";\"mm/h\"|2;30|2.0000001;30}; \"1000 m2\"; \"12 m\"; \"5 m\"; \"40 "
                     "%\"; \"36 mm/h\")",
                     "2.2056023542", "1e-6 rel", Origin::mathematics,
                     "shared checks, water 8b1, after CIRIA C753: one storm of 2 h")
            .caution(soakage_caution)
            .takes("rain", "t, i", "Two columns: duration and mean intensity")
            .takes("drained area", "Ad", "Area that drains to the bed, times its runoff coefficient")
            .takes("length", "L", "Length of the bed")
            .takes("width", "W", "Width of the bed")
            .takes("porosity", "n", "Water held over the bed's volume, such as 60 % for chambers in stone")
            .takes("rate", "q", "Soakage rate from the test; 0 for none")
            .takes("safety factor", "F", safety_says, 1.0)
            .gives("h", "Greatest depth"),
        function("UC.SOAK.TIME", &calc::soakage_time)
            .says("Time until a fraction of the depth is left in a bed that soaks away, without inflow")
            .equation("t = n A F/(q P) ln((h + A/P)/(f h + A/P)); without walls n h (1 - f) F/q")
            .source(manual)
            .example(
                "UC.SOAK.TIME(\"2.2056023542 m\"; \"40 %\"; \"60 m2\"; \"34 m\"; \"36 mm/h\"; 1; 0.5; \"h\")",
                "6.3804059065", "1e-9 rel", Origin::mathematics, "shared checks, water 8b1: half empty")
            .example(
                "UC.SOAK.TIME(\"2.2056023542 m\"; \"40 %\"; \"60 m2\"; \"34 m\"; \"36 mm/h\"; 1; 0; \"h\")",
                "15.8992097162", "1e-9 rel", Origin::mathematics, "shared checks, water 8b1: empty")
            .example("UC.SOAK.TIME(\"2 m\"; \"40 %\"; \"60 m2\"; 0; \"36 mm/h\"; 1; 0.5; \"h\")",
                     "11.1111111111", "1e-10 rel", Origin::mathematics,
                     "plane system n h/(2 q), shared checks, water 8b")
            .caution(soakage_caution)
            .takes("depth", "h", "Depth at the start")
            .takes("porosity", "n", "Water held over the bed's volume")
            .takes("base area", "A", "Area of the base")
            .takes("perimeter", "P", "Perimeter of the soaking walls; 0 for the base alone")
            .takes("rate", "q", "Soakage rate from the test")
            .takes("safety factor", "F", safety_says, 1.0)
            .takes("fraction", "f", "Fraction of the depth that is left; 0 for empty", 0.5)
            .gives("t", "Time"),
        function("UC.SOAK.GREENAMPT", &calc::green_ampt_infiltration)
            .says("Water that has soaked into ponded ground after a time")
            .equation("F - N ln(1 + F/N) = K t, N = psi x moisture deficit")
            .source(
                "Green and Ampt (1911), as in Chow, Maidment and Mays, Applied Hydrology (1988), eq. 4.3.8")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.3402; \"1 h\"; \"cm\")", "3.17",
                     "0.005", Origin::from_memory,
                     "Chow, Maidment and Mays (1988), Example 4.3.1: silt loam, ponded for 1 h")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.34; \"15 min\"; \"cm\")", "1.468861979",
                     "1e-9 rel", Origin::mathematics, "shared checks, water 8d")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.34; \"30 min\"; \"cm\")", "2.143625795",
                     "1e-9 rel", Origin::mathematics, "shared checks, water 8d")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.34; \"2 h\"; \"cm\")", "4.753578369",
                     "1e-9 rel", Origin::mathematics, "shared checks, water 8d")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.34; \"3 h\"; \"cm\")", "6.086213586",
                     "1e-9 rel", Origin::mathematics, "shared checks, water 8d")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"16.7 cm\"; 0.34; \"5 h\"; \"cm\")", "8.409558845",
                     "1e-9 rel", Origin::mathematics, "shared checks, water 8d")
            .example("UC.SOAK.GREENAMPT(\"0.65 cm/h\"; \"19.5 cm\"; 0.34; \"6.190414 h\"; \"cm\")", "10.2",
                     "1e-6", Origin::mathematics,
                     "Rain or Shine (Oklahoma State University), sec. 6.5: 2.5 cm ponded on 17 cm of "
                     "suction, front at 30 cm, F = 10.2 cm; time recomputed")
            .caution("Ponded from the start; one uniform soil. Local codes and a licensed engineer govern")
            .takes("conductivity", "K", "Hydraulic conductivity behind the wetting front")
            .takes("suction", "psi", "Suction at the wetting front")
            .takes("moisture deficit", "dtheta", "Porosity less moisture at the start, 0 to 1")
            .takes("time", "t", "Time since ponding began")
            .gives("F", "Cumulative infiltration"),
    };
}

std::vector<Function> groundwater_entries() {
    return {
        function("UC.PERMEABILITY.FALLING", &calc::falling_head_permeability)
            .says("Permeability from a falling-head test")
            .equation("k = a L/(A t) ln(h1/h2)")
            .source("Das, Principles of Geotechnical Engineering, falling-head test (from memory)")
            .example("UC.PERMEABILITY.FALLING(\"0.06 in2\"; \"8 in\"; \"1.6 in2\"; \"180 s\"; \"20 in\"; "
                     "\"12 in\"; \"in/s\")",
                     "8.52e-4", "1e-6", Origin::from_memory,
                     "Das, Principles of Geotechnical Engineering, falling-head example (2.303 log10 there)")
            .takes("tube area", "a", "Inside area of the tube")
            .takes("sample length", "L", "Length of the sample")
            .takes("sample area", "A", "Area of the sample")
            .takes("time", "t", "Time of the fall")
            .takes("head start", "h1", "Head at the start")
            .takes("head end", "h2", "Head at the end")
            .gives("k", "Permeability"),
        function("UC.PIT.SEEPAGE", &calc::pit_seepage)
            .says("Steady seepage into an open pit in an unconfined aquifer, for dewatering")
            .equation("Q = pi k (H^2 - h^2)/ln(R/r)")
            .source("Dupuit and Thiem, as in UFC 3-220-05, Dewatering and Groundwater Control, ch. 4")
            .example(
                "UC.PIT.SEEPAGE(\"0.01 m/s\"; \"50 m\"; \"49.454806279 m\"; \"500 m\"; \"0.1 m\"; \"m3/s\")",
                "0.2", "1e-9 rel", Origin::mathematics,
                "university geotechnical course exercise (inputs read): level recomputed, shared checks, "
                "water 9a")
            .caution(dewatering_caution)
            .takes("permeability", "k", "Permeability of the aquifer")
            .takes("water depth outside", "H", "Groundwater above the aquifer's base, far from the pit")
            .takes("water depth inside", "h", "Lowered water above the aquifer's base, at the pit")
            .takes("influence radius", "R", "Radius of influence, from the centre of the pit")
            .takes("equivalent radius", "r", "Radius of a circle as large as the pit: sqrt(L W/pi)")
            .gives("Q", "Seepage"),
        function("UC.PIT.RADIUS", &calc::equivalent_radius)
            .says("Radius of the circle as large as a rectangular pit, for UC.PIT.SEEPAGE")
            .equation("r = sqrt(L W/pi)")
            .source("common practice")
            .example("UC.PIT.RADIUS(\"31.4159265358979 m\"; \"4 m\")", "6.32455532033676", "1e-12 rel",
                     Origin::mathematics, "sqrt(40) m")
            .takes("length", "L", "Length of the pit")
            .takes("width", "W", "Width of the pit")
            .gives("r", "Equivalent radius"),
        function("UC.PIT.INFLUENCE", &calc::influence_distance)
            .says("How far from the edge of a pit groundwater is lowered, by Sichardt")
            .equation("R0 = 3000 s sqrt(k), m and m/s; from the centre R = R0 + r")
            .source("Sichardt, as in UFC 3-220-05, Dewatering and Groundwater Control, ch. 4 (from memory)")
            .example("UC.PIT.INFLUENCE(\"36 m/d\"; \"4 m\")", "244.948974", "5e-7", Origin::published,
                     "Punmia et al., Irrigation and Water Power Engineering, Ex. 5.6, textbook-companion "
                     "code: Sichardt")
            .caution(dewatering_caution)
            .takes("permeability", "k", "Permeability of the aquifer")
            .takes("drawdown", "s", "How far the groundwater is lowered at the pit")
            .gives("R0", "Distance of influence"),
        function("UC.PUMP.TIME", &calc::pump_time)
            .says("Time to pump standing water out while more flows in")
            .equation("t = V/(Qp - Qi)")
            .source("common practice")
            .example("UC.PUMP.TIME(\"360 m3\"; \"25 L/s\"; \"10 L/s\"; \"h\")", "6.66666666667", "1e-11 rel",
                     Origin::mathematics, "shared checks, water 9f: 6 h 40 min")
            .caution(dewatering_caution)
            .takes("volume", "V", "Water that stands")
            .takes("pumping", "Qp", "Flow pumped out")
            .takes("inflow", "Qi", "Flow that comes in meanwhile", 0.0)
            .gives("t", "Time"),
    };
}

}  // namespace

Group soakage_functions() {
    Group group{"Soakage and groundwater", soakage_entries()};
    for (Function& entry : groundwater_entries()) group.functions.push_back(std::move(entry));
    return group;
}

}  // namespace undercroft::addin
