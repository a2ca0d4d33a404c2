#include "calc/works/spoil.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/spoil_soil.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::SpoilState> {
    static constexpr std::string_view kind = "a state";
    static constexpr Choice<calc::SpoilState> list[] = {
        {"loose", calc::SpoilState::loose},
        {"compacted", calc::SpoilState::compacted},
    };
};

std::vector<Function> spoil_functions() {
    return {
        function("UC.SPOIL.VOLUME",
                 [](Volume bank_volume, std::variant<calc::SpoilSoil, Share> soil, calc::SpoilState state) {
                     return calc::spoil_volume(bank_volume, soil, state);
                 })
            .says("Loose or compacted volume of what was dug from the bank")
            .also_called("bulking, swell, shrinkage, bank, loose, compacted, bank cubic yards")
            .related({"UC.SPOIL.LOADS", "UC.PIT.VOLUME"})
            .to_try("UC.SPOIL.VOLUME(\"1700 m3\"; \"loam\")")
            .to_try("UC.SPOIL.VOLUME(\"2000 yd3\"; \"clay\"; \"loose\"; \"yd3\")")
            .to_try("UC.SPOIL.VOLUME(\"639 m3\"; 1.3)")
            .refuses("UC.SPOIL.VOLUME(\"639 m3\"; 30)")
            .equation("V = k V_b")
            .source("US Army FM 5-434 (2000), Table 1-1")
            .example("UC.SPOIL.VOLUME(\"2625 m3\"; 1.15)", "3018.75", "1e-12 rel", Origin::mathematics,
                     "inputs of a public course page: swell 15 %")
            .example("UC.SPOIL.VOLUME(\"1000 yd3\"; 1.3; \"loose\"; \"yd3\")", "1300", "1e-12 rel",
                     Origin::published, "textbook on estimating, Example 9-2, scanned: clay, swell 30 %")
            .example("UC.SPOIL.VOLUME(\"100 yd3\"; \"sand\"; \"loose\"; \"yd3\")", "111", "0.5",
                     Origin::published,
                     "US Navy training manual, Table 10-1: 100 yd3 in place give 111 loose")
            .example("UC.SPOIL.VOLUME(\"100 yd3\"; \"sand\"; \"compacted\"; \"yd3\")", "95", "0.5",
                     Origin::published,
                     "US Navy training manual, Table 10-1: 100 yd3 in place give 95 compacted")
            .example("UC.SPOIL.VOLUME(\"1 m3\"; \"clay\")", "1.43", "0.005", Origin::from_memory,
                     "US Army FM 5-434 (2000), Table 1-1: clay, bank to loose")
            .example("UC.SPOIL.VOLUME(\"1 m3\"; \"rock\"; \"compacted\")", "1.3", "0.005",
                     Origin::from_memory,
                     "US Army FM 5-434 (2000), Table 1-1: blasted rock, bank to compacted")
            .takes("bank volume", "V_b", "Volume in the ground")
            .within(usual::dug_volume)
            .takes("soil", "k", "sand, loam, clay, rock or coral; or the factor itself, such as 1.25")
            .within(usual::bulking)
            .takes("state", "state", "loose or compacted", u"loose")
            .gives("V", "Volume in that state"),
        function("UC.SPOIL.LOADS", &calc::spoil_loads)
            .says("Truckloads for a loose volume; with density and payload, by volume or mass, "
                  "whichever is more")
            .also_called("truckloads, haul, cartage, trips, lorry loads, muck away")
            .related({"UC.SPOIL.VOLUME", "UC.PIT.VOLUME"})
            .to_try("UC.SPOIL.LOADS(\"2125 m3\"; \"12 m3\"; \"1300 kg/m3\"; \"20 t\")")
            .to_try("UC.SPOIL.LOADS(\"2860 yd3\"; \"16 yd3\")")
            .refuses("UC.SPOIL.LOADS(639; \"14 yd3\")")
            .equation("N = max(ceil(V/V_t), ceil(V rho/P_t))")
            .source("common practice")
            .example("UC.SPOIL.LOADS(\"639 m3\"; \"12 m3\"; \"1300 kg/m3\"; \"14 t\")", "60", "exact",
                     Origin::mathematics, "by volume 639/12 = 53.25, by mass 830.7/14 = 59.3")
            .example("UC.SPOIL.LOADS(\"1300 yd3\"; \"7 yd3\")", "186", "exact", Origin::published,
                     "textbook on estimating, Example 9-2, scanned: trucks of 7 yd3")
            .takes("loose volume", "V", "Loose volume to carry")
            .within(usual::dug_volume)
            .takes("truck volume", "V_t", "Volume that one truck carries")
            .within(usual::truck_volume)
            .takes("density", "rho", "Loose density")
            .within(usual::loose_density)
            .takes("payload", "P_t", "Mass that one truck may carry")
            .within(usual::payload)
            .gives("N", "Truckloads"),
    };
}

}  // namespace undercroft::addin
