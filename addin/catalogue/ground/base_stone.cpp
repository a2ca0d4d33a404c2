#include "calc/ground/base_stone.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* pitch =
    "equilibrium of one pitch of rows; spread 2V:1H (common practice), as UC.FOOT.PRESSURE";
constexpr const char* feet_caution =
    "Elastic peaks under a foot are 5 to 20 % higher. Rows on level ground, no weak layer below. Local codes "
    "and a licensed engineer govern";

/// Rows of chambers on their base stone.
Entry& takes_feet(Entry& entry) {
    return entry.takes("crown pressure", "q", "Pressure at crown level from fill and live load")
        .within(usual::crown_pressure)
        .takes("span", "B_f", "Width of a chamber over its feet")
        .within(usual::chamber_span)
        .takes("row gap", "g", "Clear gap between the feet of neighbouring rows")
        .within(usual::margin.or_zero().or_in("ft"))
        .takes("foot width", "b_f", "Width of one foot, at most half of the span")
        .within(usual::foot_width)
        .takes("stone height", "h", "Height of the stone beside the chambers, from their feet to the crown")
        .within(usual::stone_beside)
        .takes("stone unit weight", "gamma", "Unit weight of the stone as laid")
        .within(usual::stone_unit_weight);
}

Function needed_entry() {
    auto needed =
        function("UC.BASE.NEEDED", [](Pressure crown_pressure, Length span, Length row_gap, Length foot_width,
                                      Length stone_height, UnitWeight unit_weight, Pressure allowable) {
            return calc::base_stone_needed(
                {crown_pressure, span, row_gap, foot_width, stone_height, unit_weight}, allowable);
        });
    needed
        .says(
            "Least base stone under rows of chambers, spreads of neighbouring feet and the weight of the "
            "stone "
            "counted; refused where no thickness does")
        .related({"UC.FOOT.PRESSURE", "UC.FOOT.SUBGRADE", "UC.FOOT.STRIP", "UC.BEARING.PRESUMPTIVE",
                  "UC.BASE.THICKNESS"})
        .also_called("foundation stone depth, bedding thickness, base course, load spread under feet")
        .equation(
            "least b with q max(1, (B_f + w_c)/(2 b_f + b + w_c)) + gamma (h + b) <= p_a, w_c = min(b, g)")
        .source(pitch)
        .example(
            "UC.BASE.NEEDED(\"40 kPa\"; \"1.2 m\"; \"0.2 m\"; \"0.15 m\"; \"0.8 m\"; \"15 kN/m3\"; "
            "\"86.5 kPa\")",
            "0.3", "1e-9 rel", Origin::mathematics, "40 x 1.4/0.8 + 15 x 1.1 = 86.5")
        .example(
            "UC.BASE.NEEDED(\"53.331216 kPa\"; \"1310 mm\"; \"150 mm\"; \"150 mm\"; \"750 mm\"; "
            "\"15.789 kN/m3\"; \"107.2 kPa\"; \"mm\")",
            "428.9674", "5e-3", Origin::mathematics,
            "where the pressure, computed in steps of 0.001 mm, falls to 107.2 kPa")
        .example(
            "UC.BASE.NEEDED(\"400 psf\"; \"52 in\"; \"6 in\"; \"6 in\"; \"30 in\"; \"100 lbf/ft3\"; "
            "\"1184.259259 psf\"; \"in\")",
            "9", "1e-6 rel", Origin::mathematics, "400 (52 + 6)/(12 + 9 + 6) + 100 x 39/12")
        .caution(feet_caution);
    return takes_feet(needed)
        .takes("allowable", "p_a", "Pressure that the subgrade can bear")
        .within(usual::allowable_bearing)
        .gives("b", "Thickness of base stone");
}

Function subgrade_entry() {
    auto subgrade = function(
        "UC.FOOT.SUBGRADE", [](Pressure crown_pressure, Length span, Length row_gap, Length foot_width,
                               Length stone_height, UnitWeight unit_weight, Length base_stone) {
            return calc::subgrade_pressure(
                {crown_pressure, span, row_gap, foot_width, stone_height, unit_weight}, base_stone);
        });
    subgrade
        .says(
            "Pressure on the subgrade under rows of chambers: that of their feet through the base stone, "
            "and the weight of the stone")
        .related({"UC.FOOT.PRESSURE", "UC.BASE.NEEDED", "UC.BEARING.CAPACITY", "UC.BEARING.UNDRAINED",
                  "UC.ATMOST"})
        .also_called("bearing pressure on the formation, contact pressure, load spread, stress on subgrade")
        .equation("p = q max(1, (B_f + w_c)/(2 b_f + b + w_c)) + gamma (h + b), w_c = min(b, g)")
        .source(pitch)
        .example(
            "UC.FOOT.SUBGRADE(\"40 kPa\"; \"1.2 m\"; \"0.2 m\"; \"0.15 m\"; \"0.8 m\"; \"15 kN/m3\"; "
            "\"0.3 m\")",
            "86.5", "1e-12 rel", Origin::mathematics, "40 x 1.4/0.8 + 15 x 1.1")
        .example(
            "UC.FOOT.SUBGRADE(\"400 psf\"; \"52 in\"; \"6 in\"; \"6 in\"; \"30 in\"; \"100 lbf/ft3\"; "
            "\"9 in\"; \"psf\")",
            "1184.259259", "5e-7", Origin::mathematics, "400 (52 + 6)/(12 + 9 + 6) + 100 x 39/12")
        .caution(feet_caution);
    return takes_feet(subgrade)
        .takes("base stone", "b", "Thickness of the stone under the feet")
        .within(usual::base_stone)
        .gives("p", "Pressure on the subgrade");
}

Function strip_entry() {
    return function("UC.FOOT.STRIP", &calc::bearing_strip)
        .says(
            "Width of the strip that bears on the ground under base stone: one foot's, or of two once their "
            "spreads have met")
        .related({"UC.FOOT.PRESSURE", "UC.FOOT.SUBGRADE", "UC.BEARING.CAPACITY", "UC.SETTLEMENT.ELASTIC"})
        .also_called("strip footing width, effective width, load spread, bearing width")
        .equation("B = b_f + b for b < g, else 2 b_f + g + b")
        .source(pitch)
        .example("UC.FOOT.STRIP(\"0.15 m\"; \"0.1 m\"; \"0.15 m\")", "0.25", "1e-12 rel", Origin::mathematics,
                 "one foot and half of the base stone on each side")
        .example("UC.FOOT.STRIP(\"150 mm\"; \"230 mm\"; \"150 mm\"; \"mm\")", "680", "1e-12 rel",
                 Origin::mathematics, "two feet, the gap and the spread: 300 + 150 + 230")
        .caution(engineer_governs)
        .takes("foot width", "b_f", "Width of one foot")
        .within(usual::foot_width)
        .takes("base stone", "b", "Thickness of the stone under the feet")
        .within(usual::base_stone)
        .takes("row gap", "g", "Clear gap between the feet of neighbouring rows")
        .within(usual::margin.or_zero().or_in("ft"))
        .gives("B", "Width of the strip");
}

}  // namespace

std::vector<Function> base_stone_functions() {
    return {needed_entry(), subgrade_entry(), strip_entry()};
}

}  // namespace undercroft::addin
