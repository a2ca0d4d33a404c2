#include "calc/ground/load_spread.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> patch_spread_functions() {
    return {
        function("UC.LOAD.SPREAD", &calc::spread_load)
            .says("Mean pressure of a load on a patch that widens with depth")
            .also_called("2:1 method, load dispersion, load spread angle")
            .related({"UC.LOAD.WHEEL", "UC.LOAD.RECTANGLE", "UC.BASE.THICKNESS"})
            .to_try("UC.LOAD.SPREAD(\"80 kN\"; \"250 mm\"; \"400 mm\"; \"0.75 m\")")
            .to_try("UC.LOAD.SPREAD(\"16 kip\"; \"10 in\"; \"20 in\"; \"3 ft\"; ; \"psf\")")
            .refuses("UC.LOAD.SPREAD(\"80 kN\"; \"250 mm\"; \"400 mm\"; \"0.75 m\"; \"2H:1V\")")
            .sketch(Sketch::wheel)
            .equation("p = P/((L + 2 s z)(W + 2 s z))")
            .source("common practice (2:1 method); Municipal Code of Chicago 13-132-060(b)(2) has 60 deg")
            .example("UC.LOAD.SPREAD(\"100 kN\"; \"1 m\"; \"1 m\"; \"2 m\"; \"60 deg\")", "9.13061",
                     "1e-5 rel", Origin::mathematics,
                     "a side of 1 m grows by 2 x 2 m x tan 30 deg to 3.309401 m")
            .example("UC.LOAD.SPREAD(\"27907.5 kN\"; \"15.25 m\"; \"6.1 m\"; \"4.58 m\")", "131.65", "0.1 %",
                     Origin::published,
                     "answer to a problem of a soil mechanics course, its arithmetic checked: 300 kPa on "
                     "6.1 m x 15.25 m")
            .example("UC.LOAD.SPREAD(\"16 kip\"; \"10 in\"; \"20 in\"; \"2 ft\"; ; \"ksf\")", "1.540107",
                     "5e-7", Origin::mathematics, "16/((10/12 + 2)(20/12 + 2)) with 2V:1H")
            .caution(engineer_governs)
            .takes("load", "P", "Load on the patch")
            .within(usual::patch_load)
            .takes("length", "L", "Length of the patch")
            .within(usual::patch_side)
            .takes("width", "W", "Width of the patch")
            .within(usual::patch_side)
            .takes("depth", "z", "Depth below the patch")
            .within(usual::depth_below_load.or_zero())
            .takes("spread", "s", "Widening on each side, such as 2V:1H or 60 deg; at most 1V:1H", u"2V:1H")
            .within(usual::load_spread.or_zero())
            .gives("p", "Mean pressure"),
    };
}

std::vector<Function> strip_spread_functions() {
    return {
        function("UC.BASE.THICKNESS", &calc::base_thickness)
            .says("Base stone that brings the pressure under a long strip down to what the subgrade can bear")
            .also_called("foundation stone depth, bedding thickness, subbase")
            .related({"UC.FOOT.PRESSURE", "UC.LOAD.SPREAD"})
            .to_try("UC.BASE.THICKNESS(\"300 kPa\"; \"150 mm\"; \"140 kPa\"; ; \"mm\")")
            .to_try("UC.BASE.THICKNESS(\"6000 psf\"; \"6 in\"; \"3000 psf\"; ; \"in\")")
            .sketch(Sketch::foot)
            .equation("b = max(0, w (p/p_a - 1)/(2 s))")
            .source("equilibrium of a strip that spreads to both sides; 2V:1H common practice")
            .example("UC.BASE.THICKNESS(\"150 kPa\"; \"0.3 m\"; \"100 kPa\")", "0.15", "1e-12 rel",
                     Origin::mathematics, "0.3 m x 150 kPa spread to 0.45 m at 2V:1H")
            .example("UC.BASE.THICKNESS(\"4500 psf\"; \"12 in\"; \"3000 psf\"; ; \"in\")", "6", "1e-9 rel",
                     Origin::mathematics, "12 in x 4500 psf spread to 18 in at 2V:1H")
            .caution("A strip on its own: where strips of neighbouring rows meet in the stone, see "
                     "UC.FOOT.PRESSURE. Local codes and a licensed engineer govern")
            .takes("pressure", "p", "Pressure under the strip")
            .within(usual::contact_pressure)
            .takes("loaded width", "w", "Width of the strip")
            .within(usual::foot_width)
            .takes("allowable", "p_a", "Pressure that the subgrade can bear")
            .within(usual::allowable_bearing)
            .takes("spread", "s", "Widening on each side; at most 1V:1H", u"2V:1H")
            .within(usual::load_spread)
            .gives("b", "Thickness of base stone"),
        function("UC.SIDEFILL.WIDTH", &calc::side_fill_width)
            .says("Width of side fill that the push of a loaded bed needs before the wall of the trench can "
                  "take it: "
                  "the limit of excavation beyond the outer chambers")
            .also_called("limit of excavation, perimeter stone, side margin, embedment width")
            .related({"UC.EARTH.COEFFICIENT", "UC.BED.WIDTH"})
            .to_try("UC.SIDEFILL.WIDTH(\"60 kPa\"; \"0.75 m\"; \"40 kPa\"; ; \"mm\")")
            .to_try("UC.SIDEFILL.WIDTH(\"1000 psf\"; \"30 in\"; \"800 psf\"; ; \"in\")")
            .sketch(Sketch::bed_section)
            .equation("m = max(0, h (p/p_a - 1)/(2 s))")
            .source("equilibrium of a push that spreads upward and downward; 2V:1H common practice")
            .example("UC.SIDEFILL.WIDTH(\"60 kPa\"; \"1.2 m\"; \"40 kPa\")", "0.6", "1e-12 rel",
                     Origin::mathematics, "a push over 1.2 m spread to 1.8 m at 2V:1H")
            .example("UC.SIDEFILL.WIDTH(\"1200 psf\"; \"30 in\"; \"800 psf\"; ; \"in\")", "15", "1e-9 rel",
                     Origin::mathematics, "a push over 30 in spread to 45 in at 2V:1H")
            .caution("Needs half of the widening as firm ground or base stone below and as cover above. "
                     "Local codes "
                     "and a licensed engineer govern")
            .takes("lateral pressure", "p", "Lateral pressure of the loaded bed on the side fill")
            .within(usual::lateral_pressure)
            .takes("height", "h", "Height over which it acts")
            .within(usual::bed_height)
            .takes("allowable", "p_a", "Lateral pressure that the wall of the trench can take")
            .within(usual::allowable_lateral)
            .takes("spread", "s", "Widening on each side; at most 1V:1H", u"2V:1H")
            .within(usual::load_spread)
            .gives("m", "Width of side fill"),
    };
}

}  // namespace undercroft::addin
