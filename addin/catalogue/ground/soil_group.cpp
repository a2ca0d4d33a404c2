#include "calc/ground/soil_group.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::Plasticity> {
    static constexpr std::string_view kind = "the word for a soil without plasticity";
    static constexpr Choice<calc::Plasticity> list[] = {
        {"NP|non-plastic|non plastic|nonplastic", calc::Plasticity::non_plastic},
    };
};

namespace {

constexpr const char* soil_caution =
    "Half percents are rounded up to whole ones first. Local codes and a licensed engineer govern";
constexpr const char* das_page = "example after Das, as worked on a public page";

Entry& takes_limits(Entry& entry) {
    return entry.takes("liquid limit", "LL", "Liquid limit in percent, or NP where it cannot be found")
        .within(usual::liquid_limit)
        .takes("plasticity index", "PI",
               "Plasticity index in percent, or NP for a non-plastic soil; 0 is refused")
        .within(usual::plasticity_index);
}

}  // namespace

std::vector<Function> soil_group_functions() {
    auto group = function("UC.SOIL.GROUP", [](calc::Percent passing_2_mm, calc::Percent passing_0425_mm,
                                              calc::Percent passing_0075_mm, calc::Consistency liquid_limit,
                                              calc::Consistency plasticity_index) {
        return calc::soil_group(
            {passing_2_mm, passing_0425_mm, passing_0075_mm, liquid_limit, plasticity_index});
    });
    group.says("AASHTO group of a soil from three sieves and its limits, such as A-2-4")
        .also_called("AASHTO classification, M 145, Atterberg limits, LL, PI, No. 200, fines")
        .related({"UC.SOIL.INDEX", "UC.GRADING.SIZE"})
        .to_try("UC.SOIL.GROUP(48; 27; 9; 24; 4)")
        .to_try("UC.SOIL.GROUP(\"95 %\"; \"85 %\"; \"60 %\"; 30; 12)")
        .to_try("UC.SOIL.GROUP(90; 70; 5; \"NP\"; \"NP\")")
        .refuses("UC.SOIL.GROUP(0.95; 0.85; 0.6; 30; 12)")
        .refuses("UC.SOIL.GROUP(27; 48; 9; 24; 4)")
        .equation("first group that fits in the order A-1-a, A-1-b, A-3, A-2-4 to A-2-7, A-4 to A-7-6")
        .source("AASHTO M 145, Table 1")
        .example("UC.SOIL.GROUP(100; 80; 58; 30; 10)", "A-4", "exact", Origin::published, das_page)
        .example("UC.SOIL.GROUP(74.28; 31.64; \"0 %\"; \"NP\"; \"NP\")", "A-1-b", "exact", Origin::published,
                 das_page)
        .example("UC.SOIL.GROUP(97; 59.4; \"1.2 %\"; \"NP\"; \"NP\")", "A-3", "exact", Origin::published,
                 das_page)
        .caution(soil_caution)
        .takes("passing 2 mm", "p10", "Percentage passing 2 mm (No. 10)")
        .within(usual::passing)
        .takes("passing 0.425 mm", "p40", "Percentage passing 0.425 mm (No. 40)")
        .within(usual::passing)
        .takes("passing 0.075 mm", "F", "Percentage passing 0.075 mm (No. 200)")
        .within(usual::passing);
    takes_limits(group).gives("group", "AASHTO group");

    auto index = function("UC.SOIL.INDEX", [](calc::Percent passing_0075_mm, calc::Consistency liquid_limit,
                                              calc::Consistency plasticity_index) {
        return calc::soil_index(passing_0075_mm, liquid_limit, plasticity_index);
    });
    index.says("AASHTO group index of a soil: 0 is good ground, 20 and more is poor")
        .also_called("group index, GI, AASHTO, subgrade rating")
        .related({"UC.SOIL.GROUP"})
        .to_try("UC.SOIL.INDEX(60; 30; 12)")
        .equation(
            "GI = (F - 35)(0.2 + 0.005 (LL - 40)) + 0.01 (F - 15)(PI - 10), whole and at least 0; "
            "F <= 35: "
            "the second term alone where PI >= 11, else 0")
        .source("AASHTO M 145; 0 for non-plastic soils")
        .example("UC.SOIL.INDEX(58; 30; 10)", "3", "exact", Origin::published,
                 "example after Das, as worked on a public page: 3.45, whole 3")
        .example("UC.SOIL.INDEX(40; 20; 2)", "0", "exact", Origin::mathematics,
                 "AASHTO M 145: terms are summed with their signs, 0.5 - 2, and the total is not below 0")
        .example("UC.SOIL.INDEX(55; 40; 25)", "10", "exact", Origin::from_memory,
                 "AASHTO M 145, example of the standard")
        .example("UC.SOIL.INDEX(80; 90; 50)", "46", "exact", Origin::from_memory,
                 "AASHTO M 145, example of the standard")
        .caution(soil_caution)
        .takes("passing 0.075 mm", "F", "Percentage passing 0.075 mm (No. 200)")
        .within(usual::passing);
    takes_limits(index).gives("GI", "Group index");

    return {group, index};
}

}  // namespace undercroft::addin
