#include "calc/water/unit_hydrograph.hpp"

#include <algorithm>

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

/// Area under the table between two of its times; small differences keep their digits.
double area_between(double from, double to) {
    const Curve<double, double>& table = dimensionless_unit_hydrograph();
    double area = 0;
    double ordinate = linear(table, from);
    for (std::size_t i = stretch_of(table.x, from) + 1; from < to; ++i) {
        const double next = std::min(table.x[i], to);
        const double next_ordinate = next == to ? linear(table, to) : table.y[i];
        area += (ordinate + next_ordinate) / 2 * (next - from);
        from = next;
        ordinate = next_ordinate;
    }
    return area;
}

double whole_area() {
    static const double area = area_between(0, dimensionless_unit_hydrograph().x.back());
    return area;
}

}  // namespace

UnitHydrograph::UnitHydrograph(Time peak_time) : peak_time_(peak_time) {}

double UnitHydrograph::passing(Time from, Time to) const {
    const double end = dimensionless_unit_hydrograph().x.back();
    const double first = std::clamp<double>(from / peak_time_, 0, end);
    const double last = std::clamp<double>(to / peak_time_, 0, end);
    return first < last ? area_between(first, last) / whole_area() : 0;
}

Time UnitHydrograph::end() const {
    return dimensionless_unit_hydrograph().x.back() * peak_time_;
}

}  // namespace undercroft::calc
