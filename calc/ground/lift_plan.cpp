#include "calc/ground/lift_plan.hpp"

#include "calc/ground/stone.hpp"
#include "calc/solve.hpp"

namespace undercroft::calc {

namespace {

void require_vibration(Share vibration) {
    require(vibration >= share(1) && is_finite(vibration), shown("vibration", vibration),
            " must be at least 1, the plant at rest");
}

}  // namespace

LiftPlan lift_plan(const LiftLayers& layers, const Patches& plant, Share vibration) {
    require(!layers.empty(), "the fill has no layer");
    require_vibration(vibration);
    LiftPlan plan;
    Length cover = zero;
    Pressure fill = zero;
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
    const auto excess = [&](Length cover) -> Pressure {
        return vibration * plant_load(plant, cover) + fill_unit_weight * cover - allowable;
    };
    // Falls while the plant spreads, rises where the fill's own weight takes over; so the least lies between.
    constexpr Length shallow = 0.01 * metre;
    constexpr Length deep = 10.0 * metre;
    if (excess(shallow) <= zero) return shallow;
    const auto [at, least] = minimum_between<Length>(excess, shallow, deep);
    if (least > zero)
        no_answer("no cover does: plant and fill together never press less than " +
                  in_words(allowable + least) + " (under " + in_words(at) + "), above the allowable " +
                  in_words(allowable) + "; take lighter plant");
    return root_between<Length>(excess, shallow, at);
}

}  // namespace undercroft::calc
