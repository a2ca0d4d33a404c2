#include "calc/water/frequency_factor.hpp"

#include <algorithm>

#include "calc/interpolate.hpp"
#include "calc/require.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::calc {

Share frequency_factor(const Frequency& frequency) {
    const double years = years_between(frequency);
    require(years > 0 && years < 1e9, "the frequency must be a number of years above 0");
    if (!is_at_least(years, 25.0)) return share(1);
    static const Curve<double, double> table = {{25, 50, 100}, {1.10, 1.20, 1.25}};
    return share(linear(table, std::clamp(years, 25.0, 100.0)));
}

Share frequency_coefficient(Share coefficient, const Frequency& frequency) {
    require_coefficient(coefficient);
    return std::min(Share(coefficient * frequency_factor(frequency)), share(1));
}

}  // namespace undercroft::calc
