#include "calc/ground/wheel_load.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> wheel_load_functions() {
    return {
        function("UC.LOAD.WHEEL",
                 [](Force wheel_load, Length tyre_length, Length tyre_width, Length cover,
                    Share distribution_factor, std::optional<Length> wheel_spacing, bool impact,
                    std::optional<Length> axle_spacing) {
                     return calc::wheel_load(
                         {wheel_load, tyre_length, tyre_width, wheel_spacing, axle_spacing}, cover,
                         distribution_factor, impact);
                 })
            .says(
                "Live load of wheels on the top of a buried structure, spread through at least 2 ft of fill; "
                "wheels beside each other act together once their loads meet")
            .also_called(
                "live load, LL, traffic surcharge, HL-93, HS-20, impact, dynamic load allowance, LLDF, cover")
            .related({"UC.LOAD.CLASS", "UC.LOAD.FILL", "UC.FOOT.PRESSURE"})
            .to_try("UC.LOAD.WHEEL(\"80 kN\"; \"250 mm\"; \"400 mm\"; \"0.75 m\")")
            .to_try("UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"3 ft\"; 1.15; \"6 ft\"; 1; \"4 ft\"; "
                    "\"psf\")")
            .refuses("UC.LOAD.WHEEL(\"80 kN\"; \"250 mm\"; \"400 mm\"; \"0.4 m\")")
            .refuses("UC.LOAD.WHEEL(72; 250; 510; 750)")
            .sketch(Sketch::wheel)
            .equation(
                "p = n P (1 + IM)/(l w); l = l_t + f H, and s_a more from H = (s_a - l_t)/f on; w = w_t + f "
                "H, and s_w more from H = (s_w - w_t)/f on; IM = 0.33 (1 - 0.125 H/ft), at least 0")
            .source(
                "AASHTO LRFD Bridge Design Specifications, 3.6.1.2.6 and 3.6.2.2. The distribution factor "
                "depends on the edition: to 2012, 1.15 in select granular fill and 1.00 in other fill; "
                "since, "
                "1.15, and up to 1.75 over concrete pipe (from memory). The term 0.06 x inside span is left "
                "out, on the safe side")
            .example("UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"2 ft\"; 1.15; \"6 ft\"; 1; \"4 ft\"; "
                     "\"ksf\")",
                     "1.605936", "5e-7", Origin::mathematics,
                     "AASHTO LRFD 3.6.1.2.6 recomputed: one wheel, 1.28732 ksf and IM 24.75 %")
            .example("UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"2 ft\"; 1.0; \"6 ft\"; 1; \"4 ft\"; "
                     "\"ksf\")",
                     "1.921283", "5e-7", Origin::mathematics, "the same with the factor 1.00: 1.54011 ksf")
            .example(
                "UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"5 ft\"; 1.15; \"6 ft\"; 1; ; \"ksf\")",
                "0.407126", "5e-7", Origin::mathematics,
                "the same: two wheels that meet, 0.36229 ksf and IM 12.375 %")
            .example(
                "UC.LOAD.WHEEL(\"12.5 kip\"; \"10 in\"; \"20 in\"; \"4 ft\"; 1.15; \"6 ft\"; \"no\"; \"4 "
                "ft\"; \"ksf\")",
                "0.43209", "5e-6", Origin::mathematics,
                "the same: four wheels of a tandem, 50 kip on 12.2667 ft x 9.4333 ft")
            .example(
                "UC.LOAD.WHEEL(\"12.5 kip\"; \"10 in\"; \"20 in\"; \"3 ft\"; 1.15; \"6 ft\"; \"no\"; \"4 "
                "ft\"; \"ksf\")",
                "0.58986", "5e-6", Origin::mathematics,
                "the same: two wheels behind each other, 25 kip on 5.1167 ft x 8.2833 ft")
            .example("UC.LOAD.WHEEL(\"80 kN\"; \"250 mm\"; \"400 mm\"; \"0.75 m\"; 1.15; ; \"no\")",
                     "56.9585", "5e-5", Origin::mathematics,
                     "80 kN on 1.1125 m x 1.2625 m, one wheel at rest")
            .caution("Without multiple presence (1.2 for one lane), lane load and load factors. Refused "
                     "under 2 ft "
                     "of cover, where the standard does not spread wheels through fill. Local codes and a "
                     "licensed "
                     "engineer govern")
            .takes("wheel load", "P", "Load of one wheel, such as 16 kip")
            .within(usual::wheel_load)
            .takes("tyre length", "l_t", "Length of the tyre's patch along the way, such as 10 in")
            .within(usual::tyre_length)
            .takes("tyre width", "w_t", "Width of the tyre's patch, such as 20 in")
            .within(usual::tyre_width)
            .takes("cover", "H", "Depth of fill over the structure")
            .within(usual::cover)
            .takes("distribution factor", "f", "Widening per depth of fill, by edition and fill", 1.15)
            .within(usual::distribution_factor)
            .takes("wheel spacing", "s_w",
                   "Between the two wheels of an axle, such as 6 ft; left out, one wheel")
            .within(usual::wheel_spacing)
            .takes("impact", "IM", "TRUE with dynamic allowance", u"TRUE")
            .takes("axle spacing", "s_a", "Between two axles of a tandem, such as 4 ft; left out, one axle")
            .within(usual::axle_spacing)
            .gives("p", "Pressure on the structure"),
    };
}

}  // namespace undercroft::addin
