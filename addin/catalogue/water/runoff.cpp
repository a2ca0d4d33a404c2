#include "calc/water/runoff.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"

namespace undercroft::addin {

namespace {

Function runoff_coefficient_entry() {
    return function("UC.RUNOFF.COEFFICIENT",
                    [](std::vector<std::tuple<Area, Share>> surfaces) {
                        return calc::runoff_coefficient(surfaces);
                    })
        .says("Runoff coefficient of several surfaces together, weighted by area")
        .also_called("weighted C, composite runoff coefficient, area-weighted, impervious")
        .related({"UC.RUNOFF.PEAK"})
        .to_try("UC.RUNOFF.COEFFICIENT({\"m2\";\"1\"|4000;0.9|2000;0.3})")
        .to_try("UC.RUNOFF.COEFFICIENT({\"acre\";\"1\"|1.2;0.9|0.5;0.25})")
        .refuses("UC.RUNOFF.COEFFICIENT({\"m2\";\"1\"|4000;90|2000;30})")
        .equation("C = sum(C A) / sum(A)")
        .source("common practice; FHWA HEC-22, composite coefficient")
        .takes("surfaces", "A, C", "Two columns: area and runoff coefficient of each surface")
        .within({usual::surface_area, usual::surface_coefficient})
        .gives("C", "Runoff coefficient")
        .example("UC.RUNOFF.COEFFICIENT({\"ha\";\"1\"|8.95;0.25|8.6;0.22})", "0.235", "0.0005",
                 Origin::from_memory, "FHWA HEC-22, Example 3-1: composite coefficient")
        .example("UC.RUNOFF.COEFFICIENT({60;0.85|40;0.22})", "0.598", "1e-12 rel", Origin::mathematics,
                 "0.6 x 0.85 + 0.4 x 0.22");
}

Function runoff_peak_entry() {
    return function("UC.RUNOFF.PEAK", &calc::runoff_peak)
        .says("Peak runoff by the rational method")
        .also_called("rational method, Q = CiA, peak flow, design flow")
        .related({"UC.RAIN.INTENSITY", "UC.RUNOFF.COEFFICIENT", "UC.HYDROGRAPH.RATIONAL"})
        .to_try("UC.RUNOFF.PEAK(0.85; \"50 mm/h\"; \"1.2 ha\"; \"L/s\")")
        .to_try("UC.RUNOFF.PEAK(0.85; \"2 in/h\"; \"3 acre\"; \"cfs\")")
        .refuses("UC.RUNOFF.PEAK(0.85; 50; 1.2)")
        .equation("Q = C i A")
        .source("Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.1")
        .caution(local_rain)
        .takes("coefficient", "C", "Runoff coefficient")
        .within(usual::runoff_coefficient)
        .takes("intensity", "i", "Intensity of rain as long as the time of concentration")
        .within(usual::rain_intensity)
        .takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .gives("Q", "Peak flow")
        .example("UC.RUNOFF.PEAK(1; \"1 in/h\"; \"1 acre\"; \"ft3/s\")", "1.008", "0.0005", Origin::published,
                 "course notes after Chow, Maidment and Mays (1988): unit factor of the rational method")
        .example("UC.RUNOFF.PEAK(0.6; \"4.5 in/h\"; \"5 acre\"; \"ft3/s\")", "13.6125", "1e-9",
                 Origin::mathematics, "13.5 times 43560/43200")
        .example("UC.RUNOFF.PEAK(0.315; \"50 mm/h\"; \"17.55 ha\"; \"m3/s\")", "0.7678125", "1e-12 rel",
                 Origin::mathematics, "C i A/360 in mm/h and ha");
}

Function runoff_depth_entry() {
    return function("UC.RUNOFF.DEPTH", &calc::runoff_depth)
        .says("Direct runoff of a storm by the NRCS curve number")
        .also_called("curve number, SCS, NRCS, CN method, TR-55, excess rain, initial abstraction")
        .related({"UC.HYDROGRAPH.STORM"})
        .to_try("UC.RUNOFF.DEPTH(80; \"100 mm\"; ; \"mm\")")
        .to_try("UC.RUNOFF.DEPTH(80; \"4 in\"; ; \"in\")")
        .refuses("UC.RUNOFF.DEPTH(80; 4; ; \"in\")")
        .equation("Q = (P - I_a)^2/(P - I_a + S) above I_a, else 0; S = 1 in (1000/CN - 10), I_a = lambda S")
        .source("USDA TR-55 (1986), eqs. 2-1 to 2-4")
        .caution("Published curve numbers belong to a ratio of 0.2. Local rain and practice govern")
        .takes("curve number", "CN", "Curve number, 1 to 100")
        .within(usual::curve_number)
        .takes("rain depth", "P", "Depth of rain of the storm")
        .within(usual::storm_depth)
        .takes("abstraction ratio", "lambda", "Initial abstraction over potential retention", 0.2)
        .within(usual::abstraction_ratio)
        .gives("Q", "Depth of runoff")
        .example("UC.RUNOFF.DEPTH(70; \"6.0 in\"; 0.2; \"in\")", "2.81", "0.005", Origin::from_memory,
                 "USDA TR-55 (1986), Example 2-1: pasture in good condition")
        .example("UC.RUNOFF.DEPTH(75; \"6.0 in\"; 0.2; \"in\")", "3.28", "0.005", Origin::published,
                 "USDA TR-55 (1986), Example 4-1, quoted in a public specification note; also Example 2-2")
        .examples("UC.RUNOFF.DEPTH({}; \"{} in\"; 0.2; \"in\")", "0.0051", Origin::published,
                  "USDA TR-55 (1986), Table 2-1: rain",
                  {{"70", "1.0", "0.00"},   {"80", "1.0", "0.08"},  {"70", "1.2", "0.03"},
                   {"80", "1.2", "0.15"},   {"70", "1.4", "0.06"},  {"80", "1.4", "0.24"},
                   {"70", "1.6", "0.11"},   {"80", "1.6", "0.34"},  {"70", "1.8", "0.17"},
                   {"80", "1.8", "0.44"},   {"70", "2.0", "0.24"},  {"80", "2.0", "0.56"},
                   {"70", "2.5", "0.46"},   {"80", "2.5", "0.89"},  {"70", "3.0", "0.71"},
                   {"80", "3.0", "1.25"},   {"70", "3.5", "1.01"},  {"80", "3.5", "1.64"},
                   {"70", "4.0", "1.33"},   {"80", "4.0", "2.04"},  {"70", "4.5", "1.67"},
                   {"80", "4.5", "2.46"},   {"70", "5.0", "2.04"},  {"80", "5.0", "2.89"},
                   {"70", "6.0", "2.81"},   {"80", "6.0", "3.78"},  {"70", "7.0", "3.62"},
                   {"80", "7.0", "4.69"},   {"70", "8.0", "4.46"},  {"80", "8.0", "5.63"},
                   {"70", "9.0", "5.33"},   {"80", "9.0", "6.57"},  {"70", "10.0", "6.22"},
                   {"80", "10.0", "7.52"},  {"70", "11.0", "7.13"}, {"80", "11.0", "8.48"},
                   {"70", "12.0", "8.05"},  {"80", "12.0", "9.45"}, {"70", "13.0", "8.98"},
                   {"80", "13.0", "10.42"}, {"70", "14.0", "9.91"}, {"80", "14.0", "11.39"},
                   {"70", "15.0", "10.85"}, {"80", "15.0", "12.37"}});
}

}  // namespace

std::vector<Function> runoff_functions() {
    return {runoff_coefficient_entry(), runoff_peak_entry(), runoff_depth_entry()};
}

}  // namespace undercroft::addin
