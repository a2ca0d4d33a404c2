#include "calc/water/opening.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "calc/require.hpp"
#include "calc/water/circular_section.hpp"
#include "calc/water/contracted_weir.hpp"
#include "calc/water/outlet.hpp"

namespace undercroft::calc {

namespace {

void require_discharge_coefficient(const char* name, Share coefficient) {
    require_positive(name, coefficient);
    require_share(name, coefficient);
}

void require_tailwater(Length tailwater, Length depth) {
    require(tailwater <= depth, shown("tailwater", tailwater), " must be at most the water above (",
            amount(depth), "): above, water would flow back");
}

Speed speed_under(Length head) {
    return sqrt(2.0 * standard_gravity * head);
}

}  // namespace

Flow rectangular_orifice_flow(Length width, Length height, Length depth, Share coefficient,
                              Length tailwater) {
    require_positive("width", width);
    require_positive("height", height);
    require_not_negative("depth", depth);
    require_discharge_coefficient("coefficient", coefficient);
    require_tailwater(tailwater, depth);
    const Length below = std::max<Length>(tailwater, zero);
    const Length drowned = std::min(below, height);
    const Length to_bottom = depth - drowned;  // of the part above the tailwater
    const Length to_top = std::max<Length>(depth - height, zero);
    const Flow above_tailwater =
        2.0 / 3.0 * coefficient * width * (to_bottom * speed_under(to_bottom) - to_top * speed_under(to_top));
    return above_tailwater + coefficient * width * drowned * speed_under(depth - below);
}

Flow drowned_orifice_flow(Length diameter, Length depth, Share coefficient, Length tailwater) {
    const Flow free_flow = part_full_orifice_flow(diameter, depth, coefficient);
    require_tailwater(tailwater, depth);
    if (tailwater <= zero) return free_flow;
    const Area wet = CircularSection{diameter}.area(std::min(depth, diameter));
    return std::min(free_flow, Flow(coefficient * wet * speed_under(depth - tailwater)));
}

Flow riser_flow(Length diameter, Length head, WeirCoefficient weir_coefficient, Share orifice_coefficient,
                Length tailwater) {
    require_positive("diameter", diameter);
    require_not_negative("head", head);
    require_positive("weir coefficient", weir_coefficient);
    require_discharge_coefficient("orifice coefficient", orifice_coefficient);
    require_tailwater(tailwater, head);
    if (head == zero) return zero;
    const Flow over_the_rim = weir_coefficient * std::numbers::pi * diameter * head * sqrt(head);
    const Length fall = head - std::max<Length>(tailwater, zero);
    const Flow through = orifice_coefficient * std::numbers::pi / 4 * diameter * diameter * speed_under(fall);
    return std::min(drowned_weir_flow(over_the_rim, head, tailwater, share(1.5)), through);
}

}  // namespace undercroft::calc
