#include "calc/water/emptying.hpp"

#include <algorithm>
#include <cmath>

#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

constexpr double orifice_exponent = 0.5;

/// A slice of water between two depths.
struct Slice {
    Length low;
    Length high;
    Volume volume;
};

/// One span of the rating, between two of its rows.
struct Span {
    Length low;
    Length high;
    Flow low_flow;
    Flow high_flow;
    double exponent;  ///< m in Q ~ x^m, where the span starts without flow

    [[nodiscard]] Flow flow_at(Length depth) const {
        return low_flow + (depth - low) / (high - low) * (high_flow - low_flow);
    }
    [[nodiscard]] Time drain_time(const Slice& slice) const {
        if (low_flow.value() == 0) return curved_time(slice);
        // The logarithmic mean of the flows at both ends of the slice.
        const Flow least = flow_at(slice.low);
        const double growth = flow_at(slice.high) / least - 1.0;
        return slice.volume / least * (growth == 0 ? 1.0 : std::log1p(growth) / growth);
    }

private:
    [[nodiscard]] Time curved_time(const Slice& slice) const {
        const double p = 1 - exponent;
        const double from = (slice.high - low) / (high - low);
        const double to = std::max(0.0, static_cast<double>((slice.low - low) / (high - low)));
        const double share_of_slice = (slice.high - slice.low) / (high - low);
        return slice.volume / high_flow * (std::pow(from, p) - std::pow(to, p)) / (p * share_of_slice);
    }
};

/// The exponent of the span that starts without flow at row i, from its upper row and the next.
double exponent_above(const RatingTable& rating, std::size_t i) {
    if (i + 2 >= rating.size()) return orifice_exponent;
    const auto& [start, none] = rating[i];
    const auto& [first, first_flow] = rating[i + 1];
    const auto& [second, second_flow] = rating[i + 2];
    if (second_flow <= first_flow) return 0;
    const double fitted = std::log(second_flow / first_flow) / std::log((second - start) / (first - start));
    return std::min(fitted, orifice_exponent);
}

Span span_at(const RatingTable& rating, Length depth) {
    const auto above = std::upper_bound(
        rating.begin() + 1, rating.end() - 1, depth,
        [](Length wanted, const RatingTable::value_type& row) { return wanted < std::get<0>(row); });
    const auto& [low, low_flow] = *(above - 1);
    const auto& [high, high_flow] = *above;
    const auto i = static_cast<std::size_t>(above - rating.begin()) - 1;
    return {low, high, low_flow, high_flow, exponent_above(rating, i)};
}

}  // namespace

Time drain_time(const StorageTable& storage, const RatingTable& rating, Length from_depth, Length to_depth) {
    const Pool pool(storage, rating);
    const Length from = pool.inside("from depth", from_depth);
    const Length to = pool.inside("to depth", to_depth);
    require(!is_above(to.value(), from.value()), shown("to depth", to), " must not be above the from depth (",
            amount(from), ")");
    if (from <= to) return Time::from_value(0);
    std::vector<Length> depths = {to, from};
    add_kinks(depths, pool.depth);

    Time total = Time::from_value(0);
    for (std::size_t i = depths.size() - 1; i > 0; --i) {
        const Slice slice{depths[i - 1], depths[i],
                          pool.stored_at(depths[i]) - pool.stored_at(depths[i - 1])};
        const Span span = span_at(rating, (slice.low + slice.high) / 2.0);
        if (span.high_flow.value() == 0)
            no_answer("the bed never empties to " + text_of(as_quantity(to)) + ": nothing flows out at " +
                      text_of(as_quantity(slice.high)));
        total += span.drain_time(slice);
    }
    return total;
}

}  // namespace undercroft::calc
