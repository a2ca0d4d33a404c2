#include "calc/ground/wet_bearing.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> wet_bearing_functions() {
    return {
        function(
            "UC.BEARING.WET",
            [](Pressure cohesion, Angle friction_angle, UnitWeight unit_weight, Length depth, Length width,
               std::optional<Length> length, std::optional<Length> water_depth, bool counts_depth) {
                return calc::wet_bearing_capacity(
                    {cohesion, friction_angle, unit_weight, depth, width, length, water_depth, counts_depth});
            })
            .says("Ultimate bearing pressure, gross, of ground with friction where groundwater is near; "
                  "without a "
                  "factor of safety")
            .also_called("bearing capacity, water table correction, effective unit weight, Terzaghi, Vesic")
            .related({"UC.BEARING.CAPACITY", "UC.BEARING.UNDRAINED"})
            .equation(
                "q_u = s_c c N_c + d_q s_q gamma D N_q C_wq + s_gamma 0.5 gamma B N_gamma C_wg; C_wq = 0.5 + "
                "0.5 "
                "D_w/D, C_wg = 0.5 + 0.5 D_w/(D + 1.5 B), at most 1; factors of Vesic as UC.BEARING.CAPACITY")
            .source("FHWA GEC No. 6 (FHWA-SA-02-054), eq. 5-1, Table 5-3; d_q Hansen (1970) (from memory)")
            .example("UC.BEARING.WET(\"0 kPa\"; \"35 deg\"; \"19.6 kN/m3\"; \"2.30102 m\"; \"6.1 m\"; \"6.1 "
                     "m\"; \"9.1 m\")",
                     "4107", "12", Origin::published,
                     "FHWA GEC No. 6, Appendix B, Example 1: 1369 kPa with a factor of safety of 3")
            .example("UC.BEARING.WET(\"0 psf\"; \"30 deg\"; \"120 lbf/ft3\"; \"2 ft\"; \"4 ft\"; ; \"0 ft\"; "
                     "; \"psf\")",
                     "4896.435", "5e-3", Origin::mathematics,
                     "groundwater at the ground: half of the last example of UC.BEARING.CAPACITY")
            .caution(
                "Ultimate: divide by a factor of safety, and check settlement. Count the depth only where "
                "the "
                "ground over the base is as strong as below it. General shear, central vertical load. Local "
                "codes and a licensed engineer govern")
            .takes("cohesion", "c", "Cohesion of the ground; 0 where it has none")
            .within(usual::cohesion)
            .takes("friction angle", "phi", "Angle of internal friction, 0 to 45 deg")
            .within(usual::friction_angle_or_none)
            .takes("unit weight", "gamma", "Total unit weight of the ground, above the water and below")
            .within(usual::unit_weight)
            .takes("depth", "D", "Depth of the base below the lowest ground beside it")
            .within(usual::foundation_depth)
            .takes("width", "B", "Width of the base")
            .within(usual::foundation_width)
            .takes("length", "L", "Length of the base; left out, a long strip")
            .within(usual::foundation_length)
            .takes("water depth", "D_w", "Groundwater below the ground beside the base; left out, none near")
            .within(usual::water_depth)
            .takes("counts depth", "d_q", "TRUE to count the strength of the ground over the base", u"FALSE")
            .gives("q_u", "Ultimate bearing pressure"),
    };
}

}  // namespace undercroft::addin
