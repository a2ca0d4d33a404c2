#include "calc/ground/compaction.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> compaction_functions() {
    return {
        function("UC.COMPACTION.DRY", &calc::dry_density)
            .says("Dry density of fill from its wet density and moisture")
            .also_called("Proctor, dry density, moisture, water content, sand cone, nuclear gauge")
            .related({"UC.COMPACTION.DEGREE", "UC.LIFTS"})
            .to_try("UC.COMPACTION.DRY(\"2.05 t/m3\"; \"12 %\"; \"t/m3\")")
            .to_try("UC.COMPACTION.DRY(\"128 lb/ft3\"; \"12 %\"; \"lb/ft3\")")
            .refuses("UC.COMPACTION.DRY(\"2.05 t/m3\"; 12; \"t/m3\")")
            .equation("rho_d = rho/(1 + w)")
            .source("Das, Principles of Geotechnical Engineering: sand-cone test")
            .example("UC.COMPACTION.DRY(\"2.05 t/m3\"; \"12 %\"; \"t/m3\")", "1.830357", "5e-7",
                     Origin::mathematics, "2.05/1.12")
            .example("UC.COMPACTION.DRY(\"124.094 lb/ft3\"; \"11.11 %\"; \"lb/ft3\")", "111.686", "1e-3",
                     Origin::mathematics,
                     "sand-cone test of a public course page, recomputed: 124.094/1.1111")
            .takes("wet density", "rho", "Mass per volume as it lies")
            .within(usual::fill_density)
            .takes("moisture", "w", "Mass of water per mass of dry soil, such as 12 %")
            .within(usual::moisture)
            .gives("rho_d", "Dry density"),
        function("UC.COMPACTION.DEGREE", &calc::compaction_degree)
            .says("Relative compaction: dry density in the field over that of the laboratory")
            .also_called("relative compaction, MDD, field density, percent compaction")
            .related({"UC.COMPACTION.DRY", "UC.LIFTS"})
            .to_try("UC.COMPACTION.DEGREE(\"1.83 t/m3\"; \"1.92 t/m3\")")
            .to_try("UC.COMPACTION.DEGREE(\"114 lb/ft3\"; \"120 lb/ft3\")")
            .equation("R = rho_d/rho_ref")
            .source("Das, Principles of Geotechnical Engineering: sand-cone test")
            .example("UC.COMPACTION.DEGREE(\"1.830357 t/m3\"; \"1.92 t/m3\")", "0.95331", "5e-6",
                     Origin::mathematics, "1.830357/1.92")
            .example("UC.COMPACTION.DEGREE(\"1892.1 kg/m3\"; \"1937.5 kg/m3\")", "0.977", "0.3 %",
                     Origin::from_memory,
                     "Das, Principles of Geotechnical Engineering, sand-cone example: R about 97.7 %")
            .takes("dry density", "rho_d", "Dry density in the field")
            .within(usual::fill_density)
            .takes("reference density", "rho_ref", "Greatest dry density of the laboratory's compaction test")
            .within(usual::fill_density)
            .gives("R", "Relative compaction"),
        function("UC.DENSITY.ZEROAIR", &calc::zero_air_density)
            .says("Dry density of soil without air voids at a moisture, which no test of its fill can exceed")
            .related({"UC.COMPACTION.DRY", "UC.COMPACTION.DEGREE", "UC.POROSITY.BUILT"})
            .also_called("zero air voids line, saturation line, Proctor curve, maximum possible density")
            .equation("rho_z = (1 - a) rho_w G/(1 + w G), G = rho_s/rho_w")
            .source("Das, Principles of Geotechnical Engineering, weight-volume relationships")
            .example("UC.DENSITY.ZEROAIR(\"2700 kg/m3\"; \"12 %\")", "2039.274924", "5e-7",
                     Origin::mathematics, "2700/(1 + 0.12 x 2.7)")
            .example("UC.DENSITY.ZEROAIR(\"165 lb/ft3\"; \"10 %\"; ; \"62.4 lb/ft3\"; \"lb/ft3\")",
                     "130.494297", "5e-7", Origin::mathematics, "165/(1 + 0.1 x 165/62.4)")
            .caution("A test above it is wrong in density, moisture or grain density")
            .takes("particle density", "rho_s", "Dry mass per volume of the grains")
            .within(usual::grain_density)
            .takes("moisture", "w", "Mass of water per mass of dry soil")
            .within(usual::moisture)
            .takes("air", "a", "Volume of air per volume of soil; 0 for the line of zero air voids", 0.0)
            .within(usual::air)
            .takes("water density", "rho_w", "Density of the water", u"1000 kg/m3")
            .within(usual::water_density)
            .gives("rho_z", "Dry density"),
    };
}

}  // namespace undercroft::addin
