#include "calc/water/pipe_size.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "calc/require.hpp"
#include "calc/water/circular_section.hpp"
#include "calc/water/manning.hpp"

namespace undercroft::calc {

Length pipe_diameter(Flow flow, Gradient slope, Share roughness) {
    require_positive("flow", flow);
    require_positive("slope", slope);
    require_positive("roughness", roughness);
    const auto full = std::numbers::pi / 4 * std::pow(0.25, 2.0 / 3) * manning_unit;
    return bu::pow<bu::static_rational<3, 8>>(flow * number(roughness) /
                                              (full * std::sqrt(slope / gradient(1))));
}

Length next_size(Length wanted, const std::vector<Length>& sizes) {
    require_positive("wanted size", wanted);
    require(!sizes.empty(), "the list of sizes is empty");
    std::optional<Length> next;
    for (const Length& size : sizes) {
        require_positive("size", size);
        const bool fits = is_at_least(size, wanted);
        if (fits && (!next || size < *next)) next = size;
    }
    if (!next)
        no_answer(shown("wanted size", wanted) + " is above the largest there is (" +
                  in_words(*std::max_element(sizes.begin(), sizes.end())) + ")");
    return *next;
}

Area pipe_area(Length diameter, std::optional<Length> depth) {
    require_positive("diameter", diameter);
    const Length filled = depth.value_or(diameter);
    require_not_negative("depth", filled);
    require(is_at_most(filled, diameter), shown("depth", filled), " must be at most the diameter (",
            amount(diameter), ")");
    return CircularSection{diameter}.area(filled);
}

Speed pipe_speed(Flow flow, Length diameter, std::optional<Length> depth) {
    require_not_negative("flow", flow);
    const Area wet = pipe_area(diameter, depth);
    require(wet > zero, shown("depth", depth.value_or(diameter)), " must be above 0");
    return flow / wet;
}

}  // namespace undercroft::calc
