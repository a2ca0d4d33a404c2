#include "calc/ground/fabric.hpp"

#include "calc/customary.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

Length fabric_opening(Length d85, Share factor) {
    require_positive("d85", d85);
    require(is_at_most(d85, 75.0 * millimetre), shown("d85", d85),
            " must be at most 75 mm, the coarsest soil of ASTM D2487: is it in mm?");
    require_positive("factor", factor);
    require(factor <= share(2 + limit_tolerance), shown("factor", factor),
            " must be at most 2, the greatest of the criterion");
    return std::min<Length>(factor * d85, 0.60 * millimetre);
}

Share fabric_factor(Share uniformity) {
    require(uniformity >= share(1 - limit_tolerance) && is_finite(uniformity),
            shown("uniformity", uniformity), " must be at least 1: D60 is not finer than D10");
    if (uniformity <= share(2) || uniformity >= share(8)) return share(1);
    if (uniformity <= share(4)) return 0.5 * uniformity;
    return 8.0 / uniformity;
}

}  // namespace undercroft::calc
