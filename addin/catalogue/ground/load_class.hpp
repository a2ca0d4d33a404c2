/// \file load_class.hpp
/// How the load classes of standards are spelled.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/ground/load_classes.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::LoadClass> {
    static constexpr std::string_view kind = "a load class";
    static constexpr Choice<calc::LoadClass> list[] = {
        {"AASHTO HL-93|HL-93", calc::LoadClass::aashto_hl93},
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

}  // namespace undercroft::addin
