#include "calc/water/concentration.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

Function kirpich_entry() {
    return function("UC.TIME.KIRPICH", &calc::kirpich_time)
        .says("Time of concentration of a small catchment with a channel")
        .also_called("time of concentration, tc, overland time, channel flow time")
        .related({"UC.TIME.SHEET"})
        .to_try("UC.TIME.KIRPICH(\"400 m\"; \"2 %\"; \"min\")")
        .to_try("UC.TIME.KIRPICH(\"1300 ft\"; \"2 %\"; \"min\")")
        .equation("t_c = 0.0078 L^0.77 S^-0.385, t_c in min, L in ft, S rise per run")
        .source(
            "Kirpich, Civil Engineering 10 (1940), as in Chow, Maidment and Mays, Applied Hydrology (1988), "
            "Table 15.1.2")
        .caution(
            "Fitted to catchments of 1 to 112 acres on farmland with slopes of 3 % to 10 %. Multiplied by "
            "0.4 on "
            "concrete and asphalt, 0.2 in concrete channels (same table, from memory). Local practice "
            "governs")
        .takes("length", "L", "Length of the longest way of the water")
        .within(usual::flow_path)
        .takes("slope", "S", "Mean slope along it, rise per run, such as 0.01 or 1 %")
        .within(usual::ground_slope)
        .gives("t_c", "Time of concentration")
        .example("UC.TIME.KIRPICH(\"1000 ft\"; 0.01)", "9.3776626", "5e-8", Origin::mathematics,
                 "0.0078 x 1000^0.77 x 0.01^-0.385, the formula from memory")
        .example(
            "UC.TIME.KIRPICH(\"304.8 m\"; 0.01)", "9.3913091", "0.2 %", Origin::mathematics,
            "the metric form 0.0195 L^0.77 S^-0.385 of a public hydrology note, which differs by 0.15 %");
}

Function sheet_flow_entry() {
    return function("UC.TIME.SHEET", &calc::sheet_flow_time)
        .says("Travel time of sheet flow over a plane of at most 300 ft")
        .also_called("sheet flow, time of concentration, TR-55 travel time, overland flow")
        .related({"UC.TIME.KIRPICH"})
        .to_try("UC.TIME.SHEET(0.011; \"30 m\"; \"90 mm\"; \"1 %\"; \"min\")")
        .to_try("UC.TIME.SHEET(0.24; \"100 ft\"; \"3.6 in\"; \"1 %\"; \"h\")")
        .equation("t = 0.007 (n L)^0.8/(P^0.5 S^0.4), t in h, L in ft, P in in")
        .source("USDA TR-55 (1986), eq. 3-3")
        .caution("TR-55 limits it to 300 ft; later guides to 100 ft. Local practice governs")
        .takes("roughness", "n", "Manning's n of the surface for sheet flow, such as 0.011 for pavement")
        .within(usual::sheet_roughness)
        .takes("length", "L", "Length of the flow, at most 300 ft")
        .within(usual::sheet_flow_path)
        .takes("rain depth", "P", "2-year 24-hour rain")
        .within(usual::two_year_rain)
        .takes("slope", "S", "Slope of the plane, rise per run")
        .within(usual::ground_slope)
        .gives("t", "Travel time")
        .example("UC.TIME.SHEET(0.24; \"100 ft\"; \"3.6 in\"; 0.01; \"h\")", "0.30", "0.005",
                 Origin::from_memory, "USDA TR-55 (1986), Example 3-1: sheet flow, segment AB")
        .example("UC.TIME.SHEET(0.24; \"100 ft\"; \"3.6 in\"; 0.01; \"h\")", "0.2958801", "5e-8",
                 Origin::mathematics, "USDA TR-55 (1986), Example 3-1, recomputed");
}

}  // namespace

std::vector<Function> concentration_functions() {
    return {kirpich_entry(), sheet_flow_entry()};
}

}  // namespace undercroft::addin
