#include "calc/water/pipe.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* manning_source = "Chow, Open-Channel Hydraulics (1959), secs. 5-6 and 6-3";
constexpr const char* full_pipe = "0.3116855 D^(8/3) S^0.5/n in m and s, recomputed";

Entry& takes_pipe(Entry& entry) {
    return entry.takes("diameter", "D", "Inside diameter")
        .within(usual::pipe_diameter)
        .takes("slope", "S", "Slope of the pipe, rise per run, such as 0.005 or 0.5 %")
        .within(usual::pipe_slope)
        .takes("roughness", "n", "Manning's n, such as 0.013; the same at every depth")
        .within(usual::pipe_roughness);
}

Function pipe_flow_entry() {
    auto flow = function("UC.PIPE.FLOW", &calc::pipe_flow);
    flow.says("Uniform flow in a circular pipe, full or part full, by Manning")
        .also_called("Manning, gravity pipe, capacity, part-full flow, sewer, drain")
        .related({"UC.PIPE.DEPTH"})
        .to_try("UC.PIPE.FLOW(\"300 mm\"; \"0.5 %\"; 0.013)")
        .to_try("UC.PIPE.FLOW(\"12 in\"; \"0.5 %\"; 0.013; \"6 in\"; \"cfs\")")
        .refuses("UC.PIPE.FLOW(\"300 mm\"; 200; 0.013)")
        .refuses("UC.PIPE.FLOW(\"300 mm\"; \"0.5 %\"; 13)")
        .sketch(Sketch::pipe)
        .equation(
            "Q = A R^(2/3) S^(1/2)/n (m, s); theta = 2 acos(1 - 2 y/D), A = D^2/8 (theta - sin theta), "
            "R = A/(theta D/2)")
        .source(manning_source);
    return takes_pipe(flow)
        .takes("depth", "y", "Depth of flow; left out, the full pipe")
        .within(usual::pipe_depth)
        .gives("Q", "Flow")
        .examples("UC.PIPE.FLOW(\"{} in\"; 0.01; 0.013; ; \"ft3/s\")", "0.05 %", Origin::mathematics,
                  "0.463 D^(8/3) S^0.5/n in ft and s, recomputed with the coefficient that handbooks print",
                  {{"12", "3.561538"},
                   {"15", "6.457499"},
                   {"18", "10.50061"},
                   {"24", "22.61436"},
                   {"30", "41.00256"},
                   {"36", "66.67469"}})
        .example("UC.PIPE.FLOW(\"0.30 m\"; 0.010; 0.013; \"0.30 m\"; \"m3/s\")", "0.09670075853", "5e-12",
                 Origin::mathematics, full_pipe)
        .example("UC.PIPE.FLOW(\"0.45 m\"; 0.005; 0.013; \"0.45 m\"; \"m3/s\")", "0.2016004855", "5e-11",
                 Origin::mathematics, full_pipe)
        .example("UC.PIPE.FLOW(\"0.60 m\"; 0.002; 0.013; \"0.60 m\"; \"m3/s\")", "0.27459431", "5e-9",
                 Origin::mathematics, full_pipe)
        .examples(
            "UC.QUOTIENT(UC.PIPE.FLOW(\"1 m\"; 0.01; 0.013; \"{} m\"); UC.PIPE.FLOW(\"1 m\"; 0.01; "
            "0.013); \"1\")",
            "1e-8 rel", Origin::mathematics,
            "(A/Af)(R/Rf)^(2/3) of a part-full circle, as handbooks tabulate it by y/D",
            {{"0.1", "0.0208778175"},
             {"0.2", "0.0875713153"},
             {"0.3", "0.195831188"},
             {"0.4", "0.336987766"},
             {"0.5", "0.5"},
             {"0.6", "0.671840202"},
             {"0.7", "0.837237659"},
             {"0.8", "0.977466883"},
             {"0.9", "1.06579734"},
             {"1", "1"}})
        .example(
            "UC.QUOTIENT(UC.PIPE.FLOW(\"1 m\"; 0.01; 0.013; \"0.938181216 m\"); UC.PIPE.FLOW(\"1 "
            "m\"; 0.01; 0.013); \"1\")",
            "1.075706129", "1e-9", Origin::mathematics,
            "the greatest flow of a pipe, recomputed; handbooks print 1.076 at y/D = 0.938");
}

Function pipe_depth_entry() {
    auto depth = function("UC.PIPE.DEPTH", &calc::pipe_depth);
    depth.says("Depth of uniform flow in a circular pipe: the lower one where two depths carry the flow")
        .also_called("normal depth, Manning, depth of flow, part-full")
        .related({"UC.PIPE.FLOW"})
        .to_try("UC.PIPE.DEPTH(\"40 L/s\"; \"300 mm\"; \"0.5 %\"; 0.013; \"mm\")")
        .to_try("UC.PIPE.DEPTH(\"1.4 cfs\"; \"12 in\"; \"0.5 %\"; 0.013; \"in\")")
        .refuses("UC.PIPE.DEPTH(\"400 L/s\"; \"300 mm\"; \"0.5 %\"; 0.013)")
        .sketch(Sketch::pipe)
        .equation("y where Q(y) = Q, y <= 0.938 D; root by TOMS 748 (Boost.Math)")
        .source(manning_source)
        .takes("flow", "Q", "Flow, at most 1.076 times that of the full pipe; 0 L/s for none")
        .within(usual::pipe_flow);
    return takes_pipe(depth)
        .gives("y", "Depth of flow")
        .example(
            "UC.PIPE.DEPTH(UC.QUANTITY(UC.PIPE.FLOW(\"1 m\"; 0.01; 0.013); \"L/s\"); \"1 m\"; 0.01; 0.013)",
            "0.8196294486", "5e-10", Origin::mathematics,
            "the lower depth that carries the flow of the full pipe")
        .example(
            "UC.PIPE.DEPTH(UC.QUANTITY(UC.PIPE.FLOW(\"0.5 m\"; 0.01; 0.013; \"0.15 m\"); \"L/s\"); \"0.5 "
            "m\"; 0.01; 0.013)",
            "0.15", "1e-9 rel", Origin::mathematics, "there and back");
}

}  // namespace

std::vector<Function> pipe_functions() {
    return {pipe_flow_entry(), pipe_depth_entry()};
}

}  // namespace undercroft::addin
