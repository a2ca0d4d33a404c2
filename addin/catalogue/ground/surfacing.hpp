/// \file surfacing.hpp
/// How what lies on top of the fill is spelled.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/ground/vehicle_load.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::Surfacing> {
    static constexpr std::string_view kind = "a surfacing";
    static constexpr Choice<calc::Surfacing> list[] = {
        {"none", calc::Surfacing::none},
        {"flexible|asphalt", calc::Surfacing::flexible},
        {"rigid|concrete", calc::Surfacing::rigid},
    };
};

}  // namespace undercroft::addin
