#include "calc/works/trench_soil.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::TrenchSoil> {
    static constexpr std::string_view kind = "a soil type of the excavation standard";
    static constexpr Choice<calc::TrenchSoil> list[] = {
        {"stable rock", calc::TrenchSoil::stable_rock},
        {"A|type A", calc::TrenchSoil::type_a},
        {"A short term|type A short term", calc::TrenchSoil::type_a_short_term},
        {"B|type B", calc::TrenchSoil::type_b},
        {"C|type C", calc::TrenchSoil::type_c},
    };
};

template <>
struct Choices<calc::Dewatering> {
    static constexpr std::string_view kind = "whether dewatering is confirmed";
    static constexpr Choice<calc::Dewatering> list[] = {
        {"no|none", calc::Dewatering::none},
        {"yes|confirmed", calc::Dewatering::confirmed},
    };
};

namespace {

constexpr const char* slope_table = "US 29 CFR 1926 Subpart P, Appendix B, Table B-1, as quoted";
constexpr const char* wet_soil =
    "US 29 CFR 1926 Subpart P, Appendix A, (b), as reproduced: submerged soil is type C";
constexpr const char* collapse =
    "Trench collapse kills. The soil type is for a competent person on site, and so is water that seeps from "
    "above; local codes and a licensed engineer govern";

Function batter_entry() {
    return function("UC.PIT.BATTER", &calc::wet_pit_batter)
        .says(
            "Steepest simple slope allowed for a soil type and depth, as run per rise; beyond the table a "
            "licensed engineer designs it")
        .also_called("sloping, benching, side slope, trench safety, allowable slope, angle of repose")
        .related({"UC.PIT.VOLUME", "UC.PIT.SIDE"})
        .to_try("UC.PIT.BATTER(\"C\"; \"2.2 m\")")
        .to_try("UC.PIT.BATTER(\"B\"; \"10 ft\")")
        .refuses("UC.PIT.BATTER(\"B\"; \"22 ft\")")
        .sketch(Sketch::pit)
        .equation(
            "stable rock 0; A 3/4; A short term 1/2 to 12 ft; B 1; C 1 1/2; to 20 ft; below groundwater the "
            "soil of UC.PIT.SOIL")
        .source("US 29 CFR 1926 Subpart P, Appendix A, (b), and Appendix B, Table B-1")
        .example("UC.PIT.BATTER(\"C\"; \"10 ft\")", "1.5", "exact", Origin::published, slope_table)
        .example("UC.PIT.BATTER(\"A short term\"; \"12 ft\")", "0.5", "exact", Origin::published,
                 "US 29 CFR 1926 Subpart P, Appendix B, Table B-1, footnote 2, as quoted")
        .example("UC.PIT.BATTER(\"stable rock\"; \"20 ft\")", "0", "exact", Origin::published, slope_table)
        .example("UC.PIT.BATTER(\"B\"; \"3 m\")", "1", "exact", Origin::published, slope_table)
        .example("UC.PIT.BATTER(\"A\"; \"6.1 m\")", "0.75", "exact", Origin::published,
                 "20 ft as the table prints it in metres")
        .example("UC.PIT.BATTER(\"B\"; \"3 m\"; \"0.4 m\")", "1.5", "exact", Origin::published, wet_soil)
        .example("UC.PIT.BATTER(\"B\"; \"3 m\"; \"0.4 m\"; \"yes\")", "1", "exact", Origin::published,
                 slope_table)
        .caution(collapse)
        .takes("soil type", "soil", "stable rock, A, A short term, B or C")
        .takes("depth", "d", "Depth of the excavation")
        .within(usual::trench_depth)
        .takes("water above formation", "h_w",
               "Highest groundwater above the formation; 0 where it stands below", 0.0)
        .within(usual::water_in_pit)
        .takes("dewatering", "dewatering", "yes where dewatering below the formation is confirmed", u"no")
        .gives("z", "Run per rise");
}

Function soil_entry() {
    return function("UC.PIT.SOIL",
                    [](calc::TrenchSoil soil, Length water_above_formation, calc::Dewatering dewatering) {
                        return std::string(
                            spelling_of(calc::soil_in_water(soil, water_above_formation, dewatering)));
                    })
        .says(
            "Soil type that counts for the walls of a pit: C where groundwater stands above the formation, "
            "but "
            "for stable rock and where dewatering is confirmed")
        .related({"UC.PIT.BATTER", "UC.PIT.SHORED", "UC.PIT.VOLUME"})
        .also_called(
            "soil classification of an excavation, OSHA type A B C, trench safety, groundwater in a pit")
        .equation("C for h_w > 0 without dewatering, else the soil's own type")
        .source(
            "US 29 CFR 1926 Subpart P, Appendix A, (b): type C is submerged soil or soil from which water is "
            "freely seeping (in reproductions)")
        .example("UC.PIT.SOIL(\"A\"; \"0.4 m\")", "C", "exact", Origin::published, wet_soil)
        .example("UC.PIT.SOIL(\"B\"; \"2 ft\"; \"yes\")", "B", "exact", Origin::common_practice,
                 "drained before it is dug, the soil keeps its type")
        .caution(collapse)
        .takes("soil type", "soil", "stable rock, A, A short term, B or C")
        .takes("water above formation", "h_w",
               "Highest groundwater above the formation; 0 where it stands below", 0.0)
        .within(usual::water_in_pit)
        .takes("dewatering", "dewatering", "yes where dewatering below the formation is confirmed", u"no")
        .gives("soil", "Soil type that counts");
}

}  // namespace

std::vector<Function> trench_soil_functions() {
    return {batter_entry(), soil_entry()};
}

}  // namespace undercroft::addin
