#include "calc/water/outfall.hpp"

#include <algorithm>

#include "calc/solve.hpp"
#include "calc/water/circular_section.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

constexpr double least_full_headwater = 0.75;  // of the diameter: HDS-5's limit of its full-flow equation

/// A pipe that was checked, between its headwater and its tailwater.
class Outfall {
public:
    Outfall(const PipeReach& pipe, PipeInlet inlet, Length tailwater, std::optional<Share> entrance_loss)
        : pipe_(pipe),
          inlet_(inlet),
          tailwater_(std::max<Length>(tailwater, zero)),
          entrance_loss_(entrance_loss.value_or(entrance_loss_of(inlet))) {
        require_positive("diameter", pipe.diameter);
        require_positive("length", pipe.length);
        require_not_negative("slope", pipe.slope);
        require_positive("roughness", pipe.roughness);
        require(is_finite(tailwater), shown("tailwater", tailwater), " must be a number");
        require_share("entrance loss", entrance_loss_);
    }

    [[nodiscard]] OutfallHeads heads(Flow flow) const {
        const Length by_inlet = inlet_control_headwater(flow, pipe_.diameter, pipe_.slope, inlet_);
        const PipeState at_inlet = state_at_inlet(pipe_, flow, tailwater_);
        Length by_outlet = at_inlet.depth + velocity_head(at_inlet.speed) + entrance_head(flow);
        const Length full = full_headwater(flow);
        if (full >= least_full_headwater * pipe_.diameter) by_outlet = std::max(by_outlet, full);
        return {by_inlet, by_outlet, std::max(by_inlet, by_outlet)};
    }

    /// Where the water stands without flow.
    [[nodiscard]] Length still_water() const {
        return std::max<Length>(tailwater_ - vertical_rise(pipe_.slope, pipe_.length), zero);
    }

    [[nodiscard]] Flow flow_under(Length headwater) const {
        if (headwater <= still_water()) return zero;
        const auto excess = [&](Flow flow) { return heads(flow).headwater - headwater; };
        const Area full = CircularSection{pipe_.diameter}.area(pipe_.diameter);
        Flow most = full * sqrt(standard_gravity * pipe_.diameter);
        while (excess(most) < zero) most *= 2.0;
        return root_between(excess, Flow(zero), most);
    }

private:
    [[nodiscard]] static Length velocity_head(Speed speed) {
        return speed * speed / (2.0 * standard_gravity);
    }
    [[nodiscard]] Speed full_speed(Flow flow) const {
        return flow / CircularSection{pipe_.diameter}.area(pipe_.diameter);
    }
    [[nodiscard]] Length entrance_head(Flow flow) const {
        return number(entrance_loss_) * velocity_head(full_speed(flow));
    }

    [[nodiscard]] Length full_headwater(Flow flow) const {
        const Length critical = critical_depth({pipe_.diameter}, flow);
        const Length at_outlet = std::max(tailwater_, Length((critical + pipe_.diameter) / 2.0));
        return entrance_head(flow) + velocity_head(full_speed(flow)) +
               vertical_rise(friction_slope(pipe_, flow, pipe_.diameter), pipe_.length) + at_outlet -
               vertical_rise(pipe_.slope, pipe_.length);
    }

    PipeReach pipe_;
    PipeInlet inlet_;
    Length tailwater_;
    Share entrance_loss_;
};

}  // namespace

OutfallHeads outfall_heads(Flow flow, Length diameter, Length length, Gradient slope, Share roughness,
                           PipeInlet inlet, Length tailwater, std::optional<Share> entrance_loss) {
    require_not_negative("flow", flow);
    return Outfall({diameter, length, slope, roughness}, inlet, tailwater, entrance_loss).heads(flow);
}

Flow outfall_flow(Length headwater, Length diameter, Length length, Gradient slope, Share roughness,
                  PipeInlet inlet, Length tailwater, std::optional<Share> entrance_loss) {
    require_not_negative("headwater", headwater);
    return Outfall({diameter, length, slope, roughness}, inlet, tailwater, entrance_loss)
        .flow_under(headwater);
}

RatingTable outfall_rating(Length depth, Count steps, Length level, Length diameter, Length length,
                           Gradient slope, Share roughness, PipeInlet inlet,
                           std::optional<Length> tailwater_level, std::optional<Share> entrance_loss) {
    require_positive("depth", depth);
    const double n = require_whole("steps", steps, 1);
    require(n <= 1000, shown("steps", steps), " must be at most 1000");
    require_not_negative("level", level);
    const Length outlet_level = level - vertical_rise(slope, length);
    const Length tailwater = tailwater_level ? *tailwater_level - outlet_level : Length(zero);
    const Outfall outfall({diameter, length, slope, roughness}, inlet, tailwater, entrance_loss);
    std::vector<Length> depths = equal_steps(depth, n);
    add_kinks(depths, {level, level + outfall.still_water(), level + diameter});
    RatingTable rating;
    for (const Length& d : depths) rating.emplace_back(d, outfall.flow_under(d - level));
    return rating;
}

}  // namespace undercroft::calc
