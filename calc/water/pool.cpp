#include "calc/water/pool.hpp"

#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// The two columns of a table whose depths rise.
template <class Q>
Curve<Length, Q> checked_columns(const Table<Length, Q>& rows, const char* table, const char* name) {
    require(rows.size() >= 2, "the ", table, " needs at least two rows");
    Curve<Length, Q> curve;
    for (const auto& [depth, value] : rows) {
        require_not_negative(name, value);
        require(is_finite(depth), "a depth of the ", table, " is not finite");
        require(curve.x.empty() || is_above(depth, curve.x.back()), table, ": ", shown("depth", depth),
                " must be above that of the row before");
        curve.add(depth, value);
    }
    return curve;
}

Curve<Length, Volume> checked_storage(const StorageTable& storage) {
    Curve<Length, Volume> volumes = checked_columns(storage.rows, "storage table", "volume");
    for (std::size_t i = 1; i < volumes.y.size(); ++i)
        require(is_above(volumes.y[i], volumes.y[i - 1]), "storage table: ", shown("volume", volumes.y[i]),
                " must be above that of the row before");
    return volumes;
}

}  // namespace

Pool::Pool(const StorageTable& storage, const RatingTable& rating) {
    const Curve<Length, Volume> volumes = checked_storage(storage);
    const Curve<Length, Flow> flows = checked_columns(rating, "rating", "flow");
    depth = volumes.x;
    const Length hair = slack(bottom(), top());
    require(flows.x.front() <= bottom() + hair && flows.x.back() >= top() - hair, "the rating (",
            amount(std::get<0>(rating.front())), " to ", amount(std::get<0>(rating.back())),
            ") must reach over the depths of the storage (", amount(bottom()), " to ", amount(top()), ")");

    add_kinks(depth, flows.x);
    for (const Length& d : depth) {
        stored.push_back(linear(volumes, d));
        outflow.push_back(linear(flows, d));
    }
}

Length Pool::inside(const char* name, Length at) const {
    const Length hair = slack(bottom(), top());
    require(at >= bottom() - hair && at <= top() + hair, shown(name, at),
            " must be within the storage table (", amount(bottom()), " to ", amount(top()), ")");
    return std::clamp(at, bottom(), top());
}

std::pair<std::size_t, double> Pool::place_of(Length at) const {
    const std::size_t i = stretch_of(depth, at);
    return {i, share_of_way(depth[i], depth[i + 1], at)};
}

Volume Pool::stored_at(Length at) const {
    const auto [i, way] = place_of(at);
    return between(stored[i], stored[i + 1], way);
}

void Pool::insert(Length at) {
    const auto [i, way] = place_of(at);
    if (!(way > 0 && way < 1)) return;
    const Volume volume = between(stored[i], stored[i + 1], way);
    const Flow flow = between(outflow[i], outflow[i + 1], way);
    const auto next = static_cast<std::ptrdiff_t>(i) + 1;
    depth.insert(depth.begin() + next, at);
    stored.insert(stored.begin() + next, volume);
    outflow.insert(outflow.begin() + next, flow);
}

Volume Pool::dead_storage() const {
    std::size_t lowest_outlet = 0;
    while (lowest_outlet + 1 < outflow.size() && outflow[lowest_outlet + 1] == zero) ++lowest_outlet;
    return stored[lowest_outlet];
}

}  // namespace undercroft::calc
