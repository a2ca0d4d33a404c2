#include "calc/water/flow_time.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::FlowSurface> {
    static constexpr std::string_view kind = "a surface";
    static constexpr Choice<calc::FlowSurface> list[] = {
        {"forest", calc::FlowSurface::forest},
        {"fallow", calc::FlowSurface::fallow},
        {"short grass", calc::FlowSurface::short_grass},
        {"cultivated", calc::FlowSurface::cultivated},
        {"bare", calc::FlowSurface::bare},
        {"grassed waterway", calc::FlowSurface::grassed_waterway},
        {"unpaved", calc::FlowSurface::unpaved},
        {"paved", calc::FlowSurface::paved},
    };
};

namespace {

Function shallow_entry() {
    constexpr const char* example_3_2 =
        "FHWA HEC-22, 3rd ed. (2009), Example 3-2: 79 m of grassed waterway at 0.6 %";
    return function("UC.TIME.SHALLOW", &calc::shallow_flow_time)
        .says("Travel time of water that has gathered and runs shallow over the ground")
        .related({"UC.TIME.SHEET", "UC.TIME.CHANNEL", "UC.RUNOFF.PEAK", "UC.TOTAL"})
        .also_called("shallow concentrated flow, gutter flow, swale flow, upland method, travel time")
        .equation(
            "t = L/v, v = k sqrt(S); k 0.76, 1.52, 2.13, 2.74, 3.05, 4.57 m/s, unpaved 16.1345, paved "
            "20.3282 ft/s")
        .source(
            "unpaved and paved: USDA TR-55 (1986), app. F; the others: FHWA HEC-22, 3rd ed. (2009), Table "
            "3-3")
        .takes("surface", "surface",
               "forest, fallow, short grass, cultivated, bare, grassed waterway, unpaved or paved")
        .takes("length", "L", "Length of the way")
        .within(usual::shallow_path)
        .takes("slope", "S", "Slope of the ground, rise per run")
        .within(usual::ground_slope)
        .gives("t", "Travel time")
        .example("UC.TIME.SHALLOW(\"grassed waterway\"; \"79 m\"; \"0.6 %\")", "3.7", "0.05",
                 Origin::published, example_3_2)
        .example("UC.TIME.SHALLOW(\"paved\"; \"100 m\"; 0.01)", "2.689892", "1e-6 rel", Origin::mathematics,
                 "100 m at 20.3282 ft/s x 0.1");
}

Function channel_entry() {
    return function("UC.TIME.CHANNEL", &calc::channel_flow_time)
        .says("Travel time in an open channel, by Manning")
        .related({"UC.TIME.SHEET", "UC.TIME.SHALLOW", "UC.PIPE.SPEED", "UC.TOTAL"})
        .also_called("open channel flow time, ditch, swale, reach travel time, Manning")
        .equation("t = L/v, v = R^(2/3) S^(1/2)/n (m, s), R = A/P")
        .source("Manning, as in USDA TR-55 (1986), eq. 3-4, whose 1.49 for 1.486 makes it 0.3 % faster")
        .takes("length", "L", "Length of the channel")
        .within(usual::flow_path)
        .takes("flow area", "A", "Cross-section of the flow")
        .within(usual::flow_area)
        .takes("wetted perimeter", "P", "Perimeter that the flow wets")
        .within(usual::wetted_perimeter)
        .takes("slope", "S", "Slope of the channel, rise per run")
        .within(usual::channel_slope)
        .takes("roughness", "n", "Manning's n, such as 0.03")
        .within(usual::channel_roughness)
        .gives("t", "Travel time")
        .example("UC.TIME.CHANNEL(\"500 m\"; \"1.2 m2\"; \"3.4 m\"; 0.005; 0.03)", "7.0792425", "1e-7 rel",
                 Origin::mathematics, "R = 0.35294 m, 1.17715 m/s")
        .example("UC.TIME.CHANNEL(\"7300 ft\"; \"27 ft2\"; \"28.2 ft\"; 0.005; 0.05; \"h\")", "0.99", "0.005",
                 Origin::from_memory, "USDA TR-55 (1986), Example 3-1, segment CD");
}

}  // namespace

std::vector<Function> flow_time_functions() {
    return {shallow_entry(), channel_entry()};
}

}  // namespace undercroft::addin
