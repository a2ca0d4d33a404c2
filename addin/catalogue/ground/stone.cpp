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
            .also_called("voids, void ratio, air voids, specific gravity, bulk density")
            .related({"UC.STONE.MASS", "UC.BED.VOLUME"})
            .to_try("UC.STONE.POROSITY(\"1590 kg/m3\"; \"2650 kg/m3\")")
            .to_try("UC.STONE.POROSITY(\"99 lb/ft3\"; \"165 lb/ft3\")")
            .refuses("UC.STONE.POROSITY(\"2650 kg/m3\"; \"1590 kg/m3\")")
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
            .also_called("tonnage, stone quantity, tons of stone, aggregate order")
            .related({"UC.STONE.POROSITY", "UC.ORDER"})
            .to_try("UC.STONE.MASS(\"100 m3\"; \"38 %\"; \"2650 kg/m3\"; \"t\")")
            .to_try("UC.STONE.MASS(\"130 yd3\"; \"40 %\"; \"165 lb/ft3\"; \"short ton\")")
            .refuses("UC.STONE.MASS(\"100 m3\"; \"0.38 %\"; \"2650 kg/m3\"; \"t\")")
            .refuses("UC.STONE.MASS(213; 0.4; 2.65; \"t\")")
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
        function("UC.STONE.ORDER", &calc::stone_order_mass)
            .says("Mass of stone to order for a volume as laid, by its tested bulk density")
            .related({"UC.STONE.MASS", "UC.STONE.POROSITY", "UC.ORDER", "UC.COST", "UC.FILL.MASS"})
            .also_called("tonnes of stone, aggregate order, loose bulk density, crushed stone quantity")
            .equation("M = V rho_b (1 + w)(1 + waste)")
            .source("mass balance; bulk density by ASTM C29/C29M")
            .example("UC.STONE.ORDER(\"100 m3\"; \"1600 kg/m3\"; \"3 %\"; \"5 %\"; \"t\")", "173.04",
                     "1e-12 rel", Origin::mathematics, "160 x 1.03 x 1.05")
            .example("UC.STONE.ORDER(\"100 yd3\"; \"100 lb/ft3\"; ; ; \"short ton\")", "135", "1e-9 rel",
                     Origin::mathematics, "2700 ft3 of 100 lb/ft3")
            .caution("It is UC.STONE.MASS only where the design porosity is that of the tested density, 1 - "
                     "rho_b/rho_s")
            .takes("volume", "V", "Volume to fill, as laid")
            .within(usual::dug_volume)
            .takes("bulk density", "rho_b", "Dry mass per volume of stone as laid")
            .within(usual::bulk_density)
            .takes("moisture", "w", "Mass of water per mass of dry stone as delivered", 0.0)
            .within(usual::stone_moisture)
            .takes("waste", "waste", "Share added for spillage and what the subgrade takes", 0.0)
            .within(usual::waste)
            .gives("M", "Mass to order"),
        function("UC.POROSITY.BUILT", &calc::porosity_as_built)
            .says("Porosity of stone as built, from the mass that was laid and the volume that it fills as "
                  "surveyed")
            .related({"UC.STONE.POROSITY", "UC.BED.VOLUME", "UC.DENSITY.ZEROAIR"})
            .also_called("void ratio as built, voids in stone, in-place porosity, air voids of aggregate")
            .equation("n = 1 - M/((1 + w) V rho_s)")
            .source("mass balance; ASTM C29/C29M, voids in aggregates")
            .example("UC.POROSITY.BUILT(\"655800 kg\"; \"412.5 m3\"; \"2650 kg/m3\")", "0.400068611", "5e-9",
                     Origin::mathematics, "1 - 655.8/(412.5 x 2.65)")
            .example("UC.POROSITY.BUILT(\"135 short ton\"; \"100 yd3\"; \"165 lb/ft3\"; \"2 %\")",
                     "0.405822935", "5e-9", Origin::mathematics, "1 - 270000/(1.02 x 2700 x 165)")
            .caution(
                "The weighbridge weighs the water on the stone: leave no moisture out. Stone that went into "
                "soft ground or was left over is not in the volume")
            .takes("mass", "M", "Mass of stone laid, by the weighbridge")
            .within(usual::laid_mass)
            .takes("volume", "V", "Volume that it fills, as surveyed, without chambers")
            .within(usual::dug_volume)
            .takes("particle density", "rho_s", "Dry mass per volume of the particles")
            .within(usual::particle_density)
            .takes("moisture", "w", "Mass of water per mass of dry stone as weighed", 0.0)
            .within(usual::stone_moisture)
            .gives("n", "Porosity as built"),
        function("UC.LIFTS", &calc::lifts)
            .says("Number of lifts for a thickness")
            .also_called("layers, compaction layers, passes, lift thickness")
            .related({"UC.COMPACTION.DEGREE"})
            .to_try("UC.LIFTS(\"450 mm\"; \"150 mm\")")
            .to_try("UC.LIFTS(\"18 in\"; \"8 in\")")
            .refuses("UC.LIFTS(0.45; 150)")
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
