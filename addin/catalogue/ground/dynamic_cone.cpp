#include "calc/ground/dynamic_cone.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::ConeSoil> {
    static constexpr std::string_view kind = "a soil of the standard";
    static constexpr Choice<calc::ConeSoil> list[] = {
        {"general", calc::ConeSoil::general},
        {"CL", calc::ConeSoil::cl},
        {"CH", calc::ConeSoil::ch},
    };
};

std::vector<Function> dynamic_cone_functions() {
    return {
        function("UC.BEARING.CBR", &calc::cone_cbr)
            .says("California bearing ratio in percent from the penetration per blow of a dynamic cone, 8-kg "
                  "hammer")
            .also_called("DCP, dynamic cone penetrometer, DPI, penetration index, California bearing ratio")
            .related({"UC.BEARING.PRESUMPTIVE", "UC.BEARING.CAPACITY"})
            .to_try("UC.BEARING.CBR(\"12 mm\")")
            .to_try("UC.BEARING.CBR(\"0.5 in\")")
            .to_try("UC.BEARING.CBR(\"20 mm\"; \"CL\")")
            .equation("general CBR = 292/d^1.12; CL below 10: 1/(0.017019 d)^2; CH: 1/(0.002871 d); d in mm")
            .source("ASTM D6951 (equations from memory)")
            .examples("UC.BEARING.CBR(\"{} mm\")", "5e-5", Origin::from_memory,
                      "ASTM D6951, general: 292/d^1.12",
                      {{"5", "48.1434"}, {"10", "22.1505"}, {"40", "4.689"}})
            .example("UC.BEARING.CBR(\"20 mm\"; \"CL\")", "8.6312", "5e-5", Origin::from_memory,
                     "ASTM D6951, clay of low plasticity below CBR 10: 1/(0.017019 d)^2")
            .example("UC.BEARING.CBR(\"50 mm\"; \"CH\")", "6.9662", "5e-5", Origin::from_memory,
                     "ASTM D6951, clay of high plasticity: 1/(0.002871 d)")
            .caution(
                "A correlation, for layers that the cone went through. Local codes and a licensed engineer "
                "govern")
            .takes("penetration per blow", "d", "Penetration per blow, such as 20 mm")
            .within(usual::penetration)
            .takes("soil", "soil", "general; CL only where the CBR is below 10; CH", u"general")
            .gives("CBR", "California bearing ratio"),
    };
}

}  // namespace undercroft::addin
