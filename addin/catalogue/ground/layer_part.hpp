/// \file layer_part.hpp
/// How the parts of what lies over the base of a bed are spelled.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/ground/layers.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::LayerPart> {
    static constexpr std::string_view kind = "part of the ground over a bed";
    static constexpr Choice<calc::LayerPart> list[] = {
        {"base|base stone", calc::LayerPart::base_stone},
        {"chambers", calc::LayerPart::chambers},
        {"cover|cover stone", calc::LayerPart::cover_stone},
        {"initial|initial backfill", calc::LayerPart::initial_backfill},
        {"general|general backfill", calc::LayerPart::general_backfill},
        {"subbase", calc::LayerPart::subbase},
        {"pavement", calc::LayerPart::pavement},
    };
};

}  // namespace undercroft::addin
