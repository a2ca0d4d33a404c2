#include "calc/water/contracted_weir.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

Function contracted_entry() {
    constexpr const char* recomputed =
        "USBR Water Measurement Manual, 3rd ed. (2001), ch. 7: coefficients read, recomputed by hand";
    return function("UC.WEIR.CONTRACTED", &calc::contracted_weir_flow)
        .says(
            "Flow of a sharp-crested rectangular weir by Kindsvater and Carter, contracted or over the whole "
            "channel, at heads up to twice the height of its crest")
        .related({"UC.WEIR.FLOW", "UC.WEIR.DROWNED", "UC.OUTLET.RATING"})
        .also_called(
            "rectangular notch, end contractions, suppressed weir, Kindsvater-Carter, effective head")
        .equation("Q = C_e (L + k_b)(h + k_h)^1.5, C_e = C_1 h/P + C_2 by L/B, k_h = 0.003 ft")
        .source(
            "USBR Water Measurement Manual, 3rd ed. (2001), ch. 7: C_1, C_2 and k_h; k_b by L/B as in ISO "
            "1438 "
            "(from memory)")
        .caution(
            "Tested for crests of 0.15 m and more, 0.1 m and more above the floor, heads from 0.03 m to 2 P. "
            "Free "
            "overfall: UC.WEIR.DROWNED where the water below stands above the crest")
        .takes("crest length", "L", "Length of the crest")
        .within(usual::crest_length)
        .takes("head", "h", "Head above the crest, well upstream of it; 0 m for none")
        .within(usual::weir_head)
        .takes("channel width", "B", "Width of the channel or chamber; the crest length for no contraction")
        .within(usual::channel_width)
        .takes("crest height", "P", "Height of the crest above the floor of the channel or chamber")
        .within(usual::crest_height)
        .gives("Q", "Flow")
        .example("UC.WEIR.CONTRACTED(\"2 m\"; \"0.3 m\"; \"2 m\"; \"0.4 m\"; \"m3/s\")", "0.6415603", "0.1 %",
                 Origin::published,
                 "Kindsvater and Carter (1957), over the whole channel, in the tests of an open fluids "
                 "library: C_e "
                 "= 0.602 + 0.075 h/P, where the manual prints 3.220 and 0.4000 in feet")
        .example("UC.WEIR.CONTRACTED(\"3 ft\"; \"0.8 ft\"; \"3 ft\"; \"2 ft\"; \"ft3/s\")", "7.289147880",
                 "2e-5 rel", Origin::mathematics, recomputed)
        .example("UC.WEIR.CONTRACTED(\"4 ft\"; \"1 ft\"; \"5 ft\"; \"2 ft\"; \"ft3/s\")", "13.337967320",
                 "2e-4 rel", Origin::mathematics, recomputed)
        .example("UC.WEIR.CONTRACTED(0.8; 0.2; 1; 0.4)", "132.376258", "0.3 %", Origin::from_memory,
                 "ISO 1438: C_e = 0.596 + 0.045 h/P at L/B = 0.8, k_b = 4.3 mm");
}

Function weir_drowned_entry() {
    return function("UC.WEIR.DROWNED", &calc::drowned_weir_flow)
        .says("What is left of a weir's free flow when the water below stands above its crest")
        .related({"UC.WEIR.FLOW", "UC.WEIR.CONTRACTED", "UC.WEIR.NOTCH", "UC.OUTFALL.RATING"})
        .also_called("submerged weir, Villemonte, tailwater above crest, backwater on a weir")
        .equation("Q = Q_f (1 - (h_2/h_1)^n)^0.385")
        .source("Villemonte, Engineering News-Record 139 (1947), as in FHWA HEC-22, 3rd ed. (2009), eq. 8-21")
        .caution(
            "Nothing passes where both stand level, and a little fall already lets much through: near that, "
            "small "
            "errors of level are large ones of flow. Water that stands higher below flows back: keep it out")
        .takes("free flow", "Q_f", "Flow of the same weir under the same head with a free overfall")
        .within(usual::inflow)
        .takes("head", "h_1", "Head above the crest upstream")
        .within(usual::drowning_head)
        .takes("tailwater head", "h_2", "Height of the water below above the crest; 0 m or less is free")
        .within(usual::tailwater)
        .takes("exponent", "n", "Exponent of the free weir: 1.5 of a rectangular one, 2.5 of a V-notch", 1.5)
        .within(usual::weir_exponent)
        .gives("Q", "Flow")
        .examples("UC.WEIR.DROWNED(\"1 m3/s\"; \"1 m\"; \"{} m\"; {}; \"m3/s\")", "5e-8", Origin::mathematics,
                  "(1 - (h_2/h_1)^n)^0.385 computed apart",
                  {{"0.1", "1.5", "0.9877048"},
                   {"0.5", "1.5", "0.8453860"},
                   {"0.8", "1.5", "0.6163070"},
                   {"0.95", "1.5", "0.3670941"},
                   {"0.3", "2.5", "0.9807258"},
                   {"0.8", "2.5", "0.7210020"}})
        .example(
            "UC.WEIR.DROWNED(UC.QUANTITY(UC.WEIR.CONTRACTED(\"1.2 m\"; \"0.25 m\"; \"1.8 m\"; \"0.5 m\"); "
            "\"L/s\"); "
            "\"0.25 m\"; \"-0.1 m\")/UC.WEIR.CONTRACTED(\"1.2 m\"; \"0.25 m\"; \"1.8 m\"; \"0.5 m\")",
            "1", "exact", Origin::mathematics, "a tailwater below the crest changes nothing");
}

}  // namespace

std::vector<Function> contracted_weir_functions() {
    return {contracted_entry(), weir_drowned_entry()};
}

}  // namespace undercroft::addin
