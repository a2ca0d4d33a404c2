/// \file choices.hpp
/// The spelling in a cell of the enumerations of calc/works.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/works/excavation.hpp"
#include "calc/works/spoil.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::SectionMethod> {
    static constexpr std::string_view kind = "a method";
    static constexpr Choice<calc::SectionMethod> list[] = {
        {"end area", calc::SectionMethod::end_area},
        {"prismoidal", calc::SectionMethod::prismoidal},
    };
};

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
struct Choices<calc::SpoilSoil> {
    static constexpr std::string_view kind = "a soil";
    static constexpr Choice<calc::SpoilSoil> list[] = {
        {"sand", calc::SpoilSoil::sand},
        {"loam|common earth|loam (common earth)|earth", calc::SpoilSoil::loam},
        {"clay", calc::SpoilSoil::clay},
        {"rock|blasted rock|rock (blasted)|rock, blasted", calc::SpoilSoil::rock},
        {"coral", calc::SpoilSoil::coral},
    };
};

template <>
struct Choices<calc::SpoilState> {
    static constexpr std::string_view kind = "a state";
    static constexpr Choice<calc::SpoilState> list[] = {
        {"loose", calc::SpoilState::loose},
        {"compacted", calc::SpoilState::compacted},
    };
};

}  // namespace undercroft::addin
