#include "calc/water/pool.hpp"

#include <string>

#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// The two columns of a table whose depths rise.
template <class Q>
Points checked_columns(const Table<Length, Q>& rows, const std::string& table, const char* name) {
    require(rows.size() >= 2, "the ", table, " needs at least two rows");
    Points points;
    for (const auto& [depth, value] : rows) {
        require_not_negative(name, value);
        if (!std::isfinite(depth.value())) refuse_domain("a depth of the " + table + " is not finite");
        require(points.x.empty() || is_above(depth.value(), points.x.back()), table, ": ",
                shown("depth", depth), " must be above that of the row before");
        points.x.push_back(depth.value());
        points.y.push_back(value.value());
    }
    return points;
}

Points checked_storage(const StorageTable& storage) {
    Points points = checked_columns(storage.rows, "storage table", "volume");
    for (std::size_t i = 1; i < points.y.size(); ++i)
        require(is_above(points.y[i], points.y[i - 1]),
                "storage table: ", shown("volume", Volume::from_value(points.y[i])),
                " must be above that of the row before");
    return points;
}

}  // namespace

Pool::Pool(const StorageTable& storage, const RatingTable& rating) {
    const Points volumes = checked_storage(storage);
    const Points flows = checked_columns(rating, "rating", "flow");
    for (const double x : volumes.x) depth.push_back(Length::from_value(x));
    const double hair = slack(volumes.x.front(), volumes.x.back());
    require(flows.x.front() <= volumes.x.front() + hair && flows.x.back() >= volumes.x.back() - hair,
            "the rating (", amount(std::get<0>(rating.front())), " to ", amount(std::get<0>(rating.back())),
            ") must reach over the depths of the storage (", amount(bottom()), " to ", amount(top()), ")");

    std::vector<Length> kinks;
    for (const double x : flows.x) kinks.push_back(Length::from_value(x));
    add_kinks(depth, kinks);
    for (const Length& d : depth) {
        stored.push_back(Volume::from_value(linear(volumes, d.value())));
        outflow.push_back(Flow::from_value(linear(flows, d.value())));
    }
}

Length Pool::inside(const char* name, Length at) const {
    const double hair = slack(bottom().value(), top().value());
    require(at.value() >= bottom().value() - hair && at.value() <= top().value() + hair, shown(name, at),
            " must be within the storage table (", amount(bottom()), " to ", amount(top()), ")");
    return std::clamp(at, bottom(), top());
}

std::pair<std::size_t, double> Pool::place_of(Length at) const {
    const auto above = std::upper_bound(depth.begin() + 1, depth.end() - 1, at);
    const auto i = static_cast<std::size_t>(above - depth.begin()) - 1;
    return {i, (at - depth[i]) / (depth[i + 1] - depth[i])};
}

Volume Pool::stored_at(Length at) const {
    const auto [i, way] = place_of(at);
    return stored[i] + way * (stored[i + 1] - stored[i]);
}

void Pool::insert(Length at) {
    const auto [i, way] = place_of(at);
    if (!(way > 0 && way < 1)) return;
    const Volume volume = stored[i] + way * (stored[i + 1] - stored[i]);
    const Flow flow = outflow[i] + way * (outflow[i + 1] - outflow[i]);
    const auto next = static_cast<std::ptrdiff_t>(i) + 1;
    depth.insert(depth.begin() + next, at);
    stored.insert(stored.begin() + next, volume);
    outflow.insert(outflow.begin() + next, flow);
}

Volume Pool::dead_storage() const {
    std::size_t lowest_outlet = 0;
    while (lowest_outlet + 1 < outflow.size() && outflow[lowest_outlet + 1].value() == 0) ++lowest_outlet;
    return stored[lowest_outlet];
}

}  // namespace undercroft::calc
