#include "calc/ground/lift_plan.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* plan_source =
    "Newmark, University of Illinois Circular 24 (1935), superposed; elementary statics";
constexpr const char* plant_caution =
    "The factor for vibration is a guess until the plant's centrifugal force is known: count (weight + "
    "force)/"
    "weight. Uniform elastic ground is assumed. Local codes and a licensed engineer govern";

Entry& takes_plant(Entry& entry) {
    return entry
        .takes(
            "plant", "P, L, W, x, y",
            "Five columns: load of a track, drum or wheel, its length along x, width along y, place x and y")
        .within({usual::plant_load, usual::patch_side, usual::patch_side, usual::plant_place,
                 usual::plant_place});
}
Entry& takes_vibration(Entry& entry) {
    return entry.takes("vibration", "I", "Factor on the plant's load for vibration; 1 at rest", 2.0)
        .within(usual::vibration);
}

Function plan_entry() {
    auto plan = function("UC.LIFTS.PLAN", [](calc::LiftLayers layers, calc::Patches plant, Share vibration) {
        return calc::lift_plan(layers, plant, vibration);
    });
    plan.says(
            "Fill over chambers lift by lift: the cover at the top of each, and what fill and plant standing "
            "on "
            "it press onto the crowns")
        .related({"UC.LOAD.PLANT", "UC.PLANT.COVER", "UC.LIFTS", "UC.LAYERS.LIFTS"})
        .also_called(
            "compaction in layers, placing backfill, lift thickness, construction loads, cover at each stage")
        .equation(
            "lifts of a layer t/ceil(t/t_l); p_f = sum t gamma; p_p = I sigma(H), sigma as UC.LOAD.PLANT")
        .source(plan_source)
        .example("INDEX(UC.LIFTS.PLAN({0.3;18;0.15}; {\"kN\";\"m\";\"m\";\"m\";\"m\"|50;1;1;0;0}; 1); 2; 7)",
                 "51.794077", "5e-6", Origin::mathematics,
                 "first lift: 18 x 0.15 kPa and 50 kPa on 1 m x 1 m at 0.15 m, 49.0941 kPa")
        .example(
            "INDEX(UC.LIFTS.PLAN({\"m\";\"kN/m3\";\"m\"|0.3;18;0.15|0.2;20;0.2}; "
            "{\"kN\";\"m\";\"m\";\"m\";\"m\"|50;1;1;0;0}); 4; 6)",
            "70.088593", "5e-6", Origin::mathematics,
            "third lift, 0.5 m of cover, vibrating: twice 50 x 4 x 0.175222")
        .caution(plant_caution);
    plan.takes("layers", "t, gamma, t_l",
               "Three columns from the crown up: thickness, unit weight, greatest lift as compacted")
        .within({usual::filled_thickness, usual::unit_weight, usual::lift})
        .in_order();
    takes_plant(plan);
    return takes_vibration(plan).gives_columns("Lifts from the crown up", {{"lift", "N"},
                                                                           {"layer", "row"},
                                                                           {"thickness", "t"},
                                                                           {"cover", "H"},
                                                                           {"fill", "p_f"},
                                                                           {"plant", "p_p"},
                                                                           {"total", "p"}});
}

Function cover_entry() {
    auto cover = function("UC.PLANT.COVER", [](calc::Patches plant, UnitWeight unit_weight,
                                               Pressure allowable, Share vibration) {
        return calc::plant_cover(plant, vibration, unit_weight, allowable);
    });
    cover
        .says(
            "Least cover from which on plant may stand over chambers, its pressure and that of the fill "
            "counted; "
            "refused where none to 10 m does")
        .related({"UC.LOAD.PLANT", "UC.LIFTS.PLAN", "UC.COVER.DEPTH", "UC.BEARING.CBR"})
        .also_called(
            "construction traffic, minimum cover for plant, roller over chambers, haul road, equipment loads")
        .equation("least H with I sigma(H) + gamma H <= p_a, sigma as UC.LOAD.PLANT")
        .source(plan_source)
        .example("UC.PLANT.COVER({\"kN\";\"m\";\"m\";\"m\";\"m\"|50;1;1;0;0}; \"18 kN/m3\"; \"60 kPa\")",
                 "0.786417", "5e-6", Origin::mathematics,
                 "where twice the corner influences of 50 kPa on 1 m x 1 m and 18 H come to 60 kPa")
        .example(
            "UC.PLANT.COVER({\"kN\";\"m\";\"m\";\"m\";\"m\"|50;1;1;0;0}; \"18 kN/m3\"; \"44.044297 kPa\"; "
            "1; \"mm\")",
            "500", "1e-3", Origin::mathematics, "50 x 4 x 0.175222 and 9 kPa at 0.5 m")
        .caution(plant_caution);
    takes_plant(cover);
    cover.takes("fill unit weight", "gamma", "Unit weight of the fill")
        .within(usual::unit_weight)
        .takes("allowable", "p_a", "Pressure that the chambers can take at their crowns")
        .within(usual::crown_pressure);
    return takes_vibration(cover).gives("H", "Least cover");
}

}  // namespace

std::vector<Function> lift_plan_functions() {
    return {plan_entry(), cover_entry()};
}

}  // namespace undercroft::addin
