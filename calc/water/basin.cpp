#include "calc/water/basin.hpp"

#include <algorithm>

#include "calc/interpolate.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// Volume on the surface by the depth above the base of the bed.
Curve<Length, Volume> checked_surface(const StorageTable& surface, Length top) {
    require(surface.rows.size() >= 2, "the surface needs at least two rows of depth and volume");
    Curve<Length, Volume> curve;
    for (const auto& [depth, volume] : surface.rows) {
        if (curve.x.empty()) {
            require(volume == zero, shown("volume", volume), " must be 0 in the first row of the surface");
            require(is_finite(depth) && depth >= top - slack(depth, top),
                    "the surface must begin at or above the top of the storage (", amount(top), "), not at ",
                    amount(depth));
        } else {
            require(is_finite(depth) && is_above(depth, curve.x.back()), "surface: ", shown("depth", depth),
                    " must be above that of the row before");
            require(is_finite(volume) && is_above(volume, curve.y.back()),
                    "surface: ", shown("volume", volume), " must be above that of the row before");
        }
        curve.add(depth, volume);
    }
    return curve;
}

Curve<Length, Flow> flows_of(const RatingTable& rating) {
    Curve<Length, Flow> curve;
    for (const auto& [depth, flow] : rating) curve.add(depth, flow);
    return curve;
}

}  // namespace

Basin::Basin(const StorageTable& storage, const RatingTable& rating,
             const std::optional<StorageTable>& surface) {
    const Pool pool(storage, rating);  // checks both
    for (std::size_t i = 0; i < pool.depth.size(); ++i)
        levels.push_back({pool.depth[i], pool.stored[i], pool.outflow[i]});
    if (!surface) return;
    const Curve<Length, Volume> ponded = checked_surface(*surface, pool.top());
    const Curve<Length, Flow> flows = flows_of(rating);
    const Length highest = ponded.x.back();
    require(flows.x.back() >= highest - slack(highest, flows.x.back()), "the rating ends at ",
            amount(flows.x.back()), ", below the top of the surface (", amount(highest), ")");
    std::vector<Length> depths = {pool.top(), highest};
    add_kinks(depths, ponded.x);
    add_kinks(depths, flows.x);
    const Volume bed = levels.back().stored;
    for (const Length& depth : depths) {
        if (!is_above(depth, pool.top())) continue;
        const Volume above = depth <= ponded.x.front() ? Volume(zero) : linear(ponded, depth);
        levels.push_back({depth, bed + above, linear(flows, std::min(depth, flows.x.back()))});
    }
}

Volume Basin::dead_storage() const {
    std::size_t lowest_outlet = 0;
    while (lowest_outlet + 1 < levels.size() && levels[lowest_outlet + 1].outflow == zero) ++lowest_outlet;
    return levels[lowest_outlet].stored;
}

}  // namespace undercroft::calc
