#include "calc/ground/foot_pressure.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> foot_pressure_functions() {
    return {
        function("UC.FOOT.PRESSURE", &calc::foot_pressure)
            .says(
                "Mean pressure on the subgrade where the spreads of feet meet under the base stone, from the "
                "load over a "
                "span and gap that goes to two feet and the column of stone between rows")
            .also_called(
                "subgrade pressure, bearing stress under chambers, foundation stone, footing of a chamber")
            .related({"UC.BASE.THICKNESS", "UC.BEARING.PRESUMPTIVE", "UC.LOAD.FILL"})
            .to_try("UC.FOOT.PRESSURE(\"80 kPa\"; \"1300 mm\"; \"150 mm\"; \"150 mm\"; \"225 mm\")")
            .to_try("UC.FOOT.PRESSURE(\"1600 psf\"; \"52 in\"; \"6 in\"; \"6 in\"; \"9 in\"; \"psf\")")
            .sketch(Sketch::foot)
            .equation("p = q max(1, (B_f + w_c)/(2 b_f + b + w_c)), w_c = min(b, g); over a pitch the sum is "
                      "q (B_f + g)")
            .source(
                "equilibrium of one pitch: feet carry the span, the gap's column its own load, both spread "
                "2V:1H (common practice); spreads that meet are taken together as in AASHTO LRFD 3.6.1.2.6")
            .example("UC.FOOT.PRESSURE(\"20 kPa\"; \"1300 mm\"; \"150 mm\"; \"150 mm\"; \"150 mm\")",
                     "48.3333", "5e-5", Origin::mathematics, "20 (1300 + 150)/(300 + 150 + 150)")
            .example("UC.FOOT.PRESSURE(\"20 kPa\"; \"1300 mm\"; \"150 mm\"; \"150 mm\"; \"0.001 mm\")",
                     "86.666", "1e-3 rel", Origin::mathematics,
                     "without base stone two feet of 150 mm carry 1300 mm")
            .example("UC.FOOT.PRESSURE(\"20 kPa\"; \"1300 mm\"; \"150 mm\"; \"150 mm\"; \"2 m\")", "20",
                     "1e-12 rel", Origin::mathematics, "deep stone evens it out")
            .example("UC.FOOT.PRESSURE(\"400 psf\"; \"52 in\"; \"6 in\"; \"6 in\"; \"9 in\"; \"psf\")",
                     "859.259", "5e-4", Origin::mathematics, "400 (52 + 6)/(12 + 9 + 6)")
            .caution(
                "Elastic peaks under a foot are 5 to 20 % higher, most under thin base stone. Weight of the "
                "stone beside and "
                "under the chambers is not in it: add it to the crown pressure "
                "or to the result. Rows on level ground, no weak layer below. Local codes and a licensed "
                "engineer govern")
            .takes("crown pressure", "q", "Pressure at crown level from fill and live load")
            .within(usual::crown_pressure)
            .takes("span", "B_f", "Width of a chamber over its feet")
            .within(usual::chamber_span)
            .takes("row gap", "g", "Clear gap between the feet of neighbouring rows")
            .within(usual::margin.or_zero().or_in("ft"))
            .takes("foot width", "b_f", "Width of one foot, within the span")
            .within(usual::foot_width)
            .takes("base stone", "b", "Thickness of the stone under the feet")
            .within(usual::base_stone)
            .gives("p", "Pressure on the subgrade"),
    };
}

}  // namespace undercroft::addin
