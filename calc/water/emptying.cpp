#include "calc/water/emptying.hpp"

#include <algorithm>
#include <cmath>

#include "calc/water/mean_growth.hpp"
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

/// One stretch of the rating, between two of its rows.
struct Stretch {
    Length low;
    Length high;
    Flow low_flow;
    Flow high_flow;
    double exponent;  ///< m in Q ~ x^m, where the stretch starts without flow

    [[nodiscard]] Flow flow_at(Length depth) const {
        return between(low_flow, high_flow, share_of_way(low, high, depth));
    }
    [[nodiscard]] Time drain_time(const Slice& slice) const {
        if (low_flow == zero) return curved_time(slice);
        // The logarithmic mean of the flows at both ends of the slice.
        const Flow least = flow_at(slice.low);
        const double growth = flow_at(slice.high) / least - 1.0;
        return slice.volume / least * mean_growth(growth);
    }

private:
    [[nodiscard]] Time curved_time(const Slice& slice) const {
        const double p = 1 - exponent;
        const double from = share_of_way(low, high, slice.high);
        const double to = std::max(0.0, share_of_way(low, high, slice.low));
        const double share_of_slice = (slice.high - slice.low) / (high - low);
        return slice.volume / high_flow * (std::pow(from, p) - std::pow(to, p)) / (p * share_of_slice);
    }
};

/// The exponent of the stretch that starts without flow at row i, from its upper row and the next.
double exponent_above(const RatingTable& rating, std::size_t i) {
    if (i + 2 >= rating.size()) return orifice_exponent;
    const auto& [start, none] = rating[i];
    const auto& [first, first_flow] = rating[i + 1];
    const auto& [second, second_flow] = rating[i + 2];
    if (second_flow <= first_flow) return 0;
    const double fitted = std::log(second_flow / first_flow) / std::log((second - start) / (first - start));
    return std::min(fitted, orifice_exponent);
}

Stretch stretch_at(const RatingTable& rating, Length depth) {
    const auto above = std::upper_bound(
        rating.begin() + 1, rating.end() - 1, depth,
        [](Length wanted, const RatingTable::value_type& row) { return wanted < std::get<0>(row); });
    const auto& [low, low_flow] = *(above - 1);
    const auto& [high, high_flow] = *above;
    const auto i = static_cast<std::size_t>(above - rating.begin()) - 1;
    return {low, high, low_flow, high_flow, exponent_above(rating, i)};
}

/// The storage between two depths, with rows at both.
StorageTable storage_between(const Pool& stored, Length low, Length high) {
    std::vector<Length> depths = {low, high};
    add_kinks(depths, stored.depth);
    StorageTable slice;
    for (const Length& depth : depths) slice.rows.emplace_back(depth, stored.stored_at(depth));
    return slice;
}

}  // namespace

Time drain_time(const StorageTable& storage, const RatingTable& rating, Length from_depth, Length to_depth) {
    require(!storage.rows.empty(), "the storage table needs at least two rows");
    const Pool shut(storage,
                    {{std::get<0>(storage.rows.front()), zero}, {std::get<0>(storage.rows.back()), zero}});
    const Length from = shut.inside("from depth", from_depth);
    const Length to = shut.inside("to depth", to_depth);
    require(!is_above(to, from), shown("to depth", to), " must not be above the from depth (", amount(from),
            ")");
    if (from - to <= slack(from, to)) return zero;
    // The rating need reach no further than the water goes.
    const Pool pool(storage_between(shut, to, from), rating);
    const std::vector<Length>& depths = pool.depth;

    Time total = zero;
    for (std::size_t i = depths.size() - 1; i > 0; --i) {
        const Slice slice{depths[i - 1], depths[i],
                          pool.stored_at(depths[i]) - pool.stored_at(depths[i - 1])};
        const Stretch stretch = stretch_at(rating, (slice.low + slice.high) / 2.0);
        if (stretch.high_flow == zero)
            no_answer("the bed never empties to " + in_words(to) + ": nothing flows out at " +
                      in_words(slice.high));
        total += stretch.drain_time(slice);
    }
    return total;
}

}  // namespace undercroft::calc
