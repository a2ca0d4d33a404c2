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
            .takes("length", "L", "Length of the pit")
            .takes("width", "W", "Width of the pit")
            .gives("r", "Equivalent radius"),
        function("UC.PIT.INFLUENCE", &calc::influence_distance)
            .says("How far from the edge of a pit groundwater is lowered, by Sichardt")
            .equation("R0 = 3000 s sqrt(k), m and m/s; from the centre R = R0 + r")
            .source("Sichardt, as in UFC 3-220-05, Dewatering and Groundwater Control, ch. 4 (from memory)")
            .caution(dewatering_caution)
            .takes("permeability", "k", "Permeability of the aquifer")
            .takes("drawdown", "s", "How far the groundwater is lowered at the pit")
            .gives("R0", "Distance of influence"),
        function("UC.PUMP.TIME", &calc::pump_time)
            .says("Time to pump standing water out while more flows in")
            .equation("t = V/(Qp - Qi)")
            .source("common practice")
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
