#include "calc/works/setting_out.hpp"

#include <cmath>

#include "calc/bed/bed.hpp"

namespace undercroft::calc {

namespace {

std::string numbered(const char* what, double number) {
    return what + std::to_string(static_cast<int>(number));
}

/// Calls `put(number, y of its middle line)` for each row.
template <class Put>
void for_rows(const BedRows& bed, Length height, const Put& put) {
    const double rows = require_whole("rows", bed.rows, 1);
    require(rows <= 1000, shown("rows", bed.rows), " must be at most 1000");
    require_positive("span", bed.span);
    require_not_negative("row gap", bed.row_gap);
    require_not_negative("side margin", bed.side_margin);
    require_not_negative("end margin", bed.end_margin);
    require_positive("row length", bed.row_length);
    require_not_negative("height", height);
    for (double row = 1; row <= rows; ++row)
        put(row, bed.side_margin + bed.span / 2.0 + (row - 1) * (bed.span + bed.row_gap));
}

/// Middles of the units with a port, from the start of the row; spread as in drawn_ports.
std::vector<Length> ports_in_row(const RowUnits& row) {
    const double units = require_whole("units", row.units, 2);
    const double spans = number(bed_ports(count(1), row.units, row.interval)) - 1;
    const Length whole = row_length(row.units, row.end_unit, row.middle_unit, row.joint_overlap);
    std::vector<Length> middles;
    for (double port = 0; port <= spans; ++port) {
        const double unit = std::round(port * (units - 1) / spans);
        if (unit == 0)
            middles.push_back(row.end_unit / 2.0);
        else if (unit == units - 1)
            middles.push_back(whole - row.end_unit / 2.0);
        else
            middles.push_back(row.end_unit - row.joint_overlap +
                              (unit - 1) * (row.middle_unit - row.joint_overlap) + row.middle_unit / 2.0);
    }
    return middles;
}

}  // namespace

SetPoint set_point(const SiteGrid& grid, const std::string& name, Length x, Length y, Length level) {
    require(grid.bearing >= degrees(0) && grid.bearing <= degrees(360 * (1 + limit_tolerance)),
            shown("bearing", grid.bearing), " must be from 0 deg to 360 deg, clockwise from grid north");
    const double s = sine(grid.bearing);
    const double c = cosine(grid.bearing);
    return {name, grid.east + x * s + y * c, grid.north + x * c - y * s, level};
}

std::vector<SetPoint> set_out_pit(const SiteGrid& grid, const PlanePit& pit) {
    std::vector<SetPoint> points;
    const auto put = [&](const char* name, const PitCorners& corners) {
        for (std::size_t i = 0; i < corners.size(); ++i)
            points.push_back(set_point(grid, numbered(name, static_cast<double>(i) + 1), corners[i].x,
                                       corners[i].y, corners[i].level));
    };
    put("base ", base_corners(pit));
    put("top ", top_corners(pit));
    return points;
}

std::vector<SetPoint> set_out_rows(const SiteGrid& grid, const Plane& formation, const BedRows& rows,
                                   Length height) {
    std::vector<SetPoint> points;
    for_rows(rows, height, [&](double row, Length y) {
        const Length start = rows.end_margin;
        const Length end = rows.end_margin + rows.row_length;
        points.push_back(
            set_point(grid, numbered("row ", row) + " start", start, y, formation.level(start, y) + height));
        points.push_back(
            set_point(grid, numbered("row ", row) + " end", end, y, formation.level(end, y) + height));
    });
    return points;
}

std::vector<SetPoint> set_out_ports(const SiteGrid& grid, const Plane& formation, const BedRows& rows,
                                    const RowUnits& units, Length height) {
    const std::vector<Length> middles = ports_in_row(units);
    std::vector<SetPoint> points;
    for_rows(rows, height, [&](double row, Length y) {
        double port = 0;
        for (const Length& middle : middles) {
            const Length x = rows.end_margin + middle;
            points.push_back(set_point(grid, numbered("row ", row) + numbered(" port ", ++port), x, y,
                                       formation.level(x, y) + height));
        }
    });
    return points;
}

Area polygon_area(const Table<Length, Length>& corners) {
    require(corners.size() >= 3, "an area needs at least three corners");
    const auto& [east, north] = corners.front();
    Area twice = zero;
    for (std::size_t i = 2; i < corners.size(); ++i) {
        const auto& [e1, n1] = corners[i - 1];
        const auto& [e2, n2] = corners[i];
        twice += (e1 - east) * (n2 - north) - (e2 - east) * (n1 - north);
    }
    return abs(twice) / 2.0;
}

Length grid_distance(Length east_1, Length north_1, Length east_2, Length north_2) {
    const Length east = east_2 - east_1;
    const Length north = north_2 - north_1;
    return sqrt(east * east + north * north);
}

Angle grid_bearing(Length east_1, Length north_1, Length east_2, Length north_2) {
    const Length east = east_2 - east_1;
    const Length north = north_2 - north_1;
    require(!(east == zero && north == zero), "from a point to itself there is no bearing");
    const Angle bearing = inclination(east, north);  // from north towards east
    return bearing < zero ? bearing + degrees(360) : bearing;
}

}  // namespace undercroft::calc
