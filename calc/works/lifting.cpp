#include "calc/works/lifting.hpp"

#include <array>
#include <cmath>

#include "calc/customary.hpp"
#include "calc/interpolate.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// Constants of one form of the equation.
struct Form {
    Mass load_constant;
    Length least_reach;     ///< of H and D
    Length knuckle_height;  ///< where a lift starts best
    double per_height;      ///< of VM, for each unit of length
    double per_travel;      ///< of DM, in units of length
    Length unit;
};

const Form& constants_of(LiftingForm form) {
    static const Form metric = {23.0 * kilogram, 25.0 * centimetre, 75.0 * centimetre, 0.003, 4.5,
                                centimetre};
    // International yard and pound agreement (1959): 1 lb = 0.45359237 kg.
    static const Form customary = {51.0 * 0.45359237 * kilogram, 10.0 * inch, 30.0 * inch, 0.0075, 1.8, inch};
    switch (form) {
        case LiftingForm::metric:
            return metric;
        case LiftingForm::customary:
            return customary;
    }
    refuse_value("unknown form");
}

// NIOSH 94-110 (rev. 2021), 1.3.1 to 1.3.5: 25 in, 70 in, 70 in, 135 deg; the centimetres beside them (63,
// 175, 175) are rounded down, and a lift of 25 in is within.
const Length farthest_reach = 25.0 * inch;
const Length greatest_height = 70.0 * inch;
const Length longest_travel = 70.0 * inch;
const Angle greatest_turn = degrees(135);
constexpr double most_per_minute = 15;

template <class Q>
bool is_beyond(Q value, Q limit) {
    return !is_at_most(value, limit);
}

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

double frequency_multiplier(const Lift& lift, Length height_at_start) {
    const double per_minute = std::max(number(lift.per_minute), 0.2);
    if (per_minute > most_per_minute) return 0;
    const std::size_t column = is_at_most(lift.duration, hour)         ? 0
                               : is_at_most(lift.duration, 2.0 * hour) ? 1
                                                                       : 2;
    Curve<double, double> multiplier;
    for (const FrequencyRow& row : frequency_table)
        multiplier.add(
            row.per_minute,
            (height_at_start < constants_of(lift.form).knuckle_height ? row.below : row.above)[column]);
    return linear(multiplier, per_minute);
}

// NIOSH 94-110, Table 7.
double coupling_multiplier(const Lift& lift) {
    switch (lift.coupling) {
        case Coupling::good:
            return 1;
        case Coupling::fair:
            return lift.vertical < constants_of(lift.form).knuckle_height ? 0.95 : 1;
        case Coupling::poor:
            return 0.90;
    }
    refuse_value("unknown coupling");
}

void require_lift(const Lift& lift) {
    require_positive("horizontal", lift.horizontal);
    require_not_negative("vertical", lift.vertical);
    require_not_negative("travel", lift.travel);
    require_not_negative("asymmetry", lift.asymmetry);
    require_positive("lifts per minute", lift.per_minute);
    require_positive("duration", lift.duration);
    require(is_at_most(lift.duration, 8.0 * hour), shown("duration", lift.duration),
            " must be at most 8 h, where the method ends");
}

bool is_beyond_reach(const Lift& lift) {
    return is_beyond(lift.horizontal, farthest_reach) || is_beyond(lift.vertical, greatest_height) ||
           is_beyond(lift.travel, longest_travel) || is_beyond(lift.asymmetry, greatest_turn);
}

Mass limit_from(const Lift& lift, Length height_at_start) {
    require_lift(lift);
    if (is_beyond_reach(lift)) return zero;
    const Form& form = constants_of(lift.form);
    const double hm = form.least_reach / std::max(lift.horizontal, form.least_reach);
    const Length off_knuckles = abs(lift.vertical - form.knuckle_height);
    const double vm = 1 - form.per_height * static_cast<double>(off_knuckles / form.unit);
    const double dm =
        0.82 + form.per_travel * static_cast<double>(form.unit / std::max(lift.travel, form.least_reach));
    const double am = 1 - 0.0032 * static_cast<double>(lift.asymmetry / degrees(1));
    return form.load_constant * hm * vm * dm * am * frequency_multiplier(lift, height_at_start) *
           coupling_multiplier(lift);
}

/// Share of the sum of what its members lift alone. HSE L23 (2016), paragraphs 119 and 120.
double team_share(Count team) {
    const double persons = require_whole("persons", team, 1);
    if (persons == 1) return 1;
    if (persons == 2) return 2.0 / 3.0;
    if (persons == 3) return 1.0 / 2.0;
    no_answer(shown("persons", team) +
              ": no share is published for a team of more than three: lift it by plant");
}

}  // namespace

Mass handling_limit(const Lift& lift) {
    return limit_from(lift, lift.vertical);
}

std::string handling_reach(const Lift& lift) {
    require_lift(lift);
    const auto beyond = [](const std::string& what, const auto& value, const auto& limit,
                           const char* printed) {
        return "beyond the method's reach, so nothing may be lifted: " + what + " " + in_words(value) +
               ", at most " + in_words(limit) + printed;
    };
    if (is_beyond(lift.horizontal, farthest_reach))
        return beyond("hands in front of the ankles", lift.horizontal, farthest_reach, " (25 in)");
    if (is_beyond(lift.vertical, greatest_height))
        return beyond("hands above the floor", lift.vertical, greatest_height, " (70 in)");
    if (is_beyond(lift.travel, longest_travel))
        return beyond("travel up or down", lift.travel, longest_travel, " (70 in)");
    if (is_beyond(lift.asymmetry, greatest_turn))
        return beyond("turn of the body", lift.asymmetry, greatest_turn, "");
    if (frequency_multiplier(lift, lift.vertical) == 0)
        return "beyond the method's reach, so nothing may be lifted: " + in_words(lift.per_minute) +
               " a minute is too often for " + in_words(lift.duration) + " of lifting";
    return "within the method's reach";
}

Mass team_limit(const TeamLift& lift) {
    const double persons = require_whole("persons", lift.persons, 1);
    const double share_of_sum = team_share(lift.persons);
    const Length travel = abs(lift.end.vertical - lift.start.vertical);
    const auto at = [&](const LiftEnd& end) {
        return limit_from({end.horizontal, end.vertical, travel, end.asymmetry, lift.per_minute,
                           lift.duration, lift.coupling, lift.form},
                          lift.start.vertical);
    };
    return persons * share_of_sum * std::min(at(lift.start), at(lift.end));
}

}  // namespace undercroft::calc
