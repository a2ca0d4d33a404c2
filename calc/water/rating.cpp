#include "calc/water/rating.hpp"

#include <algorithm>
#include <string>

#include "calc/interpolate.hpp"
#include "calc/solve.hpp"
#include "calc/water/outlet_law.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

constexpr std::size_t most_rating_rows = 10000;
constexpr Length shortest_span = 2.0 * switching_rise;  // that a tolerance makes

/// A table whose depths rise and whose flows are not below 0.
Curve<Length, Flow> checked_rating(const RatingTable& rating, const std::string& name) {
    require(rating.size() >= 2, "the ", name, " needs at least two rows of depth and flow");
    Curve<Length, Flow> curve;
    for (const auto& [depth, flow] : rating) {
        require_not_negative("flow", flow);
        require(is_finite(depth) && (curve.x.empty() || is_above(depth, curve.x.back())), name, ": ",
                shown("depth", depth), " must be above that of the row before");
        curve.add(depth, flow);
    }
    return curve;
}

/// All outlets of a list, and what stands below them.
class Works {
public:
    Works(const OutletTable& outlets, Length depth, const Downstream& downstream)
        : tailwater_(downstream.tailwater.value_or(zero)) {
        for (std::size_t i = 0; i < outlets.size(); ++i) {
            try {
                outlets_.push_back(outlet_law(outlets[i], depth));
            } catch (const Refused& refused) {
                throw refused.at("outlet " + std::to_string(i + 1));
            }
        }
        require(is_finite(tailwater_), shown("tailwater", tailwater_), " must be a number");
        require(is_at_most(tailwater_, depth), shown("tailwater", tailwater_),
                " must be at most the depth that is rated (", amount(depth), "): above, nothing flows out");
        if (downstream.outfall) take_outfall(*downstream.outfall, depth);
    }

    [[nodiscard]] std::vector<Length> kinks() const {
        std::vector<Length> kinks = {tailwater_};
        for (const OutletLaw& outlet : outlets_) {
            kinks.push_back(outlet.level);
            for (const Length& kink : outlet.kinks) kinks.push_back(outlet.level + kink);
        }
        return kinks;
    }

    [[nodiscard]] Flow flow_at(Length depth) const {
        return flow(depth, chamber_level(depth), true) + flow(depth, tailwater_, false);
    }

private:
    void take_outfall(const RatingTable& rating, Length depth) {
        outfall_ = checked_rating(rating, "outfall");
        const auto& [depths, flows] = outfall_;
        require(depths.front() <= slack(depth, depths.back()) && is_at_least(depths.back(), depth),
                "the outfall (", amount(depths.front()), " to ", amount(depths.back()),
                ") must reach from 0 to the depth (", amount(depth), ")");
        require(std::is_sorted(flows.begin(), flows.end()),
                "the flow of the outfall must not fall while its depth rises");
    }

    [[nodiscard]] Flow flow(Length depth, Length below, bool that_drown) const {
        Flow total = zero;
        for (const OutletLaw& outlet : outlets_)
            if (outlet.drowns == that_drown) total += outlet.flow_at(depth, below);
        return total;
    }

    /// Where the water below the outlets stands: at the tailwater, or as high as the outfall needs.
    [[nodiscard]] Length chamber_level(Length depth) const {
        if (outfall_.x.empty() || tailwater_ >= depth || depth <= zero) return tailwater_;
        const auto excess = [&](Length level) { return flow(depth, level, true) - linear(outfall_, level); };
        return excess(tailwater_) <= zero ? tailwater_ : root_between(excess, tailwater_, depth);
    }

    std::vector<OutletLaw> outlets_;
    Length tailwater_;
    Curve<Length, Flow> outfall_;
};

/// Rows between two others, until straight lines are within the tolerance.
class Packing {
public:
    Packing(const Works& works, Share tolerance) : works_(works), tolerance_(number(tolerance)) {}

    void add_between(const RatingTable::value_type& low, const RatingTable::value_type& high,
                     RatingTable& rows) {
        const auto& [low_depth, low_flow] = low;
        const auto& [high_depth, high_flow] = high;
        const Length middle = (low_depth + high_depth) / 2.0;
        if (high_depth - low_depth < 2.0 * shortest_span || is_straight(low, high)) return;
        require(rows.size() < most_rating_rows, shown("tolerance", share(tolerance_)),
                " is too small: the rating would have more than 10000 rows");
        const RatingTable::value_type between{middle, works_.flow_at(middle)};
        add_between(low, between, rows);
        rows.push_back(between);
        add_between(between, high, rows);
    }

private:
    [[nodiscard]] bool is_straight(const RatingTable::value_type& low,
                                   const RatingTable::value_type& high) const {
        const auto& [low_depth, low_flow] = low;
        const auto& [high_depth, high_flow] = high;
        for (const double way : {0.25, 0.5, 0.75}) {
            const Flow lawful = works_.flow_at(low_depth + way * (high_depth - low_depth));
            const Flow straight = low_flow + way * (high_flow - low_flow);
            if (abs(straight - lawful) > tolerance_ * lawful) return false;
        }
        return true;
    }

    const Works& works_;
    double tolerance_;
};

}  // namespace

RatingTable outlet_rating(const OutletTable& outlets, Length depth, Count steps,
                          std::optional<Share> tolerance, const Downstream& downstream) {
    require_positive("depth", depth);
    const double n = require_steps(steps);
    if (tolerance)
        require(*tolerance >= share(1e-4) && *tolerance <= share(0.1), shown("tolerance", *tolerance),
                " must be from 0.01 % to 10 %");
    std::vector<Length> depths = equal_steps(depth, n);
    const Works works(outlets, depth, downstream);
    add_kinks(depths, works.kinks());

    RatingTable rating;
    for (const Length& d : depths) {
        const RatingTable::value_type row{d, works.flow_at(d)};
        if (tolerance && !rating.empty())
            Packing(works, *tolerance).add_between(RatingTable::value_type(rating.back()), row, rating);
        rating.push_back(row);
    }
    return rating;
}

RatingTable rating_sum(const RatingTable& rating, const RatingTable& other, Length level) {
    const Curve<Length, Flow> first = checked_rating(rating, "rating");
    Curve<Length, Flow> second = checked_rating(other, "other rating");
    require(is_finite(level), shown("level", level), " must be a number");
    for (Length& depth : second.x) depth += level;
    const Length top = first.x.back();
    const Length start = second.x.front();
    require(second.x.back() >= top - slack(top, second.x.back()), "the other rating ends at ",
            amount(second.x.back()), ", below the top of the rating (", amount(top), ")");
    std::vector<Length> depths = first.x;
    add_kinks(depths, second.x);
    // Below its first row it lets nothing out, and starts over the switching rise.
    if (second.y.front() > zero) add_kinks(depths, {start - switching_rise});
    RatingTable sum;
    for (const Length& depth : depths) {
        const bool out = depth < start - slack(depth, start);
        const Flow more = out ? Flow(zero) : linear(second, std::max(depth, start));
        sum.emplace_back(depth, linear(first, depth) + more);
    }
    return sum;
}

}  // namespace undercroft::calc
