#include "calc/ground/bearing.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::BearingMethod> {
    static constexpr std::string_view kind = "a method";
    static constexpr Choice<calc::BearingMethod> list[] = {
        {"Vesic|Vesić", calc::BearingMethod::vesic},
        {"Meyerhof", calc::BearingMethod::meyerhof},
        {"Terzaghi", calc::BearingMethod::terzaghi},
    };
};

std::vector<Function> bearing_functions() {
    return {
        function("UC.BEARING.CAPACITY", &calc::bearing_capacity)
            .says("Ultimate bearing pressure, gross, of ground under a strip or rectangle; without a factor "
                  "of safety")
            .also_called("ultimate bearing, Terzaghi, Meyerhof, N factors, safe bearing")
            .related({"UC.BEARING.PRESUMPTIVE", "UC.BEARING.CBR", "UC.FOOT.PRESSURE"})
            .to_try("UC.BEARING.CAPACITY(\"5 kPa\"; \"32 deg\"; \"18 kN/m3\"; \"0 m\"; \"0.5 m\")")
            .to_try("UC.BEARING.CAPACITY(\"100 psf\"; \"32 deg\"; \"115 lbf/ft3\"; \"2 ft\"; \"4 ft\"; ; "
                    "\"Meyerhof\"; \"psf\")")
            .refuses("UC.BEARING.CAPACITY(\"5 kPa\"; \"50 deg\"; \"18 kN/m3\"; \"0 m\"; \"0.5 m\")")
            .equation("q_u = s_c c N_c + s_q gamma D N_q + s_gamma 0.5 gamma B N_gamma; factors of the "
                      "method; depth factors 1")
            .source(
                "Vesic (1973): N_gamma = 2 (N_q + 1) tan phi, s_c = 1 + B/L N_q/N_c, s_q = 1 + B/L tan phi, "
                "s_gamma = 1 - 0.4 B/L; Meyerhof (1963): N_gamma = (N_q - 1) tan 1.4 phi, s_c = 1 + 0.2 K_p "
                "B/L, s_q = s_gamma = 1 + 0.1 K_p B/L from 10 deg; Terzaghi (1943): s_c = 1 + 0.3 B/L, "
                "s_gamma = 1 - 0.2 B/L, N_gamma by Kumbhojkar (1993)")
            .example("UC.BEARING.CAPACITY(\"15.2 kPa\"; \"20 deg\"; \"17.8 kN/m3\"; \"1 m\"; \"1.5 m\"; "
                     "\"1.5 m\"; \"Terzaghi\")",
                     "521", "0.5 %", Origin::from_memory,
                     "Das, Principles of Foundation Engineering, example of a square foundation")
            .examples("UC.BEARING.CAPACITY(\"1 kPa\"; \"{} deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")",
                      "0.9 %", Origin::published,
                      "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: N_c",
                      {{"10", "8.3"},
                       {"20", "14.8"},
                       {"25", "20.7"},
                       {"30", "30.1"},
                       {"32", "35.5"},
                       {"35", "46.1"},
                       {"40", "75"},
                       {"45", "134"}})
            .examples("UC.BEARING.CAPACITY(\"0 kPa\"; \"{} deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\")",
                      "0.9 %", Origin::published, "Look, Table 21.5: N_q",
                      {{"10", "2.47"},
                       {"20", "6.4"},
                       {"25", "10.7"},
                       {"30", "18.4"},
                       {"32", "23.2"},
                       {"35", "33.3"},
                       {"40", "64"},
                       {"45", "135"}})
            .examples("UC.BEARING.CAPACITY(\"0 kPa\"; \"{} deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "0.9 %",
                      Origin::published, "Look, Table 21.5: N_gamma of Vesic",
                      {{"10", "1.22"},
                       {"20", "5.4"},
                       {"25", "10.9"},
                       {"30", "22.4"},
                       {"32", "30.2"},
                       {"35", "48"},
                       {"40", "109"},
                       {"45", "272"}})
            .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"0 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "5.14",
                     "0.005", Origin::mathematics, "N_c of undrained ground, 2 + pi")
            .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"30 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\"; ; "
                     "\"Meyerhof\")",
                     "15.67", "0.005", Origin::from_memory,
                     "Meyerhof (1963): N_gamma = (N_q - 1) tan 1.4 phi")
            .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"25 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"; ; "
                     "\"Terzaghi\")",
                     "25.1", "0.5 %", Origin::published,
                     "Indian engineering entrance examination (2019): Terzaghi's N_c")
            .example("UC.BEARING.CAPACITY(\"0 psf\"; \"30 deg\"; \"120 lbf/ft3\"; \"2 ft\"; \"4 ft\"; ; "
                     "\"Vesic\"; "
                     "\"psf\")",
                     "9792.87", "0.005", Origin::mathematics, "240 x 18.401122 + 240 x 22.402486")
            .caution("Ultimate: divide by a factor of safety, and check settlement. General shear, central "
                     "vertical load, groundwater deeper than B below the base. Local codes and a licensed "
                     "engineer govern")
            .takes("cohesion", "c", "Cohesion of the ground; 0 where it has none")
            .within(usual::cohesion)
            .takes("friction angle", "phi", "Angle of internal friction, 0 to 45 deg")
            .within(usual::friction_angle_or_none)
            .takes("unit weight", "gamma", "Unit weight of the ground")
            .within(usual::unit_weight_or_submerged)
            .takes("depth", "D", "Depth of the base below the lowest ground beside it")
            .within(usual::foundation_depth)
            .takes("width", "B", "Width of the base")
            .within(usual::foundation_width)
            .takes("length", "L", "Length of the base; left out, a long strip")
            .within(usual::foundation_length)
            .takes("method", "method", "Vesic, Meyerhof or Terzaghi", u"Vesic")
            .gives("q_u", "Ultimate bearing pressure"),
    };
}

}  // namespace undercroft::addin
