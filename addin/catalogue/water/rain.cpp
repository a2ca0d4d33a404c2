#include "calc/water/rain.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/water/concentration.hpp"
#include "calc/water/hydrograph.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* rational_source = "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.1";
constexpr const char* local_rain =
    "Rain of the place and frequency that the local authority asks for; its method governs";

std::vector<Function> runoff_entries() {
    return {
        function("UC.RAIN.INTENSITY",
                 [](calc::RainTable rain, Time duration) { return calc::rain_intensity(rain, duration); })
            .says("Mean intensity of rain of a duration, read from a table of one frequency; never "
                  "extrapolated")
            .equation("log i straight against log t between two rows")
            .source(
                "common practice (intensity-duration-frequency curves are plotted on two logarithmic axes)")
            .caution(local_rain)
            .takes("rain", "t, i", "Two columns: duration and mean intensity")
            .takes("duration", "t", "Duration of the rain")
            .gives("i", "Mean intensity"),
        function(
            "UC.RUNOFF.COEFFICIENT",
            [](std::vector<std::tuple<Area, Share>> surfaces) { return calc::runoff_coefficient(surfaces); })
            .says("Runoff coefficient of several surfaces together, weighted by area")
            .equation("C = sum(C A) / sum(A)")
            .source("common practice; FHWA HEC-22, composite coefficient")
            .takes("surfaces", "A, C", "Two columns: area and runoff coefficient of each surface")
            .gives("C", "Runoff coefficient"),
        function("UC.RUNOFF.PEAK", &calc::runoff_peak)
            .says("Peak runoff by the rational method")
            .equation("Q = C i A")
            .source(rational_source)
            .caution(local_rain)
            .takes("coefficient", "C", "Runoff coefficient")
            .takes("intensity", "i", "Intensity of rain as long as the time of concentration")
            .takes("area", "A", "Drained area")
            .gives("Q", "Peak flow"),
        function("UC.RUNOFF.DEPTH", &calc::runoff_depth)
            .says("Direct runoff of a storm by the NRCS curve number")
            .equation("Q = (P - Ia)^2/(P - Ia + S) above Ia, else 0; S = 1 in (1000/CN - 10), Ia = lambda S")
            .source("USDA TR-55 (1986), eqs. 2-1 to 2-4")
            .caution("Published curve numbers belong to a ratio of 0.2. Local rain and practice govern")
            .takes("curve number", "CN", "Curve number, 1 to 100")
            .takes("rain depth", "P", "Depth of rain of the storm")
            .takes("abstraction ratio", "lambda", "Initial abstraction over potential retention", 0.2)
            .gives("Q", "Depth of runoff"),
    };
}

std::vector<Function> time_entries() {
    return {
        function("UC.TIME.KIRPICH", &calc::kirpich_time)
            .says("Time of concentration of a small catchment with a channel")
            .equation("tc = 0.0078 L^0.77 S^-0.385, tc in min, L in ft, S rise per run")
            .source("Kirpich, Civil Engineering 10 (1940), as in Chow, Maidment and Mays, Applied Hydrology "
                    "(1988), "
                    "Table 15.1.2")
            .caution("Fitted to catchments of 1 to 112 acres on farmland with slopes of 3 % to 10 %. "
                     "Multiplied by 0.4 on concrete and "
                     "asphalt, 0.2 in concrete channels (same table, from memory). Local practice governs")
            .takes("length", "L", "Length of the longest way of the water")
            .takes("slope", "S", "Mean slope along it, rise per run, such as 0.01 or 1 %")
            .gives("tc", "Time of concentration"),
        function("UC.TIME.SHEET", &calc::sheet_flow_time)
            .says("Travel time of sheet flow over a plane of at most 300 ft")
            .equation("t = 0.007 (n L)^0.8/(P^0.5 s^0.4), t in h, L in ft, P in in")
            .source("USDA TR-55 (1986), eq. 3-3")
            .caution("TR-55 limits it to 300 ft; later guides to 100 ft. Local practice governs")
            .takes("roughness", "n", "Manning's n of the surface for sheet flow, such as 0.011 for pavement")
            .takes("length", "L", "Length of the flow, at most 300 ft")
            .takes("rain depth", "P", "2-year 24-hour rain")
            .takes("slope", "s", "Slope of the plane, rise per run")
            .gives("t", "Travel time"),
    };
}

std::vector<Function> hydrograph_entries() {
    const std::vector<std::pair<const char*, const char*>> columns = {{"time", "t"}, {"flow", "Q"}};
    return {
        function("UC.HYDROGRAPH.RATIONAL", &calc::rational_hydrograph)
            .says("Trapezoidal hydrograph of the modified rational method, every step and at its corners")
            .equation(
                "rises to min(td, tc), holds to max(td, tc), over at td + tc; peak C i A min(1, td/tc); "
                "volume C i A td")
            .source("Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.4")
            .caution(local_rain)
            .takes("coefficient", "C", "Runoff coefficient")
            .takes("area", "A", "Drained area")
            .takes("intensity", "i", "Mean intensity of the rain")
            .takes("duration", "td", "Duration of the rain")
            .takes("time of concentration", "tc", "Time of concentration")
            .takes("step", "dt", "Step of the table")
            .gives_columns("Hydrograph", columns),
        function("UC.HYDROGRAPH.STORM",
                 [](std::vector<std::tuple<Time, Length>> storm, Area area, Share curve_number,
                    Time time_of_concentration, Time step) {
                     return calc::storm_hydrograph(storm, area, curve_number, time_of_concentration, step);
                 })
            .says("Hydrograph of a storm by the NRCS curve number and dimensionless unit hydrograph")
            .equation(
                "Q = convolution of the runoff of each step D with the unit hydrograph, Tp = D/2 + 0.6 tc; "
                "its volume is the runoff exactly")
            .source("USDA NEH Part 630, ch. 16 (2007), Table 16-1; Ia = 0.2 S")
            .caution(local_rain)
            .takes("storm", "t, P", "Two columns: time from 0, cumulative rain from 0")
            .takes("area", "A", "Drained area")
            .takes("curve number", "CN", "Curve number, 1 to 100")
            .takes("time of concentration", "tc", "Time of concentration")
            .takes("step", "D", "Step of the table, at most 0.17 tc")
            .gives_columns("Hydrograph", columns),
    };
}

}  // namespace

Group rain_functions() {
    Group group{"Rain and runoff", runoff_entries()};
    for (const auto& more : {time_entries(), hydrograph_entries()})
        group.functions.insert(group.functions.end(), more.begin(), more.end());
    return group;
}

}  // namespace undercroft::addin
