/// \file setting_out.hpp
/// Points to set a bed out by: east, north and level of the pit's corners, the rows and the ports.
#pragma once

#include <string>
#include <vector>

#include "calc/works/plane_pit.hpp"

namespace undercroft::calc {

/// Where the plan lies on the site's grid: its origin, the first corner of the base, and the bearing of its x
/// axis, along the rows, clockwise from grid north. The y axis points to the right of it.
struct SiteGrid {
    Length east;
    Length north;
    Angle bearing;
};

/// A point to set out.
struct SetPoint {
    std::string name;
    Length east;
    Length north;
    Length level;
};

/// East and north of a point of the plan: E + x sin B + y cos B, N + x cos B - y sin B. Plane surveying,
/// forward computation. \throws Refused(domain) for a bearing outside 0 to 360 deg.
[[nodiscard]] SetPoint set_point(const SiteGrid& grid, const std::string& name, Length x, Length y,
                                 Length level);

/// The four corners of the base ("base 1" to "base 4"), in turn from the origin along the length, and of the
/// pit at ground level ("top 1" to "top 4"). \throws Refused as set_point and top_corners.
[[nodiscard]] std::vector<SetPoint> set_out_pit(const SiteGrid& grid, const PlanePit& pit);

/// The rows of a bed in plan, over its base.
struct BedRows {
    Count rows;
    Length span;  ///< over the feet of a row
    Length row_gap;
    Length side_margin;
    Length end_margin;
    Length row_length;
};

/// Start and end of the middle line of each row ("row 1 start", "row 1 end" ...) at a height over the
/// formation, such as the top of the base stone. \throws Refused as set_point; Refused(domain) for rows that
/// are not a whole number from 1 to 1000, a span or row length not above 0, or a gap, margin or height below
/// 0.
[[nodiscard]] std::vector<SetPoint> set_out_rows(const SiteGrid& grid, const Plane& formation,
                                                 const BedRows& rows, Length height);

/// How units stand in a row, and which of them have a port.
struct RowUnits {
    Count units;
    Count interval;  ///< between ports; 0: both ends only
    Length end_unit;
    Length middle_unit;
    Length joint_overlap;
};

/// The inspection ports ("row 1 port 1" ...), in the middle of their units; the units that have one are
/// spread evenly, as in drawn_ports. Their level is that of the formation and a height, such as the crown's.
/// \throws Refused as set_out_rows, and as row_length.
[[nodiscard]] std::vector<SetPoint> set_out_ports(const SiteGrid& grid, const Plane& formation,
                                                  const BedRows& rows, const RowUnits& units, Length height);

/// Area of a polygon from its corners in turn, east and north: the shoelace formula, from the first corner so
/// that the size of grid coordinates costs no digits. \throws Refused(domain) for fewer than three corners.
[[nodiscard]] Area polygon_area(const Table<Length, Length>& corners);

/// Distance between two points of a grid.
[[nodiscard]] Length grid_distance(Length east_1, Length north_1, Length east_2, Length north_2);

/// Bearing from one point of a grid to another, clockwise from grid north, 0 to 360 deg.
/// \throws Refused(domain) for one and the same point.
[[nodiscard]] Angle grid_bearing(Length east_1, Length north_1, Length east_2, Length north_2);

}  // namespace undercroft::calc
