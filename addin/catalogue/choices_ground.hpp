/// \file choices_ground.hpp
/// The spelling in a cell of the enumerations of ground, loads, soils and lifting.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/ground/bearing_factors.hpp"
#include "calc/ground/dynamic_cone.hpp"
#include "calc/ground/earth_pressure.hpp"
#include "calc/ground/elastic_stress.hpp"
#include "calc/ground/load_classes.hpp"
#include "calc/ground/presumptive_bearing.hpp"
#include "calc/ground/soil_group.hpp"
#include "calc/ground/stone_sizes.hpp"
#include "calc/works/lifting.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::RectanglePoint> {
    static constexpr std::string_view kind = "a point of the rectangle";
    static constexpr Choice<calc::RectanglePoint> list[] = {
        {"centre|center", calc::RectanglePoint::centre},
        {"corner", calc::RectanglePoint::corner},
    };
};

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

template <>
struct Choices<calc::BearingMethod> {
    static constexpr std::string_view kind = "a method";
    static constexpr Choice<calc::BearingMethod> list[] = {
        {"Vesic|Vesić", calc::BearingMethod::vesic},
        {"Meyerhof", calc::BearingMethod::meyerhof},
        {"Terzaghi", calc::BearingMethod::terzaghi},
    };
};

template <>
struct Choices<calc::ConeSoil> {
    static constexpr std::string_view kind = "a soil of the standard";
    static constexpr Choice<calc::ConeSoil> list[] = {
        {"general", calc::ConeSoil::general},
        {"CL", calc::ConeSoil::cl},
        {"CH", calc::ConeSoil::ch},
    };
};

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

template <>
struct Choices<calc::EarthState> {
    static constexpr std::string_view kind = "a state";
    static constexpr Choice<calc::EarthState> list[] = {
        {"active", calc::EarthState::active},
        {"passive", calc::EarthState::passive},
        {"rest|at rest", calc::EarthState::rest},
    };
};

template <>
struct Choices<calc::Plasticity> {
    static constexpr std::string_view kind = "the word for a soil without plasticity";
    static constexpr Choice<calc::Plasticity> list[] = {
        {"NP|non-plastic|non plastic|nonplastic", calc::Plasticity::non_plastic},
    };
};

template <>
struct Choices<calc::StoneSize> {
    static constexpr std::string_view kind = "a size number";
    static constexpr Choice<calc::StoneSize> list[] = {
        {"No. 3|No 3|#3", calc::StoneSize::no_3},     {"No. 357|No 357|#357", calc::StoneSize::no_357},
        {"No. 4|No 4|#4", calc::StoneSize::no_4},     {"No. 467|No 467|#467", calc::StoneSize::no_467},
        {"No. 5|No 5|#5", calc::StoneSize::no_5},     {"No. 56|No 56|#56", calc::StoneSize::no_56},
        {"No. 57|No 57|#57", calc::StoneSize::no_57}, {"No. 67|No 67|#67", calc::StoneSize::no_67},
    };
};

template <>
struct Choices<calc::Coupling> {
    static constexpr std::string_view kind = "a coupling of hands and load";
    static constexpr Choice<calc::Coupling> list[] = {
        {"good", calc::Coupling::good},
        {"fair", calc::Coupling::fair},
        {"poor", calc::Coupling::poor},
    };
};

}  // namespace undercroft::addin
