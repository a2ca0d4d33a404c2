#include "calc/ground/plant_load.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> plant_load_functions() {
    return {
        function("UC.LOAD.PLANT", [](std::vector<std::tuple<Force, Length, Length, Length, Length>> patches,
                                     Length depth) { return calc::plant_load(patches, depth); })
            .says("Greatest stress at a depth under plant that stands on tracks, drums or wheels, each a "
                  "loaded "
                  "patch; for the cover over a structure that plant may cross")
            .also_called("construction load, compaction plant, roller, tracked excavator, crane")
            .related({"UC.LOAD.RECTANGLE", "UC.LOAD.WHEEL"})
            .to_try("UC.LOAD.PLANT({\"25 kN\";\"0.1 m\";\"1.2 m\";\"0 m\";\"0 m\"|\"25 kN\";\"0.1 m\";\"1.2 "
                    "m\";\"2 m\";\"0 m\"}; \"0.45 m\")")
            .to_try("UC.LOAD.PLANT({\"kip\";\"ft\";\"ft\";\"ft\";\"ft\"|20;2;12;0;0|20;2;12;0;7}; \"1.5 "
                    "ft\"; \"psf\")")
            .sketch(Sketch::point)
            .equation(
                "sigma = sum over patches of P/(L W) times the four corner influences, at the worst point")
            .source("Boussinesq (1885); Newmark, University of Illinois Circular 24 (1935), superposed")
            .example("UC.LOAD.PLANT({\"kN\";\"m\";\"m\";\"m\";\"m\"|50;1;1;0;0}; \"0.5 m\")", "35.0443",
                     "5e-5", Origin::mathematics,
                     "50 kPa on 1 m x 1 m: four corners of m = n = 1, 4 x 0.175222")
            .example("UC.LOAD.PLANT({\"kip\";\"in\";\"in\";\"m\";\"m\"|16;10;20;0;0}; \"2 ft\"; \"ksf\")",
                     "1.62067", "5e-6", Origin::mathematics,
                     "11.52 ksf on 10 in x 20 in: four corners of m = 0.2083, n = 0.4167, I = 0.035171")
            .caution("Static: for a vibrating drum add its centrifugal force to the load. Uniform elastic "
                     "ground is "
                     "assumed. Local codes and a licensed engineer govern")
            .takes("patches", "P, L, W, x, y",
                   "Five columns: load, length along x, width along y, place x and y of the centre")
            .within({usual::plant_load, usual::patch_side, usual::patch_side, usual::plant_place,
                     usual::plant_place})
            .takes("depth", "z", "Depth below the patches, such as the cover")
            .within(usual::depth_below_load)
            .gives("sigma", "Vertical stress"),
    };
}

}  // namespace undercroft::addin
