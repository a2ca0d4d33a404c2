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
            .takes("grading", "d, p", grading_says)
            .takes("percent", "p", "Percentage passing, such as 85")
            .gives("D", "Size"),
        function("UC.GRADING.UNIFORMITY",
                 [](GradingRows grading) { return calc::grading_uniformity(grading); })
            .says("Coefficient of uniformity of a grading")
            .equation("Cu = D60/D10")
            .source("ASTM D2487")
            .takes("grading", "d, p", grading_says)
            .gives("Cu", "Coefficient of uniformity"),
        function("UC.GRADING.CURVATURE", [](GradingRows grading) { return calc::grading_curvature(grading); })
            .says("Coefficient of curvature of a grading")
            .equation("Cc = D30^2/(D10 D60)")
            .source("ASTM D2487")
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
        function("UC.COMPACTION.DRY", &calc::dry_density)
            .says("Dry density of fill from its wet density and moisture")
            .equation("rho_d = rho/(1 + w)")
            .source("Das, Principles of Geotechnical Engineering: sand-cone test")
            .takes("wet density", "rho", "Mass per volume as it lies")
            .takes("moisture", "w", "Mass of water per mass of dry soil, such as 12 %")
            .gives("rho_d", "Dry density"),
        function("UC.COMPACTION.DEGREE", &calc::compaction_degree)
            .says("Relative compaction: dry density in the field over that of the laboratory")
            .equation("R = rho_d/rho_ref")
            .source("Das, Principles of Geotechnical Engineering: sand-cone test")
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
