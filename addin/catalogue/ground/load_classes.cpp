#include "calc/ground/load_classes.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/ground/load_class.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::LoadState> {
    static constexpr std::string_view kind = "a state";
    static constexpr Choice<calc::LoadState> list[] = {
        {"ultimate", calc::LoadState::ultimate},
        {"serviceability", calc::LoadState::serviceability},
    };
};

std::vector<Function> load_class_functions() {
    return {
        function("UC.LOAD.CLASS", &calc::class_load)
            .says("Load of a wheel or access cover by the class of its standard")
            .also_called("load rating, grate class, cover class, D400, HS20, W80, wheel load, test load")
            .related({"UC.LOAD.WHEEL"})
            .to_try("UC.LOAD.CLASS(\"AASHTO truck\")")
            .to_try("UC.LOAD.CLASS(\"AASHTO truck\"; ; \"kip\")")
            .to_try("UC.LOAD.CLASS(\"AS 3996 D\"; \"serviceability\")")
            .refuses("UC.LOAD.CLASS(\"AASHTO truck\"; \"serviceability\")")
            .equation("table")
            .source(
                "AASHTO LRFD 3.6.1.2.2 and 3.6.1.2.3 (wheel = half an axle); AS 5100.2 (W80, from memory); "
                "AS 3996:2006, Table 3.1 (ultimate; serviceability on request); EN 124:2015 (test load)")
            .example("UC.LOAD.CLASS(\"AASHTO truck\"; ; \"kip\")", "16", "exact", Origin::from_memory,
                     "AASHTO LRFD 3.6.1.2.2: a wheel of the design truck")
            .example("UC.LOAD.CLASS(\"AASHTO tandem\"; ; \"kip\")", "12.5", "exact", Origin::published,
                     "AASHTO LRFD 3.6.1.2.3: half an axle of 25 kip of the design tandem")
            .example("UC.LOAD.CLASS(\"AS 3996 D\"; \"ultimate\"; \"kN\")", "210", "exact", Origin::published,
                     "AS 3996:2006, Table 3.1, as two pages reproduce it")
            .example("UC.LOAD.CLASS(\"EN 124 D400\"; ; \"kN\")", "400", "exact", Origin::published,
                     "EN 124, as reproduced: the class is its test load in kN")
            .caution("An unfactored wheel, an ultimate load and a test load are not the same thing: use each "
                     "with its own standard. Local codes and a licensed engineer govern")
            .takes("load class", "class", "Such as AASHTO truck, AASHTO tandem, AS 3996 D or EN 124 D400")
            .takes("state", "state", "ultimate or serviceability, for AS 3996")
            .gives("P", "Load of the class"),
    };
}

}  // namespace undercroft::addin
