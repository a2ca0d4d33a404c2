#include "calc/ground/bed_uplift.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::HeldSoil> {
    static constexpr std::string_view kind = "the soil that is counted";
    static constexpr Choice<calc::HeldSoil> list[] = {
        {"prism", calc::HeldSoil::prism},
        {"wedges|prism and wedges", calc::HeldSoil::wedges},
    };
};

namespace {

using BedLayers = std::vector<std::tuple<Length, UnitWeight>>;

constexpr const char16_t* water = u"9.80665 kN/m3";
constexpr const char* bed_source =
    "USACE EM 1110-2-2100 (2005), eq. 3-2, weights as in air over the water displaced by the same soil; "
    "required: "
    "Table 3-4, 1.3 usual, 1.2 unusual, 1.1 extreme (from memory)";
constexpr const char* bed_caution =
    "The chambers are empty, the water is at its highest. Say which convention and which soil is counted: "
    "wedges need walls that stay rough and fill that is compacted. No live load. Local codes and a licensed "
    "engineer govern";

calc::BuriedBed bed(Length length, Length width, Batter batter, const BedLayers& layers, Length water_height,
                    Volume chambers, UnitWeight water_unit_weight) {
    return {length, width, batter, layers, chambers, water_height, water_unit_weight};
}

/// A bed and what lies on it.
Entry& takes_lined_bed(Entry& entry) {
    return entry.takes("base length", "L", "Length of the bed at its base")
        .within(usual::plan_length.or_in("ft"))
        .takes("base width", "W", "Width of the bed at its base")
        .within(usual::plan_width.or_in("ft"))
        .takes("batter", "z", "Slope of the pit's walls; 0H:1V for vertical walls")
        .within(usual::batter)
        .takes("layers", "t, gamma",
               "Two columns from the base up: thickness, unit weight; the first is the bed as of stone alone")
        .within({usual::layer_thickness.or_zero().or_in("ft"), usual::unit_weight_or_submerged})
        .in_order();
}
Entry& takes_uplift_soil(Entry& entry) {
    return entry.takes("soil", "soil",
                       "prism over the base alone, or wedges: with the soil on the battered walls", u"prism");
}
Entry& takes_water_height(Entry& entry) {
    return entry.takes("water height", "h_w", "Highest groundwater above the base of the bed")
        .within(usual::water_on_bed);
}
Entry& takes_chambers(Entry& entry) {
    return entry.takes("chambers", "C", "Volume inside the chambers, within the first layer", 0.0)
        .within(usual::empty_volume);
}
Entry& takes_water_weight(Entry& entry) {
    return entry.takes("water unit weight", "gamma_w", "Unit weight of the groundwater", water)
        .within(usual::water_unit_weight);
}

Function uplift_bed_entry() {
    auto factor = function(
        "UC.UPLIFT.BED", [](Length length, Length width, Batter batter, BedLayers layers, Length water_height,
                            Volume chambers, calc::HeldSoil soil, UnitWeight water_unit_weight) {
            return calc::bed_uplift_factor(
                bed(length, width, batter, layers, water_height, chambers, water_unit_weight), soil);
        });
    factor
        .says(
            "Factor of safety against flotation of a bed between battered walls, weight and water of one and "
            "the same soil")
        .related({"UC.UPLIFT.RATIO", "UC.UPLIFT.FORCE", "UC.UPLIFT.WEIGHT", "UC.UPLIFT.FILL", "UC.ATLEAST"})
        .also_called("flotation, buoyancy, factor of safety against uplift, hydrostatic uplift, ballast")
        .equation("F = (sum V gamma - C gamma_1)/(gamma_w V_w)")
        .source(bed_source)
        .example(
            "UC.UPLIFT.BED(\"30 m\"; \"12 m\"; \"0H:1V\"; {\"m\";\"kN/m3\"|1.2;15.7|0.9;19}; \"2 m\"; \"150 "
            "m3\")",
            "1.498897857", "1e-8", Origin::mathematics,
            "(360 (1.2 x 15.7 + 0.9 x 19) - 150 x 15.7)/(720 x 9.80665)")
        .example(
            "UC.UPLIFT.BED(\"20 m\"; \"10 m\"; \"1H:1V\"; {\"m\";\"kN/m3\"|1.2;16|0.8;19}; \"1.5 m\"; ; "
            "\"wedges\"; "
            "\"10 kN/m3\")",
            "2.480149104", "1e-8", Origin::mathematics, "9226.155 kN over 372 m3 of water")
        .example(
            "UC.UPLIFT.BED(\"20 m\"; \"10 m\"; \"1H:1V\"; {\"m\";\"kN/m3\"|1.2;16|0.8;19}; \"1.5 m\"; ; "
            "\"prism\"; "
            "\"10 kN/m3\")",
            "2.293333333", "1e-8", Origin::mathematics, "(19.2 + 15.2)/15")
        .example(
            "UC.UPLIFT.BED(\"100 ft\"; \"40 ft\"; \"0H:1V\"; {\"ft\";\"lbf/ft3\"|4;100|3;120}; \"5 ft\"; "
            "; ; \"62.4 lbf/ft3\")",
            "2.435897436", "1e-8", Origin::mathematics, "(400 + 360)/312")
        .caution(bed_caution);
    takes_lined_bed(factor);
    takes_water_height(factor);
    takes_chambers(factor);
    takes_uplift_soil(factor);
    return takes_water_weight(factor).gives("F", "Factor against flotation");
}

Function weight_entry() {
    auto weight = function("UC.UPLIFT.WEIGHT", [](Length length, Length width, Batter batter,
                                                  BedLayers layers, Volume chambers, calc::HeldSoil soil) {
        return calc::bed_weight(bed(length, width, batter, layers, zero, chambers, zero), soil);
    });
    weight.says("Weight of a bed and of what lies on it, its chambers empty")
        .related({"UC.UPLIFT.FORCE", "UC.UPLIFT.RATIO", "UC.UPLIFT.BED"})
        .also_called("resisting weight, dead load, ballast, overburden")
        .equation("G = sum V gamma - C gamma_1")
        .source(bed_source)
        .example(
            "UC.UPLIFT.WEIGHT(\"30 m\"; \"12 m\"; \"0H:1V\"; {\"m\";\"kN/m3\"|1.2;15.7|0.9;19}; \"150 m3\")",
            "10583.4", "1e-9 rel", Origin::mathematics, "360 (18.84 + 17.1) - 150 x 15.7")
        .example(
            "UC.UPLIFT.WEIGHT(\"100 ft\"; \"40 ft\"; \"0H:1V\"; {\"ft\";\"lbf/ft3\"|4;100|3;120}; ; ; "
            "\"kip\")",
            "3040", "1e-9 rel", Origin::mathematics, "4000 ft2 x 760 psf")
        .caution(bed_caution);
    takes_lined_bed(weight);
    takes_chambers(weight);
    return takes_uplift_soil(weight).gives("G", "Weight");
}

Function water_entry() {
    auto uplift = function(
        "UC.UPLIFT.FORCE", [](Length length, Length width, Batter batter, BedLayers layers,
                              Length water_height, calc::HeldSoil soil, UnitWeight water_unit_weight) {
            return calc::bed_uplift(bed(length, width, batter, layers, water_height, zero, water_unit_weight),
                                    soil);
        });
    uplift
        .says("Uplift on a bed and on what lies on it: the weight of the water that the same soil displaces")
        .related({"UC.UPLIFT.WEIGHT", "UC.UPLIFT.RATIO", "UC.UPLIFT.BED"})
        .also_called("buoyant force, buoyancy, hydrostatic uplift, Archimedes, displaced water")
        .equation("U = gamma_w V_w")
        .source(bed_source)
        .example("UC.UPLIFT.FORCE(\"30 m\"; \"12 m\"; \"0H:1V\"; {\"m\";\"kN/m3\"|1.2;15.7|0.9;19}; \"2 m\")",
                 "7060.788", "1e-9 rel", Origin::mathematics, "720 m3 x 9.80665 kN/m3")
        .example(
            "UC.UPLIFT.FORCE(\"20 m\"; \"10 m\"; \"1H:1V\"; {\"m\";\"kN/m3\"|1.2;16|0.8;19}; \"1.5 m\"; "
            "\"wedges\"; "
            "\"10 kN/m3\")",
            "3720", "1e-9 rel", Origin::mathematics, "prismoid of 372 m3")
        .caution(bed_caution);
    takes_lined_bed(uplift);
    takes_water_height(uplift);
    takes_uplift_soil(uplift);
    return takes_water_weight(uplift).gives("U", "Uplift");
}

Function ratio_entry() {
    return function("UC.UPLIFT.RATIO", &calc::uplift_ratio)
        .says("Uplift by partial factors: demand over resistance, at most 1")
        .related({"UC.UPLIFT.WEIGHT", "UC.UPLIFT.FORCE", "UC.UPLIFT.FILL", "UC.ATLEAST"})
        .also_called("flotation check, limit state of uplift, partial factors, UPL, utilisation")
        .equation("r = g_dst U/(g_stb G)")
        .source("EN 1997-1:2004, 2.4.7.4 and Tables A.15, A.16 (in reproductions)")
        .example("UC.UPLIFT.RATIO(\"486.4125 kN\"; \"334.665 kN\"; 0.9; 1.1)", "0.840922", "5e-7",
                 Origin::published, "worked example of a public structural library, all inputs printed")
        .example("UC.UPLIFT.RATIO(\"3040 kip\"; \"1248 kip\")", "0.456140351", "1e-8", Origin::mathematics,
                 "1248/(0.9 x 3040)")
        .caution(
            "National annexes have factors of their own, such as 1.1 on the uplift in the United Kingdom. "
            "It is another method than a factor of safety: use one of them. Local codes and a licensed "
            "engineer govern")
        .takes("weight", "G", "Weight that holds the bed down, permanent")
        .within(usual::bed_force)
        .takes("uplift", "U", "Uplift of the water")
        .within(usual::bed_force)
        .takes("stabilising factor", "g_stb", "Partial factor on the weight", 0.9)
        .within(usual::stabilising_factor)
        .takes("destabilising factor", "g_dst", "Partial factor on the uplift", 1.0)
        .within(usual::destabilising_factor)
        .gives("r", "Demand over resistance");
}

}  // namespace

std::vector<Function> bed_uplift_functions() {
    return {uplift_bed_entry(), weight_entry(), water_entry(), ratio_entry()};
}

}  // namespace undercroft::addin
