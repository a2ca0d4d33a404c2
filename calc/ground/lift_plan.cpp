#include "calc/ground/lift_plan.hpp"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>

#include "calc/ground/stone.hpp"

namespace undercroft::calc {

namespace {

void require_vibration(Share vibration) {
    require(vibration >= share(1) && std::isfinite(vibration.value()), shown("vibration", vibration),
            " must be at least 1, the plant at rest");
}

}  // namespace

LiftPlan lift_plan(const LiftLayers& layers, const Patches& plant, Share vibration) {
    require(!layers.empty(), "the fill has no layer");
    require_vibration(vibration);
    LiftPlan plan;
    Length cover = Length::from_value(0);
    Pressure fill = Pressure::from_value(0);
    double layer = 0;
    for (const auto& [thickness, unit_weight, greatest_lift] : layers) {
        ++layer;
        require_positive("unit weight", unit_weight);
        const double n = number(lifts(thickness, greatest_lift));
        require(static_cast<double>(plan.size()) + n <= 200,
                "the fill is laid in more than 200 lifts: check the units of thickness and greatest lift");
        const Length lift = thickness / n;
        const Length bottom = cover;
        const Pressure below = fill;
        for (double i = 1; i <= n; ++i) {
            cover = bottom + thickness * (i / n);
            fill = below + unit_weight * thickness * (i / n);
            const Pressure stress = vibration * plant_load(plant, cover);
            plan.emplace_back(count(static_cast<double>(plan.size()) + 1), count(layer), lift, cover, fill,
                              stress, fill + stress);
        }
    }
    return plan;
}

Length plant_cover(const Patches& plant, Share vibration, UnitWeight fill_unit_weight, Pressure allowable) {
    require_vibration(vibration);
    require_positive("unit weight", fill_unit_weight);
    require_positive("allowable", allowable);
    const auto excess = [&](double cover) {
        const Length h = Length::from_value(cover);
        return (vibration * plant_load(plant, h) + fill_unit_weight * h - allowable).value();
    };
    // Falls while the plant spreads, rises where the fill's own weight takes over; so the least lies between.
    constexpr double shallow = 0.01;
    constexpr double deep = 10;
    if (excess(shallow) <= 0) return Length::from_value(shallow);
    const auto [at, least] = boost::math::tools::brent_find_minima(excess, shallow, deep, 24);
    if (least > 0)
        no_answer("no cover does: plant and fill together never press less than " +
                  in_words(allowable + Pressure::from_value(least)) + " (under " +
                  in_words(Length::from_value(at)) + "), above the allowable " + in_words(allowable) +
                  "; take lighter plant");
    std::uintmax_t iterations = 200;
    const boost::math::tools::eps_tolerance<double> tolerance(45);
    const auto [low, high] = boost::math::tools::toms748_solve(excess, shallow, at, tolerance, iterations);
    return Length::from_value(high);
}

}  // namespace undercroft::calc
