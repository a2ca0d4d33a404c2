#include "calc/stone.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::addin {

Group stone_functions() {
    return {"Soil, stone and fill",
            {
                function("UC.STONE.POROSITY", &calc::stone_porosity)
                    .says("Porosity of stone from its bulk density and the density of its particles")
                    .equation("n = 1 - rho_b/rho_s")
                    .source("ASTM C29/C29M, voids in aggregates")
                    .takes("bulk density", "rho_b", "Dry mass per volume of stone as laid")
                    .takes("particle density", "rho_s", "Dry mass per volume of the particles")
                    .gives("n", "Porosity"),
                function("UC.STONE.MASS", &calc::stone_mass)
                    .says("Mass of stone that fills a volume")
                    .equation("M = V (1 - n) rho_s")
                    .source("ASTM C29/C29M, voids in aggregates")
                    .takes("volume", "V", "Volume to fill, as laid")
                    .takes("porosity", "n", "Porosity of the stone")
                    .takes("particle density", "rho_s", "Dry mass per volume of the particles")
                    .gives("M", "Mass of stone"),
                function("UC.LIFTS", &calc::lifts)
                    .says("Number of lifts for a thickness")
                    .equation("N = ceil(T/t)")
                    .source("common practice")
                    .takes("thickness", "T", "Thickness of the layer, compacted")
                    .takes("greatest lift", "t", "Greatest thickness of one lift, compacted")
                    .gives("N", "Lifts"),
            }};
}

}  // namespace undercroft::addin
