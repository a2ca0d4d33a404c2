#include "calc/ground/clay_bearing.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::DepthFactor> {
    static constexpr std::string_view kind = "whether depth counts";
    static constexpr Choice<calc::DepthFactor> list[] = {
        {"no|none", calc::DepthFactor::none},
        {"yes|Skempton", calc::DepthFactor::skempton},
    };
};

namespace {

constexpr const char* manual =
    "USACE EM 1110-1-1905 (2025), chapter 5, as applied in a public engineering library";
constexpr const char* clay_caution =
    "Ultimate: divide by a factor of safety, and check settlement. Undrained, so for the short term; the "
    "strength "
    "is that of the softest clay within a width below. Local codes and a licensed engineer govern";

Entry& takes_clay(Entry& entry) {
    return entry.takes("strength", "s_u", "Undrained shear strength of the clay")
        .within(usual::undrained_strength)
        .takes("width", "B", "Width of the base; of rows of chambers, the strip of UC.FOOT.STRIP")
        .within(usual::bearing_width)
        .takes("unit weight", "gamma", "Unit weight of the ground beside the base")
        .within(usual::unit_weight_or_submerged);
}
Entry& takes_depth(Entry& entry) {
    return entry
        .takes("depth", "D", "Depth of the base below the lowest ground beside it; 0 at the ground", 0.0)
        .within(usual::foundation_depth)
        .takes("length", "L", "Length of the base; left out, a long strip")
        .within(usual::foundation_length)
        .takes("depth factor", "d", "yes to count the depth: 1 + 0.2 D/B, at most 1.5", u"no");
}

Function undrained_entry() {
    auto bearing = function(
        "UC.BEARING.UNDRAINED", [](Pressure strength, Length width, UnitWeight unit_weight, Length depth,
                                   std::optional<Length> length, calc::DepthFactor depth_factor) {
            return calc::undrained_bearing({width, length, depth, strength, unit_weight}, depth_factor);
        });
    bearing
        .says(
            "Ultimate bearing pressure, gross, of saturated clay by its undrained strength; without a factor "
            "of "
            "safety")
        .related(
            {"UC.BEARING.LAYERED", "UC.BASE.REPLACED", "UC.SETTLEMENT.CONSOLIDATION", "UC.FOOT.SUBGRADE"})
        .also_called("bearing capacity of clay, undrained shear strength, cu, Su, total stress, phi of 0")
        .equation("q_u = (2 + pi)(1 + 0.2 B/L) d s_u + gamma D; d = 1, or 1 + 0.2 D/B to 1.5")
        .source(manual)
        .example("UC.BEARING.UNDRAINED(\"40 kPa\"; \"1 m\"; \"18 kN/m3\")", "205.6637", "5e-5",
                 Origin::mathematics, "a strip at the ground: (2 + pi) x 40")
        .example(
            "UC.BEARING.UNDRAINED(\"0.85 ksf\"; \"7 ft\"; \"113 lbf/ft3\"; \"2 ft\"; \"7 ft\"; \"yes\"; "
            "\"ksf\")",
            "5.78", "0.03", Origin::published, "USACE EM 1110-1-1905 (2025), Example B-4, whose N_c is 5.14")
        .example(
            "UC.BEARING.UNDRAINED(\"0.85 ksf\"; \"7 ft\"; \"113 lbf/ft3\"; \"2 ft\"; \"7 ft\"; ; \"ksf\")",
            "5.47", "0.03", Origin::published, "the same without a depth factor")
        .caution(clay_caution);
    takes_clay(bearing);
    return takes_depth(bearing).gives("q_u", "Ultimate bearing pressure");
}

Function layered_entry() {
    auto bearing = function(
        "UC.BEARING.LAYERED", [](Pressure strength, Length width, UnitWeight unit_weight, Length layer,
                                 Length depth, std::optional<Length> length, calc::DepthFactor depth_factor) {
            return calc::layered_bearing({width, length, depth, strength, unit_weight}, layer, depth_factor);
        });
    bearing
        .says(
            "Ultimate bearing pressure, gross, of a base on a layer of stone or sand over clay, through "
            "which the "
            "load spreads 2V:1H; without a factor of safety")
        .related({"UC.BEARING.UNDRAINED", "UC.BASE.REPLACED", "UC.FOOT.SUBGRADE"})
        .also_called(
            "two-layer bearing capacity, punching, crust over soft clay, projected area, load spread")
        .equation(
            "q_u = (N_c s_c d s_u + gamma D)(B + H)(L + H)/(B L), of a strip (B + H)/B; N_c, s_c, d as "
            "UC.BEARING.UNDRAINED")
        .source("USACE EM 1110-1-1905 (2025), eq. 5-17, as applied in a public engineering library")
        .example("UC.BEARING.LAYERED(\"25 kPa\"; \"1 m\"; \"18 kN/m3\"; \"0.5 m\")", "192.8097", "5e-5",
                 Origin::mathematics, "(2 + pi) x 25 on a strip spread from 1 m to 1.5 m")
        .example(
            "UC.BEARING.LAYERED(\"0.5 ksf\"; \"7 ft\"; \"135 lbf/ft3\"; \"6 ft\"; \"2 ft\"; \"7 ft\"; "
            "\"yes\"; \"ksf\")",
            "12.21", "0.05", Origin::published, "USACE EM 1110-1-1905 (2025), Example B-3")
        .caution(clay_caution);
    takes_clay(bearing)
        .takes("layer", "H", "Thickness of the stone or sand under the base")
        .within(usual::spread_layer);
    return takes_depth(bearing).gives("q_u", "Ultimate bearing pressure");
}

Function replaced_entry() {
    return function(
               "UC.BASE.REPLACED",
               [](Pressure pressure, Length width, Pressure strength, Share safety, UnitWeight added_weight,
                  std::optional<Length> length) {
                   return calc::replacement_depth({pressure, width, length, strength, safety, added_weight});
               })
        .says(
            "Depth of soft clay under base stone to be dug out and replaced by stone; 0 where the clay bears "
            "the "
            "load, refused where no depth to 20 m does")
        .related({"UC.BEARING.UNDRAINED", "UC.BEARING.LAYERED", "UC.BASE.THICKNESS"})
        .also_called("soft spot, undercut, dig out and replace, soil replacement, over-excavation")
        .equation(
            "least d with q B L/((B + d)(L + d)) + dg d <= (2 + pi)(1 + 0.2 (B + d)/(L + d)) s_u/F; of a "
            "strip "
            "q B/(B + d) and no 0.2")
        .source(
            "spread 2V:1H of USACE EM 1110-1-1905 (2025), eq. 5-17; undrained bearing as "
            "UC.BEARING.UNDRAINED")
        .example("UC.BASE.REPLACED(\"150 kPa\"; \"1 m\"; \"40 kPa\")", "1.188038", "5e-7",
                 Origin::mathematics, "150 x 3/(40 (2 + pi)) - 1")
        .example("UC.BASE.REPLACED(\"1500 psf\"; \"4 ft\"; \"800 psf\"; ; ; ; \"ft\")", "0.376076", "5e-6",
                 Origin::mathematics, "4 (1500 x 3/(800 (2 + pi)) - 1)")
        .caution(
            "The clay below must not get softer with depth. Strength counts, settlement does not: check it "
            "apart. "
            "Local codes and a licensed engineer govern")
        .takes("pressure", "q", "Pressure on the top of the replacement")
        .within(usual::contact_pressure)
        .takes("width", "B", "Width on which it acts: the strip of UC.FOOT.STRIP")
        .within(usual::bearing_width)
        .takes("strength", "s_u", "Undrained shear strength of the clay below")
        .within(usual::undrained_strength)
        .takes("safety", "F", "Factor of safety on the strength", 3.0)
        .within(usual::bearing_safety)
        .takes("added weight", "dg",
               "Unit weight of the stone less that of the clay; 0 where it is no heavier", 0.0)
        .within(usual::added_weight)
        .takes("length", "L", "Length on which the pressure acts; left out, a long strip")
        .within(usual::foundation_length)
        .gives("d", "Depth of replacement");
}

}  // namespace

std::vector<Function> clay_bearing_functions() {
    return {undrained_entry(), layered_entry(), replaced_entry()};
}

}  // namespace undercroft::addin
