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
            .example("UC.RAIN.INTENSITY({10;100|60;25}; \"30 min\")", "42.7413865179", "1e-10",
                     Origin::mathematics, "shared checks, water 3c: a power law is interpolated exactly")
            .example("UC.RAIN.INTENSITY({\"min\";\"in/h\"|18;3.177114|22;2.845223}; \"20 min\"; \"in/h\")",
                     "3.00", "0.005", Origin::from_memory,
                     "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 14.2: 10-year 20-minute rain "
                     "of Denver, 96.6/(t^0.97 + 13.90), between 18 and 22 min")
            .example("UC.RAIN.INTENSITY({\"min\";\"in/h\"|18;4.360317|22;3.917909}; \"20 min\"; \"in/h\")",
                     "4.126", "0.005", Origin::mathematics,
                     "shared checks, water 3b: Chicago, 94.9/(t^0.88 + 9.04), coefficients from memory as "
                     "for Denver")
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
            .example("UC.RUNOFF.COEFFICIENT({\"ha\";\"1\"|8.95;0.25|8.6;0.22})", "0.235", "0.0005",
                     Origin::from_memory, "FHWA HEC-22, Example 3-1: composite coefficient")
            .example("UC.RUNOFF.COEFFICIENT({60;0.85|40;0.22})", "0.598", "1e-12 rel", Origin::mathematics,
                     "shared checks, water 1a4")
            .takes("surfaces", "A, C", "Two columns: area and runoff coefficient of each surface")
            .gives("C", "Runoff coefficient"),
        function("UC.RUNOFF.PEAK", &calc::runoff_peak)
            .says("Peak runoff by the rational method")
            .equation("Q = C i A")
            .source(rational_source)
            .example("UC.RUNOFF.PEAK(1; \"1 in/h\"; \"1 acre\"; \"ft3/s\")", "1.008", "0.0005",
                     Origin::published,
                     "course notes after Chow, Maidment and Mays (1988): unit factor of the rational method")
            .example("UC.RUNOFF.PEAK(0.6; \"4.5 in/h\"; \"5 acre\"; \"ft3/s\")", "13.6125", "1e-9",
                     Origin::mathematics, "shared checks, water 1a5: 13.5 times 1.008333")
            .example("UC.RUNOFF.PEAK(0.315; \"50 mm/h\"; \"17.55 ha\"; \"m3/s\")", "0.7678125", "1e-12 rel",
                     Origin::mathematics, "shared checks, water 1a6: C i A/360")
            .caution(local_rain)
            .takes("coefficient", "C", "Runoff coefficient")
            .takes("intensity", "i", "Intensity of rain as long as the time of concentration")
            .takes("area", "A", "Drained area")
            .gives("Q", "Peak flow"),
        function("UC.RUNOFF.DEPTH", &calc::runoff_depth)
            .says("Direct runoff of a storm by the NRCS curve number")
            .equation("Q = (P - Ia)^2/(P - Ia + S) above Ia, else 0; S = 1 in (1000/CN - 10), Ia = lambda S")
            .source("USDA TR-55 (1986), eqs. 2-1 to 2-4")
            .example("UC.RUNOFF.DEPTH(70; \"6.0 in\"; 0.2; \"in\")", "2.81", "0.005", Origin::from_memory,
                     "USDA TR-55 (1986), Example 2-1: pasture in good condition")
            .example(
                "UC.RUNOFF.DEPTH(75; \"6.0 in\"; 0.2; \"in\")", "3.28", "0.005", Origin::published,
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
                       {"70", "15.0", "10.85"}, {"80", "15.0", "12.37"}})
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
            .example("UC.TIME.KIRPICH(\"1000 ft\"; 0.01)", "9.3776626", "5e-8", Origin::mathematics,
                     "shared checks, water 1b1: 0.0078 L^0.77 S^-0.385, formula from memory")
            .example("UC.TIME.KIRPICH(\"304.8 m\"; 0.01)", "9.3913091", "0.2 %", Origin::mathematics,
                     "shared checks, water 1b1: the metric form 0.0195 L^0.77 differs by 0.15 %")
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
            .example("UC.TIME.SHEET(0.24; \"100 ft\"; \"3.6 in\"; 0.01; \"h\")", "0.30", "0.005",
                     Origin::from_memory, "USDA TR-55 (1986), Example 3-1: sheet flow, segment AB")
            .example("UC.TIME.SHEET(0.24; \"100 ft\"; \"3.6 in\"; 0.01; \"h\")", "0.2958801", "5e-8",
                     Origin::mathematics, "shared checks, water 1d: the same, recomputed")
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
            .example("INDEX(UC.HYDROGRAPH.RATIONAL(0.6; \"2 ha\"; \"40 mm/h\"; \"30 min\"; \"10 min\"; \"10 "
                     "min\"); 3; 2)",
                     "133.333333333333", "1e-12 rel", Origin::mathematics,
                     "C i A at the time of concentration")
            .example("INDEX(UC.HYDROGRAPH.RATIONAL(0.6; \"2 ha\"; \"40 mm/h\"; \"5 min\"; \"10 min\"; \"5 "
                     "min\"); 3; 2)",
                     "66.6666666666667", "1e-12 rel", Origin::mathematics,
                     "a storm shorter than the time of concentration: C i A td/tc")
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
                "Q = convolution of the runoff with the unit hydrograph of D = 0.05 tc, Tp = D/2 + 0.6 tc, "
                "whatever "
                "the step; the row nearest to the peak holds it, and all rows together the runoff exactly")
            .source("USDA NEH Part 630, ch. 16 (2007), Table 16-1; Ia = 0.2 S")
            .example(
                "INDEX(UC.HYDROGRAPH.STORM({\"h\";\"in\"|0;0|0.005;1}; \"1 mi2\"; 100; \"1 h\"; \"0.125 h\"; "
                "\"h;ft3/s\"); 7; 2)",
                "772.88", "0.1 %", Origin::mathematics,
                "USDA NEH Part 630, ch. 16: a burst of 1 in on a square mile, qp = 483.05 A Q/Tp by the area "
                "of "
                "Table 16-1, Tp = 0.625 h")
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
