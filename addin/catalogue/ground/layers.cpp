#include "calc/ground/layers.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/ground/layer_part.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

namespace {

using calc::LayerPart;
using calc::SiteLayers;
using HighestPart = std::optional<LayerPart>;

constexpr const char* list_caution =
    "The list goes from the base of the bed up, and is refused where it does not; a row of no thickness is "
    "passed "
    "over. The chambers count as a layer of the stone around them. Local codes and a licensed engineer "
    "govern";

Entry& takes_layers(Entry& entry) {
    return entry
        .takes("layers", "part, t, gamma, t_l",
               "Four columns from the base up: part, thickness, unit weight, greatest lift where it is laid "
               "in lifts")
        .within({any_number("a word"), usual::layer_thickness.or_zero(), usual::unit_weight, usual::lift})
        .takes("lowest", "", "Lowest part that counts")
        .takes("highest", "", "Highest part that counts; left out, the lowest alone");
}

Function layers_depth_entry() {
    auto depth = function("UC.LAYERS.DEPTH", [](SiteLayers layers, LayerPart lowest, HighestPart highest) {
        return calc::layers_depth(layers, lowest, highest.value_or(lowest));
    });
    depth
        .says("Depth of some layers of a list together, such as all over the chambers; 0 where there is none")
        .also_called("cover, height of fill, pavement thickness")
        .related({"UC.LAYERS.STACK", "UC.COVER.DEPTH"})
        .equation("H = sum t")
        .source("elementary geometry")
        .example(
            "UC.LAYERS.DEPTH({\"base stone\";0.3;16|\"chambers\";0.7;16|\"cover stone\";0.15;16|\"initial "
            "backfill\";0.3;19|\"pavement\";0.25;22}; \"cover stone\"; \"pavement\")",
            "0.7", "1e-9 rel", Origin::mathematics, "0.15 + 0.3 + 0.25 m")
        .example(
            "UC.LAYERS.DEPTH({\"cover stone\";\"6 in\";\"100 lbf/ft3\"|\"general backfill\";\"2 ft\";\"120 "
            "lbf/ft3\"|\"general backfill\";\"1 ft\";\"110 lbf/ft3\"}; \"general backfill\"; ; \"ft\")",
            "3", "1e-9 rel", Origin::mathematics, "2 + 1 ft")
        .caution(list_caution);
    return takes_layers(depth).gives("H", "Depth together");
}

Function stack_entry() {
    auto stack = function("UC.LAYERS.STACK", [](SiteLayers layers, LayerPart lowest, HighestPart highest) {
        return calc::layer_stack(layers, lowest, highest.value_or(lowest));
    });
    stack.says("Thickness and unit weight of some layers of a list, for UC.LOAD.FILL and the uplift of a bed")
        .also_called("build-up, overburden, make-up of the fill, layers over the crown")
        .related({"UC.LAYERS.DEPTH", "UC.LOAD.FILL", "UC.UPLIFT.WEIGHT"})
        .to_try(
            "UC.LAYERS.STACK({\"cover\";\"150 mm\";\"16 kN/m3\"|\"pavement\";\"250 mm\";\"22 kN/m3\"}; "
            "\"cover\"; \"pavement\")")
        .to_try(
            "UC.LAYERS.STACK({\"cover\";\"6 in\";\"100 lbf/ft3\"|\"pavement\";\"10 in\";\"140 lbf/ft3\"}; "
            "\"cover\"; \"pavement\")")
        .refuses(
            "UC.LAYERS.STACK({\"pavement\";\"250 mm\";\"22 kN/m3\"|\"cover\";\"150 mm\";\"16 kN/m3\"}; "
            "\"cover\"; \"pavement\")")
        .equation("rows of the parts asked for; from the base on, the bed is one")
        .source("elementary geometry")
        .example(
            "UC.LOAD.FILL(UC.LAYERS.STACK({\"base stone\";0.3;16|\"cover stone\";0.15;16|\"initial "
            "backfill\";0.3;19|\"pavement\";0.25;22}; \"cover stone\"; \"pavement\"))",
            "13.6", "1e-9 rel", Origin::mathematics, "2.4 + 5.7 + 5.5 kPa")
        .caution(list_caution);
    return takes_layers(stack).gives_columns("Layers from the bottom up",
                                             {{"thickness", "t"}, {"unit weight", "gamma"}});
}

Function laid_entry() {
    auto laid = function("UC.LAYERS.LAID", [](SiteLayers layers, LayerPart lowest, HighestPart highest) {
        return calc::laid_layers(layers, lowest, highest.value_or(lowest));
    });
    laid.says("The same with the greatest lift of each, for UC.LIFTS.PLAN; refused where one has none")
        .also_called("build-up, courses, thickness of a course, layer by name")
        .related({"UC.LIFTS.PLAN", "UC.LAYERS.LIFTS"})
        .equation("rows of the parts asked for")
        .source("elementary geometry")
        .example(
            "INDEX(UC.LAYERS.LAID({\"cover stone\";0.15;16;0.2|\"initial backfill\";0.3;19;0.15}; \"cover "
            "stone\"; \"initial backfill\"); 3; 3)",
            "0.15", "1e-9 rel", Origin::mathematics, "the second layer's greatest lift")
        .caution(list_caution);
    return takes_layers(laid).gives_columns(
        "Layers from the bottom up",
        {{"thickness", "t"}, {"unit weight", "gamma"}, {"greatest lift", "t_l"}});
}

Function lifts_entry() {
    auto lifts = function("UC.LAYERS.LIFTS", [](SiteLayers layers, LayerPart lowest, HighestPart highest) {
        return calc::layer_lifts(layers, lowest, highest.value_or(lowest));
    });
    lifts.says("In how many lifts some layers of a list are laid, each layer for itself")
        .also_called("lift schedule, compacted lifts, courses, layer thickness")
        .related({"UC.LIFTS", "UC.LAYERS.LAID"})
        .equation("N = sum ceil(t/t_l)")
        .source("common practice")
        .example(
            "UC.LAYERS.LIFTS({\"cover stone\";0.15;16;0.2|\"initial backfill\";0.3;19;0.15|\"general "
            "backfill\";0.7;19;0.15}; \"initial backfill\"; \"general backfill\")",
            "7", "exact", Origin::mathematics, "2 of 0.15 m and 5 of 0.14 m")
        .caution(list_caution);
    return takes_layers(lifts).gives("N", "Lifts");
}

Function laid_lifts_entry() {
    auto plan =
        function("UC.LIFTS.LAID", [](SiteLayers layers) { return calc::laid_lifts(layers); })
            .says(
                "Every lift of a list of layers from the base of the bed to the finished surface: its "
                "thickness, the height of its top, the cover and the fill over the crowns by then")
            .also_called("lift schedule, placing plan, courses from formation to surface, build-up by lift")
            .related({"UC.LIFTS.PLAN", "UC.LAYERS.LIFTS", "UC.LOAD.PLANT"})
            .equation(
                "lifts of a layer t/ceil(t/t_l), one where it has no t_l; H, p_f = sum t gamma over "
                "the crowns")
            .source("common practice; elementary geometry and statics")
            .example(
                "INDEX(UC.LIFTS.LAID({\"base stone\";0.3;16;0.15|\"chambers\";0.7;16;0.2|\"cover "
                "stone\";0.15;16;0.2|\"initial backfill\";0.3;19;0.15}); 9; 4)",
                "1.3", "1e-9 rel", Origin::mathematics,
                "the eighth lift, under the unit row: 0.3 + 0.7 + 0.15 + 0.15 m")
            .example(
                "INDEX(UC.LIFTS.LAID({\"chambers\";\"30 in\";\"100 lbf/ft3\";\"\"|\"cover "
                "stone\";\"6 in\";\"100 lbf/ft3\";\"\"|\"initial backfill\";\"1 ft\";\"120 "
                "lbf/ft3\";\"6 in\"}; \"1;1;ft;ft;ft;psf\"); 4; 6)",
                "110", "1e-9 rel", Origin::mathematics, "50 + 60 psf on the third lift")
            .caution(list_caution);
    plan.takes("layers", "part, t, gamma, t_l",
               "Four columns from the base up: part, thickness, unit weight, greatest lift; one lift where "
               "that is blank")
        .within({any_number("a word"), usual::layer_thickness.or_zero(), usual::unit_weight, usual::lift});
    return plan.gives_columns("Lifts from the base up", {{"lift", "N"},
                                                         {"layer", "row"},
                                                         {"thickness", "t"},
                                                         {"height", "h"},
                                                         {"cover", "H"},
                                                         {"fill", "p_f"}});
}

}  // namespace

std::vector<Function> layer_functions() {
    return {layers_depth_entry(), stack_entry(), laid_entry(), lifts_entry(), laid_lifts_entry()};
}

}  // namespace undercroft::addin
