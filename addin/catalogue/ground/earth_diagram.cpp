#include "calc/ground/earth_diagram.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* diagram_source =
    "elementary statics, effective weight below the water; Caltrans, Trenching and Shoring Manual, Example "
    "7-2";
constexpr const char* example_source =
    "Caltrans, Trenching and Shoring Manual, Example 7-2, all rows printed";
constexpr const char* shoring_caution =
    "What acts behind a wall that yields as its coefficients assume; braced walls have diagrams of their "
    "own. "
    "Trench collapse kills: a licensed engineer designs the shoring, local codes govern";

/// The diagram with the water below all layers where none is given.
calc::EarthDiagram diagram_of(const calc::WallLayers& layers, Pressure surcharge,
                              const std::optional<Length>& water_depth, UnitWeight water_unit_weight) {
    Length foot = zero;
    for (const auto& [thickness, unit_weight, coefficient] : layers) foot += abs(thickness);
    return calc::earth_diagram(layers, surcharge, water_depth.value_or(foot), water_unit_weight);
}

Entry& takes_earth_diagram_wall(Entry& entry) {
    return entry
        .takes(
            "layers", "t, gamma, K",
            "Three columns from the top down: thickness, unit weight (saturated under water), coefficient of "
            "earth pressure")
        .within({usual::filled_thickness, usual::unit_weight, usual::earth_coefficient})
        .in_order()
        .takes("surcharge", "q", "Pressure on the ground behind the wall", 0.0)
        .within(usual::surcharge)
        .takes("water depth", "D_w", "Groundwater below the top of the wall; left out, none to its foot")
        .within(usual::water_depth)
        .takes("water unit weight", "gamma_w", "Unit weight of the groundwater", u"9.80665 kN/m3")
        .within(usual::water_unit_weight);
}

Function diagram_entry() {
    auto diagram =
        function("UC.EARTH.DIAGRAM", [](calc::WallLayers layers, Pressure surcharge,
                                        std::optional<Length> water_depth, UnitWeight water_unit_weight) {
            return diagram_of(layers, surcharge, water_depth, water_unit_weight);
        });
    diagram
        .says(
            "Pressure of earth and water down a wall of layered ground, at the top and foot of each layer "
            "and at "
            "the water; two rows where it jumps")
        .related({"UC.EARTH.LAYERED", "UC.EARTH.COEFFICIENT", "UC.EARTH.THRUST"})
        .also_called(
            "lateral pressure diagram, active pressure, sheet pile loading, Rankine, hydrostatic pressure")
        .equation("p = K (q + sum t gamma') + gamma_w h_w, gamma' = gamma - gamma_w below the water")
        .source(diagram_source)
        .example("INDEX(UC.EARTH.DIAGRAM({2;18;0.3}; \"10 kPa\"); 3; 4)", "13.8", "1e-9 rel",
                 Origin::mathematics, "0.3 (10 + 36) at the foot")
        .examples(
            "INDEX(UC.EARTH.DIAGRAM({\"ft\";\"lbf/ft3\";\"1\"|4;130;0.249|26;102.4;0.333}; \"0 psf\"; \"10 "
            "ft\"; "
            "\"62.4 lbf/ft3\"; \"ft;psf;psf;psf\"); {}; {})",
            "0.01", Origin::published, example_source,
            {{"3", "2", "129.48"},
             {"4", "2", "173.16"},
             {"5", "2", "377.76"},
             {"6", "2", "644.16"},
             {"6", "3", "1248"}})
        .caution(shoring_caution);
    return takes_earth_diagram_wall(diagram).gives_columns(
        "Pressure down the wall", {{"depth", "z"}, {"earth", "p_e"}, {"water", "p_w"}, {"both", "p"}});
}

Function earth_layered_entry() {
    auto thrust =
        function("UC.EARTH.LAYERED", [](calc::WallLayers layers, Pressure surcharge,
                                        std::optional<Length> water_depth, UnitWeight water_unit_weight) {
            return calc::diagram_thrust(diagram_of(layers, surcharge, water_depth, water_unit_weight));
        });
    thrust.says("Thrust of layered ground and groundwater on a length of wall: the area of UC.EARTH.DIAGRAM")
        .related({"UC.EARTH.DIAGRAM", "UC.EARTH.COEFFICIENT", "UC.EARTH.THRUST", "UC.SIDEFILL.WIDTH"})
        .also_called("lateral thrust, active force, retaining wall load, shoring load, Rankine")
        .equation("P = sum (p_1 + p_2)/2 t")
        .source(diagram_source)
        .example("UC.EARTH.LAYERED({2;18;0.3}; \"10 kPa\")", "16.8", "1e-9 rel", Origin::mathematics,
                 "(3 + 13.8)/2 x 2")
        .example(
            "UC.EARTH.LAYERED({\"ft\";\"lbf/ft3\";\"1\"|4;130;0.249|26;102.4;0.333}; ; \"10 ft\"; \"62.4 "
            "lbf/ft3\"; \"lbf/ft\")",
            "24610.92", "0.3", Origin::published,
            "Caltrans, Trenching and Shoring Manual, Example 7-2: sum of its six forces")
        .caution(shoring_caution);
    return takes_earth_diagram_wall(thrust).gives("P", "Thrust per length of wall");
}

}  // namespace

std::vector<Function> earth_diagram_functions() {
    return {diagram_entry(), earth_layered_entry()};
}

}  // namespace undercroft::addin
