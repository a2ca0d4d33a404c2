#include "calc/water/groundwater.hpp"

#include <boost/math/special_functions/log1p.hpp>
#include <cmath>
#include <numbers>

#include "calc/require.hpp"
#include "calc/solve.hpp"

namespace undercroft::calc {

namespace {

/// x where x - ln(1 + x) = t. It lies between sqrt(2 t) and t + sqrt(t^2 + 2 t), since
/// x^2/(2 + 2 x) <= x - ln(1 + x) <= x^2/2.
double infiltrated(double t) {
    const auto missing = [t](double x) { return -boost::math::log1pmx(x) - t; };
    const double least = std::sqrt(2 * t);
    const double most = (t + std::sqrt(t * t + 2 * t)) * (1 + 1e-12);
    return root_between(missing, least * (1 - 1e-12), most);
}

}  // namespace

Length green_ampt_infiltration(Speed conductivity, Length suction, Share moisture_deficit, Time time) {
    require_positive("conductivity", conductivity);
    require_not_negative("suction", suction);
    require_share("moisture deficit", moisture_deficit);
    require_not_negative("time", time);
    const Length soaked = suction * moisture_deficit;
    const Length by_gravity = conductivity * time;
    if (soaked == zero || by_gravity == zero) return by_gravity;
    return infiltrated(by_gravity / soaked) * soaked;
}

Speed falling_head_permeability(Area tube_area, Length sample_length, Area sample_area, Time time,
                                Length head_start, Length head_end) {
    require_positive("tube area", tube_area);
    require_positive("sample length", sample_length);
    require_positive("sample area", sample_area);
    require_positive("time", time);
    require_positive("head end", head_end);
    require(head_start > head_end, shown("head start", head_start), " must be above the head at the end (",
            amount(head_end), ")");
    return tube_area * sample_length / (sample_area * time) * std::log(head_start / head_end);
}

Flow pit_seepage(Speed permeability, Length water_depth_outside, Length water_depth_inside,
                 Length influence_radius, Length equivalent_radius) {
    require_positive("permeability", permeability);
    require_not_negative("water depth inside", water_depth_inside);
    require(!is_above(water_depth_inside, water_depth_outside),
            shown("water depth outside", water_depth_outside), " must not be below that inside (",
            amount(water_depth_inside), ")");
    const Length inside = std::min(water_depth_inside, water_depth_outside);
    require_positive("equivalent radius", equivalent_radius);
    require(influence_radius > equivalent_radius, shown("influence radius", influence_radius),
            " must reach beyond the equivalent radius (", amount(equivalent_radius), ")");
    return std::numbers::pi * permeability * (water_depth_outside * water_depth_outside - inside * inside) /
           std::log(influence_radius / equivalent_radius);
}

Length equivalent_radius(Length length, Length width) {
    require_positive("length", length);
    require_positive("width", width);
    return sqrt(length * width / std::numbers::pi);
}

Length influence_distance(Speed permeability, Length drawdown) {
    require_positive("permeability", permeability);
    require_not_negative("drawdown", drawdown);
    const auto sichardt = 3000.0 * sqrt(second / metre);
    return sichardt * sqrt(permeability) * drawdown;
}

Time pump_time(Volume volume, Flow pumping, Flow inflow) {
    require_positive("volume", volume);
    require_positive("pumping", pumping);
    require_not_negative("inflow", inflow);
    if (pumping <= inflow)
        no_answer("the pit is never dry: " + shown("pumping", pumping) + " must exceed the inflow (" +
                  in_words(inflow) + ")");
    return volume / (pumping - inflow);
}

}  // namespace undercroft::calc
