#include "calc/water/pipe_profile.hpp"

#include <algorithm>
#include <cmath>

#include "calc/require.hpp"
#include "calc/water/circular_section.hpp"
#include "calc/water/manning.hpp"
#include "calc/water/pipe.hpp"

namespace undercroft::calc {

namespace {

constexpr int depths_per_profile = 50;
constexpr double fullest_flow = 0.938181;  // of the diameter: the depth of the greatest flow by Manning

/// Length over which a slope rises so much.
Length run_of(Length rise, Gradient slope) {
    return rise / static_cast<double>(slope / gradient(1));
}

/// One flow in one pipe.
class Profile {
public:
    Profile(const PipeReach& pipe, Flow flow)
        : pipe_(pipe), section_{pipe.diameter}, flow_(flow), critical_(critical_depth(section_, flow)) {}

    [[nodiscard]] PipeState at_inlet(Length depth_at_outlet) const {
        const Length start = std::max(depth_at_outlet, critical_);
        return start >= pipe_.diameter ? from_full(start, pipe_.length) : from_part_full(start, pipe_.length);
    }

private:
    [[nodiscard]] PipeState state(Length depth) const {
        return {depth, flow_ / section_.area(std::min(depth, pipe_.diameter))};
    }
    [[nodiscard]] Length energy(Length depth) const {
        const Speed speed = state(depth).speed;
        return depth + speed * speed / (2.0 * standard_gravity);
    }
    /// Of the energy over the invert, going upstream.
    [[nodiscard]] Gradient rise_of_energy(Length depth) const {
        return friction_slope(pipe_, flow_, depth) - pipe_.slope;
    }

    /// The pressure line is straight, and may come down to the crown.
    [[nodiscard]] PipeState from_full(Length depth, Length left) const {
        const Gradient rise = rise_of_energy(pipe_.diameter);
        const Length there = depth + vertical_rise(rise, left);
        if (there >= pipe_.diameter) return state(there);
        const Length full = run_of(pipe_.diameter - depth, rise);
        return from_part_full(pipe_.diameter, left - full);
    }

    [[nodiscard]] PipeState from_part_full(Length depth, Length left) const {
        const bool rises = rise_of_energy(depth) > zero;
        const Length target = rises ? rising_target(depth) : std::max(normal_depth(), critical_);
        Length here = depth;
        for (int i = 1; i <= depths_per_profile; ++i) {
            const double to_go = 1 - static_cast<double>(i) / depths_per_profile;
            const Length next = target + to_go * to_go * (depth - target);
            const Gradient rise = (rise_of_energy(here) + rise_of_energy(next)) / 2.0;
            const Length step = rise == zero ? left : run_of(energy(next) - energy(here), rise);
            if (!(step >= zero) || step >= left) {
                const double way = step > left ? static_cast<double>(left / step) : 1.0;
                return state(here + way * (next - here));
            }
            left -= step;
            here = next;
        }
        const bool fills = rises && target >= pipe_.diameter;
        return fills ? from_full(pipe_.diameter, left) : state(target);
    }

    /// The lower one where there are two; the crown where the pipe carries the flow at no depth.
    [[nodiscard]] Length normal_depth() const {
        const auto& [diameter, length, slope, roughness] = pipe_;
        if (slope == zero || flow_ > pipe_flow(diameter, slope, roughness, fullest_flow * diameter))
            return diameter;
        return pipe_depth(flow_, diameter, slope, roughness);
    }
    [[nodiscard]] Length rising_target(Length from) const {
        const Length normal = normal_depth();
        return normal > from ? normal : pipe_.diameter;
    }

    const PipeReach& pipe_;
    CircularSection section_;
    Flow flow_;
    Length critical_;
};

}  // namespace

Gradient friction_slope(const PipeReach& pipe, Flow flow, Length depth) {
    const CircularSection section{pipe.diameter};
    const Length wet = std::min(depth, pipe.diameter);
    const Area area = section.area(wet);
    return manning_slope(area / section.wetted_perimeter(wet), flow / area, pipe.roughness);
}

PipeState state_at_inlet(const PipeReach& pipe, Flow flow, Length depth_at_outlet) {
    if (flow <= zero)
        return {std::max<Length>(depth_at_outlet - vertical_rise(pipe.slope, pipe.length), zero), zero};
    return Profile(pipe, flow).at_inlet(depth_at_outlet);
}

}  // namespace undercroft::calc
