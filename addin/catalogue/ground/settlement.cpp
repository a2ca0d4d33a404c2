#include "calc/ground/settlement.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::SettlementPoint> {
    static constexpr std::string_view kind = "where the settlement is wanted";
    static constexpr Choice<calc::SettlementPoint> list[] = {
        {"centre|center", calc::SettlementPoint::centre},
        {"corner", calc::SettlementPoint::corner},
        {"rigid", calc::SettlementPoint::rigid},
    };
};

namespace {

constexpr const char* settlement_caution =
    "An estimate: real settlement is often half or twice as much. Local codes and a licensed engineer govern";

Function net_entry() {
    return function("UC.SETTLEMENT.NET", &calc::net_pressure)
        .says(
            "Net pressure on a formation: what bed and fill press less what the dug ground weighed there; "
            "below 0 "
            "nothing settles")
        .related({"UC.SETTLEMENT.ELASTIC", "UC.SETTLEMENT.CONSOLIDATION", "UC.SETTLEMENT.SAND",
                  "UC.FOOT.SUBGRADE"})
        .also_called("net bearing pressure, unloading by excavation, compensated foundation, heave")
        .equation("q_n = q - gamma D")
        .source("elementary statics")
        .example("UC.SETTLEMENT.NET(\"60 kPa\"; \"18 kN/m3\"; \"2.5 m\")", "15", "1e-9 rel",
                 Origin::mathematics, "60 - 45")
        .example("UC.SETTLEMENT.NET(\"900 psf\"; \"120 lbf/ft3\"; \"8 ft\"; \"psf\")", "-60", "1e-6",
                 Origin::mathematics, "900 - 960: lighter than the ground that was dug")
        .caution("Below 0 the formation heaves a little. Local codes and a licensed engineer govern")
        .takes("pressure", "q", "Pressure of bed and fill on the formation")
        .within(usual::contact_pressure.or_zero())
        .takes("unit weight", "gamma", "Unit weight of the ground that was dug")
        .within(usual::unit_weight)
        .takes("depth", "D", "Depth of the formation below the ground")
        .within(usual::formation_depth)
        .gives("q_n", "Net pressure")
        .may_be_negative();
}

Function elastic_entry() {
    return function("UC.SETTLEMENT.ELASTIC", &calc::elastic_settlement)
        .says(
            "Immediate settlement of a loaded rectangle on deep elastic ground: at the centre or a corner of "
            "a "
            "flexible one, or of a rigid one")
        .related({"UC.SETTLEMENT.NET", "UC.SETTLEMENT.SAND", "UC.SETTLEMENT.CONSOLIDATION", "UC.ATMOST"})
        .also_called(
            "immediate settlement, Boussinesq settlement, Young's modulus, initial settlement, rigidity")
        .equation(
            "s = q B (1 - v^2)/E I; centre I = 2/pi (m asinh(1/m) + asinh m), m = L/B, corner half of it; "
            "rigid s = q B L/K_z, K_z = G (B/2)/(1 - v) (3.1 m^0.75 + 1.6), G = E/(2 (1 + v))")
        .source(
            "Boussinesq (1885), integrated; Pais and Kausel (1988), in NIST GCR 12-917-21 (2012), Table 2-2a")
        .example(
            "UC.SETTLEMENT.ELASTIC(\"150 kPa\"; \"2 m\"; \"2 m\"; \"10000 kPa\"; 0.3; \"centre\"; \"mm\")",
            "30.636052", "5e-6", Origin::mathematics, "27.3 mm x 4/pi asinh 1")
        .example("UC.SETTLEMENT.ELASTIC(\"107 kPa\"; \"2 m\"; \"4 m\"; \"30 MPa\"; ; \"rigid\"; \"mm\")",
                 "7.621667", "5e-6", Origin::published,
                 "NIST GCR 12-917-21 (2012), as recomputed in a public engineering library: 112311.39 kN/m "
                 "under 856 kN")
        .caution(settlement_caution)
        .takes("pressure", "q", "Net pressure on the rectangle, as UC.SETTLEMENT.NET")
        .within(usual::contact_pressure)
        .takes("width", "B", "Shorter side")
        .within(usual::loaded_width)
        .takes("length", "L", "Longer side")
        .within(usual::loaded_length)
        .takes("modulus", "E", "Modulus of elasticity of the ground")
        .within(usual::ground_modulus)
        .takes("Poisson ratio", "v", "Poisson's ratio; 0.5 for undrained clay", 0.3)
        .within(usual::poisson)
        .takes("at", "at", "centre, corner or rigid", u"centre")
        .gives("s", "Settlement");
}

Function consolidation_entry() {
    return function("UC.SETTLEMENT.CONSOLIDATION",
                    [](Length thickness, Share void_ratio, Share compression, Share recompression,
                       Pressure stress, Pressure preconsolidation, Pressure added) {
                        return calc::consolidation_settlement(
                            {thickness, void_ratio, compression, recompression, stress, preconsolidation},
                            added);
                    })
        .says(
            "Settlement of a layer of clay by consolidation in the long run, under a stress that is added in "
            "its "
            "middle")
        .related({"UC.SETTLEMENT.DEGREE", "UC.SETTLEMENT.NET", "UC.LOAD.RECTANGLE"})
        .also_called(
            "primary consolidation, compression index Cc, oedometer, overconsolidated clay, recompression")
        .equation("s = H/(1 + e_0) (C_r log(min(s_1, s_p)/s_0) + C_c log(s_1/max(s_0, s_p))), s_1 = s_0 + ds")
        .source("Terzaghi; FHWA GEC No. 13 (2017), vol. 1, 4.3.1")
        .example(
            "UC.SETTLEMENT.CONSOLIDATION(\"1 m\"; 1; 0.3; 0.03; \"100 kPa\"; \"100 kPa\"; \"100 kPa\"; "
            "\"mm\")",
            "45.154499", "5e-6", Origin::mathematics, "1000/2 x 0.3 log 2")
        .example(
            "UC.SETTLEMENT.CONSOLIDATION(\"15 ft\"; 0.7; 0.25; 0.05; \"432 psf\"; \"432 psf\"; \"2500 psf\"; "
            "\"ft\")",
            "1.83", "0.005", Origin::published, "FHWA GEC No. 13 (2017), vol. 1, 4.3.1")
        .caution(settlement_caution)
        .takes("thickness", "H", "Thickness of the layer")
        .within(usual::clay_thickness)
        .takes("void ratio", "e_0", "Void ratio before")
        .within(usual::void_ratio)
        .takes("compression index", "C_c", "Index of compression beyond what the clay has borne")
        .within(usual::compression_index)
        .takes("recompression index", "C_r",
               "Index of recompression, at most the other; usually a tenth to a fifth")
        .within(usual::recompression_index)
        .takes("effective stress", "s_0", "Effective stress in the middle of the layer, before")
        .within(usual::effective_stress)
        .takes("preconsolidation stress", "s_p",
               "Greatest stress that the clay has borne; that of before where none")
        .within(usual::effective_stress)
        .takes("added stress", "ds", "Stress added in the middle of the layer")
        .within(usual::effective_stress.or_zero())
        .gives("s", "Settlement");
}

Function degree_entry() {
    return function("UC.SETTLEMENT.DEGREE", &calc::consolidation_degree)
        .says("Share of the consolidation that is over at a time")
        .related({"UC.SETTLEMENT.CONSOLIDATION"})
        .also_called("degree of consolidation, Terzaghi, time factor, cv, drainage path")
        .equation("U = 1 - sum 8/(pi^2 n^2) exp(-n^2 pi^2 T/4) over odd n, T = c_v t/d^2")
        .source("Terzaghi, one-dimensional consolidation")
        .example("UC.SETTLEMENT.DEGREE(\"0.01 m2/d\"; \"113472 min\"; \"2 m\")", "0.5", "0.0005",
                 Origin::from_memory, "textbooks: T = 0.197 for one half; 78.8 d")
        .example("UC.SETTLEMENT.DEGREE(\"0.1 ft2/d\"; \"212 d\"; \"5 ft\")", "0.9", "0.0005",
                 Origin::from_memory, "textbooks: T = 0.848 for nine tenths")
        .caution(settlement_caution)
        .takes("coefficient", "c_v", "Coefficient of consolidation")
        .within(usual::consolidation)
        .takes("time", "t", "Time since the load, such as 365 d")
        .within(usual::consolidation_time)
        .takes("drainage path", "d", "Thickness of the layer; half of it where it drains both ways")
        .within(usual::drainage_path)
        .gives("U", "Share that is over");
}

Function sand_entry() {
    return function("UC.SETTLEMENT.SAND",
                    [](Pressure pressure, Length width, calc::SandLayers layers, bool is_strip) {
                        return calc::sand_settlement(pressure, width, is_strip, layers);
                    })
        .says("Settlement of sand under a square or a long strip by Hough, layer by layer")
        .related({"UC.SETTLEMENT.NET", "UC.SETTLEMENT.ELASTIC", "UC.SETTLEMENT.CONSOLIDATION"})
        .also_called("settlement of granular soil, Hough, bearing index, SPT, blow count")
        .equation("s = sum H/C' log((s_0 + ds)/s_0); ds = q (B/(B + z))^2, of a strip q B/(B + z)")
        .source("Hough (1959); FHWA GEC No. 6 (FHWA-SA-02-054), Appendix B, Example 1")
        .example(
            "UC.SETTLEMENT.SAND(\"240 kPa\"; \"3 m\"; "
            "{2.1;1.05;65.7;65|4.7;4.45;132;120|3;8.3;193;102|3;11.3;222;110}; "
            "; \"mm\")",
            "21", "0.5", Origin::published,
            "FHWA GEC No. 6, Appendix B, Example 1, from layers rounded one by one")
        .example(
            "UC.SETTLEMENT.SAND(\"2000 psf\"; \"4 ft\"; {\"ft\";\"ft\";\"psf\";\"1\"|4;2;250;60}; ; \"in\")",
            "0.526833", "5e-6", Origin::mathematics, "48/60 log((250 + 2000 x 4/9)/250)")
        .caution(settlement_caution)
        .takes("pressure", "q", "Net pressure on the base")
        .within(usual::contact_pressure)
        .takes("width", "B", "Side of the square, or width of the strip")
        .within(usual::loaded_width)
        .takes("layers", "H, z, s_0, C'",
               "Four columns: thickness, depth of its middle below the base, effective stress there, Hough's "
               "index")
        .within({usual::clay_thickness, usual::depth_below_base, usual::effective_stress, usual::hough_index})
        .takes("strip", "strip", "TRUE for a long strip", u"FALSE")
        .gives("s", "Settlement");
}

}  // namespace

std::vector<Function> settlement_functions() {
    return {net_entry(), elastic_entry(), consolidation_entry(), degree_entry(), sand_entry()};
}

}  // namespace undercroft::addin
