/// \file storm_slot.hpp
/// How the course of a storm and the NRCS's types of rain are spelled, and the columns of a pattern.
#pragma once

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "calc/water/graphical_peak.hpp"
#include "calc/water/hyetograph.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::StormShape> {
    static constexpr std::string_view kind = "a shape of storm";
    static constexpr Choice<calc::StormShape> list[] = {
        {"block", calc::StormShape::block},
        {"alternating|alternating blocks", calc::StormShape::alternating},
        {"type I|I", calc::StormShape::type_i},
        {"type IA|IA", calc::StormShape::type_ia},
        {"type II|II", calc::StormShape::type_ii},
        {"type III|III", calc::StormShape::type_iii},
    };
};

template <>
struct Choices<calc::RainType> {
    static constexpr std::string_view kind = "a type of rain";
    static constexpr Choice<calc::RainType> list[] = {
        {"type I|I", calc::RainType::type_i},
        {"type IA|IA", calc::RainType::type_ia},
        {"type II|II", calc::RainType::type_ii},
        {"type III|III", calc::RainType::type_iii},
    };
};

inline constexpr const char* nrcs_storms =
    "NRCS storms last 24 h: I and IA are of the Pacific coast, III of the Gulf of Mexico and the Atlantic "
    "coast, II "
    "of the rest of the United States";

/// The optional argument that says how rain falls.
inline Entry& takes_pattern(Entry& entry) {
    return entry
        .takes("pattern", "s(t)",
               "block, alternating (blocks that hold the rain of every shorter duration), type I, IA, II or "
               "III; or two "
               "columns: time and cumulative share of the rain, from 0 and 0 % to 100 %",
               u"block")
        .within({usual::elapsed_time, usual::cumulative_share});
}

}  // namespace undercroft::addin
