#include "calc/plant_load.hpp"

#include "calc/elastic_stress.hpp"

namespace undercroft::calc {

namespace {

struct Point {
    Length x;
    Length y;
};

void require_patches(const Patches& patches, Length depth) {
    require_positive("depth", depth);
    require(patches.size() <= 40, "the table has more than 40 patches");
    for (const auto& [load, length, width, x, y] : patches) {
        require_positive("load", load);
        require_positive("length", length);
        require_positive("width", width);
    }
}

Pressure stress_at(const Patches& patches, Length depth, const Point& point) {
    Pressure total = Pressure::from_value(0);
    for (const auto& [load, length, width, x, y] : patches) {
        const Length left = x - length / 2.0 - point.x;
        const Length right = x + length / 2.0 - point.x;
        const Length near = y - width / 2.0 - point.y;
        const Length far = y + width / 2.0 - point.y;
        total += load / (length * width) *
                 (corner_influence(right, far, depth) - corner_influence(left, far, depth) -
                  corner_influence(right, near, depth) + corner_influence(left, near, depth));
    }
    return total;
}

/// Centres of the patches and the points half-way between two of them.
std::vector<Point> likely_points(const Patches& patches) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < patches.size(); ++i)
        for (std::size_t j = i; j < patches.size(); ++j)
            points.push_back({(std::get<3>(patches[i]) + std::get<3>(patches[j])) / 2.0,
                              (std::get<4>(patches[i]) + std::get<4>(patches[j])) / 2.0});
    return points;
}

}  // namespace

Pressure stress_of_patches(const Patches& patches, Length depth, Length x, Length y) {
    require_patches(patches, depth);
    return stress_at(patches, depth, {x, y});
}

Pressure plant_load(const Patches& patches, Length depth) {
    require_patches(patches, depth);
    Point best{};
    Pressure greatest = Pressure::from_value(0);
    const auto improves = [&](const Point& point) {
        const Pressure stress = stress_at(patches, depth, point);
        if (!(stress > greatest * (1 + 1e-12))) return false;
        greatest = stress;
        best = point;
        return true;
    };
    for (const Point& point : likely_points(patches)) improves(point);
    for (Length step = depth; step > Length::from_value(1e-6);) {
        const bool moved = improves({best.x + step, best.y}) || improves({best.x - step, best.y}) ||
                           improves({best.x, best.y + step}) || improves({best.x, best.y - step});
        if (!moved) step = step / 2.0;
    }
    return greatest;
}

}  // namespace undercroft::calc
