#include "calc/water/pipe_losses.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::ChamberKind> {
    static constexpr std::string_view kind = "a kind of chamber";
    static constexpr Choice<calc::ChamberKind> list[] = {
        {"manhole", calc::ChamberKind::manhole},
        {"inlet", calc::ChamberKind::inlet},
    };
};

namespace {

constexpr const char* manual = "FHWA HEC-22, 3rd ed. (2009), ch. 7";
constexpr const char* example_7_3 = "FHWA HEC-22, 3rd ed. (2009), Example 7-3, pipe at manhole 43";

Entry& takes_full_pipe(Entry& entry) {
    return entry.takes("flow", "Q", "Flow; 0 L/s for none")
        .within(usual::bed_pipe_flow)
        .takes("diameter", "D", "Inside diameter")
        .within(usual::pipe_diameter);
}
Entry& takes_pipe_losses_wall(Entry& entry) {
    return takes_full_pipe(entry)
        .takes("length", "L", "Length of the pipe")
        .within(usual::pipe_length)
        .takes("roughness", "n", "Manning's n, such as 0.013")
        .within(usual::pipe_roughness);
}
Entry& takes_turn(Entry& entry) {
    return entry.takes("turn", "theta", "Angle by which the pipe turns; 0 deg for straight through")
        .within(usual::pipe_turn);
}

Function friction_entry() {
    auto friction = function("UC.LOSS.FRICTION", &calc::pipe_friction);
    friction.says("Head lost by friction in a pipe that runs full, by Manning")
        .related({"UC.LOSS.LOCAL", "UC.LOSS.HEADER", "UC.PIPE.SPEED", "UC.OUTFALL.HEADS"})
        .also_called("friction loss, head loss, hydraulic gradient, friction slope, energy loss")
        .equation("h = L (Q n/(K D^(8/3)))^2, K = 0.3117 (m, s)")
        .source("FHWA HEC-22, 3rd ed. (2009), ch. 7, which rounds K to 0.312 and the exponent to 2.67");
    return takes_pipe_losses_wall(friction)
        .gives("h", "Head lost")
        .example("UC.LOSS.FRICTION(\"0.19 m3/s\"; \"0.61 m\"; \"17 m\"; 0.013)", "0.015", "0.0005",
                 Origin::published, example_7_3)
        .example("UC.LOSS.FRICTION(190; 0.61; 17; 0.013; \"mm\")", "14.904495", "1e-6 rel",
                 Origin::mathematics, "17 (0.19 x 0.013/(0.31168547 x 0.61^(8/3)))^2");
}

Function header_entry() {
    auto header = function("UC.LOSS.HEADER", &calc::header_friction);
    header
        .says(
            "Head lost by friction in a full header that gives its flow off, or gathers it, evenly along its "
            "length")
        .related({"UC.LOSS.FRICTION", "UC.LOSS.LOCAL", "UC.BED.PORTS"})
        .also_called(
            "manifold loss, distribution header, collector, Christiansen factor, lateral flow along a pipe")
        .equation("h = 1/3 L (Q n/(K D^(8/3)))^2: the integral of (1 - x/L)^2")
        .source("common practice")
        .caution("Losses where the rows branch off come on top (UC.LOSS.LOCAL)");
    return takes_pipe_losses_wall(header)
        .gives("h", "Head lost")
        .example("UC.LOSS.HEADER(\"0.19 m3/s\"; \"0.61 m\"; \"17 m\"; 0.013; \"mm\")", "4.968165", "1e-6 rel",
                 Origin::mathematics, "a third of the friction of the whole flow")
        .example("UC.LOSS.HEADER(190; 0.61; 17; 0.013)/UC.LOSS.FRICTION(190; 0.61; 17; 0.013)", "0.333333333",
                 "1e-8 rel", Origin::mathematics, "the integral of (1 - x)^2");
}

Function local_entry() {
    auto local = function("UC.LOSS.LOCAL", &calc::minor_loss);
    local.says("Head lost at an inlet, a bend, a chamber or an outlet that runs full")
        .related({"UC.LOSS.BEND", "UC.LOSS.CHAMBER", "UC.LOSS.FRICTION", "UC.PIPE.SPEED"})
        .also_called("minor loss, entrance loss, exit loss, fitting loss, K factor, form loss")
        .equation("h = K v^2/2g")
        .source(manual)
        .caution("K is the sum of all on the way: 1.0 at an outlet, 0.5 at a square-edged entrance")
        .takes("coefficient", "K", "Loss coefficient, or the sum of several; 0 % for none")
        .within(usual::loss_coefficient);
    return takes_full_pipe(local)
        .gives("h", "Head lost")
        .example("UC.LOSS.LOCAL(1; \"0.19 m3/s\"; \"0.61 m\")", "0.022", "0.0005", Origin::published,
                 example_7_3)
        .example("UC.LOSS.LOCAL(1; 190; 0.61; \"mm\")", "21.5505", "1e-5 rel", Origin::mathematics,
                 "v^2/2g of 0.65014 m/s");
}

Function bend_entry() {
    auto bend = function("UC.LOSS.BEND", &calc::bend_loss);
    bend.says("Loss coefficient of a bend in a pipe")
        .related({"UC.LOSS.LOCAL", "UC.LOSS.CHAMBER"})
        .also_called("elbow, bend loss coefficient, K of a bend, fitting")
        .equation("K = 0.0033 theta, theta in degrees")
        .source(manual);
    return takes_turn(bend)
        .gives("K", "Loss coefficient")
        .example("UC.LOSS.BEND(\"45 deg\")", "0.1485", "1e-9 rel", Origin::mathematics,
                 "0.0033 x 45, the coefficient read in FHWA HEC-22, 3rd ed. (2009), ch. 7")
        .example("UC.LOSS.BEND(90)", "0.297", "1e-9 rel", Origin::mathematics, "0.0033 x 90");
}

Function chamber_entry() {
    auto chamber = function("UC.LOSS.CHAMBER", &calc::chamber_loss);
    chamber.says("Loss coefficient of a manhole or an inlet through which a pipe turns")
        .related({"UC.LOSS.LOCAL", "UC.LOSS.BEND"})
        .also_called(
            "manhole loss, junction loss, access chamber, catch basin, inspection chamber, K of a manhole")
        .equation(
            "manhole 0.15, 0.45, 0.75, 0.85, 1.00 for turns of 0, 22.5, 45, 60, 90 deg; inlet 0.50 to 1.50 "
            "for 0 to 90 deg; "
            "straight between")
        .source("FHWA HEC-22, 3rd ed. (2009), ch. 7, approximate method")
        .caution(
            "A first estimate: drops, benching and water that plunges in take the detailed method of the "
            "same chapter")
        .takes("kind", "kind", "manhole (the pipe goes through) or inlet (water falls in from above too)");
    return takes_turn(chamber)
        .gives("K", "Loss coefficient")
        .examples("UC.LOSS.CHAMBER(\"{}\"; \"{} deg\")", "1e-9", Origin::published,
                  "FHWA HEC-22, 3rd ed. (2009), ch. 7, approximate method",
                  {{"manhole", "22.5", "0.45"},
                   {"manhole", "45", "0.75"},
                   {"manhole", "60", "0.85"},
                   {"manhole", "90", "1.00"},
                   {"inlet", "90", "1.50"}})
        .example("UC.LOSS.CHAMBER(\"manhole\"; 30)", "0.55", "1e-9", Origin::mathematics,
                 "a third of the way from 22.5 to 45");
}

}  // namespace

std::vector<Function> pipe_loss_functions() {
    return {friction_entry(), header_entry(), local_entry(), bend_entry(), chamber_entry()};
}

}  // namespace undercroft::addin
