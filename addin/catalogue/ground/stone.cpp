#include "calc/ground/stone.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"
#include "addin/catalogue/usual_works.hpp"

namespace undercroft::addin {

std::vector<Function> stone_functions() {
    return {
        function("UC.STONE.POROSITY", &calc::stone_porosity)
            .says("Porosity of stone from its bulk density and the density of its particles")
            .equation("n = 1 - rho_b/rho_s")
            .source("ASTM C29/C29M, voids in aggregates")
            .example("UC.STONE.POROSITY(\"1600 kg/m3\"; \"2650 kg/m3\")", "0.396226", "5e-7",
                     Origin::mathematics, "1 - 1600/2650")
            .example("UC.STONE.POROSITY(\"99 lb/ft3\"; \"165 lb/ft3\")", "0.4", "1e-9 rel",
                     Origin::mathematics, "1 - 99/165")
            .takes("bulk density", "rho_b", "Dry mass per volume of stone as laid")
            .within(usual::bulk_density)
            .takes("particle density", "rho_s", "Dry mass per volume of the particles")
            .within(usual::particle_density)
            .gives("n", "Porosity"),
        function("UC.STONE.MASS", &calc::stone_mass)
            .says("Mass of stone that fills a volume")
            .equation("M = V (1 - n) rho_s")
            .source("ASTM C29/C29M, voids in aggregates")
            .example("UC.STONE.MASS(\"100 m3\"; \"40 %\"; \"2650 kg/m3\"; \"t\")", "159", "1e-12 rel",
                     Origin::mathematics, "60 m3 of particles")
            .example("UC.STONE.MASS(\"100 yd3\"; \"40 %\"; \"165 lb/ft3\"; \"short ton\")", "133.65",
                     "1e-9 rel", Origin::mathematics, "1620 ft3 of particles")
            .takes("volume", "V", "Volume to fill, as laid")
            .within(usual::dug_volume)
            .takes("porosity", "n", "Porosity of the stone")
            .within(usual::porosity)
            .takes("particle density", "rho_s", "Dry mass per volume of the particles")
            .within(usual::particle_density)
            .gives("M", "Mass of stone"),
        function("UC.LIFTS", &calc::lifts)
            .says("Number of lifts for a thickness")
            .equation("N = ceil(T/t)")
            .source("common practice")
            .example("UC.LIFTS(\"900 mm\"; \"300 mm\")", "3", "exact", Origin::common_practice,
                     "an exact multiple is not one lift more")
            .example("UC.LIFTS(\"1 m\"; \"300 mm\")", "4", "exact", Origin::common_practice, "rounded up")
            .takes("thickness", "T", "Thickness of the layer, compacted")
            .within(usual::filled_thickness)
            .takes("greatest lift", "t", "Greatest thickness of one lift, compacted")
            .within(usual::lift)
            .gives("N", "Lifts"),
    };
}

}  // namespace undercroft::addin
