#include "calc/water/unit_hydrograph.hpp"

#include <cmath>
#include <numeric>

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

std::vector<double> unit_hydrograph_shares(Time duration, Time time_of_concentration) {
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    const double spacing = duration / unit_hydrograph_peak_time(duration, time_of_concentration);
    const auto steps = static_cast<std::size_t>(std::ceil(table.x.back() / spacing));
    std::vector<double> shares;
    for (std::size_t i = 0; i < steps; ++i) shares.push_back(linear(table, static_cast<double>(i) * spacing));
    shares.push_back(0);  // at or past the end of the table
    const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
    for (double& s : shares) s /= sum;
    return shares;
}

}  // namespace undercroft::calc
