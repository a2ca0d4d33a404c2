#include "calc/ground/load_classes.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::LoadClass> {
    static constexpr std::string_view kind = "a load class";
    static constexpr Choice<calc::LoadClass> list[] = {
        {"AASHTO truck|HL-93 truck|HS-20|HS20|H-20|H20", calc::LoadClass::aashto_truck_wheel},
        {"AASHTO tandem|HL-93 tandem", calc::LoadClass::aashto_tandem_wheel},
        {"AS 5100.2 W80|AS 5100 W80|W80", calc::LoadClass::as5100_w80},
        {"AS 3996 A", calc::LoadClass::as3996_a},
        {"AS 3996 B", calc::LoadClass::as3996_b},
        {"AS 3996 C", calc::LoadClass::as3996_c},
        {"AS 3996 D", calc::LoadClass::as3996_d},
        {"AS 3996 E", calc::LoadClass::as3996_e},
        {"AS 3996 F", calc::LoadClass::as3996_f},
        {"AS 3996 G", calc::LoadClass::as3996_g},
        {"EN 124 A15|A15", calc::LoadClass::en124_a15},
        {"EN 124 B125|B125", calc::LoadClass::en124_b125},
        {"EN 124 C250|C250", calc::LoadClass::en124_c250},
        {"EN 124 D400|D400", calc::LoadClass::en124_d400},
        {"EN 124 E600|E600", calc::LoadClass::en124_e600},
        {"EN 124 F900|F900", calc::LoadClass::en124_f900},
    };
};

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
