#include "calc/ground/fill_load.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> fill_load_functions() {
    return {
        function("UC.LOAD.FILL",
                 [](std::vector<std::tuple<Length, UnitWeight>> layers) { return calc::fill_load(layers); })
            .says("Pressure under layers of fill")
            .also_called("dead load, overburden, soil prism, backfill weight")
            .related({"UC.LOAD.WHEEL", "UC.FOOT.PRESSURE", "UC.UPLIFT.FACTOR"})
            .to_try("UC.LOAD.FILL({\"0.3 m\";\"18 kN/m3\"|\"0.6 m\";\"19 kN/m3\"})")
            .to_try("UC.LOAD.FILL({\"ft\";\"lbf/ft3\"|1;120|2;110}; \"psf\")")
            .refuses("UC.LOAD.FILL({\"0.3 m\";\"1800 kg/m3\"})")
            .sketch(Sketch::wheel)
            .equation("p = sum t gamma")
            .source("elementary statics")
            .example("UC.LOAD.FILL({\"m\";\"kN/m3\"|0.3;18|0.45;20|0.25;23})", "20.15", "1e-12 rel",
                     Origin::mathematics, "5.4 + 9.0 + 5.75 kPa")
            .example("UC.LOAD.FILL({\"ft\";\"lbf/ft3\"|1;120|1.5;110}; \"psf\")", "285", "1e-9 rel",
                     Origin::mathematics, "120 + 165 psf")
            .caution(engineer_governs)
            .takes("layers", "t, gamma", "Two columns: thickness, unit weight")
            .within({usual::layer_thickness.or_zero(), usual::unit_weight})
            .gives("p", "Pressure"),
    };
}

}  // namespace undercroft::addin
