/// \file spoil_soil.hpp
/// How the soils of the bulking table are spelled.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/works/spoil.hpp"

namespace undercroft::addin {

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

}  // namespace undercroft::addin
