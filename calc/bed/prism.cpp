#include "calc/bed/prism.hpp"

#include "calc/works/excavation.hpp"
#include "calc/works/plane_pit.hpp"

namespace undercroft::calc {

namespace {

bool is_level(const BedPrism& prism) {
    return prism.fall == zero;
}

/// What lies under the water, in walls that stand up to the top of the stone at the low end.
Pool pool(const BedPrism& prism, Length depth) {
    return pool_in_pit(falling_pit(prism.length, prism.width, prism.top, prism.batter, prism.fall), depth);
}

}  // namespace

void require_fall(const BedPrism& prism) {
    require_not_negative("fall", prism.fall);
    require(is_level(prism) || rise_of_base(prism) < prism.top, shown("fall", prism.fall),
            " lifts the high end of the base by ", amount(rise_of_base(prism)),
            ", to the top of the stone at the low end (", amount(prism.top),
            ") or above it: no level water stands in all of the bed");
}

Volume prism_volume(const BedPrism& prism, Length depth) {
    if (is_level(prism)) return pit_volume(prism.length, prism.width, depth, prism.batter);
    return pool(prism, depth).volume;
}

Area prism_area(const BedPrism& prism, Length depth) {
    if (is_level(prism)) return pit_area(prism.length, prism.width, depth, prism.batter);
    return pool(prism, depth).area;
}

}  // namespace undercroft::calc
