#include "calc/works/plane.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/planes.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* plane_source = "geometry of the plane; least squares through more than three levels";

Entry& takes_corners(Entry& entry, const char* name, const char* symbol, const char* says) {
    return entry.takes(name, symbol, says).within({usual::plan_place, usual::plan_place, usual::level});
}
Entry& takes_plane_tolerance(Entry& entry) {
    return entry.takes("tolerance", "tol", "How far the levels may depart from a plane", u"0.05 m")
        .within(usual::plane_tolerance);
}

calc::Gap gap_of(const calc::CornerLevels& upper, const calc::CornerLevels& lower, Length length,
                 Length width, Length height, Length tolerance) {
    const calc::Plane top = plane_over("upper", upper, length, width, tolerance);
    const calc::Plane bottom = plane_over("lower", lower, length, width, tolerance);
    require_pit("upper", top, bottom, length, width);
    return calc::plane_gap(upper, lower, length, width, height, tolerance);
}

Function level_plane_entry() {
    auto level =
        function("UC.LEVEL.PLANE", [](calc::CornerLevels corners, Length x, Length y, Length tolerance) {
            const calc::Plane plane = plane_of("corners", corners, tolerance);
            require_near(corners, x, y);
            return plane.level(x, y);
        });
    level.says("Level at a point of the plane through three levels or more")
        .related({"UC.LEVEL.FALL", "UC.COVER.LEAST", "UC.PIT.PLANES"})
        .also_called(
            "plane of best fit, interpolated level, elevation at a point, sloping ground, regression plane")
        .equation("z = z_0 + s_x x + s_y y")
        .source(plane_source)
        .example("UC.LEVEL.PLANE({0;0;100|40;0;100.4|40;12;100.64|0;12;100.24}; \"20 m\"; \"6 m\")", "100.32",
                 "1e-12 rel", Origin::mathematics, "100 + 0.01 x 20 + 0.02 x 6")
        .example(
            "UC.LEVEL.PLANE({\"ft\";\"ft\";\"ft\"|0;0;330|100;0;329|0;40;330.8}; \"50 ft\"; \"40 ft\"; "
            "; \"ft\")",
            "330.3", "1e-9 rel", Origin::mathematics, "330 - 0.5 + 0.8");
    takes_corners(level, "corners", "x, y, z",
                  "Three columns: place along x, along y, level; three rows or more")
        .takes("x", "x", "Place along x")
        .within(usual::plan_place)
        .takes("y", "y", "Place along y")
        .within(usual::plan_place);
    return takes_plane_tolerance(level).gives("z", "Level there");
}

Function fall_entry() {
    auto fall = function("UC.LEVEL.FALL", [](calc::CornerLevels corners, Length tolerance) {
        (void)plane_of("corners", corners, tolerance);
        return calc::plane_fall(corners, tolerance);
    });
    fall.says("Fall of the plane through three levels or more, in the direction in which it is steepest")
        .related({"UC.LEVEL.PLANE", "UC.SETOUT.PIT", "UC.PIT.PLANES"})
        .also_called("slope of the ground, gradient, dip, grade, crossfall")
        .equation("s = sqrt(s_x^2 + s_y^2)")
        .source(plane_source)
        .example("UC.LEVEL.FALL({0;0;100|40;0;100.3|40;10;100.4|0;10;100.1})", "0.0125", "1e-9 rel",
                 Origin::mathematics, "0.0075 along x and 0.01 along y: a triangle of 3-4-5")
        .example("UC.LEVEL.FALL({\"ft\";\"ft\";\"ft\"|0;0;330|100;0;329|0;40;330})", "0.01", "1e-9 rel",
                 Origin::mathematics, "1 ft in 100 ft");
    takes_corners(fall, "corners", "x, y, z",
                  "Three columns: place along x, along y, level; three rows or more");
    return takes_plane_tolerance(fall).gives("s", "Steepest fall");
}

/// Least or greatest cover over the rectangle of a bed.
Entry& takes_planes(Entry& entry) {
    takes_corners(entry, "upper", "x, y, z_u",
                  "Finished surface: three columns, place along x, along y, level; three rows or more");
    takes_corners(entry, "lower", "x, y, z_l", "Formation of the bed: the same three columns");
    entry.takes("length", "L", "Length of the bed's base, along x from 0")
        .within(usual::plan_length)
        .takes("width", "W", "Width of the bed's base, along y from 0")
        .within(usual::plan_width)
        .takes("height", "h", "Height of the crown over the formation", 0.0)
        .within(usual::crown_height);
    return takes_plane_tolerance(entry);
}

constexpr const char* corners_says = "2.5 m less 1.05 m at one end, 1.9 m less 1.05 m at the other";

Function cover_least_entry() {
    auto least = function("UC.COVER.LEAST", [](calc::CornerLevels upper, calc::CornerLevels lower,
                                               Length length, Length width, Length height, Length tolerance) {
        return gap_of(upper, lower, length, width, height, tolerance).least;
    });
    least
        .says(
            "Least cover over a bed between two planes, finished surface and formation; what the levels "
            "depart "
            "from their planes is taken off")
        .related({"UC.COVER.GREATEST", "UC.COVER.DEPTH", "UC.LEVEL.PLANE", "UC.LOAD.VEHICLE"})
        .also_called("minimum cover, depth of fill over crown, clearance to finished level")
        .equation("H = min over the corners of z_u - z_l, less h and the departures")
        .source("geometry: two planes are closest over a corner of the bed")
        .example(
            "UC.COVER.LEAST({0;0;102.5|40;0;102.1|0;12;102.5}; {0;0;100|40;0;100.2|0;12;100}; \"40 m\"; "
            "\"12 m\"; \"1.05 m\")",
            "0.85", "1e-9 rel", Origin::mathematics, corners_says)
        .example(
            "UC.COVER.LEAST({\"ft\";\"ft\";\"ft\"|0;0;336|130;0;335|0;40;336}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;329|130;0;329|0;40;329}; \"130 ft\"; \"40 ft\"; \"3.5 ft\"; ; \"ft\")",
            "2.5", "1e-9 rel", Origin::mathematics, "335 - 329 - 3.5 at the low end of the surface")
        .caution(
            "A plane between few levels sees no hollow: where water runs, take the levels there. Local "
            "codes and a licensed engineer govern");
    return takes_planes(least).gives("H", "Least cover");
}

Function greatest_entry() {
    auto greatest = function(
        "UC.COVER.GREATEST",
        [](calc::CornerLevels upper, calc::CornerLevels lower, Length length, Length width, Length height,
           Length tolerance) { return gap_of(upper, lower, length, width, height, tolerance).greatest; });
    greatest
        .says(
            "Greatest cover over a bed between two planes, finished surface and formation; what the levels "
            "depart from their planes is added")
        .related({"UC.COVER.LEAST", "UC.LOAD.FILL", "UC.LEVEL.PLANE"})
        .also_called("maximum cover, maximum depth of fill, greatest burial depth")
        .equation("H = max over the corners of z_u - z_l, less h, and the departures")
        .source("geometry: two planes are farthest apart over a corner of the bed")
        .example(
            "UC.COVER.GREATEST({0;0;102.5|40;0;102.1|0;12;102.5}; {0;0;100|40;0;100.2|0;12;100}; \"40 m\"; "
            "\"12 m\"; \"1.05 m\")",
            "1.45", "1e-9 rel", Origin::mathematics, corners_says)
        .example(
            "UC.COVER.GREATEST({\"ft\";\"ft\";\"ft\"|0;0;336|130;0;335|0;40;336}; "
            "{\"ft\";\"ft\";\"ft\"|0;0;329|130;0;329|0;40;329}; \"130 ft\"; \"40 ft\"; \"3.5 ft\"; ; \"ft\")",
            "3.5", "1e-9 rel", Origin::mathematics, "336 - 329 - 3.5 at the high end of the surface")
        .caution("Local codes and a licensed engineer govern");
    return takes_planes(greatest).gives("H", "Greatest cover");
}

}  // namespace

std::vector<Function> plane_functions() {
    return {level_plane_entry(), fall_entry(), cover_least_entry(), greatest_entry()};
}

}  // namespace undercroft::addin
