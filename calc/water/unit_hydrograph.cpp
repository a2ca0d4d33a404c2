#include "calc/water/unit_hydrograph.hpp"

#include <vector>

namespace undercroft::calc {

const Curve<double, double>& dimensionless_unit_hydrograph() {
    static const Curve<double, double> table = {
        {0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6,
         1.7, 1.8, 1.9, 2.0, 2.2, 2.4, 2.6, 2.8, 3.0, 3.2, 3.4, 3.6, 3.8, 4.0, 4.5, 5.0},
        {0.000, 0.030, 0.100, 0.190, 0.310, 0.470, 0.660, 0.820, 0.930, 0.990, 1.000,
         0.990, 0.930, 0.860, 0.780, 0.680, 0.560, 0.460, 0.390, 0.330, 0.280, 0.207,
         0.147, 0.107, 0.077, 0.055, 0.040, 0.029, 0.021, 0.015, 0.011, 0.005, 0.000}};
    return table;
}

Time unit_hydrograph_peak_time(Time duration, Time time_of_concentration) {
    return duration / 2.0 + 0.6 * time_of_concentration;
}

namespace {

/// Area under the table up to each of its rows.
const std::vector<double>& areas() {
    static const std::vector<double> areas = [] {
        const auto& [x, y] = dimensionless_unit_hydrograph();
        std::vector<double> sums = {0};
        for (std::size_t i = 1; i < x.size(); ++i)
            sums.push_back(sums.back() + (y[i - 1] + y[i]) / 2 * (x[i] - x[i - 1]));
        return sums;
    }();
    return areas;
}

}  // namespace

UnitHydrograph::UnitHydrograph(Time peak_time) : peak_time_(peak_time) {}

double UnitHydrograph::passed(Time after) const {
    const auto& [x, y] = dimensionless_unit_hydrograph();
    const double at = after / peak_time_;
    if (at <= 0) return 0;
    if (at >= x.back()) return 1;
    const std::size_t i = stretch_of(x, at);
    const double here = between(y[i], y[i + 1], share_of_way(x[i], x[i + 1], at));
    return (areas()[i] + (y[i] + here) / 2 * (at - x[i])) / areas().back();
}

Time UnitHydrograph::end() const {
    return dimensionless_unit_hydrograph().x.back() * peak_time_;
}

}  // namespace undercroft::calc
