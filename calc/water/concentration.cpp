#include "calc/water/concentration.hpp"

#include <cmath>

#include "calc/customary.hpp"
#include "calc/require.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::calc {

Time kirpich_time(Length length, Gradient slope) {
    require_positive("length", length);
    require_positive("slope", slope);
    using Exponent = bu::static_rational<77, 100>;
    const auto constant = 0.0078 * minute / bu::pow<Exponent>(foot);
    return constant * bu::pow<Exponent>(length) * std::pow(slope.value(), -0.385);
}

Length longest_sheet_flow() {
    return 300.0 * foot;
}

Time sheet_flow_time(Share roughness, Length length, Length rain_depth, Gradient slope) {
    require_positive("roughness", roughness);
    require_positive("length", length);
    require_positive("rain depth", rain_depth);
    require_storm_depth("rain depth", rain_depth);
    require_positive("slope", slope);
    const Length longest = longest_sheet_flow();
    require(is_at_most(length, longest), shown("length", length), " must be at most 300 ft (",
            amount(longest), "): beyond, sheet flow turns into shallow concentrated flow");
    using Exponent = bu::static_rational<4, 5>;
    const auto constant = 0.007 * hour * bu::sqrt(inch) / bu::pow<Exponent>(foot);
    return constant * bu::pow<Exponent>(number(roughness) * length) /
           (bu::sqrt(rain_depth) * std::pow(slope.value(), 0.4));
}

}  // namespace undercroft::calc
