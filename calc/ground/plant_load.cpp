#include "calc/ground/plant_load.hpp"

#include "calc/ground/elastic_stress.hpp"

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
    Pressure total = zero;
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

/// Middle of what two spans share, or half-way between them where they share nothing.
Length middle_of_overlap(Length middle, Length width, Length other_middle, Length other_width) {
    const Length from = std::max(middle - width / 2.0, other_middle - other_width / 2.0);
    const Length to = std::min(middle + width / 2.0, other_middle + other_width / 2.0);
    return from < to ? (from + to) / 2.0 : (middle + other_middle) / 2.0;
}

/// Centres of the patches, and the points between two of them.
std::vector<Point> likely_points(const Patches& patches) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < patches.size(); ++i) {
        for (std::size_t j = i; j < patches.size(); ++j) {
            const auto& [load, length, width, x, y] = patches[i];
            const auto& [other_load, other_length, other_width, other_x, other_y] = patches[j];
            points.push_back({middle_of_overlap(x, length, other_x, other_length),
                              middle_of_overlap(y, width, other_y, other_width)});
        }
    }
    return points;
}

struct Peak {
    Point point;
    Pressure stress;
};

/// Uphill from a point by steps along x and y, halved from the first down to the smallest.
Peak climb(const Patches& patches, Length depth, Peak best, Length first_step, Length smallest_step) {
    const auto improves = [&](const Point& point) {
        const Pressure stress = stress_at(patches, depth, point);
        if (!(stress > best.stress * (1 + 1e-12))) return false;
        best = {point, stress};
        return true;
    };
    for (Length step = first_step; step > smallest_step;) {
        const auto [x, y] = best.point;
        const bool moved = improves({x + step, y}) || improves({x - step, y}) || improves({x, y + step}) ||
                           improves({x, y - step});
        if (!moved) step = step / 2.0;
    }
    return best;
}

}  // namespace

Pressure stress_of_patches(const Patches& patches, Length depth, Length x, Length y) {
    require_patches(patches, depth);
    return stress_at(patches, depth, {x, y});
}

Pressure plant_load(const Patches& patches, Length depth) {
    require_patches(patches, depth);
    // Near the surface the slope is slight but at the edges: steps as long as the patches cross it.
    Length reach = depth;
    for (const auto& [load, length, width, x, y] : patches) reach = std::max({reach, length, width});
    std::vector<Peak> starts;
    Pressure likely = zero;
    for (const Point& point : likely_points(patches)) {
        starts.push_back({point, stress_at(patches, depth, point)});
        likely = std::max(likely, starts.back().stress);
    }
    Peak greatest{{}, zero};
    for (const Peak& start : starts) {
        if (start.stress < likely / 10.0) continue;
        const Peak peak = climb(patches, depth, start, reach / 4.0, depth / 32.0);
        if (peak.stress > greatest.stress) greatest = peak;
    }
    return climb(patches, depth, greatest, depth / 32.0, 1e-6 * metre).stress;
}

}  // namespace undercroft::calc
