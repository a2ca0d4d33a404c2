#include "calc/ground/stone.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices_ground.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/ground/compaction.hpp"

namespace undercroft::addin {

namespace {

using GradingRows = std::vector<std::tuple<Length, calc::Percent>>;
using EnvelopeRows = std::vector<std::tuple<Length, calc::Percent, calc::Percent>>;

constexpr const char* grading_says =
    "Two columns: sieve size, percentage passing; the first row says mm and %";
constexpr const char* non_plastic_says =
    "Plasticity index in percent, or NP for a non-plastic soil; 0 is refused";
constexpr const char* soil_caution =
    "Half percents are rounded up to whole ones first. Local codes and a licensed engineer govern";

Function group_entry() {
    return function(
               "UC.SOIL.GROUP",
               [](calc::Percent passing_2_mm, calc::Percent passing_0425_mm, calc::Percent passing_0075_mm,
                  calc::Consistency liquid_limit, calc::Consistency plasticity_index) {
                   return calc::soil_group(
                       {passing_2_mm, passing_0425_mm, passing_0075_mm, liquid_limit, plasticity_index});
               })
        .says("AASHTO group of a soil from three sieves and its limits, such as A-2-4")
        .equation("first group that fits in the order A-1-a, A-1-b, A-3, A-2-4 to A-2-7, A-4 to A-7-6")
        .source("AASHTO M 145, Table 1")
        .example("UC.SOIL.GROUP(100; 80; 58; 30; 10)", "A-4", "exact", Origin::published,
                 "worked example after Das on a public page, CLS-2: A-4(3)")
        .example("UC.SOIL.GROUP(74.28; 31.64; 0; \"NP\"; \"NP\")", "A-1-b", "exact", Origin::published,
                 "worked example after Das on a public page, CLS-4")
        .example("UC.SOIL.GROUP(97; 59.4; 1.2; \"NP\"; \"NP\")", "A-3", "exact", Origin::published,
                 "worked example after Das on a public page, CLS-5")
        .caution(soil_caution)
        .takes("passing 2 mm", "p10", "Percentage passing 2 mm (No. 10)")
        .takes("passing 0.425 mm", "p40", "Percentage passing 0.425 mm (No. 40)")
        .takes("passing 0.075 mm", "p200", "Percentage passing 0.075 mm (No. 200)")
        .takes("liquid limit", "LL", "Liquid limit in percent, or NP where it cannot be found")
        .takes("plasticity index", "PI", non_plastic_says)
        .gives("group", "AASHTO group");
}

Function fits_entry() {
    return function("UC.GRADING.FITS",
                    [](GradingRows grading, std::variant<calc::StoneSize, EnvelopeRows> envelope) {
                        return calc::grading_fits(grading, envelope);
                    })
        .says("Whether a grading lies within an envelope: a published size number, or a table of limits")
        .equation("least <= passing <= most at each sieve of the envelope")
        .source(
            "AASHTO M 43 / ASTM D448, Table 1 (sizes 57 and 67 as in Iowa DOT IM 209, Appendix D; 3, 357, 4, "
            "467, 5 and 56 from memory); sieves in inches by ASTM E11")
        .example("UC.GRADING.FITS({\"mm\";\"%\"|37.5;100|25;97|12.5;40|4.75;5|2.36;2}; \"No. 57\")", "1",
                 "exact", Origin::published, "AASHTO M 43, size 57, as in Iowa DOT IM 209, Appendix D")
        .example("UC.GRADING.FITS({\"mm\";\"%\"|37.5;100|25;94|12.5;40|4.75;5|2.36;2}; \"No. 57\")", "0",
                 "exact", Origin::published, "the same: 94 % at 25 mm is less than 95 %")
        .caution(
            "Compare the size with the edition of the standard in the contract. Local codes and a licensed "
            "engineer govern")
        .takes("grading", "d, p", grading_says)
        .takes(
            "envelope", "envelope",
            "No. 3, No. 357, No. 4, No. 467, No. 5, No. 56, No. 57 or No. 67; or three columns: sieve size, "
            "least and most percentage passing")
        .gives("fits", "Whether it fits");
}

std::vector<Function> soil_entries() {
    return {
        group_entry(),
        function("UC.SOIL.INDEX",
                 [](calc::Percent passing_0075_mm, calc::Consistency liquid_limit,
                    calc::Consistency plasticity_index) {
                     return calc::soil_index(passing_0075_mm, liquid_limit, plasticity_index);
                 })
            .says("AASHTO group index of a soil: 0 is good ground, 20 and more is poor")
            .equation("GI = (F - 35)(0.2 + 0.005 (LL - 40)) + 0.01 (F - 15)(PI - 10), whole and at least 0; "
                      "F <= 35: "
                      "the second term alone where PI >= 11, else 0")
            .source("AASHTO M 145; 0 for non-plastic soils")
            .example("UC.SOIL.INDEX(58; 30; 10)", "3", "exact", Origin::published,
                     "the same: GI 3.45, whole 3")
            .example("UC.SOIL.INDEX(40; 20; 2)", "0", "exact", Origin::mathematics,
                     "CLS-7: terms are summed with their signs, the total is not below 0")
            .example("UC.SOIL.INDEX(55; 40; 25)", "10", "exact", Origin::from_memory,
                     "AASHTO M 145, example of the standard")
            .example("UC.SOIL.INDEX(80; 90; 50)", "46", "exact", Origin::from_memory,
                     "AASHTO M 145, example of the standard")
            .caution(soil_caution)
            .takes("passing 0.075 mm", "F", "Percentage passing 0.075 mm (No. 200)")
            .takes("liquid limit", "LL", "Liquid limit in percent, or NP where it cannot be found")
            .takes("plasticity index", "PI", non_plastic_says)
            .gives("GI", "Group index"),
        function(
            "UC.GRADING.SIZE",
            [](GradingRows grading, calc::Percent percent) { return calc::grading_size(grading, percent); })
            .says("Size that a percentage of a grading passes, such as D10 or D85")
            .equation("log d straight against p between two sieves")
            .source("common practice (grading plotted on a logarithmic axis of size)")
            .example("UC.GRADING.SIZE({\"mm\";\"%\"|1;0|100;100}; 50; \"mm\")", "10", "1e-12 rel",
                     Origin::mathematics, "half-way on a logarithmic axis")
            .takes("grading", "d, p", grading_says)
            .takes("percent", "p", "Percentage passing, such as 85")
            .gives("D", "Size"),
        function("UC.GRADING.UNIFORMITY",
                 [](GradingRows grading) { return calc::grading_uniformity(grading); })
            .says("Coefficient of uniformity of a grading")
            .equation("Cu = D60/D10")
            .source("ASTM D2487")
            .example("UC.GRADING.UNIFORMITY({\"mm\";\"%\"|0.11;10|0.25;30|0.48;60})", "4.36", "0.005",
                     Origin::published,
                     "Das and Sobhan, Principles of Geotechnical Engineering, 9th ed., Problem 2.1")
            .example("UC.GRADING.UNIFORMITY({\"mm\";\"%\"|0.3;10|0.41;30|0.77;60})", "2.57", "0.005",
                     Origin::published, "Das and Sobhan, Problem 2.2")
            .takes("grading", "d, p", grading_says)
            .gives("Cu", "Coefficient of uniformity"),
        function("UC.GRADING.CURVATURE", [](GradingRows grading) { return calc::grading_curvature(grading); })
            .says("Coefficient of curvature of a grading")
            .equation("Cc = D30^2/(D10 D60)")
            .source("ASTM D2487")
            .example("UC.GRADING.CURVATURE({\"mm\";\"%\"|0.11;10|0.25;30|0.48;60})", "1.18", "0.005",
                     Origin::published, "Das and Sobhan, Problem 2.1")
            .takes("grading", "d, p", grading_says)
            .gives("Cc", "Coefficient of curvature"),
        fits_entry(),
    };
}

std::vector<Function> fill_entries() {
    return {
        function("UC.STONE.POROSITY", &calc::stone_porosity)
            .says("Porosity of stone from its bulk density and the density of its particles")
            .equation("n = 1 - rho_b/rho_s")
            .source("ASTM C29/C29M, voids in aggregates")
            .example("UC.STONE.POROSITY(\"1600 kg/m3\"; \"2650 kg/m3\")", "0.396226", "5e-7",
                     Origin::mathematics, "ASTM C29 relation, shared checks, ground 8")
            .takes("bulk density", "rho_b", "Dry mass per volume of stone as laid")
            .takes("particle density", "rho_s", "Dry mass per volume of the particles")
            .gives("n", "Porosity"),
        function("UC.STONE.MASS", &calc::stone_mass)
            .says("Mass of stone that fills a volume")
            .equation("M = V (1 - n) rho_s")
            .source("ASTM C29/C29M, voids in aggregates")
            .example("UC.STONE.MASS(\"100 m3\"; \"40 %\"; \"2650 kg/m3\"; \"t\")", "159", "1e-12 rel",
                     Origin::mathematics, "60 m3 of particles")
            .takes("volume", "V", "Volume to fill, as laid")
            .takes("porosity", "n", "Porosity of the stone")
            .takes("particle density", "rho_s", "Dry mass per volume of the particles")
            .gives("M", "Mass of stone"),
        function("UC.LIFTS", &calc::lifts)
            .says("Number of lifts for a thickness")
            .equation("N = ceil(T/t)")
            .source("common practice")
            .example("UC.LIFTS(\"900 mm\"; \"300 mm\")", "3", "exact", Origin::common_practice,
                     "an exact multiple is not one lift more")
            .example("UC.LIFTS(\"1 m\"; \"300 mm\")", "4", "exact", Origin::common_practice, "rounded up")
            .takes("thickness", "T", "Thickness of the layer, compacted")
            .takes("greatest lift", "t", "Greatest thickness of one lift, compacted")
            .gives("N", "Lifts"),
        function("UC.COMPACTION.DRY", &calc::dry_density)
            .says("Dry density of fill from its wet density and moisture")
            .equation("rho_d = rho/(1 + w)")
            .source("Das, Principles of Geotechnical Engineering: sand-cone test")
            .example("UC.COMPACTION.DRY(\"2.05 t/m3\"; \"12 %\"; \"t/m3\")", "1.830357", "5e-7",
                     Origin::mathematics, "shared checks, ground 11")
            .example("UC.COMPACTION.DRY(\"124.094 lb/ft3\"; \"11.11 %\"; \"lb/ft3\")", "111.686", "1e-3",
                     Origin::mathematics,
                     "public course blog (inputs read), CMP-1 recomputed: sand cone in US units")
            .takes("wet density", "rho", "Mass per volume as it lies")
            .takes("moisture", "w", "Mass of water per mass of dry soil, such as 12 %")
            .gives("rho_d", "Dry density"),
        function("UC.COMPACTION.DEGREE", &calc::compaction_degree)
            .says("Relative compaction: dry density in the field over that of the laboratory")
            .equation("R = rho_d/rho_ref")
            .source("Das, Principles of Geotechnical Engineering: sand-cone test")
            .example("UC.COMPACTION.DEGREE(\"1.830357 t/m3\"; \"1.92 t/m3\")", "0.95331", "5e-6",
                     Origin::mathematics, "shared checks, ground 11")
            .example("UC.COMPACTION.DEGREE(\"1892.1 kg/m3\"; \"1937.5 kg/m3\")", "0.977", "0.3 %",
                     Origin::from_memory,
                     "Das, Principles of Geotechnical Engineering, sand-cone example: R about 97.7 %")
            .takes("dry density", "rho_d", "Dry density in the field")
            .takes("reference density", "rho_ref", "Greatest dry density of the laboratory's compaction test")
            .gives("R", "Relative compaction"),
    };
}

}  // namespace

Group stone_functions() {
    Group group{"Soil, stone and fill", soil_entries()};
    for (Function& entry : fill_entries()) group.functions.push_back(std::move(entry));
    return group;
}

}  // namespace undercroft::addin
