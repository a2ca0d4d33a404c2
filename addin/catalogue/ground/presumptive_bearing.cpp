#include "calc/ground/presumptive_bearing.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::PresumptiveClass> {
    static constexpr std::string_view kind = "a class of the table";
    static constexpr Choice<calc::PresumptiveClass> list[] = {
        {"crystalline bedrock", calc::PresumptiveClass::crystalline_bedrock},
        {"sedimentary rock|foliated rock|sedimentary and foliated rock",
         calc::PresumptiveClass::foliated_rock},
        {"gravel|sandy gravel|GW|GP", calc::PresumptiveClass::gravel},
        {"sand|silty sand|clayey sand|silty gravel|clayey gravel|SW|SP|SM|SC|GM|GC",
         calc::PresumptiveClass::sand},
        {"clay|sandy clay|silty clay|clayey silt|silt|sandy silt|CL|ML|MH|CH", calc::PresumptiveClass::clay},
    };
};

std::vector<Function> presumptive_bearing_functions() {
    return {
        function("UC.BEARING.PRESUMPTIVE", &calc::presumptive_bearing)
            .says("Bearing pressure that a building code allows where the ground was not tested")
            .also_called("allowable bearing, code bearing, safe bearing, SBC")
            .related({"UC.BEARING.CAPACITY", "UC.FOOT.PRESSURE"})
            .to_try("UC.BEARING.PRESUMPTIVE(\"gravel\")")
            .to_try("UC.BEARING.PRESUMPTIVE(\"SM\"; \"psf\")")
            .refuses("UC.BEARING.PRESUMPTIVE(\"peat\")")
            .equation("table")
            .source("International Building Code (2012), Table 1806.2: 12000, 4000, 3000, 2000, 1500 lbf/ft2")
            .example("UC.BEARING.PRESUMPTIVE(\"gravel\"; \"psf\")", "3000", "1e-9 rel", Origin::published,
                     "International Building Code (2012), Table 1806.2, as three pages reproduce it")
            .example("UC.BEARING.PRESUMPTIVE(\"clay\"; \"psf\")", "1500", "1e-9 rel", Origin::published,
                     "International Building Code (2012), Table 1806.2, as three pages reproduce it")
            .caution(
                "Not for fill, mud, peat or organic soil, and no substitute for testing. Local codes and a "
                "licensed engineer govern")
            .takes("ground", "ground",
                   "crystalline bedrock, sedimentary rock, gravel (GW, GP), sand (SW, SP, SM, SC, GM, GC) or "
                   "clay "
                   "and silt (CL, ML, MH, CH)")
            .gives("q_a", "Allowable bearing pressure"),
    };
}

}  // namespace undercroft::addin
