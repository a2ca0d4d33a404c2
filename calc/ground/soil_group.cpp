#include "calc/ground/soil_group.hpp"

#include <cmath>

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// To the nearest whole percent, halves up, as the standard reports it.
double whole_percent(Percent value) {
    return std::floor(value.value + 0.5 + whole_tolerance);
}

double whole_passing(const char* name, Percent value) {
    require_percentage(name, value);
    return whole_percent(value);
}

/// Liquid limit and plasticity index in whole percents.
struct Limits {
    bool plastic;
    double liquid;  ///< of a soil without one, 0: it counts as low
    double index;
};

Limits whole_limits(const Consistency& liquid_limit, const Consistency& plasticity_index) {
    const Percent* liquid = std::get_if<Percent>(&liquid_limit);
    const Percent* index = std::get_if<Percent>(&plasticity_index);
    if (liquid != nullptr)
        require(liquid->value > 0 && std::isfinite(liquid->value), shown("liquid limit", *liquid),
                " must be above 0, or NP for a soil that has none (a blank cell arrives as 0)");
    if (index == nullptr) return {false, liquid == nullptr ? 0 : whole_percent(*liquid), 0};
    if (liquid == nullptr)
        refuse_value("liquid limit NP goes with plasticity index NP, not with " + in_words(*index));
    require(whole_percent(*index) >= 1, shown("plasticity index", *index),
            " must be 1 % or more when rounded: the standard reports a soil without one as NP (a blank "
            "cell arrives as 0)");
    require(index->value < liquid->value, shown("plasticity index", *index), " must be below the ",
            shown("liquid limit", *liquid));
    return {true, whole_percent(*liquid), whole_percent(*index)};
}

/// A-x-4 ... A-x-7, or A-4 ... A-7, by the same four corners.
int corner(const Limits& limits) {
    const bool high_liquid = limits.liquid >= 41;
    const bool high_index = limits.index >= 11;
    return 4 + (high_liquid ? 1 : 0) + (high_index ? 2 : 0);
}

}  // namespace

std::string soil_group(const SoilTest& test) {
    const double p10 = whole_passing("passing 2 mm", test.passing_2_mm);
    const double p40 = whole_passing("passing 0.425 mm", test.passing_0425_mm);
    const double p200 = whole_passing("passing 0.075 mm", test.passing_0075_mm);
    require(test.passing_2_mm.value >= test.passing_0425_mm.value - whole_tolerance &&
                test.passing_0425_mm.value >= test.passing_0075_mm.value - whole_tolerance,
            "the percentages passing 2 mm, 0.425 mm and 0.075 mm must not rise towards the finer sieve");
    const Limits limits = whole_limits(test.liquid_limit, test.plasticity_index);

    if (p10 <= 50 && p40 <= 30 && p200 <= 15 && limits.index <= 6) return "A-1-a";
    if (p40 <= 50 && p200 <= 25 && limits.index <= 6) return "A-1-b";
    if (p40 >= 51 && p200 <= 10 && !limits.plastic) return "A-3";
    if (p200 <= 35) return "A-2-" + std::to_string(corner(limits));
    if (corner(limits) < 7) return "A-" + std::to_string(corner(limits));
    return limits.index <= limits.liquid - 30 ? "A-7-5" : "A-7-6";
}

Share soil_index(Percent passing_0075_mm, const Consistency& liquid_limit,
                 const Consistency& plasticity_index) {
    const double f = whole_passing("passing 0.075 mm", passing_0075_mm);
    const Limits limits = whole_limits(liquid_limit, plasticity_index);
    if (!limits.plastic) return share(0);
    const double of_liquid = (f - 35) * (0.2 + 0.005 * (limits.liquid - 40));
    const double of_index = 0.01 * (f - 15) * (limits.index - 10);
    double index = of_liquid + of_index;
    if (f <= 35) index = limits.index >= 11 ? of_index : 0;
    return share(std::max(0.0, std::floor(index + 0.5 + whole_tolerance)));
}

}  // namespace undercroft::calc
