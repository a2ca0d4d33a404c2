#include "calc/water/outlet.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* orifice_source = "FHWA HEC-22, orifice equation; g = 9.80665 m/s2";
constexpr const char* orifice_caution =
    "Free outfall, and a head of at least half of the diameter; where the outfall is drowned the head is the "
    "difference of levels. Small orifices block: screen them and keep an overflow";
constexpr const char* weir_caution =
    "Free overfall, no velocity of approach. With end contractions the head is at most a third of the crest "
    "(Francis)";

Function orifice_flow_entry() {
    return function("UC.ORIFICE.FLOW", &calc::orifice_flow)
        .says("Flow of a circular orifice under a head above its centre")
        .also_called("outlet, flow control, orifice plate, discharge, Torricelli, head")
        .related({"UC.ORIFICE.DIAMETER", "UC.WEIR.FLOW", "UC.OUTLET.RATING"})
        .to_try("UC.ORIFICE.FLOW(\"100 mm\"; \"1 m\")")
        .to_try("UC.ORIFICE.FLOW(\"4 in\"; \"3 ft\"; 0.6; \"cfs\")")
        .refuses("UC.ORIFICE.FLOW(100; 1)")
        .sketch(Sketch::outlet_head)
        .equation("Q = C_d pi/4 D^2 sqrt(2 g h)")
        .source(orifice_source)
        .caution(orifice_caution)
        .takes("diameter", "D", "Diameter of the orifice")
        .within(usual::orifice_diameter)
        .takes("head", "h", "Head above its centre")
        .within(usual::orifice_head)
        .takes("coefficient", "C_d", "Discharge coefficient", 0.6)
        .within(usual::orifice_coefficient)
        .gives("Q", "Flow")
        .example("UC.ORIFICE.FLOW(\"1 ft\"; \"1 ft\"; 0.6; \"ft3/s\")", "3.78", "0.005", Origin::from_memory,
                 "FHWA HEC-22, circular orifice Q = K D^2 sqrt(h): K = 3.78 in feet")
        .example("UC.ORIFICE.FLOW(\"1 m\"; \"1 m\"; 0.6; \"m3/s\")", "2.09", "0.005", Origin::from_memory,
                 "FHWA HEC-22, circular orifice: K = 2.09 in metres")
        .example(
            "UC.ORIFICE.FLOW(\"20 mm\"; \"1 m\"; 0.61082886)", "0.85", "0.001", Origin::published,
            "Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.7 (read in its companion code): 0.85 L/s, its "
            "C_d recomputed");
}

Function orifice_diameter_entry() {
    return function("UC.ORIFICE.DIAMETER", &calc::orifice_diameter)
        .says("Diameter of the circular orifice that passes a flow under a head above its centre")
        .also_called("size an orifice, orifice plate, throttle, flow control hole")
        .related({"UC.ORIFICE.FLOW", "UC.OUTLET.RATING"})
        .to_try("UC.ORIFICE.DIAMETER(\"15 L/s\"; \"1 m\"; ; \"mm\")")
        .to_try("UC.ORIFICE.DIAMETER(\"0.5 cfs\"; \"3 ft\"; ; \"in\")")
        .sketch(Sketch::outlet_head)
        .equation("D = sqrt(4 Q/(pi C_d sqrt(2 g h)))")
        .source(orifice_source)
        .caution(orifice_caution)
        .takes("flow", "Q", "Flow to pass")
        .within(usual::outlet_flow)
        .takes("head", "h", "Head above its centre")
        .within(usual::orifice_head)
        .takes("coefficient", "C_d", "Discharge coefficient", 0.6)
        .within(usual::orifice_coefficient)
        .gives("D", "Diameter")
        .example("UC.ORIFICE.DIAMETER(\"0.85 L/s\"; \"1 m\"; 0.61082886; \"mm\")", "20", "0.01",
                 Origin::published,
                 "Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.7 (read in its companion "
                 "code)");
}

Function weir_entry() {
    constexpr const char* example_6_2 = "USDA TR-55 (1986), Example 6-2 (from memory), recomputed";
    return function("UC.WEIR.FLOW", &calc::weir_flow)
        .says("Flow of a sharp-crested weir, with or without end contractions")
        .also_called("overflow, spillway, sharp-crested weir, Francis, rectangular weir")
        .related({"UC.WEIR.NOTCH", "UC.ORIFICE.FLOW", "UC.OUTLET.RATING"})
        .to_try("UC.WEIR.FLOW(\"1.2 m\"; \"150 mm\")")
        .to_try("UC.WEIR.FLOW(\"4 ft\"; \"0.5 ft\"; \"3.33 ft^0.5/s\"; ; \"cfs\")")
        .refuses("UC.WEIR.FLOW(\"4 ft\"; \"0.5 ft\"; 3.33; ; \"cfs\")")
        .sketch(Sketch::outlet_head)
        .equation("Q = C_w (L - 0.1 N h) h^1.5")
        .source("Francis formula as in FHWA HEC-22; C_w = 1.84 m^0.5/s or 3.33 ft^0.5/s")
        .caution(weir_caution)
        .takes("crest length", "L", "Length of the crest")
        .within(usual::crest_length)
        .takes("head", "h", "Head above the crest, well upstream of it; 0 m for none")
        .within(usual::weir_head)
        .takes("coefficient", "C_w", "Weir coefficient", u"1.84 m^0.5/s")
        .within(usual::weir_coefficient)
        .takes("end contractions", "N", "Number of ends at which the flow is contracted: 0, 1 or 2", 0.0)
        .within(usual::end_contractions)
        .gives("Q", "Flow")
        .example("UC.WEIR.FLOW(\"5 m\"; \"0.9 m\"; \"2.16303 m^0.5/s\"; 0; \"m3/s\")", "9.24", "0.01",
                 Origin::from_memory,
                 "Cengel and Cimbala, Fluid Mechanics, Example 13-10: suppressed weir, C_w = 0.73255 x 2/3 "
                 "sqrt(2 g)")
        .example("UC.WEIR.FLOW(\"1 m\"; \"1 m\"; \"1.84 m^0.5/s\"; 0; \"m3/s\")", "1.84", "1e-12 rel",
                 Origin::from_memory, "FHWA HEC-22, Francis formula in metres")
        .example("UC.WEIR.FLOW(\"10 ft\"; \"1 ft\"; \"3.33 ft^0.5/s\"; 2; \"ft3/s\")", "32.634", "1e-9 rel",
                 Origin::from_memory, "FHWA HEC-22, eq. 10.33: 3.33 (L - 0.2 h) h^1.5")
        .example("UC.WEIR.FLOW(\"4.1 ft\"; \"5.7 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "180", "1 %",
                 Origin::from_memory, "USDA TR-55 (1986), Example 6-1: a crest of 4.1 ft passes 180 ft3/s")
        .example("UC.WEIR.FLOW(\"2.3 ft\"; \"5.7 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "100", "0.5",
                 Origin::from_memory, "USDA TR-55 (1986), Example 6-2: the first weir at the second's stage")
        .example("UC.WEIR.FLOW(\"4.133427 ft\"; \"5.7 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "180", "5e-5",
                 Origin::mathematics, "USDA TR-55 (1986), Example 6-1 (from memory), recomputed")
        .example("UC.WEIR.FLOW(\"2.287527 ft\"; \"3.6 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "50", "1e-5",
                 Origin::mathematics, example_6_2)
        .example("UC.WEIR.FLOW(\"8.215066 ft\"; \"2.1 ft\"; \"3.2 ft^0.5/s\"; 0; \"ft3/s\")", "80", "1e-5",
                 Origin::mathematics, example_6_2);
}

Function notch_entry() {
    return function("UC.WEIR.NOTCH", &calc::notch_flow)
        .says("Flow of a V-notch weir")
        .also_called("V-notch, triangular weir, gauging")
        .related({"UC.WEIR.FLOW", "UC.OUTLET.RATING"})
        .to_try("UC.WEIR.NOTCH(\"90 deg\"; \"200 mm\")")
        .to_try("UC.WEIR.NOTCH(\"90 deg\"; \"8 in\"; \"2.5 ft^0.5/s\"; \"cfs\")")
        .sketch(Sketch::outlet_head)
        .equation("Q = C_w tan(theta/2) h^2.5")
        .source("FHWA HEC-22, V-notch weir equation; C_w = 1.38 m^0.5/s or 2.5 ft^0.5/s")
        .caution(weir_caution)
        .takes("angle", "theta", "Angle of the notch, such as 90 deg")
        .within(usual::notch_angle)
        .takes("head", "h", "Head above the lowest point of the notch; 0 m for none")
        .within(usual::weir_head)
        .takes("coefficient", "C_w", "Weir coefficient", u"1.38 m^0.5/s")
        .within(usual::notch_coefficient)
        .gives("Q", "Flow")
        .example("UC.WEIR.NOTCH(\"90 deg\"; \"1 ft\"; \"2.5 ft^0.5/s\"; \"ft3/s\")", "2.49", "0.02",
                 Origin::from_memory, "USBR Water Measurement Manual: 90-degree notch, Q = 2.49 h^2.48")
        .example("UC.WEIR.NOTCH(\"90 deg\"; \"0.5 ft\"; \"2.5 ft^0.5/s\"; \"ft3/s\")", "0.4463186", "1.2 %",
                 Origin::from_memory,
                 "USBR Water Measurement Manual: 90-degree notch at 0.5 ft, whose exponent is 2.48")
        .example("UC.WEIR.NOTCH(\"90 deg\"; \"1 m\"; \"1.38 m^0.5/s\"; \"m3/s\")", "1.38", "1e-12 rel",
                 Origin::from_memory, "FHWA HEC-22, eq. 10.35 in metres");
}

Function trapezoid_entry() {
    return function("UC.WEIR.TRAPEZOID", &calc::trapezoidal_weir_flow)
        .says("Flow of a sharp-crested weir whose sides flare; left out, the rest is Cipolletti's weir")
        .related({"UC.WEIR.FLOW", "UC.WEIR.NOTCH", "UC.OUTLET.RATING"})
        .also_called("Cipolletti, trapezoidal notch, flared weir, sharp crest")
        .equation("Q = C_w (L - 0.1 N h + 0.8 z h) h^1.5")
        .source(
            "Francis formula with strips beside the crest; USBR Water Measurement Manual, 3rd ed. (2001), "
            "ch. 7: "
            "3.367 L h^1.5 in feet (from memory)")
        .caution(weir_caution)
        .takes("crest length", "L", "Length of the crest, between the feet of the sides")
        .within(usual::crest_length)
        .takes("head", "h", "Head above the crest, at most a third of its length; 0 m for none")
        .within(usual::weir_head)
        .takes("side slope", "z", "How far each side flares per height", 0.25)
        .within(usual::weir_side_slope)
        .takes("coefficient", "C_w", "Weir coefficient", u"1.859 m^0.5/s")
        .within(usual::weir_coefficient)
        .takes("end contractions", "N", "Number of ends at which the flow is contracted: 0, 1 or 2", 2.0)
        .within(usual::end_contractions)
        .gives("Q", "Flow")
        .example("UC.WEIR.TRAPEZOID(\"4 ft\"; \"1 ft\"; 0.25; \"3.367 ft^0.5/s\"; 2; \"ft3/s\")", "13.468",
                 "0.002", Origin::from_memory,
                 "USBR Water Measurement Manual, ch. 7: Cipolletti's weir, 3.367 x 4")
        .example("UC.WEIR.TRAPEZOID(\"1.5 m\"; \"0.4 m\"; 0.6; \"1.84 m^0.5/s\"; \"0 each\"; \"m3/s\")",
                 "0.7876045", "1e-7", Origin::mathematics, "1.84 (1.5 + 0.8 x 0.6 x 0.4) 0.4^1.5");
}

}  // namespace

std::vector<Function> outlet_functions() {
    return {orifice_flow_entry(), orifice_diameter_entry(), weir_entry(), notch_entry(), trapezoid_entry()};
}

}  // namespace undercroft::addin
