#include "calc/water/pipe_size.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/series_slot.hpp"
#include "calc/water/circular_section.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* chow = "Chow, Open-Channel Hydraulics (1959), secs. 2-2 and 4-1";

Entry& takes_diameter(Entry& entry) {
    return entry.takes("diameter", "D", "Inside diameter").within(usual::pipe_diameter);
}

Function diameter_entry() {
    return function("UC.PIPE.DIAMETER", &calc::pipe_diameter)
        .says("Inside diameter of the pipe that carries a flow when just full, by Manning")
        .related({"UC.PIPE.SIZE", "UC.PIPE.FLOW", "UC.PIPE.SPEED"})
        .also_called("size of a drain, pipe sizing, full-bore diameter, sewer diameter")
        .equation("D = (Q n/(K sqrt(S)))^(3/8), K = pi/4 (1/4)^(2/3) (m, s)")
        .source("FHWA HEC-22, 3rd ed. (2009), ch. 7, which rounds K to 0.312, in feet to 0.46")
        .caution("Take the next size that is made (UC.PIPE.SIZE), and check its velocity and its headwater")
        .takes("flow", "Q", "Flow to carry")
        .within(usual::carried_flow)
        .takes("slope", "S", "Slope of the pipe, rise per run, such as 0.005 or 0.5 %")
        .within(usual::pipe_slope)
        .takes("roughness", "n", "Manning's n, such as 0.013")
        .within(usual::pipe_roughness)
        .gives("D", "Diameter")
        .example("UC.PIPE.DIAMETER(\"0.10 m3/s\"; 0.03; 0.013)", "0.25", "0.005", Origin::published,
                 "FHWA HEC-22, 3rd ed. (2009), Example 7-3, pipe 40-41")
        .example("UC.PIPE.DIAMETER(250; 0.01; 0.013)", "0.428363592", "1e-8 rel", Origin::mathematics,
                 "(0.25 x 0.013/(0.31168547 x 0.1))^0.375")
        .example("UC.PIPE.DIAMETER(\"8.8 ft3/s\"; 0.01; 0.013; \"ft\")", "1.403610320", "1e-4 rel",
                 Origin::mathematics, "with 0.4632 in feet");
}

Function pipe_size_entry() {
    return function("UC.PIPE.SIZE",
                    [](Length wanted, Series<Length> sizes) { return calc::next_size(wanted, sizes.values); })
        .says("The smallest of the sizes that there are that is at least the one wanted")
        .related({"UC.PIPE.DIAMETER", "UC.PICK", "UC.PIPE.FLOW"})
        .also_called("next standard size, nominal diameter, DN, stock sizes, round up to a size")
        .equation("min of the sizes >= D")
        .source("common practice")
        .takes("wanted size", "D", "Inside diameter wanted, such as UC.PIPE.DIAMETER gives")
        .within(usual::pipe_diameter)
        .takes("sizes", "sizes", "Inside diameters that there are, one below the other")
        .within(usual::pipe_diameter)
        .gives("D", "Size")
        .example("UC.PIPE.SIZE(\"0.428 m\"; {\"mm\"|150|225|300|375|450|525}; \"mm\")", "450", "1e-12 rel",
                 Origin::mathematics, "450 mm is the first that is not below 428 mm")
        .example("UC.PIPE.SIZE(0.25; {0.15|0.225|0.3})", "0.3", "1e-12 rel", Origin::mathematics,
                 "0.3 m is the first that is not below 0.25 m");
}

Function pipe_area_entry() {
    auto area = function("UC.PIPE.AREA", &calc::pipe_area);
    area.says("Wetted area of a circular pipe, full or at a depth")
        .related({"UC.PIPE.SPEED", "UC.PIPE.DEPTH", "UC.PIPE.FLOW"})
        .also_called("cross-section of flow, wetted area, part-full pipe, flow area")
        .equation("A = D^2/8 (theta - sin theta), theta = 2 acos(1 - 2 y/D)")
        .source(chow);
    return takes_diameter(area)
        .takes("depth", "y", "Depth of flow; left out, the full pipe; 0 m for none")
        .within(usual::pipe_depth)
        .gives("A", "Area")
        .example("UC.PIPE.AREA(\"0.6 m\"; \"0.3 m\")", "0.1413716694", "1e-9 rel", Origin::mathematics,
                 "half of a circle")
        .example("UC.PIPE.AREA(\"0.6 m\")", "0.2827433388", "1e-9 rel", Origin::mathematics, "pi/4 x 0.6^2");
}

Function speed_entry() {
    auto speed = function("UC.PIPE.SPEED", &calc::pipe_speed);
    speed.says("Mean speed of a flow in a circular pipe, full or at a depth")
        .related({"UC.PIPE.AREA", "UC.PIPE.DEPTH", "UC.PIPE.CRITICAL", "UC.LOSS.LOCAL"})
        .also_called("velocity, self-cleansing velocity, part-full velocity, mean velocity")
        .equation("v = Q/A")
        .source(chow)
        .caution(
            "Below about 0.6 m/s silt stays behind, above about 3 m/s the pipe and its joints wear: local "
            "practice governs")
        .takes("flow", "Q", "Flow; 0 L/s for none")
        .within(usual::bed_pipe_flow);
    return takes_diameter(speed)
        .takes("depth", "y", "Depth of flow; left out, the full pipe")
        .within(usual::wet_depth)
        .gives("v", "Speed")
        .example("UC.PIPE.SPEED(\"0.19 m3/s\"; \"0.61 m\"; ; \"m/s\")", "0.65", "0.005", Origin::published,
                 "FHWA HEC-22, 3rd ed. (2009), Example 7-3, pipe at manhole 43")
        .example("UC.PIPE.SPEED(100; \"0.6 m\"; 0.3; \"m/s\")", "0.7073553026", "1e-9 rel", Origin::mathematics,
                 "0.1 m3/s through half of a circle");
}

Function critical_entry() {
    auto critical = function("UC.PIPE.CRITICAL", [](Flow flow, Length diameter) {
        calc::require_not_negative("flow", flow);
        calc::require_positive("diameter", diameter);
        return calc::critical_depth({diameter}, flow);
    });
    critical
        .says(
            "Depth of critical flow in a circular pipe: where a steep pipe or a free outfall lets the water "
            "fall")
        .related({"UC.PIPE.DEPTH", "UC.PIPE.SPEED", "UC.OUTFALL.HEADS"})
        .also_called("critical depth, Froude number of 1, free outfall, brink depth")
        .equation("Q^2 b/(g A^3) = 1, b the width of the surface; root by TOMS 748 (Boost.Math)")
        .source(chow)
        .takes("flow", "Q", "Flow; 0 L/s for none")
        .within(usual::bed_pipe_flow);
    return takes_diameter(critical)
        .gives("d_c", "Critical depth")
        .examples("UC.PIPE.CRITICAL(\"{} ft3/s\"; \"3 ft\"; \"ft\")", "3e-4 rel", Origin::mathematics,
                  "Q^2 b = g A^3 solved apart, g = 32.2 ft/s2, at the flows of FHWA HDS-5 (2001), ch. V",
                  {{"51", "2.3230"}, {"72", "2.6834"}, {"87", "2.8265"}})
        .example("UC.PIPE.CRITICAL(250; 0.45)", "0.35161", "3e-4 rel", Origin::mathematics,
                 "Q^2 b = g A^3 solved apart, g = 9.81 m/s2");
}

}  // namespace

std::vector<Function> pipe_size_functions() {
    return {diameter_entry(), pipe_size_entry(), pipe_area_entry(), speed_entry(), critical_entry()};
}

}  // namespace undercroft::addin
