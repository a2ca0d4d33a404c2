#include "calc/ground/uplift.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

namespace {

using WeightRows = std::vector<std::tuple<Area, Length, UnitWeight>>;

constexpr const char16_t* water = u"9.80665 kN/m3";
constexpr const char* uplift_source =
    "Convention: full weight of everything that resists, over the water displaced by the submerged volume; "
    "USACE ETL 1110-2-307 (1987), eq. 1, sets the terms otherwise. Required values: USACE EM 1110-2-2100 "
    "(2005), "
    "Table 3-4: 1.3 usual, 1.2 unusual, 1.1 extreme (from memory)";
constexpr const char* volume_says =
    "Volume below the groundwater of all that the weights count, wet cover too";

Entry& takes_weights(Entry& entry, const char* says) {
    return entry.takes("weights", "A, t, gamma", says)
        .within({usual::plan_area, usual::layer_thickness.or_zero().or_in("ft"), usual::unit_weight});
}

}  // namespace

std::vector<Function> uplift_functions() {
    auto factor = function("UC.UPLIFT.FACTOR",
                           [](WeightRows weights, Volume submerged_volume, UnitWeight water_unit_weight) {
                               return calc::uplift_factor(weights, submerged_volume, water_unit_weight);
                           });
    factor.says("Factor of safety of a lined bed against flotation, by full weights over displaced water")
        .also_called("buoyancy, flotation, ballast, hydrostatic uplift, factor of safety")
        .related({"UC.UPLIFT.FILL", "UC.LOAD.FILL"})
        .to_try(
            "UC.UPLIFT.FACTOR({\"600 m2\";\"0.65 m\";\"15.6 kN/m3\"|\"600 m2\";\"0.6 m\";\"19 kN/m3\"}; "
            "\"500 m3\")")
        .to_try(
            "UC.UPLIFT.FACTOR({\"ft2\";\"ft\";\"lbf/ft3\"|6000;2;100|6000;2;120}; \"18000 ft3\"; \"62.4 "
            "lbf/ft3\")")
        .sketch(Sketch::uplift)
        .equation("F = sum A t gamma/(gamma_w V)")
        .source(uplift_source)
        .example("UC.UPLIFT.FACTOR({\"m2\";\"m\";\"kN/m3\"|500;0.4;15.6|500;0.6;19}; \"400 m3\")", "2.248474",
                 "5e-7", Origin::mathematics, "(3120 + 5700)/(9.80665 x 400)")
        .example("UC.UPLIFT.FACTOR({\"m2\";\"m\";\"kN/m3\"|1;1;9.80665}; \"1 m3\")", "1", "1e-12 rel",
                 Origin::mathematics, "weight equal to the water displaced")
        .example(
            "UC.UPLIFT.FACTOR({\"ft2\";\"ft\";\"lbf/ft3\"|340;1;150|384;1;110}; \"980 ft3\"; \"62.4 "
            "lbf/ft3\")",
            "1.52", "0.005", Origin::published,
            "calculation in an engineers' forum, all inputs printed: tank and soil over all that is "
            "displaced")
        .caution(
            "Other conventions give other factors for the same bed: say which is meant. Count no live "
            "load and no water inside. Local codes and a licensed engineer govern");
    takes_weights(factor, "Three columns: plan area, thickness, unit weight")
        .takes("submerged volume", "V", volume_says)
        .within(usual::submerged_volume)
        .takes("water unit weight", "gamma_w", "Unit weight of the groundwater", water)
        .within(usual::water_unit_weight)
        .gives("F", "Factor against flotation");

    auto fill =
        function("UC.UPLIFT.FILL", [](Share factor_wanted, WeightRows weights, Volume submerged_volume,
                                      Area plan_area, UnitWeight unit_weight, UnitWeight water_unit_weight) {
            return calc::uplift_fill(factor_wanted, weights, submerged_volume, plan_area, unit_weight,
                                     water_unit_weight);
        });
    fill.says(
            "Thickness of fill to be added so that a lined bed reaches a factor against flotation; 0 where "
            "nothing is missing")
        .also_called("ballast fill, extra cover, anti-flotation")
        .related({"UC.UPLIFT.FACTOR"})
        .to_try(
            "UC.UPLIFT.FILL(1.3; {\"600 m2\";\"0.65 m\";\"15.6 kN/m3\"}; \"600 m3\"; \"600 m2\"; \"19 "
            "kN/m3\")")
        .to_try(
            "UC.UPLIFT.FILL(1.3; {\"ft2\";\"ft\";\"lbf/ft3\"|6000;2;100}; \"18000 ft3\"; \"6000 ft2\"; \"120 "
            "lbf/ft3\"; \"62.4 lbf/ft3\"; \"ft\")")
        .sketch(Sketch::uplift)
        .equation("t = max(0, F gamma_w V - sum A t gamma)/(A_f gamma_f)")
        .source(uplift_source)
        .example(
            "UC.UPLIFT.FILL(1.2; {\"m2\";\"m\";\"kN/m3\"|10;0.5;18}; \"10 m3\"; \"10 m2\"; \"18 kN/m3\"; "
            "\"10 kN/m3\")",
            "0.166666666667", "1e-9 rel", Origin::mathematics, "(1.2 x 100 - 90)/(10 x 18)")
        .example(
            "UC.UPLIFT.FILL(1.3; {\"ft2\";\"ft\";\"lbf/ft3\"|5000;2;100}; \"16000 ft3\"; \"5000 ft2\"; "
            "\"120 lbf/ft3\"; \"62.4 lbf/ft3\"; \"ft\")",
            "0.496533", "5e-7", Origin::mathematics, "(1.3 x 998400 - 1000000)/(5000 x 120)")
        .caution("The fill must lie above the groundwater. Local codes and a licensed engineer govern")
        .takes("factor", "F", "Factor against flotation to be reached, at least 1")
        .within(usual::uplift_factor);
    takes_weights(fill, "Three columns: plan area, thickness, unit weight of what is there")
        .takes("submerged volume", "V", volume_says)
        .within(usual::submerged_volume)
        .takes("plan area", "A_f", "Plan area of the fill to be added")
        .within(usual::plan_area)
        .takes("unit weight", "gamma_f", "Unit weight of that fill")
        .within(usual::unit_weight)
        .takes("water unit weight", "gamma_w", "Unit weight of the groundwater", water)
        .within(usual::water_unit_weight)
        .gives("t", "Thickness to be added");

    return {factor, fill};
}

}  // namespace undercroft::addin
