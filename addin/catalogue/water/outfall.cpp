#include "calc/water/outfall.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::PipeInlet> {
    static constexpr std::string_view kind = "an inlet of a pipe";
    static constexpr Choice<calc::PipeInlet> list[] = {
        {"square edge", calc::PipeInlet::square_edge},
        {"groove in headwall", calc::PipeInlet::groove_headwall},
        {"groove projecting", calc::PipeInlet::groove_projecting},
        {"metal in headwall", calc::PipeInlet::metal_headwall},
        {"metal mitred", calc::PipeInlet::metal_mitred},
        {"metal projecting", calc::PipeInlet::metal_projecting},
        {"bevel 45", calc::PipeInlet::bevel_45},
        {"bevel 33.7", calc::PipeInlet::bevel_34},
    };
};

namespace {

constexpr const char* control_source =
    "FHWA HDS-5, 2nd ed. (2001), app. A, Table 9 (inlet control) and ch. III (outlet control); water surface "
    "profile by "
    "Chow, Open-Channel Hydraulics (1959), sec. 10-4";
constexpr const char* control_equation =
    "the larger of inlet control, H_c/D + K F^M + K_s S to F = Q/(A D^0.5) = 3.5 ft^0.5/s, c F^2 + Y + K_s S "
    "from 4, and "
    "outlet control, (1 + k_e) V^2/2g + S_f L + max(d_t, (d_c + D)/2) - S L or the profile of a part-full "
    "pipe";
constexpr const char* control_caution =
    "Take the flood level of what the pipe discharges to as its tailwater. k_e is from memory but for a "
    "square edge. Keep "
    "a screen that cannot trap a person, and room to clean it";
constexpr const char* scanned =
    "FHWA HDS-5 (2001), ch. V, two pipes of 36 in, read from charts: headwater over diameter";
constexpr const char* small_pipe =
    "HDS-5's equations for 0.45 m of square-edged concrete, n 0.012, 20 m at 1 %, computed apart";

Entry& takes_outfall_pipe(Entry& entry) {
    return entry.takes("diameter", "D", "Inside diameter")
        .within(usual::pipe_diameter)
        .takes("length", "L", "Length of the pipe")
        .within(usual::pipe_length)
        .takes("slope", "S", "Slope of the pipe, rise per run; 0 % for a level one")
        .within(usual::pipe_slope.or_zero())
        .takes("roughness", "n", "Manning's n, such as 0.013")
        .within(usual::pipe_roughness)
        .takes("inlet", "inlet",
               "square edge, groove in headwall, groove projecting, metal in headwall, metal mitred, metal "
               "projecting, bevel "
               "45 or bevel 33.7",
               u"square edge");
}
Entry& takes_entrance_loss(Entry& entry) {
    return entry
        .takes("entrance loss", "k_e",
               "Share of the velocity head lost on entering; left out, that of the inlet (0.2 to "
               "0.9)")
        .within(usual::entrance_loss);
}
Entry& takes_end(Entry& entry) {
    entry
        .takes("tailwater", "d_t", "Water above the invert of its outlet; 0 m or less is a free outfall", 0.0)
        .within(usual::tailwater);
    return takes_entrance_loss(entry);
}

Function heads_entry() {
    auto heads = function("UC.OUTFALL.HEADS", [](Flow flow, Length diameter, Length length, Gradient slope,
                                                 Share roughness, calc::PipeInlet inlet, Length tailwater,
                                                 std::optional<Share> entrance_loss) {
        const calc::OutfallHeads both =
            calc::outfall_heads(flow, diameter, length, slope, roughness, inlet, tailwater, entrance_loss);
        return calc::Table<Length, Length, Length>{{both.headwater, both.inlet_control, both.outlet_control}};
    });
    heads
        .says(
            "Water above the invert of its inlet that a flow through an outfall pipe asks for: the larger of "
            "inlet and outlet "
            "control, and both; one row")
        .related({"UC.OUTFALL.FLOW", "UC.OUTFALL.RATING", "UC.LOSS.FRICTION", "UC.LOSS.LOCAL"})
        .also_called("culvert, inlet control, outlet control, headwater depth, HDS-5, barrel")
        .equation(control_equation)
        .source(control_source)
        .caution(control_caution)
        .takes("flow", "Q", "Flow through the pipe; 0 L/s for none")
        .within(usual::bed_pipe_flow);
    return takes_end(takes_outfall_pipe(heads))
        .gives_columns("Headwater",
                       {{"headwater", "HW"}, {"inlet control", "HW_i"}, {"outlet control", "HW_o"}})
        .examples(
            "INDEX(UC.OUTFALL.HEADS(\"{} m3/s\"; \"0.45 m\"; \"20 m\"; 0.01; 0.012; \"square edge\"; \"{} "
            "m\"); 2; {})",
            "0.004", Origin::mathematics, small_pipe,
            {{"0.25", "0", "2", "0.6218"}, {"0.25", "0.6", "3", "0.7191"}, {"0.4", "0", "1", "1.1249"}})
        .examples(
            "INDEX(UC.OUTFALL.HEADS(\"{} ft3/s\"; \"3 ft\"; \"200 ft\"; 0.05; 0.024; \"metal in headwall\"; "
            "\"0 ft\"; 0.5; "
            "\"ft;ft;ft\"); 2; 2)/3",
            "3 %", Origin::published, scanned, {{"51", "1.33"}, {"72", "2.00"}})
        .example("INDEX(UC.OUTFALL.HEADS(250; 0.45; 20; 0.01; 0.012; ; 0.6); 2; 1)", "0.7191", "0.002",
                 Origin::mathematics, small_pipe);
}

Function outfall_flow_entry() {
    auto flow = function("UC.OUTFALL.FLOW", &calc::outfall_flow);
    flow.says(
            "Greatest flow that an outfall pipe takes under a headwater; none where the tailwater stands as "
            "high")
        .related({"UC.OUTFALL.HEADS", "UC.OUTFALL.RATING", "UC.PIPE.FLOW"})
        .also_called("culvert capacity, outlet pipe capacity, headwater, barrel flow, discharge pipe")
        .equation("Q where HW(Q) is the headwater; root by TOMS 748 (Boost.Math)")
        .source(control_source)
        .caution(control_caution)
        .takes("headwater", "HW", "Water above the invert of the inlet; 0 m for none")
        .within(usual::water_above.or_in("ft"));
    return takes_end(takes_outfall_pipe(flow))
        .gives("Q", "Flow")
        .example(
            "UC.OUTFALL.FLOW(\"0.6218 m\"; \"0.45 m\"; \"20 m\"; 0.01; 0.012; \"square edge\"; \"0 m\"; ; "
            "\"m3/s\")",
            "0.25", "0.001", Origin::mathematics, small_pipe)
        .example("UC.OUTFALL.FLOW(\"0.7191 m\"; \"0.45 m\"; 20; 0.01; 0.012; ; 0.6)", "250", "0.6",
                 Origin::mathematics, small_pipe);
}

Function outfall_rating_entry() {
    auto rating = function("UC.OUTFALL.RATING",
                           [](Length depth, Count steps, Length level, Length diameter, Length length,
                              Gradient slope, Share roughness, calc::PipeInlet inlet,
                              std::optional<Length> tailwater_level, std::optional<Share> entrance_loss) {
                               return calc::outfall_rating(depth, steps, level, diameter, length, slope,
                                                           roughness, inlet, tailwater_level, entrance_loss);
                           });
    rating.says("Rating of an outfall pipe at depths of the bed, for UC.OUTLET.RATING or a routing")
        .related({"UC.ROUTE.POOL", "UC.DRAIN.TIME", "UC.RATING.SUM", "UC.OUTLET.RATING", "UC.OUTFALL.FLOW"})
        .also_called("culvert rating curve, stage-discharge of an outlet pipe, headwater-discharge")
        .equation("Q(d) = UC.OUTFALL.FLOW of the headwater d - z")
        .source(control_source)
        .caution(control_caution)
        .takes("depth", "d", "Depth above the base of the bed up to which to rate")
        .within(usual::rated_depth)
        .takes("steps", "N_s", "Number of equal steps")
        .within(usual::outfall_steps)
        .takes("level", "z", "Level of the inlet's invert above the base of the bed; 0 m at the base")
        .within(usual::invert_level);
    takes_outfall_pipe(rating)
        .takes("tailwater level", "z_t",
               "Level of the water outside above the base of the bed; left out, a free outfall")
        .within(usual::tailwater);
    return takes_entrance_loss(rating)
        .gives_columns("Rating", {{"depth", "d"}, {"flow", "Q"}})
        .example(
            "INDEX(UC.OUTFALL.RATING(\"0.6218 m\"; 1; \"0 m\"; \"0.45 m\"; \"20 m\"; 0.01; 0.012; \"square "
            "edge\"; ; ; "
            "\"m;m3/s\"); 4; 2)",
            "0.25", "0.001", Origin::mathematics, small_pipe)
        .example(
            "INDEX(UC.OUTFALL.RATING(1; 2; \"0 m\"; \"0.45 m\"; 20; 0.01; 0.012); 5; 2)-UC.OUTFALL.FLOW(\"1 "
            "m\"; \"0.45 m\"; "
            "20; 0.01; "
            "0.012)",
            "0", "1e-6", Origin::mathematics, "the last row is UC.OUTFALL.FLOW at that depth");
}

}  // namespace

std::vector<Function> outfall_functions() {
    return {heads_entry(), outfall_flow_entry(), outfall_rating_entry()};
}

}  // namespace undercroft::addin
