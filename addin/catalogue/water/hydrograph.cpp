#include "calc/water/hydrograph.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"

namespace undercroft::addin {

namespace {

const std::vector<std::pair<const char*, const char*>>& columns() {
    static const std::vector<std::pair<const char*, const char*>> both = {{"time", "t"}, {"flow", "Q"}};
    return both;
}

Function rational_entry() {
    return function("UC.HYDROGRAPH.RATIONAL", &calc::rational_hydrograph)
        .says("Trapezoidal hydrograph of the modified rational method, every step and at its corners")
        .also_called("trapezoidal hydrograph, inflow hydrograph, design storm hydrograph")
        .related({"UC.RUNOFF.PEAK", "UC.ROUTE.POOL"})
        .to_try("UC.HYDROGRAPH.RATIONAL(0.85; \"1.2 ha\"; \"50 mm/h\"; \"30 min\"; \"10 min\"; \"5 min\")")
        .to_try(
            "UC.HYDROGRAPH.RATIONAL(0.85; \"3 acre\"; \"2 in/h\"; \"30 min\"; \"10 min\"; \"5 min\"; "
            "\"min;cfs\")")
        .equation(
            "rises to min(t_d, t_c), holds to max(t_d, t_c), over at t_d + t_c; peak C i A min(1, t_d/t_c); "
            "volume C i A t_d")
        .source("Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.4")
        .caution(local_rain)
        .takes("coefficient", "C", "Runoff coefficient")
        .within(usual::runoff_coefficient)
        .takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("intensity", "i", "Mean intensity of the rain")
        .within(usual::rain_intensity)
        .takes("duration", "t_d", "Duration of the rain")
        .within(usual::rain_duration)
        .takes("time of concentration", "t_c", "Time of concentration")
        .within(usual::concentration_time)
        .takes("step", "dt", "Step of the table")
        .within(usual::time_step)
        .gives_columns("Hydrograph", columns())
        .example(
            "INDEX(UC.HYDROGRAPH.RATIONAL(0.6; \"2 ha\"; \"40 mm/h\"; \"30 min\"; \"10 min\"; \"10 "
            "min\"); 3; 2)",
            "133.333333333333", "1e-12 rel", Origin::mathematics, "C i A at the time of concentration")
        .example(
            "INDEX(UC.HYDROGRAPH.RATIONAL(0.6; \"2 ha\"; \"40 mm/h\"; \"5 min\"; \"10 min\"; \"5 "
            "min\"); 3; 2)",
            "66.6666666666667", "1e-12 rel", Origin::mathematics,
            "a storm shorter than the time of concentration: C i A t_d/t_c");
}

Function hydrograph_storm_entry() {
    return function("UC.HYDROGRAPH.STORM",
                    [](std::vector<std::tuple<Time, Length>> storm, Area area, Share curve_number,
                       Time time_of_concentration, Time step) {
                        return calc::storm_hydrograph(storm, area, curve_number, time_of_concentration, step);
                    })
        .says("Hydrograph of a storm by the NRCS curve number and dimensionless unit hydrograph")
        .also_called("unit hydrograph, SCS hydrograph, hyetograph, storm runoff")
        .related({"UC.RUNOFF.DEPTH", "UC.ROUTE.POOL"})
        .equation(
            "Q = convolution of the runoff with the unit hydrograph of D = 0.05 t_c, T_p = D/2 + 0.6 t_c, "
            "whatever "
            "the step; the row nearest to the peak holds it, and all rows together the runoff exactly")
        .source("USDA NEH Part 630, ch. 16 (2007), Table 16-1; I_a = 0.2 S")
        .caution(local_rain)
        .takes("storm", "t, P", "Two columns: time from 0, cumulative rain from 0")
        .within({usual::elapsed_time, usual::cumulative_rain})
        .takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("curve number", "CN", "Curve number, 1 to 100")
        .within(usual::curve_number)
        .takes("time of concentration", "t_c", "Time of concentration")
        .within(usual::concentration_time)
        .takes("step", "D", "Step of the table, at most 0.17 t_c")
        .within(usual::time_step)
        .gives_columns("Hydrograph", columns())
        .example(
            "INDEX(UC.HYDROGRAPH.STORM({\"h\";\"in\"|0;0|0.005;1}; \"1 mi2\"; 100; \"1 h\"; \"0.125 h\"; "
            "\"h;ft3/s\"); 7; 2)",
            "772.88", "0.1 %", Origin::mathematics,
            "USDA NEH Part 630, ch. 16: a burst of 1 in on a square mile, qp = 483.05 A Q/T_p by the area of "
            "Table "
            "16-1, T_p = 0.625 h");
}

}  // namespace

std::vector<Function> hydrograph_functions() {
    return {rational_entry(), hydrograph_storm_entry()};
}

}  // namespace undercroft::addin
