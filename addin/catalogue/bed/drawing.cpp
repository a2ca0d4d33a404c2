#include "calc/bed/drawing.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/entry.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* scale_says = "Every length is divided by it; 1 draws in full size";
constexpr const char* section_source =
    "geometry of the bed; x across from the middle, y up from the base of the bed";
constexpr const char* plan_source = "geometry of the bed; the origin is the middle of the plan";

Entry& takes_rows(Entry& entry) {
    return entry.takes("rows", "r", "Rows of chambers")
        .takes("width", "B", "Width of a row, over the feet")
        .takes("row gap", "g", "Clear width of stone between rows");
}

Function drawn(Entry& entry, const char* says) {
    return entry.takes("scale", "N", scale_says, 1.0).gives_columns(says, {{"x", "x"}, {"y", "y"}});
}

}  // namespace

Group drawing_functions() {
    auto pit = function("UC.DRAW.PIT", &calc::drawn_pit);
    pit.says(
           "Outline of a pit in cross-section, or of the stone when closed along its top: points for a chart")
        .equation("(-B/2 - z d, d), (-B/2, 0), (B/2, 0), (B/2 + z d, d)")
        .source(section_source)
        .example("INDEX(UC.DRAW.PIT(\"12 m\"; \"2 m\"; \"1H:1V\"; 0; 100; \"mm;mm\"); 2; 1)", "-80",
                 "1e-12 rel", Origin::mathematics, "half of 12 m and 2 m of batter, at 1:100")
        .takes("base width", "B", "Width at the base")
        .takes("depth", "d", "Depth of the pit, or height of the stone")
        .takes("batter", "z", "Slope of the walls; 0 for vertical walls")
        .takes("closed", "closed", "TRUE to close the outline along its top", 0.0);

    auto level = function("UC.DRAW.LEVEL", &calc::drawn_level);
    level.says("A level across the pit at a height above its base: two points for a chart")
        .equation("x = -+(B/2 + z h + o), y = h")
        .source(section_source)
        .example("INDEX(UC.DRAW.LEVEL(\"12 m\"; \"1H:1V\"; \"1 m\"; \"0 m\"; 100; \"mm;mm\"); 3; 1)", "70",
                 "1e-12 rel", Origin::mathematics, "half of 12 m and 1 m of batter, at 1:100")
        .takes("base width", "B", "Width at the base")
        .takes("batter", "z", "Slope of the walls; 0 for vertical walls")
        .takes("level", "h", "Height above the base")
        .takes("overhang", "o", "Length beyond the pit, each side", 0.0);

    auto arches = function("UC.DRAW.ARCHES", [](Count rows, Length width, Length row_gap, calc::Shape shape,
                                                Length span, Length rise, Length base_height, Share scale) {
        return calc::drawn_arches({rows, width, row_gap}, {shape, span, rise}, base_height, scale);
    });
    arches.says("The arches of all rows in cross-section: points for a chart, a blank row between arches")
        .equation("half width w(y)/2 at each height, as UC.ARCH.WIDTH")
        .source(section_source)
        .example(
            "INDEX(UC.DRAW.ARCHES(1; \"1.3 m\"; \"150 mm\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"200 mm\"); "
            "10; 2)",
            "0.95", "1e-12 rel", Origin::mathematics, "the crown: 0.2 m of base and 0.75 m of rise");
    takes_rows(arches)
        .takes("shape", "shape", "Cross-section: ellipse, parabola, segment, rectangle or circle")
        .takes("span", "B_i", "Inside width of a chamber at its base")
        .takes("rise", "H", "Inside height of a chamber")
        .takes("base height", "b", "Height of the feet above the base of the bed");

    auto box = function("UC.DRAW.BOX", &calc::drawn_box);
    box.says("A rectangle around the middle of the plan: points for a chart")
        .equation("x = -+L/2, y = -+W/2")
        .source(plan_source)
        .example("INDEX(UC.DRAW.BOX(\"40 m\"; \"12 m\"; 250; \"mm;mm\"); 3; 1)", "80", "1e-12 rel",
                 Origin::mathematics, "half of 40 m at 1:250");
    box.takes("length", "L", "Length").takes("width", "W", "Width");

    auto rows = function("UC.DRAW.ROWS",
                         [](Count row_count, Length width, Length row_gap, Length row_length, Share scale) {
                             return calc::drawn_rows({row_count, width, row_gap}, row_length, scale);
                         });
    rows.says("The rows in plan, each a rectangle: points for a chart, a blank row between them")
        .equation("rectangles of l by B, g apart")
        .source(plan_source)
        .example("INDEX(UC.DRAW.ROWS(2; \"1.3 m\"; \"150 mm\"; \"28.9 m\"); 2; 2)", "-1.375", "1e-12 rel",
                 Origin::mathematics, "two rows of 1.3 m and a gap of 0.15 m are 2.75 m");
    takes_rows(rows).takes("row length", "l", "Installed length of a row");

    auto ends = function("UC.DRAW.ENDS", [](Count row_count, Length width, Length row_gap, Length row_length,
                                            Length end_unit, Share scale) {
        return calc::drawn_ends({row_count, width, row_gap}, row_length, end_unit, scale);
    });
    ends.says("The joints behind the end units of each row in plan: points for a chart")
        .equation("x = -+(l/2 - E)")
        .source(plan_source)
        .example("INDEX(UC.DRAW.ENDS(1; \"1.3 m\"; \"150 mm\"; \"28.9 m\"; \"2.4 m\"); 2; 1)", "-12.05",
                 "1e-12 rel", Origin::mathematics, "half of 28.9 m less an end unit");
    takes_rows(ends)
        .takes("row length", "l", "Installed length of a row")
        .takes("end unit", "E", "Laid length of an end unit");

    auto ports = function("UC.DRAW.PORTS",
                          [](Count row_count, Length width, Length row_gap, Count units, Count interval,
                             Length end_unit, Length middle_unit, Length joint_overlap, Share scale) {
                              return calc::drawn_ports({row_count, width, row_gap}, units, interval, end_unit,
                                                       middle_unit, joint_overlap, scale);
                          });
    ports.says("The inspection ports in plan: points for a chart, a blank row between them")
        .equation("middles of the units that UC.BED.PORTS counts")
        .source(plan_source)
        .example(
            "INDEX(UC.DRAW.PORTS(1; \"1.3 m\"; \"150 mm\"; 13; 0; \"2.4 m\"; \"2.3 m\"; \"100 mm\"); 2; 1)",
            "-13.25", "1e-12 rel", Origin::mathematics, "half of 28.9 m less half an end unit");
    takes_rows(ports)
        .takes("units in row", "n", "Units in a row")
        .takes("interval", "k", "Units from port to port; 0 for one at each end of a row")
        .takes("end unit", "E", "Laid length of an end unit")
        .takes("middle unit", "M", "Laid length of a middle unit")
        .takes("joint overlap", "o", "Length by which joined units overlap");

    constexpr const char* points = "Points of the outline";
    return {"Drawing",
            {function("UC.DRAW.SCALE", &calc::drawing_scale)
                 .says("Scale 1:N at which a drawing fits on paper: N = 1, 1.25, 1.5, 2, 2.5, 3, 4, 5 or 7.5 "
                       "times a power of ten")
                 .equation("N >= max(w/wp, h/hp)")
                 .source("ISO 5455:1979 for 1, 2 and 5; the others as on scale rules (common practice)")
                 .example("UC.DRAW.SCALE(\"14.4 m\"; \"2 m\"; \"170 mm\"; \"80 mm\")", "100", "exact",
                          Origin::published, "ISO 5455:1979 has 1:100; 14.4 m on 170 mm needs 1:84.7")
                 .example("UC.DRAW.SCALE(\"42 m\"; \"14 m\"; \"170 mm\"; \"80 mm\")", "250", "exact",
                          Origin::common_practice, "1:247 is needed; 1:250 is usual in building")
                 .takes("width", "w", "Width of what is drawn")
                 .takes("height", "h", "Height of what is drawn")
                 .takes("paper width", "wp", "Width of the paper")
                 .takes("paper height", "hp", "Height of the paper")
                 .gives("N", "Denominator of the scale"),
             drawn(pit, points), drawn(level, points), drawn(arches, points), drawn(box, points),
             drawn(rows, points), drawn(ends, points), drawn(ports, points)}};
}

}  // namespace undercroft::addin
