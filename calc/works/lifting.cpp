#include "calc/works/lifting.hpp"

#include <array>
#include <cmath>

#include "calc/customary.hpp"
#include "calc/interpolate.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

const Length knuckle_height = 75.0 * centimetre;

/// Frequency multiplier for up to 1 h, 2 h and 8 h; the hands below knuckle height, and at it or above.
struct FrequencyRow {
    double per_minute;
    std::array<double, 3> below;
    std::array<double, 3> above;
};

// NIOSH 94-110, Table 5 (from memory; 0.88 at 3/min to 1 h and 0.13 at 10/min to 8 h seen in use).
constexpr FrequencyRow frequency_table[] = {
    {0.2, {1.00, 0.95, 0.85}, {1.00, 0.95, 0.85}}, {0.5, {0.97, 0.92, 0.81}, {0.97, 0.92, 0.81}},
    {1, {0.94, 0.88, 0.75}, {0.94, 0.88, 0.75}},   {2, {0.91, 0.84, 0.65}, {0.91, 0.84, 0.65}},
    {3, {0.88, 0.79, 0.55}, {0.88, 0.79, 0.55}},   {4, {0.84, 0.72, 0.45}, {0.84, 0.72, 0.45}},
    {5, {0.80, 0.60, 0.35}, {0.80, 0.60, 0.35}},   {6, {0.75, 0.50, 0.27}, {0.75, 0.50, 0.27}},
    {7, {0.70, 0.42, 0.22}, {0.70, 0.42, 0.22}},   {8, {0.60, 0.35, 0.18}, {0.60, 0.35, 0.18}},
    {9, {0.52, 0.30, 0.00}, {0.52, 0.30, 0.15}},   {10, {0.45, 0.26, 0.00}, {0.45, 0.26, 0.13}},
    {11, {0.41, 0.00, 0.00}, {0.41, 0.23, 0.00}},  {12, {0.37, 0.00, 0.00}, {0.37, 0.21, 0.00}},
    {13, {0.00, 0.00, 0.00}, {0.34, 0.00, 0.00}},  {14, {0.00, 0.00, 0.00}, {0.31, 0.00, 0.00}},
    {15, {0.00, 0.00, 0.00}, {0.28, 0.00, 0.00}},
};

double frequency_multiplier(const Lift& lift) {
    const double per_minute = std::max(number(lift.per_minute), 0.2);
    if (per_minute > 15) return 0;
    const std::size_t column = is_at_most(lift.duration, hour)         ? 0
                               : is_at_most(lift.duration, 2.0 * hour) ? 1
                                                                       : 2;
    Curve<double, double> multiplier;
    for (const FrequencyRow& row : frequency_table)
        multiplier.add(row.per_minute, (lift.vertical < knuckle_height ? row.below : row.above)[column]);
    return linear(multiplier, per_minute);
}

// NIOSH 94-110, Table 7.
double coupling_multiplier(const Lift& lift) {
    switch (lift.coupling) {
        case Coupling::good:
            return 1;
        case Coupling::fair:
            return lift.vertical < knuckle_height ? 0.95 : 1;
        case Coupling::poor:
            return 0.90;
    }
    refuse_value("unknown coupling");
}

}  // namespace

Mass handling_limit(const Lift& lift) {
    require_positive("horizontal", lift.horizontal);
    require_not_negative("vertical", lift.vertical);
    require_not_negative("travel", lift.travel);
    require_not_negative("asymmetry", lift.asymmetry);
    require_positive("lifts per minute", lift.per_minute);
    require_positive("duration", lift.duration);
    require(is_at_most(lift.duration, 8.0 * hour), shown("duration", lift.duration),
            " must be at most 8 h, where the method ends");
    const bool beyond =
        !is_at_most(lift.horizontal, 63.0 * centimetre) || !is_at_most(lift.vertical, 175.0 * centimetre) ||
        !is_at_most(lift.travel, 175.0 * centimetre) || !is_at_most(lift.asymmetry, degrees(135));
    if (beyond) return zero;
    const Length least = 25.0 * centimetre;
    const double hm = least / std::max(lift.horizontal, least);
    const double vm = 1 - 0.003 * static_cast<double>(abs(lift.vertical - knuckle_height) / centimetre);
    const double dm = 0.82 + 4.5 * static_cast<double>(centimetre / std::max(lift.travel, least));
    const double am = 1 - 0.0032 * static_cast<double>(lift.asymmetry / degrees(1));
    return 23.0 * kilogram * hm * vm * dm * am * frequency_multiplier(lift) * coupling_multiplier(lift);
}

}  // namespace undercroft::calc
