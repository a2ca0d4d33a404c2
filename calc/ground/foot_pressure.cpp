#include "calc/ground/foot_pressure.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

Pressure foot_pressure(Pressure crown_pressure, Length span, Length row_gap, Length foot_width,
                       Length base_stone) {
    require_positive("crown pressure", crown_pressure);
    require_positive("span", span);
    require_not_negative("row gap", row_gap);
    require_positive("foot width", foot_width);
    require_not_negative("base stone", base_stone);
    require(2.0 * foot_width <= span, shown("foot width", foot_width), " must be at most half of the span (",
            amount(span), "): two feet stand within it");
    const Length shared = std::min(base_stone, row_gap);
    const double concentration = (span + shared) / (2.0 * foot_width + base_stone + shared);
    return crown_pressure * std::max(1.0, concentration);
}

}  // namespace undercroft::calc
