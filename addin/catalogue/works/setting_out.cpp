#include "calc/works/setting_out.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_bed.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/planes.hpp"
#include "calc/bed/bed.hpp"

namespace undercroft::addin {

namespace {

/// East, north and bearing, one row.
using GridRow = std::vector<std::tuple<Length, Length, Angle>>;
/// Number of the point, east, north, level.
using PointRows = calc::Table<Count, Length, Length, Length>;

constexpr const char* forward =
    "plane surveying, forward computation: E + x sin B + y cos B, N + x cos B - y sin B";
constexpr const char* check_it =
    "Check diagonals and one level by hand before anything is dug: UC.SETOUT.DISTANCE, UC.AREA.POLYGON";

calc::SiteGrid grid_of(const GridRow& rows) {
    if (rows.size() != 1)
        refuse_value("the grid is one row: east, north and bearing of the base's first corner");
    const auto& [east, north, bearing] = rows.front();
    return {east, north, bearing};
}

PointRows rows_of(const std::vector<calc::SetPoint>& points) {
    PointRows rows;
    rows.reserve(points.size());
    for (const calc::SetPoint& point : points)
        rows.emplace_back(count(static_cast<double>(rows.size() + 1)), point.east, point.north, point.level);
    return rows;
}

Entry& takes_grid(Entry& entry) {
    return entry
        .takes("grid", "E, N, B",
               "Three columns, one row: east and north of the base's first corner, bearing along its length, "
               "clockwise from grid north")
        .within({usual::grid_place, usual::grid_place, usual::bearing});
}
Entry& takes_plane(Entry& entry, const char* name, const char* symbol, const char* says) {
    return entry.takes(name, symbol, says).within({usual::plan_place, usual::plan_place, usual::level});
}
Entry& takes_formation(Entry& entry) {
    return takes_plane(
        entry, "formation", "x, y, z_f",
        "Three columns: place along the length, across it to the right, level; three rows or more");
}
Entry& takes_setting_out_rows(Entry& entry) {
    return entry.takes("rows", "r", "Rows of chambers")
        .within(usual::rows)
        .takes("span", "B_f", "Width of a chamber over its feet")
        .within(usual::width_over_feet)
        .takes("row gap", "g", "Clear width of stone between rows")
        .within(usual::row_gap)
        .takes("side margin", "m", "Stone beyond the outer rows, each side")
        .within(usual::bed_margin)
        .takes("end margin", "e", "Stone beyond the ends of the rows, each end")
        .within(usual::bed_margin);
}
Entry& takes_height(Entry& entry) {
    return entry
        .takes("height above formation", "h",
               "Height of the points over the formation, such as the base stone", 0.0)
        .within(usual::crown_height);
}
Entry& takes_setting_out_tolerance(Entry& entry) {
    return entry.takes("tolerance", "tol", "How far the levels may depart from a plane", u"0.05 m")
        .within(usual::plane_tolerance);
}
Entry& gives_points(Entry& entry, const char* says) {
    return entry.gives_columns(says, {{"point", "no."}, {"east", "E"}, {"north", "N"}, {"level", "z"}});
}

Function setout_pit_entry() {
    auto points = function(
        "UC.SETOUT.PIT", [](GridRow grid, Length length, Length width, Batter batter,
                            calc::CornerLevels formation, calc::CornerLevels ground, Length tolerance) {
            const calc::PlanePit pit = {length, width, batter,
                                        plane_over("formation", formation, length, width, tolerance),
                                        plane_over("ground", ground, length, width, tolerance)};
            require_pit("ground", pit.ground, pit.formation, length, width);
            return rows_of(calc::set_out_pit(grid_of(grid), pit));
        });
    points
        .says(
            "Points to set a pit out by: 1 to 4 the corners of its base in turn from the first along the "
            "length, 5 "
            "to 8 those at ground level")
        .related({"UC.SETOUT.ROWS", "UC.SETOUT.PORTS", "UC.LEVEL.PLANE", "UC.SETOUT.DISTANCE"})
        .also_called("staking out, pegging out, coordinates of corners, offset pegs, setting-out points")
        .equation("E + x sin B + y cos B, N + x cos B - y sin B")
        .source(forward)
        .example(
            "INDEX(UC.SETOUT.PIT({500;800;36.86989764584402}; \"50 m\"; \"25 m\"; \"0H:1V\"; "
            "{0;0;100|50;0;100|0;25;100}; {0;0;102|50;0;102|0;25;102}); 4; 2)",
            "550", "1e-9 rel", Origin::mathematics,
            "third corner, a bearing of 3-4-5: 500 + 50 x 0.6 + 25 x 0.8")
        .example(
            "INDEX(UC.SETOUT.PIT({\"ft\";\"ft\";\"deg\"|5000;8000;90}; \"100 ft\"; \"40 ft\"; \"1H:1V\"; "
            "{\"ft\";\"ft\";\"ft\"|0;0;330|100;0;330|0;40;330}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;338|100;0;338|0;40;338}; ; "
            "\"1;ft;ft;ft\"); 6; 3)",
            "8008", "1e-9 rel", Origin::mathematics,
            "due east: the first corner at the ground lies 8 ft to the left")
        .caution(check_it);
    takes_grid(points)
        .takes("base length", "L", "Length of the pit's base")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the pit's base")
        .within(usual::plan_width)
        .takes("batter", "z", "Slope of the walls, such as 1.5H:1V; 0H:1V for vertical walls")
        .within(usual::batter);
    takes_formation(points);
    takes_plane(points, "ground", "x, y, z_g", "The same three columns of the existing ground");
    return gives_points(takes_setting_out_tolerance(points), "Corners of the base, then those at the ground");
}

Function setout_rows_entry() {
    auto points =
        function("UC.SETOUT.ROWS", [](GridRow grid, calc::CornerLevels formation, Count rows, Length span,
                                      Length row_gap, Length side_margin, Length end_margin,
                                      Length row_length, Length height, Length tolerance) {
            return rows_of(
                calc::set_out_rows(grid_of(grid),
                                   plane_over("formation", formation, row_length + 2.0 * end_margin,
                                              calc::bed_width(rows, span, row_gap, side_margin), tolerance),
                                   {rows, span, row_gap, side_margin, end_margin, row_length}, height));
        });
    points
        .says(
            "Points to set the rows of a bed out by: start and end of the middle line of each row, row after "
            "row")
        .related({"UC.SETOUT.PIT", "UC.SETOUT.PORTS", "UC.BED.ROWS", "UC.LEVEL.PLANE"})
        .also_called("staking out rows, coordinates of rows, centre lines, row lines")
        .equation("y = m + B_f/2 + (i - 1)(B_f + g), x = e and e + l")
        .source(forward)
        .example(
            "INDEX(UC.SETOUT.ROWS({1000;2000;90}; {0;0;99.35|40;0;99.35|0;12;99.35}; 8; \"1.31 m\"; \"0.15 "
            "m\"; "
            "\"0.32 m\"; \"0.32 m\"; \"39.35 m\"; \"0.23 m\"); 5; 3)",
            "1997.565", "1e-9 rel", Origin::mathematics,
            "end of the second row, due east: 0.32 + 0.655 + 1.46 to the right")
        .example(
            "INDEX(UC.SETOUT.ROWS({\"ft\";\"ft\";\"deg\"|5000;8000;0}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;330|100;0;331|0;40;330}; 8; "
            "\"4.5 ft\"; \"0.5 ft\"; \"1 ft\"; \"1 ft\"; \"98 ft\"; \"1 ft\"; ; \"1;ft;ft;ft\"); 3; 4)",
            "331.99", "1e-9 rel", Origin::mathematics, "end of the first row: 330 + 0.01 x 99 + 1")
        .caution(check_it);
    takes_grid(points);
    takes_formation(points);
    takes_setting_out_rows(points)
        .takes("row length", "l", "Installed length of a row")
        .within(usual::plan_length);
    takes_height(points);
    return gives_points(takes_setting_out_tolerance(points), "Start and end of each row");
}

Function setout_ports_entry() {
    auto points =
        function("UC.SETOUT.PORTS",
                 [](GridRow grid, calc::CornerLevels formation, Count rows, Length span, Length row_gap,
                    Length side_margin, Length end_margin, Count units, Count interval, Length end_unit,
                    Length middle_unit, Length joint_overlap, Length height) {
                     const Length row_length = calc::row_length(units, end_unit, middle_unit, joint_overlap);
                     return rows_of(calc::set_out_ports(
                         grid_of(grid),
                         plane_over("formation", formation, row_length + 2.0 * end_margin,
                                    calc::bed_width(rows, span, row_gap, side_margin), 0.05 * metre),
                         {rows, span, row_gap, side_margin, end_margin, row_length},
                         {units, interval, end_unit, middle_unit, joint_overlap}, height));
                 });
    points
        .says(
            "Points to set the inspection ports of a bed out by, in the middle of their units, row after "
            "row; as "
            "UC.BED.PORTS counts them")
        .related({"UC.SETOUT.ROWS", "UC.BED.PORTS", "UC.DRAW.PORTS", "UC.RISER.LENGTH"})
        .also_called("coordinates of inspection ports, risers, access points, stake-out")
        .equation("x to the middle of units 1 to u, at most k units apart")
        .source(forward)
        .example(
            "INDEX(UC.SETOUT.PORTS({1000;2000;0}; {0;0;100|40;0;100|0;12;100}; 2; \"1.3 m\"; \"0.15 m\"; "
            "\"0.3 m\"; "
            "\"0.3 m\"; 13; \"0 each\"; \"2.4 m\"; \"2.3 m\"; \"0.1 m\"; \"1 m\"); 3; 3)",
            "2028", "1e-9 rel", Origin::mathematics, "last unit of a row of 28.9 m: 0.3 + 28.9 - 1.2")
        .example(
            "INDEX(UC.SETOUT.PORTS({\"ft\";\"ft\";\"deg\"|5000;8000;0}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;330|100;0;330|0;40;330}; 1; "
            "\"4 ft\"; \"0.5 ft\"; \"1 ft\"; \"1 ft\"; 13; 4; \"8 ft\"; \"7 ft\"; \"0.5 ft\"; \"3 ft\"; "
            "\"1;ft;ft;ft\"); 2; 2)",
            "5003", "1e-9 rel", Origin::mathematics, "due north: 1 ft and half of 4 ft to the right")
        .caution(check_it);
    takes_grid(points);
    takes_formation(points);
    takes_setting_out_rows(points)
        .takes("units in row", "u", "Units in a row, end units included")
        .within(usual::units_in_row)
        .takes("interval", "k", "Units from port to port; 0 each for one at each end of a row")
        .within(usual::port_interval)
        .takes("end unit", "E_u", "Laid length of an end unit")
        .within(usual::unit_length)
        .takes("middle unit", "M", "Laid length of a middle unit")
        .within(usual::unit_length)
        .takes("joint overlap", "o", "Length by which joined units overlap")
        .within(usual::joint_overlap);
    takes_height(points);
    return gives_points(points, "Ports, row after row");
}

Function area_polygon_entry() {
    return function("UC.AREA.POLYGON",
                    [](calc::Table<Length, Length> corners) { return calc::polygon_area(corners); })
        .says("Area of a polygon from its corners in turn, either way round")
        .related({"UC.SETOUT.DISTANCE", "UC.RUNOFF.COEFFICIENT", "UC.RUNOFF.PEAK"})
        .also_called("area by coordinates, shoelace formula, traverse area, parcel area, site area")
        .equation("A = |sum (x_i y_j - x_j y_i)|/2, from the first corner")
        .source("shoelace formula")
        .example("UC.AREA.POLYGON({0;0|40;10|55;45|20;60|-5;30})", "2275", "1e-9 rel", Origin::mathematics,
                 "five corners, by hand")
        .example("UC.AREA.POLYGON({\"ft\";\"ft\"|5000;8000|5100;8000|5100;8040|5000;8040}; \"ft2\")", "4000",
                 "1e-9 rel", Origin::mathematics, "a rectangle of 100 ft x 40 ft")
        .takes("corners", "E, N", "Two columns: east and north, a corner a row, in turn")
        .within({usual::corner_place, usual::corner_place})
        .gives("A", "Area");
}

Entry& takes_two_points(Entry& entry) {
    return entry.takes("east 1", "E_1", "East of the first point")
        .within(usual::grid_place)
        .takes("north 1", "N_1", "North of the first point")
        .within(usual::grid_place)
        .takes("east 2", "E_2", "East of the second point")
        .within(usual::grid_place)
        .takes("north 2", "N_2", "North of the second point")
        .within(usual::grid_place);
}

Function distance_entry() {
    auto distance = function("UC.SETOUT.DISTANCE", &calc::grid_distance);
    distance.says("Distance between two points of a grid: for the diagonals of what was set out")
        .related({"UC.SETOUT.BEARING", "UC.SETOUT.PIT", "UC.AREA.POLYGON"})
        .also_called("length between coordinates, check diagonals, inverse, join")
        .equation("s = sqrt((E_2 - E_1)^2 + (N_2 - N_1)^2)")
        .source("plane surveying, inverse computation")
        .example("UC.SETOUT.DISTANCE(\"500 m\"; \"800 m\"; \"530 m\"; \"840 m\")", "50", "1e-12 rel",
                 Origin::mathematics, "a triangle of 3-4-5")
        .example("UC.SETOUT.DISTANCE(\"5000 ft\"; \"8000 ft\"; \"5100 ft\"; \"8000 ft\"; \"ft\")", "100",
                 "1e-9 rel", Origin::mathematics, "due east");
    return takes_two_points(distance).gives("s", "Distance");
}

Function bearing_entry() {
    auto bearing = function("UC.SETOUT.BEARING", &calc::grid_bearing);
    bearing.says("Bearing from one point of a grid to another, clockwise from grid north")
        .related({"UC.SETOUT.DISTANCE", "UC.SETOUT.PIT"})
        .also_called("azimuth, direction, whole-circle bearing, join, inverse")
        .equation("B = atan2(E_2 - E_1, N_2 - N_1), 0 to 360 deg")
        .source("plane surveying, inverse computation")
        .example("UC.SETOUT.BEARING(\"500 m\"; \"800 m\"; \"530 m\"; \"840 m\")", "36.869897646", "5e-9",
                 Origin::mathematics, "a triangle of 3-4-5")
        .example("UC.SETOUT.BEARING(\"5000 ft\"; \"8000 ft\"; \"4900 ft\"; \"8000 ft\")", "270", "1e-9 rel",
                 Origin::mathematics, "due west");
    return takes_two_points(bearing).gives("B", "Bearing");
}

}  // namespace

std::vector<Function> setting_out_functions() {
    return {setout_pit_entry(),   setout_rows_entry(), setout_ports_entry(),
            area_polygon_entry(), distance_entry(),    bearing_entry()};
}

}  // namespace undercroft::addin
